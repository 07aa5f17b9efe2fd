import { unitsOf } from "../figures/quantity.js";
import type { Dimension } from "../figures/units.js";
import type { Tool } from "../model/library.js";
import type { Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import { type Words, fillIn } from "../model/words.js";
import { escape, figureHtml, markHtml } from "./marks.js";
import { torquesOf } from "./torques.js";

/** The kinds of work by which tools lie together on the gather list, in its order. */
export const toolKinds: readonly Tool["kind"][] = [
  "fasten",
  "measure",
  "cut",
  "weld",
  "coat",
  "safe",
];

/** What a tool must fit, drill, read or reach, as its steps say it, with the source of each value. */
export function sizesOf(
  { kind, reads, sized }: Tool,
  steps: readonly Step[],
  words: Words,
): string[] {
  if (reads === "torque") return torqueRange(steps, words);
  const turned = kind === "fasten" ? fixingsOf(steps) : [];
  const figures = steps.flatMap((step) => step.figures);
  const mine = figures.filter((figure) =>
    sized ? figure.kind === sized : reads && isOf(figure.text, reads),
  );
  return [...new Set([...turned, ...mine.filter(({ text }) => /^\d/.test(text)).map(valueOf)])];
}

/** The kinds of fastener that a tool turns, with their size. */
function fixingsOf(steps: readonly Step[]): string[] {
  const sized = steps.flatMap((step) => step.fixings).filter(({ size }) => size !== "");
  return sized.map(({ name, size }) => escape(`${name} ${size}`));
}

/** A figure in millimetres and inches, with its mark. */
function valueOf({ text, inch, mark }: Step["figures"][number]): string {
  const [other = ""] = inch.split(" (");
  const also = text === inch || other === text ? "" : ` (${other})`;
  return `${escape(text)}${markHtml(mark)}${escape(also)}`;
}

/** Whether a figure, without what stands in brackets behind it, is of a dimension. */
function isOf(text: string, dimension: Dimension): boolean {
  const value = text.replace(/ \(.*\)$/, "");
  return unitsOf(dimension).some((unit) => value.endsWith(` ${unit}`));
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
