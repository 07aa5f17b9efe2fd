import { isPainting, markOf, type Mark, type Painted } from "../content.js";
import { dict, text } from "../objects.js";
import { codesOf } from "../fonts.js";
import { hasLanguage } from "./file.js";
import { type Check, type Rules, type Subject } from "./rule.js";

/** Clause 7.1 and 7.2 for what is painted: tagged or decoration, never both, and in a known language. */
export const contentRules: Rules = {
  "7.1-1": onMarks(({ marks }, mark) =>
    mark.tag === "Artifact" && marks.some(isTagged) ? "decoration within tagged content" : "",
  ),
  "7.1-2": onMarks(({ marks }, mark) =>
    isTagged(mark) && marks.some(isArtifact) ? "tagged content within decoration" : "",
  ),
  "7.1-3": (subject) => {
    const known = knownContent(subject);
    return subject.contents.flatMap(({ page, operations }) =>
      operations
        .filter(isPainting)
        .filter(
          ({ marks }) => !marks.some((mark) => isArtifact(mark) || isKnown(known, page.ref, mark)),
        )
        .map(({ operator }) => `page ${page.ref}: ${operator} is neither tagged nor decoration`),
    );
  },
  "7.2-30": onSpans("/ActualText"),
  "7.2-31": onSpans("/Alt"),
  "7.2-32": onSpans("/E"),
  "7.2-34": (subject) => {
    if (hasLanguage(subject)) return [];
    const spoken = new Set(
      subject.elements
        .filter((one) => text(subject.pdf, one.dict["/Lang"]) !== undefined)
        .flatMap(({ content }) => content.flatMap((one) => ("mcid" in one ? [keyOf(one)] : []))),
    );
    return subject.contents.flatMap(({ page, operations }) =>
      operations
        .filter((one) => codesOf(one).length > 0 && !one.marks.some(isArtifact))
        .filter(
          ({ marks }) =>
            !marks.some(({ mcid = -1 }) => spoken.has(keyOf({ page: page.ref, mcid }))),
        )
        .map(() => `page ${page.ref}: text in no known language`),
    );
  },
};

function keyOf({ page, mcid }: { page: string; mcid: number }): string {
  return `${page} ${mcid}`;
}

/** The marked content that the structure tree holds. */
export function knownContent({ elements }: Subject): Set<string> {
  return new Set(
    elements.flatMap(({ content }) =>
      content.flatMap((one) => ("mcid" in one ? [keyOf(one)] : [])),
    ),
  );
}

function isKnown(known: ReadonlySet<string>, page: string, { mcid }: Mark): boolean {
  return mcid !== undefined && known.has(keyOf({ page, mcid }));
}

function isTagged({ mcid }: Mark): boolean {
  return mcid !== undefined;
}

function isArtifact({ tag }: Mark): boolean {
  return tag === "Artifact";
}

function onMarks(bad: (begun: Painted, mark: Mark) => string): Check {
  return ({ pdf, contents }) =>
    contents.flatMap(({ page, begun }) =>
      begun
        .map((one) => bad(one, markOf(pdf, page, one.values)))
        .filter((finding) => finding !== "")
        .map((finding) => `page ${page.ref}: ${finding}`),
    );
}

function onSpans(entry: string): Check {
  return (subject) => {
    if (hasLanguage(subject)) return [];
    return onMarks((_, { tag, properties }) => {
      const given = tag === "Span" && properties[entry] !== undefined;
      return given && dict(subject.pdf, properties)["/Lang"] === undefined
        ? `${entry} in no known language`
        : "";
    })(subject);
  };
}
