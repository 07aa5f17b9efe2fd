// Generated from schemas/ by `npm run types`; edit the schema.

/**
 * The positions at which it is found; left out where there is one only.
 */
export type At = (string | [string, ...(string)[]])
/**
 * A whole number from 1 up, or one for each position.
 */
export type Count = (number | {
[k: string]: number
})
export type Names = string[]
/**
 * The fixings and joins that must be out before the part can be eased, folded or tied aside.
 */
export type Names1 = string[]

/**
 * A model range: its options, and an inventory of what holds and hides what.
 */
export interface RangeFile {
/**
 * A name: small letters, figures and hyphens.
 */
range: string
name: string
about: string
invented: boolean
/**
 * A name: small letters, figures and hyphens.
 */
steering?: string
options: {
[k: string]: {
name: string
values: {
[k: string]: string
}
/**
 * A name: small letters, figures and hyphens.
 */
default: string
}
}
/**
 * Zones in the order a person walks round the car.
 */
zones: {
[k: string]: string
}
/**
 * Kinds of fastener.
 */
kinds: {
[k: string]: {
name: string
plural: string
size?: string
/**
 * A name: small letters, figures and hyphens.
 */
tool?: string
/**
 * The tools of the way back, where they are not 'tool'; an empty list where it goes in by hand.
 * 
 * Items: A name: small letters, figures and hyphens.
 */
"tool-in"?: string[]
"one-use"?: boolean
/**
 * How it comes out where it was fitted instead of another kind.
 */
out?: ("undo" | "unclip" | "pull-out" | "drill-out")
}
}
supplies?: {
[k: string]: {
name: string
}
}
parts: {
[k: string]: Part
}
surfaces?: {
[k: string]: Surface
}
/**
 * What must be so before any welding or grinding, and how long the fire is watched after it. What must be tested must be tested again after any primer, sealer, paint, coating, wax or wiping.
 */
"hot-work"?: {
/**
 * @minItems 1
 * 
 * Items: A name and the state it must have: 'floor wiped'.
 */
needs: [string, ...(string)[]]
watch: Figure
}
/**
 * What must be so while a structural joint is open, and what is measured before and compared after.
 */
structural?: {
/**
 * @minItems 1
 * 
 * Items: A name and the state it must have: 'floor wiped'.
 */
needs: [string, ...(string)[]]
compare: Names
}
joints?: {
[k: string]: Joint
}
functions?: {
[k: string]: Function
}
}
export interface Part {
name: string
plural?: string
at?: At
/**
 * A name: small letters, figures and hyphens.
 */
zone: string
when?: When
/**
 * How many it takes to lift it.
 */
people?: number
/**
 * Why a mistake here can hurt somebody on the road.
 */
critical?: string
"held-by"?: {
[k: string]: Fixing
}
plugs?: {
[k: string]: Join
}
hooks?: {
[k: string]: Join
}
"welded-by"?: Names
hides?: Names
"eased-by"?: Names1
}
/**
 * All of these options must have this value, or one of these values.
 */
export interface When {
[k: string]: string | [string, ...(string)[]]
}
export interface Fixing {
/**
 * A name: small letters, figures and hyphens.
 */
kind: string
count: Count
where: string
when?: When
"one-use"?: boolean
torque?: Figure
}
export interface Figure {
/**
 * What a figure is of.
 */
kind: ("pilot-hole" | "plug-hole" | "sheet" | "torque" | "gap" | "length" | "distance" | "time" | "temperature" | "count" | "tolerance" | "current" | "film" | "light" | "voltage" | "resistance" | "pressure" | "flow" | "shade")
/**
 * A number, or an inch fraction such as 5/16 or 1 1/8. Left out where the shop fills it in.
 */
value?: (number | string)
/**
 * The upper end of a range.
 */
to?: number
tolerance?: number
unit?: ("mm" | "in" | "m" | "ft" | "N·m" | "lbf·ft" | "min" | "h" | "s" | "°C" | "A" | "µm" | "lx" | "V" | "Ω" | "bar" | "L/min" | "1")
/**
 * Where a figure comes from: maker (the shop fills it in), practice (common practice, no source), demo (invented), or a named publication with its section.
 */
source: (("maker" | "practice" | "demo") | {
publication: string
section?: string
} | Computed)
}
/**
 * Computed: `countback figure` lists the figures and what each takes.
 */
export interface Computed {
/**
 * A name: small letters, figures and hyphens.
 */
figure: string
/**
 * Which of its results; the first where it is left out.
 */
result?: string
with: {
[k: string]: string | number
}
}
export interface Join {
name: string
when?: When
/**
 * A name: small letters, figures and hyphens.
 */
supply?: string
/**
 * Why joining it needs no function test.
 */
untested?: string
}
export interface Surface {
name: string
at?: At
/**
 * A name: small letters, figures and hyphens.
 */
zone: string
/**
 * The states it must have reached again, once worked on, before something hides it.
 */
finish?: string[]
"closed-by"?: {
[k: string]: Fixing
}
}
export interface Joint {
name: string
at?: At
/**
 * A name: small letters, figures and hyphens.
 */
zone: string
welds: number
structural?: boolean
}
export interface Function {
name: string
at?: At
when?: When
proves: Names
/**
 * A name: small letters, figures and hyphens.
 */
supply?: string
}
