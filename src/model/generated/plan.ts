// Generated from schemas/ by `npm run types`; edit the schema.

/**
 * What is taken from a plan file that somebody may have edited: the job, the car and the steps. All else in it is rebuilt from the library.
 */
export interface PlanText {
job: string
/**
 * A name: small letters, figures and hyphens.
 */
range: string
digest: string
car: {
id?: string
name?: string
fitted: {
/**
 * A name: small letters, figures and hyphens.
 */
[k: string]: string
}
found?: Found[]
}
/**
 * @minItems 1
 */
steps: [Step, ...(Step)[]]
}
export interface Found {
/**
 * A name: small letters, figures and hyphens.
 */
fixing?: string
/**
 * A name: small letters, figures and hyphens.
 */
part?: string
/**
 * left, right, driver, passenger, both or a position of the range.
 */
at?: string
/**
 * How many are there; all of them where it is left out.
 */
present?: number
/**
 * How many more there are than the range has; they are left out on purpose.
 */
extra?: number
/**
 * How many of those present are renewed.
 */
damaged?: number
/**
 * A name: small letters, figures and hyphens.
 */
as?: string
absent?: boolean
/**
 * What the refit does about an absent part.
 */
refit?: ("fit-new" | "leave-off")
/**
 * Parts whose steps this makes awkward; the note is printed there.
 * 
 * Items: A name: small letters, figures and hyphens.
 */
awkward?: string[]
note: string
}
export interface Step {
n: string
id: string
phase: ("prepare" | "strip" | "record" | "repair" | "refit" | "close")
says: string
/**
 * @minItems 1
 */
does: [Change, ...(Change)[]]
}
export interface Change {
/**
 * A name: small letters, figures and hyphens.
 */
verb: string
/**
 * A name: small letters, figures and hyphens.
 */
object: string
place: string
count?: number
fresh?: number
round?: number
to?: string
reason?: string
minutes?: number
}
