import { expect, it } from "vitest";
import { figures } from "../../src/figures/figures.js";
import type { Row } from "./row.js";
import { deviationOf, rows } from "./rows.js";

const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;

function statusesOf(own: readonly Row[]): string {
  const count = (status: Row["status"]): number =>
    own.filter((row) => row.status === status).length;
  return `rows ${own.length} (read ${count("read")}, memory ${count("memory")}, practice or by hand ${count("practice")})`;
}

function lineOf(name: string): string {
  const own = rows.filter(({ figure }) => figure === name);
  const agreeing = own.filter(({ disagrees }) => disagrees === undefined);
  const worst = Math.max(...agreeing.map((row) => deviationOf(row).share));
  const sources = [...new Set(agreeing.map(({ source, status }) => `${source} (${status})`))];
  const counts = `${statusesOf(own)}; ${own.length - agreeing.length} disagree`;
  return [
    `${name}: ${counts}; worst deviation ${percent(worst)}`,
    ...sources.map((one) => `  ${one}`),
  ].join("\n");
}

const disagreement = (row: Row): string => {
  const { got } = deviationOf(row);
  const ours = typeof got === "number" ? Number(got.toPrecision(4)) : got;
  const inputs = Object.entries(row.inputs).map(([key, value]) => `${key}=${value}`);
  return `${row.figure} ${inputs.join(" ")}\n  ${row.result}: published ${row.expect}, ours ${ours} ${row.unit ?? ""} (${row.source})\n  ${row.disagrees}`;
};

it("the table of figures, rows and worst deviations is the one that is kept", async () => {
  const odd = rows.filter(({ disagrees }) => disagrees !== undefined);
  const text = [
    `${figures.length} figures, ${statusesOf(rows)}; deviation is of the published value, rows that agree only`,
    "",
    ...figures.map(({ name }) => lineOf(name)),
    "",
    `Rows that disagree: ${odd.length}`,
    ...odd.map(disagreement),
    "",
  ].join("\n");
  await expect(text).toMatchFileSnapshot("../references/figures.txt");
});
