declare module "linebreak" {
  /** Finds the places at which a text may be broken, by the Unicode line breaking algorithm. */
  export default class LineBreaker {
    constructor(text: string);
    nextBreak(): { position: number; required: boolean } | null;
  }
}
