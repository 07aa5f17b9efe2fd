// Generated from schemas/ by `npm run types`; edit the schema.

/**
 * One car: its range, its options, and what was found on it.
 */
export interface CarFile {
/**
 * A name: small letters, figures and hyphens.
 */
car: string
/**
 * A name: small letters, figures and hyphens.
 */
range: string
name?: string
fitted?: {
/**
 * A name: small letters, figures and hyphens.
 */
[k: string]: string
}
found?: Found[]
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
