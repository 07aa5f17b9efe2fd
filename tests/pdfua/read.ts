import { codesOf, namedFonts } from "./fonts.js";
import type { Subject } from "./rules/rule.js";
import type { Element } from "./structure.js";

/** What a screen reader would read under an element: its text in the order of the tags. */
export type Reader = (element: Element) => string;

/** Prepares the reading of a file: the text of each mark, and from it that of each element. */
export function readerOf(subject: Subject): Reader {
  const marks = textOfMarks(subject);
  const read: Reader = (element) => {
    const own = element.content.map((one) =>
      "mcid" in one ? (marks.get(`${one.page} ${one.mcid}`) ?? "") : "",
    );
    return [...own, ...element.kids.map(read)].join(" ").replaceAll(/\s+/g, " ").trim();
  };
  return read;
}

function textOfMarks({ pdf, contents, fonts }: Subject): Map<string, string> {
  const marks = new Map<string, string>();
  for (const { page, operations } of contents) {
    const named = namedFonts(pdf, page);
    let font = fonts.get("");
    for (const operation of operations) {
      if (operation.operator === "Tf") font = fonts.get(String(named[String(operation.values[0])]));
      const mcid = operation.marks.findLast((mark) => mark.mcid !== undefined)?.mcid;
      if (mcid === undefined) continue;
      const key = `${page.ref} ${mcid}`;
      const shown = codesOf(operation).map((code) => font?.unicode.get(code) ?? "");
      marks.set(key, (marks.get(key) ?? "") + shown.join(""));
    }
  }
  return marks;
}
