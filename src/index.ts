export {
  print,
  type PrintOptions,
  type Printed,
  open,
  ownLibrary,
  plan,
  planFrom,
  type Ask,
  type Given,
  type Opened,
  type PlanFile,
} from "./pipeline.js";
