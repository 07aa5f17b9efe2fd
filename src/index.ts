export type { Ask, Given, Opened, PlanFile } from "./model/plan-file.js";
export type { Paper, PrintOptions, Printed } from "./model/printing.js";
export { open, ownLibrary, plan, planFrom, print } from "./pipeline.js";
