// Writes schemas/recipe.schema.json: the step's verb keys come from the table of verbs.
import { writeFileSync } from "node:fs";
const { verbs } = await import("../../dist/model/verbs.js");
const shared = (name) => ({ $ref: `shared.schema.json#/$defs/${name}` });
const list = (items) => ({ type: "array", items });
const object = (properties, required = []) => ({
  type: "object",
  additionalProperties: false,
  required,
  properties,
});
const steps = list({ $ref: "#/$defs/step" });
const minutes = {
  type: "array",
  items: { type: "number", exclusiveMinimum: 0 },
  minItems: 3,
  maxItems: 3,
  description: "Hands-on minutes: low, likely, high.",
};
const target = { anyOf: [shared("name"), { type: "string", pattern: "^[a-z0-9-]+@[a-z]+$" }] };
const targets = { anyOf: [target, { ...list(target), minItems: 1 }] };
const need = shared("need");
const off = {
  anyOf: [target, object({ part: target, at: shared("position"), when: shared("when") }, ["part"])],
};
const stepKeys = {
  id: shared("name"),
  say: { ...shared("words"), description: "The sentence for this direction." },
  back: { ...shared("words"), description: "The sentence for the derived way back." },
  count: { type: "integer", minimum: 1 },
  of: { ...shared("words"), description: "What a count of work counts: welds, holes." },
  positions: {
    ...list(shared("words")),
    minItems: 1,
    description: "How the sheets of the counted welds lie; each position has as many.",
  },
  stage: { ...shared("words"), description: "The heading under which the work goes on from here." },
  at: shared("position"),
  to: { ...shared("words"), description: "The setting that a move leaves." },
  when: shared("when"),
  needs: list(need),
  round: {
    type: "integer",
    minimum: 2,
    description: "The second time the same work is done on the same object.",
  },
  people: { type: "integer", minimum: 1, maximum: 4 },
  tools: list(shared("name")),
  uses: list(
    object(
      {
        consumable: shared("name"),
        amount: { anyOf: [{ type: "number", exclusiveMinimum: 0 }, shared("computed")] },
        note: shared("words"),
      },
      ["consumable"],
    ),
  ),
  warn: list({ anyOf: [shared("name"), shared("message")] }),
  note: shared("words"),
  figures: { type: "object", additionalProperties: shared("figure") },
  time: minutes,
  wait: { ...shared("figure"), description: "How long to wait after this step." },
  role: shared("name"),
  accept: shared("words"),
  reason: shared("words"),
  "looks-at": list(target),
  checks: { ...list(shared("words")), minItems: 1, maxItems: 9 },
  night: { type: "boolean", description: "The work may be left here overnight." },
  again: {
    ...list(shared("name")),
    minItems: 1,
    description: "Steps of this recipe, by their id, that are done again before work on a new day.",
  },
  choices: { ...list(shared("words")), minItems: 2 },
  readings: list(object({ name: shared("words"), figure: shared("figure") }, ["name"])),
  facts: {
    ...list(
      object({ field: shared("words"), value: shared("words"), figure: shared("figure") }, [
        "field",
      ]),
    ),
    description: "Weld notes and the like, printed as a small table.",
  },
  critical: shared("words"),
};
const schema = {
  $schema: "https://json-schema.org/draft/2020-12/schema",
  $id: "recipe.schema.json",
  title: "RecipeFile",
  description: "How one part comes off and goes back, or one piece of work on the stripped car.",
  ...object(
    {
      recipe: shared("name"),
      name: shared("words"),
      strips: { ...shared("name"), description: "The part that comes off." },
      eases: {
        ...shared("name"),
        description: "The part that is only eased, folded back or tied aside.",
      },
      repairs: { ...shared("name"), description: "The zone in which the repair is done." },
      "every-job": { const: true, description: "Part of every job." },
      about: shared("words"),
      when: shared("when"),
      "needs-off": list(off),
      "needs-eased": list(off),
      "needs-isolated": list(shared("name")),
      time: minutes,
      worth: object({ hours: minutes, skill: shared("words"), risk: shared("words") }),
      permits: list(object({ who: shared("words"), what: shared("words") }, ["who", "what"])),
      people: { type: "integer", minimum: 1 },
      tools: list(shared("name")),
      spares: list(
        object(
          { name: shared("words"), count: { type: "integer", minimum: 1 }, note: shared("words") },
          ["name", "count"],
        ),
      ),
      renew: {
        ...list(object({ name: shared("words"), why: shared("words") }, ["name", "why"])),
        description: "Worth renewing while it is open.",
      },
      waste: list(shared("words")),
      terms: {
        ...list(object({ term: shared("words"), means: shared("words") }, ["term", "means"])),
        description: "Words of this job that not everybody knows, for the key of the checklist.",
      },
      outline: {
        ...object(
          Object.fromEntries(
            ["front", "rear", "left", "right", "middle"].map((side) => [side, shared("words")]),
          ),
          ["front", "rear", "left", "right"],
        ),
        description: "The sides of the new panel seen from above, for the map of the welds.",
      },
      safety: list({ anyOf: [shared("name"), shared("message")] }),
      things: {
        type: "object",
        additionalProperties: shared("words"),
        description: "Objects of this recipe's own that its steps act on.",
      },
      prepare: steps,
      strip: steps,
      refit: { anyOf: [{ const: "reversed" }, steps] },
      check: { ...steps, description: "Done at the part as soon as it is back." },
      record: steps,
      work: steps,
      close: steps,
    },
    ["recipe", "name"],
  ),
  $defs: {
    step: {
      ...object({
        ...Object.fromEntries(Object.keys(verbs).map((v) => [v, targets])),
        ...stepKeys,
      }),
      dependentRequired: { again: ["checks"], positions: ["count", "of"] },
    },
  },
};
writeFileSync("schemas/recipe.schema.json", JSON.stringify(schema, null, 2) + "\n");
