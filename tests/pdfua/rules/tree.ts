import { type Dict, dict, get, text } from "../objects.js";
import { type Element, attributesOf, mapped, nameOf, rootOf, standardTypes } from "../structure.js";
import { hasLanguage } from "./file.js";
import { type Check, type Rules, type Subject, each, unless } from "./rule.js";

/** Clauses 7.1 to 7.9 for elements: their types, headings, alternatives, notes. */
export const treeRules: Rules = {
  "7.1-5": ({ pdf, elements }) =>
    elements
      .filter(({ own }) => !standardTypes.has(mapped(pdf, own) ?? own))
      .map(({ own }) => `'${own}' leads to no standard type`),
  "7.1-6": ({ pdf }) =>
    roleNames(pdf).flatMap((own) => unless(mapped(pdf, own) !== undefined, `'${own}' in a circle`)),
  "7.1-7": ({ pdf }) =>
    roleNames(pdf).flatMap((own) => unless(!standardTypes.has(own), `'${own}' has another role`)),
  "7.1-12": ({ pdf, elements, catalog }) =>
    elements.flatMap(({ dict: found, parent, ref }) => {
      const above = parent?.ref ?? catalog["/StructTreeRoot"];
      const given = found["/P"];
      const same = given === above || (given !== undefined && get(pdf, given) === get(pdf, above));
      return unless(same, `${ref} does not name its parent`);
    }),
  "7.2-21": spoken("/ActualText"),
  "7.2-22": spoken("/Alt"),
  "7.2-23": spoken("/E"),
  "7.3-1": (subject) => each("Figure", (one) => withoutAlternative(subject, one))(subject),
  "7.4.2-1": ({ elements }) => {
    let last = 0;
    return elements
      .filter(({ type }) => /^H[1-6]$/.test(type))
      .flatMap(({ type, ref }) => {
        const [level, before] = [Number(type.slice(1)), last];
        last = level;
        return unless(level <= before + 1, `${type} ${ref} comes after level ${before}`);
      });
  },
  "7.4.4-1": ({ elements }) =>
    elements
      .filter(({ kids }) => kids.filter(({ type }) => type === "H").length > 1)
      .map(({ ref }) => `${ref} has more than one H`),
  "7.4.4-2": mixedHeadings("H", /^H[1-6]$/),
  "7.4.4-3": mixedHeadings("H1 H2 H3 H4 H5 H6", /^H$/),
  "7.7-1": (subject) => each("Formula", (one) => withoutAlternative(subject, one))(subject),
  "7.9-1": (subject) =>
    each("Note", ({ dict: found }) => (text(subject.pdf, found["/ID"]) ? undefined : "no ID"))(
      subject,
    ),
  "7.9-2": (subject) => {
    const seen = new Set<string>();
    return each("Note", ({ dict: found }) => {
      const id = text(subject.pdf, found["/ID"]);
      if (id === undefined) return undefined;
      const twice = seen.has(id);
      seen.add(id);
      return twice ? `the ID ${id} again` : undefined;
    })(subject);
  },
  "7.18.4-2": (subject) =>
    each("Form", (one) => {
      const printed = attributesOf(subject.pdf, one, "/PrintField")["/Role"] !== undefined;
      const interactive = one.content.filter((kid) => "object" in kid).length === 1;
      return printed || interactive ? undefined : "neither printed nor with one field";
    })(subject),
};

function roleNames(pdf: Subject["pdf"]): string[] {
  return Object.keys(dict(pdf, rootOf(pdf)["/RoleMap"])).map(nameOf);
}

function withoutAlternative({ pdf }: Subject, { dict: found }: Element): string | undefined {
  const alternative = text(pdf, found["/Alt"]) || found["/ActualText"] !== undefined;
  return alternative ? undefined : "nothing to say instead";
}

function mixedHeadings(types: string, other: RegExp): Check {
  return (subject) =>
    each(types, () =>
      subject.elements.some(({ type }) => other.test(type)) ? "two kinds of heading" : undefined,
    )(subject);
}

function spoken(entry: string): Check {
  return (subject) =>
    hasLanguage(subject)
      ? []
      : subject.elements
          .filter(({ dict: found }) => found[entry] !== undefined)
          .filter((element) => !chain(element).some((one) => one["/Lang"] !== undefined))
          .map(({ ref }) => `${ref}: ${entry} in no known language`);
}

function chain(element: Element): Dict[] {
  return [element.dict, ...(element.parent ? chain(element.parent) : [])];
}
