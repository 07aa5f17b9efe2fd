import { choice, otherwise } from "./input.js";
import { valueIn } from "./quantity.js";
import { type Answer, figure } from "./rule.js";
import { sheet, weldCaution } from "./sheet.js";

/** Each rule for the hole, by sheet in mm. */
const rules = { body, structural, "sheet-code": sheetCode } as const;

function body(t: number): Answer {
  return {
    results: [{ name: "hole", ...(t > 1 ? { value: 8 } : { value: 6, to: 8 }), unit: "mm" }],
    notes: [
      "Common body practice. Smaller than any structural code allows: never call it compliant with one.",
    ],
  };
}

function structural(t: number): Answer {
  const least = 2 * Math.ceil((t + 8) / 2 - 1e-9);
  const sixteenths = Math.ceil((t / 25.4) * 16 + 5 - 1e-9);
  const inches = (sixteenths + (sixteenths % 2 === 0 ? 1 : 0)) / 16;
  return {
    results: [
      { name: "hole", value: least, to: least + 3, unit: "mm" },
      { name: "least hole, inch rule", value: inches, unit: "in" },
    ],
    notes: [
      "Written for thick structural steel; on body sheet the hole comes out larger than body practice.",
    ],
  };
}

function sheetCode(t: number): Answer {
  const least = 0.375 * 25.4;
  const visible = Math.max((least + 1.5 * 2 * t) / 0.7, least / 0.55);
  return {
    results: [
      { name: "least effective diameter", value: least, unit: "mm" },
      { name: "visible weld for it", value: visible, unit: "mm" },
    ],
    notes: [
      "For an arc spot through two equal sheets.",
      ...(t < 0.7 ? ["Below 0.7 mm the code asks for a weld washer."] : []),
    ],
  };
}

/** Plug-weld hole by sheet, mm: common body practice, structural code or sheet-steel code, told apart. */
export const plugWeldHole = figure({
  name: "plug-weld-hole",
  about: "the hole for a plug weld, by body practice or by a code",
  inputs: {
    sheet,
    rule: otherwise(choice("whose rule", Object.keys(rules) as (keyof typeof rules)[]), "body"),
  },
  formula:
    "body: 8 mm, or 6 to 8 mm on sheet up to 1 mm; structural: t + 8 mm up to even mm (t + 5/16 in up to odd 1/16 in), at most 3 mm more (2.25·t is less on sheet); sheet-code: de = 0.7·d − 1.5·Σt ≤ 0.55·d, at least 3/8 in",
  source:
    "body: common practice, two car makers' guidance as quoted by an inter-industry training body; structural: AISC 360 J2.3b, rounding from memory; sheet-code: AWS D1.3:2008 figure 2.6 and AISI S100 E2.2, the 0.55 from memory.",
  range: "0.5 to 3.2 mm mild steel; refuses other thicknesses.",
  caution: weldCaution,
  compute: (given) => rules[given.rule](valueIn(given.sheet, "mm")),
});
