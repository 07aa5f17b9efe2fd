// Generated from schemas/ by `npm run types`; edit the schema.

/**
 * Tools, supplies that are used up, roles, things to wear and safety messages that recipes name.
 */
export interface CatalogFile {
/**
 * A name: small letters, figures and hyphens.
 */
catalog: string
tools?: {
[k: string]: {
name: string
/**
 * The work it is for: under this it lies on the gather list.
 */
kind: ("fasten" | "measure" | "cut" | "weld" | "coat" | "safe")
/**
 * What a gauge reads (share: percent, as of vapour). Such a tool has a number and a date of calibration; the figures of its steps say how far it must read.
 */
reads?: ("length" | "torque" | "temperature" | "resistance" | "light" | "share")
/**
 * It is brought in the size that its steps say, as a drill is: what the figures of that size are of.
 */
sized?: ("pilot-hole" | "plug-hole" | "sheet" | "torque" | "gap" | "length" | "distance" | "time" | "temperature" | "count" | "tolerance" | "current" | "film" | "light" | "voltage" | "resistance" | "pressure" | "flow" | "shade")
/**
 * It throws sparks: at the car only a verb of hot work may use it, and 'bore' at a bench outside the radius.
 */
sparks?: boolean
/**
 * What serves in its place.
 */
instead?: string
why?: string
}
}
consumables?: {
[k: string]: {
name: string
unit?: string
}
}
/**
 * Words that this library does not use, each with the one that it writes instead.
 */
words?: {
[k: string]: string
}
roles?: {
[k: string]: {
name: string
releases?: boolean
/**
 * Somebody who did not do the work; only they release critical work.
 */
independent?: boolean
}
}
/**
 * What people wear against a hazard, by the names that messages give.
 */
wear?: {
[k: string]: {
name: string
/**
 * What it guards.
 */
for: ("body" | "ears" | "eyes" | "face" | "feet" | "hands" | "head" | "lungs")
/**
 * What need not be worn beside it, because it does that work too.
 * 
 * @minItems 1
 * 
 * Items: A name: small letters, figures and hyphens.
 */
also?: [string, ...(string)[]]
}
}
messages?: {
[k: string]: Message
}
}
/**
 * A safety message: signal word, hazard, how to avoid it, what happens otherwise.
 */
export interface Message {
word: ("danger" | "warning" | "caution" | "notice")
hazard: string
avoid: string
consequence: string
/**
 * What to do, in short, for the later steps of a block whose head has the whole message.
 */
short?: string
where?: string
/**
 * What to wear against it, by its name in a catalog.
 * 
 * @minItems 1
 * 
 * Items: A name: small letters, figures and hyphens.
 */
wear?: [string, ...(string)[]]
/**
 * The safety signs that fit it, by their number in ISO 7010.
 */
signs?: ("M003" | "M004" | "M008" | "M009" | "M010" | "M011" | "M013" | "M014" | "M017" | "M019" | "M021" | "M027" | "M046" | "W012" | "W015" | "W017" | "W018" | "W021" | "W022" | "W023" | "W024" | "W027" | "W029" | "W041" | "P002" | "P003" | "P028")[]
}
