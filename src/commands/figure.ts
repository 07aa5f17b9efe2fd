import { type Computed, compute } from "../figures/compute.js";
import { figures } from "../figures/figures.js";
import { Refusal } from "../figures/refusal.js";
import { wordsOf } from "../figures/words.js";
import { sayJson } from "./report.js";

/** `countback figure NAME key=value …`: prints one computed figure, or without a name the list of them; 0 when printed, 1 when the figure is refused, 2 when the request is wrong. */
export function figureCommand(names: readonly string[], options: { json?: boolean }): number {
  const [name, ...pairs] = names;
  try {
    if (name === undefined) sayList(options);
    else say(compute(name, inputsOf(pairs)), options);
    return 0;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return refuse(error, options);
  }
}

function refuse({ kind, message, hints }: Refusal, { json = false }): number {
  if (json) sayJson({ refused: message, hints });
  const lines = [`countback: ${message}`, ...hints.map((hint) => `  hint: ${hint}`)];
  process.stderr.write(`${lines.join("\n")}\n`);
  return kind === "wrong" ? 2 : 1;
}

function inputsOf(pairs: readonly string[]): Record<string, string> {
  const read = pairs.map((pair): [string, string] => {
    const at = pair.indexOf("=");
    if (at > 0 && at < pair.length - 1) return [pair.slice(0, at), pair.slice(at + 1)];
    throw new Refusal("wrong", `'${pair}' is not input=value`, ["As thread=M8 or 'size=5/16 in'."]);
  });
  const twice = read.find(([key], index) => read.findIndex(([one]) => one === key) < index);
  if (twice) throw new Refusal("wrong", `${twice[0]} is given twice`);
  return Object.fromEntries(read);
}

function sayList({ json = false }): void {
  const rows = figures.map(({ name, about, inputs }) => ({
    name,
    about,
    inputs: Object.entries(inputs).map(([input, { takes, about: meaning, fallback }]) => ({
      name: input,
      about: meaning,
      takes,
      ...(fallback === undefined ? {} : { fallback }),
    })),
  }));
  if (json) return sayJson(rows);
  const width = Math.max(...rows.map(({ name }) => name.length));
  const lines = rows.map(({ name, about }) => `${name.padEnd(width)}  ${about}`);
  process.stdout.write(`${lines.join("\n")}\n`);
}

function say(computed: Computed, { json = false }): void {
  if (json) return sayJson(computed);
  const { figure, about, results, inputs, formula, source, range, caution } = computed;
  const table = (rows: readonly (readonly [string, string])[]): string[] => {
    const width = Math.max(...rows.map(([key]) => key.length));
    return rows.map(([key, value]) => `  ${key.padEnd(width)}  ${value}`);
  };
  const lines = [
    `${figure}: ${about}`,
    ...table(results.map((result) => [result.name, wordsOf(result)])),
    "from",
    ...table(
      inputs.map(({ name, value, assumed }) => [name, assumed ? `${value} (assumed)` : value]),
    ),
    `Formula: ${formula}`,
    `Source: ${source}`,
    `Holds for: ${range}`,
    ...(computed.notes ?? []).map((note) => `Note: ${note}`),
    ...(caution === undefined ? [] : [`Caution: ${caution}`]),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
}
