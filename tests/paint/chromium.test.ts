import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { print } from "../../src/index.js";
import { type Viewed, clickField, saveChanges, startChromium, view } from "../chromium.js";
import { type Field, fieldsOf, has } from "../pdf.js";
import { planned } from "../plans.js";

const folder = mkdtempSync(join(tmpdir(), "countback-chromium-"));
const many = 8;

describe.runIf(has("chromium"))("a sheet filled in in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    const { opened, value: plan } = planned({ job: "bar" });
    if (!plan) throw new Error("no plan");
    const options = { paper: "a4" as const, large: false, draft: false, html: false };
    const { value = [] } = await print(opened, plan, { ...options, fillable: true });
    for (const { name, bytes } of value) writeFileSync(join(folder, name), bytes);
    browser = await startChromium();
  });
  afterAll(() => browser.close());

  // A browser on a busy machine can miss a key; the sheet is then filled in again from the start.
  it.each(["checklist", "count", "measurements"])(
    "%s: is reached by the tab key in the order of reading, ticked, written, saved and drawn",
    { retry: 2 },
    async (sheet) => {
      const file = join(folder, `bar-${sheet}.pdf`);
      const viewed = await view(browser, file);
      const { page } = viewed;
      const blank = await page.screenshot();
      const fields = await fieldsOf(readFileSync(file));
      await page.mouse.click(850, 80);
      const wanted: [string, string][] = [];
      const first = fields.filter((field) => field.page === 0).slice(0, many);
      for (const [i, field] of first.entries()) {
        await page.keyboard.press("Tab");
        wanted.push([field.name, await fillIn(viewed, field, i)]);
      }
      await page.keyboard.press("Tab");
      const bytes = await saveChanges(viewed);
      const after = await fieldsOf(bytes);
      expect(after.map(({ name }) => name)).toEqual(fields.map(({ name }) => name));
      const filled = after.filter(({ value }) => value !== "" && value !== "Off");
      expect(filled.map(({ name, value }) => [name, value])).toEqual(wanted);
      const saved = join(folder, `bar-${sheet}-saved.pdf`);
      writeFileSync(saved, bytes);
      const drawn = async (path: string) => (await view(browser, path)).page.screenshot();
      expect(blank.equals(await drawn(file))).toBe(true);
      expect(blank.equals(await drawn(saved))).toBe(false);
    },
  );
});

/** Ticks a box or writes into the line that has the cursor, and gives the value that it must have. */
async function fillIn(viewed: Viewed, field: Field, i: number): Promise<string> {
  if (field.type === "checkbox") {
    await clickField(viewed, field);
    return "On";
  }
  await viewed.page.keyboard.type(`no. ${i + 1}`);
  return `no. ${i + 1}`;
}
