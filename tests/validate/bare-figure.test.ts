import { expect, it } from "vitest";
import { bareFigures } from "../../src/validate/rules/bare-figure.js";

it.each([
  ["Drill to 8 mm.", "8 mm"],
  ["Drill to 8mm.", "8mm"],
  ["a 5/16 in hole", "5/16 in"],
  ["a hole of 1 1/8 in", "1 1/8 in"],
  ["Drill 3 in.", "3 in"],
  ["0,8 mm of wire", "0,8 mm"],
  ["to 45 N·m", "45 N·m"],
  ["to 45 Nm", "45 Nm"],
  ["to 33 lbf·ft", "33 lbf·ft"],
  ["Wait 10 minutes.", "10 minutes"],
  ["Wait 24 h.", "24 h"],
  ["above 15 °C", "15 °C"],
  ["below 0.5 Ω", "0.5 Ω"],
  ["a 12V supply", "12V"],
  ["at 2 bar", "2 bar"],
])("a figure: %s", (text, figure) => {
  expect(bareFigures(text)).toEqual([figure]);
});

it.each([
  "the M10 stud of class 8.8",
  "Put 4 in the tray.",
  "the 4 screws",
  "two 2 metre straps",
  "in the 1970s",
  "Drill {hole} through the flange.",
  "row 3, column 4",
  "step 2 again",
])("no figure: %s", (text) => {
  expect(bareFigures(text)).toEqual([]);
});

it("every figure of a sentence is found", () => {
  expect(bareFigures("Set 20 A and 18 V with 0.8 mm wire.")).toEqual(["20 A", "18 V", "0.8 mm"]);
});
