export { open, ownLibrary, plan, type Ask, type Opened, type PlanFile } from "./pipeline.js";
