import fc from "fast-check";
import { parse } from "../../src/read/parse.js";
import type { Opened } from "../../src/index.js";
import { validate } from "../../src/validate/validate.js";
import { opened, small } from "../plans.js";

const { words } = opened(small);
const options = ["red", "green", "blue"] as const;

/** One part of a made-up range and the recipe that takes it off. */
export interface Item {
  /** On both sides, or once. */
  sided: boolean;
  /** The parts it needs off, by number, each always or with one option only. */
  needs: { part: number; when?: string }[];
  /** Whether two recipes share the part, one for the first option and one for the rest. */
  split: boolean;
}

/** Random parts, each of which needs only parts with a lower number: the needs never go round. */
export const items: fc.Arbitrary<Item[]> = fc
  .array(
    fc.record({
      sided: fc.boolean(),
      split: fc.boolean(),
      needs: fc.array(fc.tuple(fc.nat(), fc.constantFrom(undefined, ...options)), { maxLength: 4 }),
    }),
    { minLength: 2, maxLength: 12 },
  )
  .map((list) =>
    list.map(({ sided, split, needs }, i) => {
      const parts = new Map(i === 0 ? [] : needs.map(([dice, when]) => [dice % i, when]));
      return {
        sided,
        split,
        needs: [...parts].map(([part, when]) => (when === undefined ? { part } : { part, when })),
      };
    }),
  );

/** The option that a car of the made-up range has. */
export const colour = fc.constantFrom(...options);

/** The made-up library, written as files and read as files are. */
export function libraryOf(list: readonly Item[]): Opened {
  const files = [rangeText(list), ...list.flatMap(recipeTexts)];
  const sources = files.flatMap((text, i) => {
    const file = i === 0 ? "made/range.yaml" : `made/strip/${i}.yaml`;
    return parse(file, JSON.stringify(text)).value ?? [];
  });
  const { value, diagnostics } = validate(sources);
  if (!value || diagnostics.length > 0) throw new Error(diagnostics[0]?.message ?? "no library");
  return { library: value, sources, words };
}

function rangeText(list: readonly Item[]): object {
  const parts = list.map(({ sided }, i) => [
    `p${i}`,
    {
      name: `part ${i}`,
      zone: "cabin",
      ...(sided ? { at: ["left", "right"] } : {}),
      "held-by": { [`s${i}`]: { kind: "screw", count: 1, where: "in the middle" } },
    },
  ]);
  const colours = Object.fromEntries(options.map((one) => [one, one]));
  return {
    range: "made",
    name: "Made",
    about: "made up by a test",
    invented: true,
    options: { colour: { name: "colour", values: colours, default: "red" } },
    zones: { cabin: "cabin" },
    kinds: { screw: { name: "screw", plural: "screws" } },
    parts: Object.fromEntries(parts),
  };
}

function recipeTexts({ needs, split }: Item, i: number): object[] {
  const body = {
    name: `Part ${i}`,
    strips: `p${i}`,
    "needs-off": needs.map(({ part, when }) =>
      when === undefined ? `p${part}` : { part: `p${part}`, when: { colour: when } },
    ),
    strip: [{ undo: `s${i}` }, { "lift-out": `p${i}` }],
    refit: "reversed",
  };
  if (!split) return [{ recipe: `r${i}`, ...body }];
  const [first, ...rest] = options;
  return [
    { recipe: `r${i}`, when: { colour: first }, ...body },
    { recipe: `r${i}-other`, when: { colour: rest }, ...body },
  ];
}
