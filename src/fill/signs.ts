import type { Message, Step } from "../model/plan.js";

/** A safety sign by its ISO 7010 number: when the job asks for it, and whether its entry was read or is from memory. */
export interface Sign {
  code: string;
  /** Something to wear. */
  worn?: boolean;
  /** Words of a message that call for it. */
  said?: RegExp;
  /** Work that calls for it, whether a message says so or not. */
  verbs?: readonly string[];
  /** Tools that call for it. */
  tools?: readonly string[];
  read?: boolean;
}

const dusty = ["dress", "drill", "drill-out", "separate"];
const wet = ["prime", "paint", "coat", "seal", "wax"];
const welder = ["welder"];

/** The signs that fit this work; their meanings stand in the words file under `sign-` and the number. */
export const signs: readonly Sign[] = [
  { code: "M003", worn: true, verbs: dusty },
  { code: "M004", worn: true, said: /eye protection/, verbs: [...dusty, "pilot", "scrape"] },
  { code: "M008", worn: true, said: /heavy/i, verbs: ["cut-out", "fit-new"] },
  {
    code: "M009",
    worn: true,
    said: /gloves/,
    verbs: [...dusty, ...wet, "cut-out"],
    tools: welder,
    read: true,
  },
  { code: "M010", worn: true, said: /closed clothes/, tools: welder },
  { code: "M011", said: /zinc|sealer/i, verbs: wet },
  { code: "M013", worn: true, verbs: ["dress"] },
  { code: "M014", worn: true, said: /under a car/ },
  { code: "M017", worn: true, said: /mask for metal fume/, verbs: wet, tools: welder, read: true },
  { code: "M019", worn: true, said: /welding mask/, tools: welder, read: true },
  { code: "M021", verbs: ["isolate"], read: true },
  { code: "M027", verbs: ["dress"], read: true },
  { code: "M046", tools: welder, read: true },
  { code: "W015", said: /car that falls/i },
  { code: "W017", said: /\bhot (metal|lighter)/i, tools: welder },
  { code: "W018", said: /moved by a motor/ },
  { code: "W021", said: /vapour|battery gas/i, verbs: wet },
  { code: "W022", said: /sharp edges/i, verbs: ["separate", "cut-out"] },
  { code: "W023", said: /acid/ },
  { code: "W024", said: /off the runners/ },
  { code: "W027", said: /arc light/i, tools: welder, read: true },
  { code: "W029", tools: welder, read: true },
  { code: "P002", said: /vapour|battery gas/i, verbs: wet },
  { code: "P003", said: /flames|sparks/, verbs: wet },
];

/** The steps at which a sign is called for. */
export function stepsOfSign(sign: Sign, steps: readonly Step[]): Step[] {
  const { said, verbs = [], tools = [] } = sign;
  const says = ({ hazard, avoid }: Message): boolean => said?.test(`${hazard}. ${avoid}`) ?? false;
  return steps.filter(
    (step) =>
      verbs.includes(step.verb) ||
      step.tools.some((tool) => tools.includes(tool)) ||
      step.messages.some(says),
  );
}
