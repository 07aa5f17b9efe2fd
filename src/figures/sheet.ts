import { quantity } from "./input.js";

/** The thickness of a body sheet, as an input: from the thinnest skin to the thickest reinforcement of a car body (our own bounds, common practice). */
export const sheet = quantity("thickness of the thinner sheet", "length", [0.5, 3.2, "mm"]);

/** The diameter of a plug-weld hole, as an input. */
export const hole = quantity("diameter of the plug-weld hole", "length", [4, 16, "mm"]);

/** Said wherever a weld strength or size is computed. */
export const weldCaution =
  "The car maker's repair manual always wins: its count, place and size of welds. A body-practice plug weld meets no structural code.";
