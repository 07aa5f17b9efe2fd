import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { bagsOf } from "../../src/fill/bags.js";
import { codeOf } from "../../src/fill/sheets/labels.js";
import { has, printed, run } from "../pdf.js";
import { inputOf, repairs } from "./filled.js";

const folder = mkdtempSync(join(tmpdir(), "countback-codes-"));

it.runIf(has("zbarimg") && has("pdftoppm"))(
  "every bag's code is read from the printed page by an independent reader, and by no other bag's",
  async () => {
    const [repair] = repairs;
    if (!repair) throw new Error("no repair");
    const { opened, plan } = repair;
    const file = join(folder, "labels");
    writeFileSync(`${file}.pdf`, await printed(opened, plan, { sheets: ["labels"] }));
    run("pdftoppm", ["-r", "200", "-gray", "-png", `${file}.pdf`, file]);
    const read = run("sh", ["-c", `zbarimg --quiet --raw ${file}-*.png 2>/dev/null`])
      .trim()
      .split("\n")
      .sort();
    const bags = [...bagsOf(plan.steps).values()];
    const found =
      /revision ([0-9a-f]{4}) ?([0-9a-f]{4})/.exec(run("pdfinfo", [`${file}.pdf`])) ?? [];
    const revision = `${found[1] ?? ""}${found[2] ?? ""}`;
    const wanted = bags.map((bag) => codeOf({ ...inputOf(plan), revision }, bag)).sort();
    expect(bags.length).toBeGreaterThan(15);
    expect(read).toEqual(wanted);
  },
);
