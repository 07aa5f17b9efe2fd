import { expect, it } from "vitest";
import { layout } from "../../src/layout/layout.js";

const style = { file: "s.css", text: "p { height: 1mm; } .part { break-inside: avoid; }" };

/** Which parts stand on which page, where each is so many lines high. */
function pagesOf(lines: readonly number[]): string[] {
  const parts = lines.map((count, i) => {
    const rest = Array.from({ length: count }, () => `<p>${"abcdef"[i]}</p>`);
    return `<section class="part">${rest.join("")}</section>`;
  });
  const { value } = layout(`<article>${parts.join("")}</article>`, style, "a4");
  return (value?.pages ?? []).map(({ items }) =>
    [...new Set(items.flatMap((item) => (item.is === "text" ? [item.text.trim()] : [])))].join(""),
  );
}

it("a last block does not stand alone on a page where the one before it can come along", () => {
  expect(pagesOf([20, 20, 10, 5])).toEqual(["ab", "cd"]);
});
