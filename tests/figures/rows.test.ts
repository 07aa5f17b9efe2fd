import { describe, expect, it } from "vitest";
import { figures } from "../../src/figures/figures.js";
import type { Row } from "./row.js";
import { allowanceOf, deviationOf, rows } from "./rows.js";

const titleOf = ({ figure, inputs, result, expect: value, unit }: Row): string =>
  `${figure} ${Object.values(inputs).join(" ")}: ${result} ${value} ${unit ?? ""}`;

const named = rows.map((row): [string, Row] => [titleOf(row), row]);

describe("a published value is met within its tolerance", () => {
  it.each(named.filter(([, row]) => row.disagrees === undefined))("%s", (_, row) => {
    const { got, off } = deviationOf(row);
    expect(off, `${got} against ${row.expect}, ${row.source}`).toBeLessThanOrEqual(
      allowanceOf(row),
    );
  });
});

describe("a published value that we hold for other than ours does differ", () => {
  it.each(named.filter(([, row]) => row.disagrees !== undefined))("%s", (_, row) => {
    const { got, off } = deviationOf(row);
    expect(off, `${got} is within the tolerance of ${row.expect}`).toBeGreaterThan(
      allowanceOf(row),
    );
  });
});

it("every figure has rows", () => {
  const checked = new Set(rows.map(({ figure }) => figure));
  expect(figures.map(({ name }) => name).filter((name) => !checked.has(name))).toEqual([]);
});

it("a row that may differ by more than a hundredth says why", () => {
  const loose = rows.filter((row) => (row.rel ?? 0) > 0.01 && row.disagrees === undefined);
  expect(loose.length).toBeGreaterThan(10);
  expect(loose.filter(({ note }) => note === undefined).map(titleOf)).toEqual([]);
});

/** Publications that stand behind rows that agree, read in a copy. */
const publications = (names: readonly string[]): Set<string> =>
  new Set(
    rows
      .filter((row) => names.includes(row.figure) && row.status === "read" && !row.disagrees)
      .map(({ source }) => source.split(/[,:(]/)[0] ?? ""),
  );

it("torque and threads stand on three independent publications each", () => {
  const torque = publications(["torque", "clamp-load"]);
  expect(
    [
      "US Army TM 5-3895-367-14&P",
      "IFI technical data N-12/N-16 as reprinted",
      "FAA AC 43.13-1B ",
    ].filter((name) => !torque.has(name)),
  ).toEqual([]);
  const threads = publications(["stress-area", "proof-load"]);
  expect(
    ["ISO 898-1", "Shigley", "US Navy NSTM chapter 075"].filter((name) => !threads.has(name)),
  ).toEqual([]);
});
