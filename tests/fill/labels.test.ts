import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import { bagKey, bagsOf } from "../../src/fill/bags.js";
import { labelsOf } from "../../src/fill/labels.js";
import { type Opened, type PlanFile, print } from "../../src/index.js";
import { verbs } from "../../src/model/verbs.js";
import { filled, labels, repairs, seen } from "./filled.js";

const longest = repairs.toSorted((a, b) => b.plan.steps.length - a.plan.steps.length).slice(0, 1);

describe.each(repairs)("the bag labels of $name", ({ opened, plan }) => {
  const html = filled("labels", opened, plan);
  const text = seen(html);
  const labelOf = (n: number) => html.split(/data-about="bag (?=\d)/)[n] ?? "";
  const all = labelsOf(plan.steps, opened.words);

  it("has one label for each bag of the checklist, with its number, its place and two initials", () => {
    expect(all).toHaveLength(bagsOf(plan.steps).size);
    expect(all.length).toBeGreaterThan(15);
    for (const { number, of, title, side } of all) {
      expect(labelOf(number)).toMatch(new RegExp(`^${number}"`));
      const place = side === "" ? title : `${title}, ${side}`;
      expect(text).toMatch(new RegExp(`Bag ${number} of ${of} [^·]+ · [^·]*? ${place} `));
      for (const initials of ["out", "back"])
        expect(labels(labelOf(number))).toContain(`initials ${initials}`);
    }
  });

  it("holds together all that comes out and is kept, and nothing that is used once", () => {
    const out = plan.steps
      .filter(({ verb }) => verbs[verb]?.effect === "out")
      .flatMap(({ fixings }) => fixings);
    const count = (once: boolean) =>
      out.filter(({ oneUse }) => oneUse === once).reduce((sum, one) => sum + one.count, 0);
    const inBags = all.flatMap(({ lines }) => lines).reduce((sum, line) => sum + line.count, 0);
    expect(inBags).toBe(count(false));
    expect(count(true)).toBeGreaterThan(0);
  });

  it("tells of each bag how many new fixings go back, as the plan puts them in", () => {
    const fresh = (steps: PlanFile["steps"]): number =>
      steps
        .flatMap(({ fixings }) => fixings)
        .filter(({ oneUse }) => oneUse)
        .reduce((sum, one) => sum + one.fresh, 0);
    expect(fresh(plan.steps)).toBeGreaterThan(5);
    for (const [key, number] of bagsOf(plan.steps)) {
      const { renewed = [] } = all.find((label) => label.number === number) ?? {};
      const told = renewed.reduce((sum, { count }) => sum + count, 0);
      expect(told, `bag ${number}`).toBe(fresh(plan.steps.filter((step) => bagKey(step) === key)));
      for (const { count, name } of renewed)
        expect(seen(labelOf(number))).toMatch(new RegExp(`goes back new: .*${count} ${name}`));
    }
  });

  it("says where each bag comes from and goes back to", () => {
    for (const { out, back } of all) {
      expect(text).toContain(`out at step ${out.join(" to ")}, by`);
      expect(text).toContain(`back at step ${back.join(" to ")}, by`);
    }
  });

  it("asks for the torque of what is tightened to one", () => {
    const asked = all.flatMap(({ lines }) => lines).filter(({ torqueHtml }) => torqueHtml !== "");
    expect(asked.length).toBeGreaterThan(1);
    expect(html.split(/N·m<sup>\([MC]\)<\/sup>/)).toHaveLength(asked.length + 1);
    const computed = asked.filter(({ torqueHtml }) => torqueHtml.endsWith("<sup>(C)</sup>"));
    expect(computed.map(({ name }) => name)).toEqual(["bolts"]);
  });
});

/** The pieces of text of each page, with where they begin and end, in points. */
async function placed(opened: Opened, plan: PlanFile, large: boolean) {
  const sheets = ["labels"];
  const options = { paper: "a4" as const, large, draft: false, html: false, sheets };
  const { value } = await print(opened, plan, options);
  const task = getDocument({ data: new Uint8Array(value?.[0]?.bytes ?? []), verbosity: 0 });
  const document = await task.promise;
  const pages = [];
  for (let n = 1; n <= document.numPages; n++) {
    const { items } = await (await document.getPage(n)).getTextContent();
    pages.push(
      items.flatMap((item) =>
        "str" in item && item.str.trim() !== ""
          ? [
              {
                text: item.str,
                x: Number(item.transform[4]),
                y: Number(item.transform[5]),
                end: Number(item.transform[4]) + item.width,
              },
            ]
          : [],
      ),
    );
  }
  await task.destroy();
  return pages;
}

describe.each(
  longest.flatMap((one) => [
    { ...one, large: false },
    { ...one, large: true },
  ]),
)("the longest labels of the library, large: $large", ({ opened, plan, large }) => {
  const mm = 72 / 25.4;
  const middle = (20 + (210 - 20 - 14) / 2) * mm;

  it("fit between their dashes, and no label is cut by the end of a page", async () => {
    const pages = await placed(opened, plan, large);
    let seenLabels = 0;
    for (const page of pages) {
      const digit = (at: number) => /^\d/.test(page[at]?.text ?? "");
      const from = page.findIndex(({ text }, at) => text === "Bag" && digit(at + 1));
      const words = from < 0 ? [] : page.slice(from);
      const top = words[0]?.y ?? 0;
      const to = words.findIndex(({ text, y }) => y > top + 1 || ["End", "S"].includes(text));
      const inside = words.slice(0, to < 0 ? undefined : to);
      const over = inside.filter(({ x, end }) => end > (x < middle ? middle : (210 - 14) * mm));
      expect(over.map(({ text }) => text)).toEqual([]);
      const whole = inside.map(({ text }) => text).join(" ");
      const bags = whole.match(/Bag \d+/g) ?? [];
      expect(whole.match(/back at step/g) ?? []).toHaveLength(bags.length);
      seenLabels += bags.length;
    }
    expect(seenLabels).toBe(bagsOf(plan.steps).size);
  });
});
