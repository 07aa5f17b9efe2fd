export {
  open,
  ownLibrary,
  plan,
  planFrom,
  type Ask,
  type Given,
  type Opened,
  type PlanFile,
} from "./pipeline.js";
