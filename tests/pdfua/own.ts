import type { Rules, Subject } from "./rules/rule.js";
import { unless } from "./rules/rule.js";
import { type Value, catalog, dict, list, pagesOf, text } from "./objects.js";
import { type Element, attributesOf, rootOf } from "./structure.js";

/** Rules beyond the machine-checkable ones: what we promise of our own sheets. */
export const ownRules: Rules = {
  "marks are balanced on every page": ({ contents }) =>
    contents.filter(({ unbalanced }) => unbalanced).map(({ page }) => `page ${page.ref}`),
  "the parent tree leads from each mark back to its element": (subject) => {
    const found: string[] = [];
    const tree = parentTree(subject);
    for (const { content, ref } of subject.elements)
      for (const one of content) {
        if ("object" in one)
          found.push(...unless(objectLeadsTo(subject, tree, one.object, ref), `${ref}: field`));
        else {
          const key = dict(subject.pdf, one.page)["/StructParents"];
          const back = list(subject.pdf, tree.get(Number(key)))[one.mcid];
          found.push(...unless(back === ref, `${ref}: mark ${one.mcid} of page ${one.page}`));
        }
      }
    return found;
  },
  "each mark of a page hangs on one element": ({ elements }) => {
    const seen = new Set<string>();
    return elements.flatMap(({ content, ref }) =>
      content.flatMap((one) => {
        const key = JSON.stringify(one);
        const twice = seen.has(key);
        seen.add(key);
        return unless(!twice, `${ref}: ${key}`);
      }),
    );
  },
  "each page has a number of its own in the parent tree": ({ pdf }) => {
    const keys = pagesOf(pdf).map((page) => page.dict["/StructParents"]);
    return keys
      .filter((key, i) => typeof key !== "number" || keys.indexOf(key) !== i)
      .map((key) => `number ${String(key)}`);
  },
  "fields are reached in the order of the tags": ({ pdf }) =>
    pagesOf(pdf).flatMap((page) => unless(page.dict["/Tabs"] === "/S", `page ${page.ref}`)),
  "a printed field says what it is (Matterhorn 24-001)": ({ pdf, elements }) =>
    printedFields(elements).flatMap((one) => {
      const held = attributesOf(pdf, one, "/PrintField");
      const box = held["/Role"] === "/cb" && held["/checked"] === "/off";
      const named = text(pdf, held["/Desc"]) === text(pdf, one.dict["/Alt"]);
      return unless((box || held["/Role"] === "/tv") && named, `${one.ref}`);
    }),
  "every field has a spoken name": ({ pdf, elements }) =>
    forms(elements).flatMap(({ dict: one, ref }) =>
      unless((text(pdf, one["/Alt"]) ?? "").trim() !== "", ref),
    ),
  "no two fields of a sheet have the same name": ({ pdf, elements }) => {
    const seen = new Set<string>();
    return forms(elements).flatMap((one) => {
      const name = `${sheetOf(one)} ${text(pdf, one.dict["/Alt"])}`;
      const twice = seen.has(name);
      seen.add(name);
      return unless(!twice, name);
    });
  },
  "no alternative is empty": ({ pdf, elements }) =>
    elements
      .filter(({ dict: one }) => one["/Alt"] !== undefined && !text(pdf, one["/Alt"])?.trim())
      .map(({ ref }) => ref),
  "every bookmark has a title and leads to a page": ({ pdf }) => {
    const pages = new Set(pagesOf(pdf).map(({ ref }) => ref));
    const marks = bookmarksOf(pdf, catalog(pdf)["/Outlines"]);
    const bad = marks.filter(({ title, page }) => title.trim() === "" || !pages.has(page));
    return [...unless(marks.length > 0, "no bookmarks"), ...bad.map(({ title }) => `'${title}'`)];
  },
};

function forms(elements: readonly Element[]): Element[] {
  return elements.filter(({ type }) => type === "Form");
}

function printedFields(elements: readonly Element[]): Element[] {
  return forms(elements).filter(({ content }) => !content.some((one) => "object" in one));
}

/** The part of a pack in which an element stands. */
function sheetOf(element: Element): string {
  if (element.type === "Part" || !element.parent) return element.ref;
  return sheetOf(element.parent);
}

function parentTree({ pdf }: Subject): Map<number, Value> {
  const numbers = list(pdf, dict(pdf, rootOf(pdf)["/ParentTree"])["/Nums"]);
  return new Map(
    numbers.flatMap((key, i) => (i % 2 === 0 ? [[Number(key), numbers[i + 1] ?? null]] : [])),
  );
}

function objectLeadsTo(
  { pdf }: Subject,
  tree: Map<number, Value>,
  object: string,
  ref: string,
): boolean {
  return tree.get(Number(dict(pdf, object)["/StructParent"])) === ref;
}

/** The titles and target pages of all bookmarks, in order. */
export function bookmarksOf(
  pdf: Subject["pdf"],
  above: Value | undefined,
): { title: string; page: string }[] {
  const found: { title: string; page: string }[] = [];
  for (let at = dict(pdf, above)["/First"]; at !== undefined; at = dict(pdf, at)["/Next"]) {
    const { "/Title": title, "/Dest": target } = dict(pdf, at);
    found.push({ title: text(pdf, title) ?? "", page: String(list(pdf, target)[0]) });
    found.push(...bookmarksOf(pdf, at));
  }
  return found;
}
