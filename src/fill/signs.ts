import type { Step } from "../model/plan.js";

/**
 * The safety signs of ISO 7010 that a message may call for, by number; their meanings stand in the words file under
 * `sign-` and the number. `read` are those whose number was held against a published list of the sign files.
 */
export const signs: readonly { code: string; read?: true }[] = [
  { code: "M003", read: true },
  { code: "M004", read: true },
  { code: "M008", read: true },
  { code: "M009", read: true },
  { code: "M010", read: true },
  { code: "M011" },
  { code: "M013", read: true },
  { code: "M014", read: true },
  { code: "M017", read: true },
  { code: "M019", read: true },
  { code: "M021", read: true },
  { code: "M027", read: true },
  { code: "M046", read: true },
  { code: "W012", read: true },
  { code: "W015" },
  { code: "W017", read: true },
  { code: "W018" },
  { code: "W021" },
  { code: "W022" },
  { code: "W023" },
  { code: "W024" },
  { code: "W027", read: true },
  { code: "W029", read: true },
  { code: "W041", read: true },
  { code: "P002" },
  { code: "P003", read: true },
  { code: "P028", read: true },
];

/** The steps whose messages call for a sign. */
export function stepsOfSign(code: string, steps: readonly Step[]): Step[] {
  return steps.filter(({ messages }) => messages.some((one) => one.signs?.includes(code)));
}
