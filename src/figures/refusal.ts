/** Why a figure is not given: `wrong` is a request that cannot be understood, `refused` one that has no sound answer. */
export type RefusalKind = "wrong" | "refused";

/** A refusal of a figure: one message with the reason, and hints with what is allowed. */
export class Refusal extends Error {
  readonly kind: RefusalKind;
  readonly hints: readonly string[];

  constructor(kind: RefusalKind, message: string, hints: readonly string[] = []) {
    super(message);
    this.kind = kind;
    this.hints = hints;
  }
}
