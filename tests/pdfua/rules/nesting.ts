import { type Check, type Rules, each } from "./rule.js";

/** Clause 7.2 for tables, lists and contents: what may stand in what. */
export const nestingRules: Rules = {
  "7.2-3": holdsOnly("Table", "TR THead TBody TFoot Caption"),
  "7.2-4": standsIn("TR", "Table THead TBody TFoot"),
  "7.2-5": standsIn("THead", "Table"),
  "7.2-6": standsIn("TBody", "Table"),
  "7.2-7": standsIn("TFoot", "Table"),
  "7.2-8": standsIn("TH", "TR"),
  "7.2-9": standsIn("TD", "TR"),
  "7.2-10": holdsOnly("TR", "TH TD"),
  "7.2-11": holdsAtMost("Table", "THead"),
  "7.2-12": holdsAtMost("Table", "TFoot"),
  "7.2-13": withBody("TFoot"),
  "7.2-14": withBody("THead"),
  "7.2-16": each("Table", ({ kids }) =>
    kids.slice(1, -1).some(({ type }) => type === "Caption")
      ? "a caption in the middle"
      : undefined,
  ),
  "7.2-17": standsIn("LI", "L"),
  "7.2-18": standsIn("LBody", "LI"),
  "7.2-19": holdsOnly("L", "L LI Caption"),
  "7.2-20": holdsOnly("LI", "Lbl LBody"),
  "7.2-26": standsIn("TOCI", "TOC"),
  "7.2-27": holdsOnly("TOC", "TOC TOCI Caption"),
  "7.2-28": captionFirst("TOC"),
  "7.2-36": holdsOnly("THead", "TR"),
  "7.2-37": holdsOnly("TBody", "TR"),
  "7.2-38": holdsOnly("TFoot", "TR"),
  "7.2-39": holdsAtMost("Table", "Caption"),
  "7.2-40": captionFirst("L"),
};

function holdsOnly(type: string, allowed: string): Check {
  const good = new Set(allowed.split(" "));
  return each(type, ({ kids }) => {
    const bad = kids.find((kid) => !good.has(kid.type));
    return bad && `holds ${bad.type}`;
  });
}

function standsIn(type: string, allowed: string): Check {
  const good = new Set(allowed.split(" "));
  return each(type, ({ parent }) =>
    good.has(parent?.type ?? "") ? undefined : `stands in ${parent?.type ?? "nothing"}`,
  );
}

function holdsAtMost(type: string, once: string): Check {
  return each(type, ({ kids }) =>
    kids.filter((kid) => kid.type === once).length > 1 ? `more than one ${once}` : undefined,
  );
}

function withBody(part: string): Check {
  return each("Table", ({ kids }) => {
    const types = kids.map(({ type }) => type);
    return types.includes(part) && !types.includes("TBody") ? `${part} without TBody` : undefined;
  });
}

function captionFirst(type: string): Check {
  return each(type, ({ kids }) =>
    kids.slice(1).some((kid) => kid.type === "Caption") ? "a caption that is not first" : undefined,
  );
}
