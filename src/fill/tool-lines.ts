import type { Step } from "../model/plan.js";
import { effectOf, verbs } from "../model/verbs.js";
import { type Words, fillIn } from "../model/words.js";
import { escape, figureHtml, markHtml } from "./marks.js";
import { torquesOf } from "./torques.js";

/** The kinds of work by which tools lie together on the gather list, in its order. */
export const toolKinds = ["fasten", "measure", "cut", "weld", "coat", "safe"] as const;

/** A kind of work that tools are for. */
export type ToolKind = (typeof toolKinds)[number];

const verbsOf: Record<Exclude<ToolKind, "fasten">, string> = {
  measure:
    "measure compare test level find look-at inspect photograph mark tally hold decide witness",
  cut: "drill pilot centre punch separate scrape bare deburr dress straighten remove cut-out peel wipe clean sweep",
  weld: "weld tack clamp close offer-up",
  coat: "prime paint seal coat wax grease",
  safe: "try apply set-out clear-away shield unshield brace unbrace raise lower open shut watch permit prepare drain fill",
};

const kindOfVerb = new Map(
  Object.entries(verbsOf).flatMap(([kind, listed]) =>
    listed.split(" ").map((verb) => [verb, kind as ToolKind] as const),
  ),
);

const drills = new Set(["drill", "pilot", "drill-out"]);

/** The kind of work at which a tool is used most; what records or drills is sorted by that, wherever else it is used. */
export function toolKind(steps: readonly Step[], gauge: boolean): ToolKind {
  const uses = (kind: ToolKind): number =>
    steps.filter(({ verb }) => (kindOfVerb.get(verb) ?? "fasten") === kind).length;
  const most = Math.max(...toolKinds.map(uses));
  const records = steps.some(({ verb }) => verbs[verb]?.kind === "records");
  if (gauge || records) return "measure";
  if (steps.some(({ verb }) => drills.has(verb))) return "cut";
  return toolKinds.find((kind) => uses(kind) === most) ?? "safe";
}

/** Whether a tool's name holds one of the words that the words file lists for gauges. */
export function isGauge(name: string, { phrases }: Words): boolean {
  const known = (phrases["gauge-words"] ?? "").split(" ").filter((word) => word !== "");
  return known.some((word) => name.includes(word));
}

/** So few steps use a tool that measures one thing (the number is ours). */
const fewSteps = 4;

/** What a tool must fit, drill, read or reach, as its steps say it, with the source of each value. */
export function sizesOf(name: string, steps: readonly Step[], words: Words): string[] {
  const gauge = isGauge(name, words);
  if (gauge && name.includes(words.phrases["torque-word"] ?? " ")) return torqueRange(steps, words);
  const kind = toolKind(steps, gauge);
  const reads = gauge || (kind === "measure" && steps.length <= fewSteps);
  const sized = steps.filter(({ verb }) => (reads && verb !== "mark") || drills.has(verb));
  const turned = kind === "fasten" ? fixingsOf(steps) : [];
  return [...new Set([...turned, ...sized.flatMap(valuesOf)])];
}

/** The kinds of fastener that a tool turns, with their size. */
function fixingsOf(steps: readonly Step[]): string[] {
  const sized = steps.flatMap((step) => step.fixings).filter(({ size }) => size !== "");
  return sized.map(({ name, size }) => escape(`${name} ${size}`));
}

/** The values of a step that have a unit, in millimetres and inches. */
function valuesOf({ figures }: Step): string[] {
  return figures
    .filter(({ text }) => /^[\d.]+ \D/.test(text) && !text.includes("___") && !isTime(text))
    .map(({ text, inch, mark }) => {
      const [other = ""] = inch.split(" (");
      const both = text === inch || other === text ? text : `${text} (${other})`;
      return `${escape(both)}${markHtml(mark)}`;
    });
}

function isTime(text: string): boolean {
  return / (s|min|h)$/.test(text);
}

/** The torques that the plan prints, and room for the range of the maker's. */
function torqueRange(steps: readonly Step[], words: Words): string[] {
  const torques = steps.flatMap(({ fixings, verb }) =>
    effectOf(verb) === "in" ? fixings.flatMap(({ torque }) => torque ?? []) : [],
  );
  const printed = torques.filter(({ value }) => value !== undefined);
  const [asked] = steps.flatMap((step) => torquesOf([step], words)).filter(isMakers);
  return [
    ...new Set([
      ...printed.map((torque) => figureHtml(torque, words)),
      ...fixingsAt(steps, words),
      ...(asked ? [roomFor(asked.torqueHtml, words)] : []),
    ]),
  ];
}

/** Room for the least and the highest torque of the maker, with the unit and the mark of one that is asked for. */
function roomFor(torqueHtml: string, { phrases }: Words): string {
  const [least, most] = ["least-torque", "most-torque"].map((name) => {
    const spoken = escape(phrases[name] ?? "");
    return `<span class="blank amount" aria-label="${spoken}"></span>`;
  });
  return `${least} ${escape(phrases["to"] ?? "")} ${most} ${torqueHtml.replace(/^<span.*?<\/span> /, "")}`;
}

/** What is tightened to a torque of the maker. */
function fixingsAt(steps: readonly Step[], words: Words): string[] {
  return fixingsOf(steps.filter((step) => torquesOf([step], words).some(isMakers)));
}

function isMakers({ torqueHtml }: { torqueHtml: string }): boolean {
  return torqueHtml.includes("blank");
}

/** From which step something is needed. */
export function firstStep([step]: readonly Step[], { phrases }: Words): string {
  return step ? fillIn(phrases["from-step"] ?? "", { n: step.n }) : "";
}
