/** Paper sizes that a pack can be laid out for. */
export type Paper = "a4" | "letter";

/** How a pack is to be printed. */
export interface PrintOptions {
  paper: Paper;
  large: boolean;
  /** Show figures as an inch shop reads them. */
  units?: "metric" | "inch";
  /** Print although the plan does not prove, with DRAFT across every page. */
  draft: boolean;
  html: boolean;
  /** Boxes and lines become fields that can be filled in on a screen. */
  fillable?: boolean;
  /** Which sheets, by name; all that apply where none is named. */
  sheets?: readonly string[];
}

/** A printed sheet, ready to be written. */
export interface Printed {
  name: string;
  bytes: Buffer;
}
