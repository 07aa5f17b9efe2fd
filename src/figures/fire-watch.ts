import { choice, otherwise } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";

/** Minutes of watch after the last spark, and clear radius in ft, by code. */
const codes = {
  osha: [30, 35],
  "osha-shipyard": [30, 35],
  "nfpa-51b-2014": [30, 35],
  "nfpa-51b-2019": [60, 35],
  none: [60, 35],
} as const;

/** How long somebody watches for fire after hot work, and how far around it. */
export const fireWatch = figure({
  name: "fire-watch",
  about: "how long to watch for fire after hot work, and how far around",
  inputs: {
    code: otherwise(
      choice("the code that the shop works under", Object.keys(codes) as (keyof typeof codes)[]),
      "none",
    ),
  },
  formula:
    "table by code; 60 min where none is chosen; 1 ft = 0.3048 m, rounded up to whole metres",
  source:
    "osha: 29 CFR 1910.252(a)(2)(iii), radius (a)(2)(vii); osha-shipyard: 29 CFR 1915.504(b) and (c); nfpa-51b-2014 and nfpa-51b-2019: NFPA 51B of that edition (2019: 5.6.3, further monitoring up to 3 h where the permit says so); none: the longest of these.",
  range: "The codes listed; refuses others. An insurer or the permit may ask for more.",
  caution:
    "The watch looks into cavities and behind the panel: smouldering sound deadening shows late.",
  compute: ({ code }) => {
    const [minutes, feet] = codes[code];
    return {
      results: [
        { name: "fire watch", value: minutes, unit: "min" },
        { name: "clear radius", value: feet, unit: "ft" },
        {
          name: "clear radius in m",
          value: Math.ceil(valueIn({ value: feet, unit: "ft" }, "m")),
          unit: "m",
        },
      ],
      notes:
        code === "nfpa-51b-2019" ? ["The permit may ask for up to 3 h of monitoring more."] : [],
    };
  },
});
