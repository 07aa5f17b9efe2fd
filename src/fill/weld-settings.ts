import { type ComputedSource, type Figure, isComputed } from "../model/figure.js";
import type { Step } from "../model/plan.js";
import type { Words } from "../model/words.js";
import { figureHtml } from "./marks.js";
import { valueHtml } from "./step-view.js";

type Fact = Step["facts"][number];

/** What the weld steps say of their settings: what is set and released, where to begin, and what is printed beside. */
export interface Settings {
  /** What is written in when it is released, and its unit: each the heading of a column. */
  columns: { name: string; unit: string }[];
  /** Where to begin, a row for each weld that a table knows, with a cell for each column. */
  starts: Start[];
  /** How the rows were computed and after whom, each once. */
  sources: string[];
  /** What is fixed by the recipe: process, sheets, hole, filter. */
  facts: { field: string; valueHtml: string }[];
}

/** The starting values for one kind of weld. */
interface Start {
  label: string;
  cells: string[];
}

interface StartFact extends Fact {
  figure: Figure;
  source: ComputedSource;
}

/** The settings of all weld steps; a computed value is one to begin with where its unit is released later. */
export function settingsOf(steps: readonly Step[], words: Words): Settings {
  const all = steps.filter(({ verb }) => verb === "weld").flatMap(({ facts }) => facts);
  const once = [...new Map(all.map((fact) => [JSON.stringify(fact), fact])).values()];
  const asked = words.phrases["as-released"] ?? "";
  const isReleased = ({ field }: Fact): boolean => asked !== "" && field.includes(asked);
  const columns = once.filter(isReleased).map(({ field }) => field);
  const starting = once.flatMap((fact) => startOf(fact, columns));
  const weldOf = ({ source }: StartFact): string => JSON.stringify([source.figure, source.with]);
  const welds = [...new Set(starting.map(weldOf))];
  return {
    columns: columns.map((column) => ({
      name: bareName(column).replace(` ${asked}`, ""),
      unit: unitOf(column),
    })),
    starts: welds.map((weld) => {
      const mine = starting.filter((fact) => weldOf(fact) === weld);
      return rowOf(mine, columns, words);
    }),
    sources: [...new Set(starting.map(({ source }) => saidOfSource(source, words)))],
    facts: once
      .filter((fact) => !isReleased(fact) && startOf(fact, columns).length === 0)
      .map(({ field, value, figure }) => ({ field, valueHtml: valueHtml(value, figure, words) })),
  };
}

function startOf(fact: Fact, columns: readonly string[]): StartFact[] {
  const { figure } = fact;
  return figure && isComputed(figure.source) && columns.some((column) => isOf(figure, column))
    ? [{ ...fact, figure, source: figure.source }]
    : [];
}

function unitOf(column: string): string {
  return /\(([^()]+)\)$/.exec(column)?.[1] ?? "";
}

function bareName(column: string): string {
  return column.replace(/ \([^()]+\)$/, "");
}

/** Whether a value has the unit that a column asks for, in metric or beside inches. */
function isOf({ unit = "", also = "" }: Figure, column: string): boolean {
  const asked = unitOf(column);
  return asked !== "" && (unit === asked || also.endsWith(` ${asked}`));
}

/** A row is called as its recipe says it after the comma, 'current, butt joint of 1.2 mm', or by what it was computed from. */
function rowOf(facts: readonly StartFact[], columns: readonly string[], words: Words): Start {
  const given = Object.entries(facts[0]?.source.with ?? {});
  const said = (text: string): string => words.figures[text] ?? text;
  const from = given.map(([name, value]) => `${said(name)} ${said(String(value))}`).join(", ");
  const [label = from] = facts.flatMap(({ field }) => field.split(", ").slice(1));
  return {
    label,
    cells: columns.map((column) =>
      facts
        .filter(({ figure }) => isOf(figure, column))
        .map(({ figure }) => figureHtml(bare(figure), words))
        .join("<br>"),
    ),
  };
}

/** The heading says the unit, so the value need not; an inch shop's value keeps both of its units. */
function bare({ unit, ...figure }: Figure): Figure {
  return unit === undefined || figure.also === undefined ? figure : { ...figure, unit };
}

function saidOfSource(
  { formula = "", published = "" }: ComputedSource,
  { figures }: Words,
): string {
  const said = (text: string): string => figures[text] ?? text;
  return `${said(formula)}. ${said(published)}`;
}
