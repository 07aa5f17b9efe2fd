import { expect, it } from "vitest";
import { print } from "../../src/index.js";
import { flat, textByPdfParse, treesOf } from "../pdf.js";
import { repairs } from "../fill/filled.js";

it.each([
  ["seat-crossmember on quillet-0482", "a4"],
  ["floor-pan-section on quillet-1355", "letter"],
] as const)(
  "each page of %s names every hazard of the steps that begin on it",
  async (job, paper) => {
    const repair = repairs.find(({ name }) => name.startsWith(job));
    if (!repair) throw new Error("no such repair");
    const { opened, plan } = repair;
    const options = {
      paper,
      large: false,
      draft: false,
      html: false,
      sheets: ["checklist", "hazards"],
    };
    const { value = [] } = await print(opened, plan, options);
    const bytes = value.find(({ name }) => name.endsWith("-checklist.pdf"))?.bytes;
    if (!bytes) throw new Error("no checklist");
    const trees = await treesOf(Buffer.from(bytes));
    const texts = (await textByPdfParse(Buffer.from(bytes))).map((text) =>
      text.replace(/\s+/g, " "),
    );
    let [asked, above] = [0, 0];
    for (const [i, tree] of trees.entries()) {
      const boxes = flat(tree).map(({ alt = "" }) => /^step ([\d.]+) done$/.exec(alt)?.[1]);
      const steps = plan.steps.filter(({ n }) => boxes.includes(n));
      for (const { n, messages } of steps)
        for (const { hazard } of messages) {
          expect(texts[i], `step ${n} on sheet ${i + 1}`).toContain(hazard);
          asked++;
        }
      if (texts[i]?.includes("Still in force here:")) above++;
    }
    expect(asked).toBeGreaterThan(300);
    expect(above).toBeGreaterThan(20);
  },
);
