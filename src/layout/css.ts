import { type CssNode, generate, parse, walk } from "css-tree";
import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { properties } from "./properties.js";
import { startStyle } from "./style.js";

/** One declaration of a style sheet. */
export interface Declaration {
  property: string;
  value: string;
}

/** One selector with its declarations; later and more specific rules win. */
export interface Rule {
  selector: string;
  weight: number;
  declarations: Declaration[];
}

/** A style sheet as the layout reads it. */
export interface Styles {
  rules: Rule[];
  /** Declarations of the page itself: its margins. */
  page: Declaration[];
}

/** Reads a style sheet; whatever lies outside the documented subset is reported. */
export function readStyles(
  css: string,
  file: string,
): { styles: Styles; diagnostics: Diagnostic[] } {
  const styles: Styles = { rules: [], page: [] };
  const diagnostics: Diagnostic[] = [];
  const bad = (message: string, node: CssNode): void => {
    const span = { file, start: node.loc?.start.offset ?? 0, end: node.loc?.end.offset ?? 0 };
    const hints = ["The guide lists what the style sheet may hold."];
    diagnostics.push({ code: "bad-style", message, span, hints, related: [] });
  };
  const tree = parse(css, {
    positions: true,
    onParseError: (error) => void bad(error.message, tree),
  });
  walk(tree, (node) => {
    if (node.type === "Atrule" && node.name === "page" && node.block)
      styles.page = declarationsOf(node.block, bad);
    if (node.type === "Atrule" && !["page", "font-face"].includes(node.name))
      bad(`'@${node.name}' is not understood.`, node);
    if (node.type !== "Rule") return;
    const declarations = declarationsOf(node.block, bad);
    for (const selector of generate(node.prelude).split(","))
      styles.rules.push({ selector, weight: weightOf(selector), declarations });
  });
  styles.rules.sort((a, b) => a.weight - b.weight);
  return { styles, diagnostics };
}

/** Classes, attributes and pseudo-classes weigh more than tags. */
function weightOf(selector: string): number {
  const strong = selector.match(/[.[:]/g)?.length ?? 0;
  const tags = selector.match(/(^|[ >+~])[a-z]/g)?.length ?? 0;
  return strong * 100 + tags;
}

type Bad = (message: string, node: CssNode) => void;

function declarationsOf(block: CssNode, bad: Bad): Declaration[] {
  const found: Declaration[] = [];
  if (block.type !== "Block") return found;
  block.children.forEach((node) => {
    if (node.type !== "Declaration") return;
    const { property } = node;
    const value = generate(node.value).trim();
    const set = properties[property];
    if (!set) bad(`The property '${property}' is not understood.`, node);
    else if (!set(startStyle("div", undefined), value))
      bad(`'${property}' does not understand '${value}'.`, node);
    else found.push({ property, value });
  });
  return found;
}
