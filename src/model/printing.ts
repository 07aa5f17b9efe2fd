/** Paper sizes that a pack can be laid out for. */
export type Paper = "a4" | "letter";

/** Paper sizes in millimetres: A4 by ISO 216, Letter by ASME Y14.1. */
export const papers: Readonly<Record<Paper, { width: number; height: number }>> = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
};

/** A sheet of labels by its dimensions, in millimetres. */
export interface LabelPaper {
  columns: number;
  rows: number;
  /** Of one label. */
  width: number;
  height: number;
  /** From the paper's edge to the first label. */
  left: number;
  top: number;
  /** From one label's edge to the next one's. */
  across: number;
  down: number;
  /** The label at which printing starts, from 1. */
  start: number;
}

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
  /** Bag labels go onto a sheet of labels; else onto plain paper with lines to cut along. */
  labels?: LabelPaper;
  /** Which sheets, by name; all that apply where none is named. */
  sheets?: readonly string[];
}

/** A printed sheet, ready to be written. */
export interface Printed {
  name: string;
  bytes: Buffer;
}
