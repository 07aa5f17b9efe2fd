/** The tools of the own library that a shop has calibrated, by name: they carry a number and a date. */
export const gauges = [
  "calliper",
  "contact thermometer",
  "depth gauge",
  "feeler blade",
  "gauge bar across both sills",
  "light meter",
  "meter for fuel vapour",
  "milliohm meter",
  "sheet thickness gauge",
  "small torque wrench in calibration",
  "steel tape",
  "torque wrench in calibration",
  "wedge gauge for door gaps",
];
