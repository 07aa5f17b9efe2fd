import { compile } from "css-select";
import type { AnyNode, Element } from "domhandler";
import type { Styles } from "./css.js";
import { properties } from "./properties.js";
import { type Style, startStyle } from "./style.js";

/** Works out the style of an element from its parent's. */
export type Cascade = (element: Element, parent: Style | undefined) => Style;

/** Prepares the cascade of a style sheet; font size comes first, because lengths may lean on it. */
export function cascade({ rules }: Styles): Cascade {
  const tests = rules.map(({ selector, declarations }) => ({
    fits: compile<AnyNode, Element>(selector),
    declarations,
  }));
  const known = new WeakMap<Element, { parent: Style | undefined; style: Style }>();
  const worked: Cascade = (element, parent) => {
    const style = startStyle(element.name, parent);
    const own = (element.attribs["style"] ?? "").split(";").flatMap((text) => {
      const [property, value] = text.split(":").map((part) => part.trim());
      return property && value ? [{ property, value }] : [];
    });
    const all = [...tests.flatMap((test) => (test.fits(element) ? test.declarations : [])), ...own];
    const size = all.filter(({ property }) => property === "font-size").at(-1);
    if (size) properties["font-size"]?.(style, size.value);
    for (const { property, value } of all)
      if (property !== "font-size") properties[property]?.(style, value);
    return style;
  };
  return (element, parent) => {
    const before = known.get(element);
    if (before && before.parent === parent) return before.style;
    const style = worked(element, parent);
    known.set(element, { parent, style });
    return style;
  };
}
