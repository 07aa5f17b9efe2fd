/** The options of a car, by name. */
export type Fitted = Readonly<Record<string, string>>;

/** Whether a condition holds for these options; no condition always holds. */
export function matches(
  when: Readonly<Record<string, string | string[]>> | undefined,
  fitted: Fitted,
): boolean {
  return Object.entries(when ?? {}).every(([option, wanted]) =>
    [wanted].flat().includes(fitted[option] ?? ""),
  );
}
