// Generated from schemas/ by `npm run types`; edit the schema.

/**
 * How one part comes off and goes back, or one piece of work on the stripped car.
 */
export interface RecipeFile {
/**
 * A name: small letters, figures and hyphens.
 */
recipe: string
name: string
/**
 * A name: small letters, figures and hyphens.
 */
strips?: string
/**
 * A name: small letters, figures and hyphens.
 */
eases?: string
/**
 * A name: small letters, figures and hyphens.
 */
repairs?: string
/**
 * Part of every job.
 */
"every-job"?: true
about?: string
when?: When
"needs-off"?: (string | {
part: string
/**
 * left, right, driver, passenger, both or a position of the range.
 */
at?: string
when?: When
})[]
"needs-eased"?: (string | {
part: string
/**
 * left, right, driver, passenger, both or a position of the range.
 */
at?: string
when?: When
})[]
/**
 * Items: A name: small letters, figures and hyphens.
 */
"needs-isolated"?: string[]
/**
 * Hands-on minutes: low, likely, high.
 * 
 * @minItems 3
 * @maxItems 3
 */
time?: [number, number, number]
worth?: {
/**
 * Hands-on minutes: low, likely, high.
 * 
 * @minItems 3
 * @maxItems 3
 */
hours?: [number, number, number]
skill?: string
risk?: string
}
permits?: {
who: string
what: string
}[]
people?: number
/**
 * Items: A name: small letters, figures and hyphens.
 */
tools?: string[]
spares?: {
name: string
count: number
note?: string
}[]
/**
 * Worth renewing while it is open.
 */
renew?: {
name: string
why: string
}[]
waste?: string[]
/**
 * Words of this job that not everybody knows, for the key of the checklist.
 */
terms?: {
term: string
means: string
}[]
/**
 * The sides of the new panel seen from above, for the map of the welds.
 */
outline?: {
front: string
rear: string
left: string
right: string
middle?: string
}
safety?: (string | Message)[]
/**
 * Objects of this recipe's own that its steps act on.
 */
things?: {
[k: string]: string
}
prepare?: Step[]
strip?: Step[]
refit?: ("reversed" | Step[])
/**
 * Done at the part as soon as it is back.
 */
check?: Step[]
record?: Step[]
work?: Step[]
close?: Step[]
}
/**
 * All of these options must have this value, or one of these values.
 */
