import type { Step } from "../../src/model/plan.js";

/** The law that a change of places must break, by why the two steps depend on one another. */
export const swapCodes: Record<string, readonly string[]> = {
  "holder and host": ["access"],
  "weld and panel": ["access", "work"],
  "cover and covered": ["access", "cover"],
  "need off": ["access"],
  "supply and its user": ["joins"],
  "plug and its test": ["joins"],
  "trial fit and seal": ["trial-fit"],
  "hold and what stands behind it": ["holds"],
  chain: ["work"],
  "refit and check": ["work"],
  "written need": ["access", "joins", "work"],
  // Taken off twice, put on before it came off, worked on in the wrong order: which law depends on the two verbs.
  "same object": ["access", "cover", "return", "work", "trial-fit", "joins", "closing", "count"],
};

const effects: [readonly string[], readonly string[]][] = [
  // A fixing left in still holds its part, and none is loose to go back.
  [
    ["undo", "unclip", "pull-out", "drill-out"],
    ["access", "count"],
  ],
  [["do-up", "clip-in", "press-in", "rivet"], ["count"]],
  [["unplug", "unhook", "plug-in", "hook-on", "isolate", "restore", "drain", "fill"], ["joins"]],
  // A part left in covers what lies under it; one left out is missed at the end.
  [
    ["lift-out", "cut-out"],
    ["access", "return"],
  ],
  [["put-in", "fit-new"], ["return"]],
  [["fold-back", "lay-back", "ease", "settle", "tie-aside", "free"], ["return"]],
  [["try-in", "take-out"], ["trial-fit"]],
  [["open", "shut", "raise", "lower", "brace", "unbrace", "shield", "unshield"], ["closing"]],
  [["set-out", "clear-away", "sweep", "sign"], ["closing"]],
  [["move"], ["access", "joins", "work"]],
  [["hold", "witness", "decide"], ["holds"]],
];

/**
 * The law that leaving a step out must break; any other work that a recipe asks for is law 15. On the way in
 * such work is asked for by the need of the step that follows it, which is law 1.
 */
export function dropCodes({ verb, phase }: Step): readonly string[] {
  const work = phase === "strip" ? ["access"] : ["work"];
  return effects.find(([names]) => names.includes(verb))?.[1] ?? work;
}