export interface When {
[k: string]: string | [string, ...(string)[]]
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
export interface Step {
undo?: (string | [(string | string), ...((string | string))[]])
"do-up"?: (string | [(string | string), ...((string | string))[]])
unclip?: (string | [(string | string), ...((string | string))[]])
"clip-in"?: (string | [(string | string), ...((string | string))[]])
"pull-out"?: (string | [(string | string), ...((string | string))[]])
"press-in"?: (string | [(string | string), ...((string | string))[]])
"drill-out"?: (string | [(string | string), ...((string | string))[]])
rivet?: (string | [(string | string), ...((string | string))[]])
unplug?: (string | [(string | string), ...((string | string))[]])
"plug-in"?: (string | [(string | string), ...((string | string))[]])
unhook?: (string | [(string | string), ...((string | string))[]])
"hook-on"?: (string | [(string | string), ...((string | string))[]])
"lift-out"?: (string | [(string | string), ...((string | string))[]])
"put-in"?: (string | [(string | string), ...((string | string))[]])
"fold-back"?: (string | [(string | string), ...((string | string))[]])
"lay-back"?: (string | [(string | string), ...((string | string))[]])
ease?: (string | [(string | string), ...((string | string))[]])
settle?: (string | [(string | string), ...((string | string))[]])
"tie-aside"?: (string | [(string | string), ...((string | string))[]])
free?: (string | [(string | string), ...((string | string))[]])
isolate?: (string | [(string | string), ...((string | string))[]])
restore?: (string | [(string | string), ...((string | string))[]])
drain?: (string | [(string | string), ...((string | string))[]])
fill?: (string | [(string | string), ...((string | string))[]])
"try-in"?: (string | [(string | string), ...((string | string))[]])
"take-out"?: (string | [(string | string), ...((string | string))[]])
open?: (string | [(string | string), ...((string | string))[]])
shut?: (string | [(string | string), ...((string | string))[]])
raise?: (string | [(string | string), ...((string | string))[]])
lower?: (string | [(string | string), ...((string | string))[]])
brace?: (string | [(string | string), ...((string | string))[]])
unbrace?: (string | [(string | string), ...((string | string))[]])
shield?: (string | [(string | string), ...((string | string))[]])
unshield?: (string | [(string | string), ...((string | string))[]])
"set-out"?: (string | [(string | string), ...((string | string))[]])
"clear-away"?: (string | [(string | string), ...((string | string))[]])
"leave-out"?: (string | [(string | string), ...((string | string))[]])
"leave-off"?: (string | [(string | string), ...((string | string))[]])
"cut-out"?: (string | [(string | string), ...((string | string))[]])
"fit-new"?: (string | [(string | string), ...((string | string))[]])
move?: (string | [(string | string), ...((string | string))[]])
try?: (string | [(string | string), ...((string | string))[]])
hold?: (string | [(string | string), ...((string | string))[]])
decide?: (string | [(string | string), ...((string | string))[]])
witness?: (string | [(string | string), ...((string | string))[]])
apply?: (string | [(string | string), ...((string | string))[]])
bare?: (string | [(string | string), ...((string | string))[]])
bore?: (string | [(string | string), ...((string | string))[]])
centre?: (string | [(string | string), ...((string | string))[]])
clamp?: (string | [(string | string), ...((string | string))[]])
clean?: (string | [(string | string), ...((string | string))[]])
close?: (string | [(string | string), ...((string | string))[]])
coat?: (string | [(string | string), ...((string | string))[]])
compare?: (string | [(string | string), ...((string | string))[]])
tally?: (string | [(string | string), ...((string | string))[]])
deburr?: (string | [(string | string), ...((string | string))[]])
dress?: (string | [(string | string), ...((string | string))[]])
drill?: (string | [(string | string), ...((string | string))[]])
find?: (string | [(string | string), ...((string | string))[]])
grease?: (string | [(string | string), ...((string | string))[]])
inspect?: (string | [(string | string), ...((string | string))[]])
level?: (string | [(string | string), ...((string | string))[]])
"look-at"?: (string | [(string | string), ...((string | string))[]])
mark?: (string | [(string | string), ...((string | string))[]])
measure?: (string | [(string | string), ...((string | string))[]])
"offer-up"?: (string | [(string | string), ...((string | string))[]])
paint?: (string | [(string | string), ...((string | string))[]])
pause?: (string | [(string | string), ...((string | string))[]])
peel?: (string | [(string | string), ...((string | string))[]])
permit?: (string | [(string | string), ...((string | string))[]])
photograph?: (string | [(string | string), ...((string | string))[]])
pilot?: (string | [(string | string), ...((string | string))[]])
prepare?: (string | [(string | string), ...((string | string))[]])
prime?: (string | [(string | string), ...((string | string))[]])
punch?: (string | [(string | string), ...((string | string))[]])
remove?: (string | [(string | string), ...((string | string))[]])
scrape?: (string | [(string | string), ...((string | string))[]])
seal?: (string | [(string | string), ...((string | string))[]])
separate?: (string | [(string | string), ...((string | string))[]])
sign?: (string | [(string | string), ...((string | string))[]])
straighten?: (string | [(string | string), ...((string | string))[]])
sweep?: (string | [(string | string), ...((string | string))[]])
tack?: (string | [(string | string), ...((string | string))[]])
test?: (string | [(string | string), ...((string | string))[]])
watch?: (string | [(string | string), ...((string | string))[]])
wax?: (string | [(string | string), ...((string | string))[]])
weld?: (string | [(string | string), ...((string | string))[]])
wipe?: (string | [(string | string), ...((string | string))[]])
/**
 * A name: small letters, figures and hyphens.
 */
id?: string
/**
 * The sentence for this direction.
 */
say?: string
/**
 * The sentence for the derived way back.
 */
back?: string
count?: number
/**
 * What a count of work counts: welds, holes.
 */
of?: string
/**
 * How the sheets of the counted welds lie; each position has as many.
 * 
 * @minItems 1
 */
positions?: [string, ...(string)[]]
/**
 * The heading under which the work goes on from here.
 */
stage?: string
/**
 * left, right, driver, passenger, both or a position of the range.
 */
at?: string
/**
 * The setting that a move leaves.
 */
to?: string
when?: When
/**
 * Items: A name and the state it must have: 'floor wiped'.
 */
needs?: string[]
/**
 * The second time the same work is done on the same object.
 */
round?: number
people?: number
/**
 * Items: A name: small letters, figures and hyphens.
 */
tools?: string[]
uses?: {
/**
 * A name: small letters, figures and hyphens.
 */
consumable: string
amount?: (number | Computed)
note?: string
}[]
warn?: (string | Message)[]
note?: string
figures?: {
[k: string]: Figure
}
/**
 * Hands-on minutes: low, likely, high.
 * 
 * @minItems 3
 * @maxItems 3
 */
time?: [number, number, number]
wait?: Figure1
/**
 * A name: small letters, figures and hyphens.
 */
role?: string
accept?: string
reason?: string
"looks-at"?: string[]
/**
 * @minItems 1
 * @maxItems 9
 */
checks?: [string]|[string, string]|[string, string, string]|[string, string, string, string]|[string, string, string, string, string]|[string, string, string, string, string, string]|[string, string, string, string, string, string, string]|[string, string, string, string, string, string, string, string]|[string, string, string, string, string, string, string, string, string]
/**
 * The work may be left here overnight.
 */
night?: boolean
/**
 * Steps of this recipe, by their id, that are done again before work on a new day.
 * 
 * @minItems 1
 * 
 * Items: A name: small letters, figures and hyphens.
 */
again?: [string, ...(string)[]]
/**
 * @minItems 2
 */
choices?: [string, string, ...(string)[]]
readings?: {
name: string
figure?: Figure
}[]
/**
 * Weld notes and the like, printed as a small table.
 */
facts?: {
field: string
value?: string
figure?: Figure
}[]
critical?: string
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
 * How long to wait after this step.
 */
export interface Figure1 {
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
