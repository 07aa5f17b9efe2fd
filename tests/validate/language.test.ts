import { expect, it } from "vitest";
import {
  commandsIn,
  isCommand,
  isOrder,
  isRequirement,
} from "../../src/validate/rules/language/commands.js";
import { bracketsIn, sentencesOf, wordsIn } from "../../src/validate/rules/language/sentences.js";
import { contractionsIn } from "../../src/validate/rules/contraction.js";
import { runsIn } from "../../src/validate/rules/language/names.js";
import { ingFormsIn } from "../../src/validate/rules/ing-form.js";
import { bareNamesIn, thingsOf } from "../../src/validate/rules/no-article.js";
import { passiveIn } from "../../src/validate/rules/passive.js";
import { vagueWords } from "../../src/validate/rules/vague-word.js";

it("a colon ends a sentence for counting, a full stop inside a number does not", () => {
  expect(sentencesOf("Fit: the 8.8 stud. Stop!")).toEqual(["Fit:", "the 8.8 stud.", "Stop!"]);
});

it.each([
  ["Undo the screw.", 3],
  ["Centre-punch the 24 spot-welds.", 4],
  ["Drill to {hole} – no more.", 5],
  ["Fit the plug (lip up, all round) now.", 5],
  ["", 0],
])("'%s' counts %i words", (sentence, words) => {
  expect(wordsIn(sentence)).toBe(words);
});

it("a text in brackets is a sentence of its own", () => {
  expect(bracketsIn("Fit it (lip up) and tick (here).")).toEqual(["lip up", "here"]);
});

it.each([
  "Undo the screw.",
  "Never tear it.",
  "Bring the lead up.",
  "Check that the lamp is off.",
  "Search what must be dry.",
  "If the nut sticks, oil it.",
  "With two people, lift it.",
  "With two people, one at each end, lift it.",
  "If the nut, bolt or stud sticks, oil it.",
  "Back the nut off, one turn.",
  "When cold",
  "Until",
])("'%s' is a command", (sentence) => {
  expect(isCommand(sentence)).toBe(true);
});

it.each([
  "The screw comes out.",
  "It is undone.",
  "That lamp comes off.",
  "What is loose comes off.",
  "6 screws out.",
  "{hole} deep.",
  "Undoing the screw.",
  "Screws are undone.",
  "Belt bolts should go.",
  "If the nut sticks, it is drilled out.",
  "",
])("'%s' is no command", (sentence) => {
  expect(isCommand(sentence)).toBe(false);
});

it.each([
  ["Undo the screw.", 1],
  ["Undo the screw and lift it out.", 2],
  ["Undo the screw, then lift up the tray and cap both ends.", 3],
  ["Hold 2 clips, turn 3 screws and pull.", 2],
  ["Cover the dash, the trims and the seals with cloth.", 1],
  ["Push it down and past the column, and under the dash.", 1],
  ["Undo the clips and screws that hold the tray and lift it out.", 2],
  ["Lift it out, rear end first.", 1],
  ["With two people, one at each end, lift it and turn it.", 2],
  ["With the lid shut, turn it and lift it.", 2],
  ["The tray is out and lift it.", 0],
])("'%s' holds %i commands", (sentence, count) => {
  expect(commandsIn(sentence)).toBe(count);
});

it.each(["The suitcase", "some-one", "a proper-noun", "awesome", "etched", "The bit is sharp"])(
  "'%s' holds no vague word",
  (sentence) => {
    expect(vagueWords(sentence)).toEqual([]);
  },
);

it("each vague word says what to write instead", () => {
  const found = vagueWords("Firmly press some clips where possible, about 3 times or similar.");
  expect(found.map(({ word }) => word)).toEqual([
    "Firmly",
    "where possible",
    "some",
    "about 3",
    "or similar",
  ]);
  expect(found.filter(({ hint }) => !hint.endsWith("."))).toEqual([]);
});

it.each([
  "Never tear it.",
  "Do not part the pipe.",
  "Keep primer off the threads.",
  "Skip two plugs each time.",
  "Stop when the swarf changes colour.",
  "If the nut sticks, oil it.",
  "Turn {turns} turns.",
])("'%s' gives an order", (sentence) => {
  expect(isOrder(sentence)).toBe(true);
});

it.each([
  "Wax burns.",
  "Old tabs break when they are cold.",
  "Rust in the sill weakens it.",
  "Its fluid burns.",
  "All work goes outward from here.",
  "If the pad is wet, water stands under it.",
  "Lamps, wipers, horn and blower.",
  "The pins keep paint out.",
])("'%s' gives no order", (sentence) => {
  expect(isOrder(sentence)).toBe(false);
});

it.each([
  ["The cap must stay dry.", true],
  ["The cap shall stay dry.", true],
  ["No tool may touch it.", true],
  ["The cap stays dry.", false],
  ["The mustard cap can crack in May-time.", false],
])("'%s' is a requirement: %s", (sentence, is) => {
  expect(isRequirement(sentence)).toBe(is);
});

it.each([
  ["The cap must be wiped.", "be wiped"],
  ["Have the weld checked before it is dressed.", "is dressed"],
  ["The studs are then screwed out.", "are then screwed"],
  ["In the bay, the lamp must not be torn.", "be torn"],
  ["When it is cleaned, the lid must be closed.", "be closed"],
  ["No stud may be cut.", "be cut"],
])("'%s' holds the passive %s", (sentence, found) => {
  expect(passiveIn(sentence)).toBe(found);
});

it.each([
  "Push it until the bubble is centred.",
  "If the nut, bolt or stud is seized, oil it.",
  "Check that the lid is closed.",
  "Write down who came and what was ordered.",
  "The edge must not be jagged or red.",
  "It must be at least {light}.",
  "The meter must read zero.",
  "Have the weld checked.",
])("'%s' holds no passive", (sentence) => {
  expect(passiveIn(sentence)).toBeUndefined();
});

it.each([
  ["Don't tear it, it's old and they’ve no other.", ["Don't", "it's", "they’ve"]],
  ["You can't, who'd try?", ["can't", "who'd"]],
  ["Take the maker's value and a hand's width of the wells' edge.", []],
  ["The unit's own shed cannot fit.", []],
])("'%s' holds the contractions %j", (sentence, found) => {
  expect(contractionsIn(sentence)).toEqual(found);
});

it.each([
  ["Free it by turning the nut.", ["by turning the"]],
  ["While welding each end, wait.", ["While welding each"]],
  ["Look before any grinding.", []],
  ["Mark it for closing.", []],
  ["Hang it from string the helper holds.", []],
  ["The wiring and the bearing are dry.", []],
  ["Carry on without anything that burns.", []],
])("'%s' holds the verbs in -ing %j", (sentence, found) => {
  expect(ingFormsIn(sentence)).toEqual(found);
});

it.each([
  ["floor heater duct", [["floor", "heater", "duct"]]],
  ["Left front door trim clip hole", [["door", "trim", "clip", "hole"]]],
  ["plug of the ignition control unit", [["plug"], ["ignition", "control", "unit"]]],
  ["seat stud M10 class 8.8", [["seat", "stud"], ["class"]]],
  ["raised-head screw, box (deep)", [["raised-head", "screw"], ["box"], ["deep"]]],
  ["places of the four seat studs", [["places"], ["seat", "studs"]]],
  ["second person who did not do the work", [["person"]]],
  ["left rear", []],
])("'%s' strings together %j", (name, runs) => {
  expect(runsIn(name)).toEqual(runs);
});

const things = thingsOf([
  { name: "rear seat back", of: "part" },
  { name: "front seat", of: "part" },
  { name: "road wheels", of: "part" },
  { name: "lock nut", of: "fixing" },
  { name: "torque wrench in calibration", of: "tool" },
  { name: "set of weld clamps", of: "tool" },
  { name: "epoxy primer", of: "other" },
]);

it("a thing is a singular part, fixing or tool; of a part and a fixing the last word alone too", () => {
  expect([...things].sort()).toEqual(["lock nut", "nut", "seat", "seat back", "torque wrench"]);
});

it.each([
  ["Lift seat out.", ["Lift seat"]],
  ["If the pad is wet, undo nut.", ["undo nut"]],
  [
    "Lift it from left front seat and turn it with torque wrench.",
    ["from left front seat", "with torque wrench"],
  ],
  ["Draw it off new lock nut", ["off new lock nut"]],
])("'%s' leaves out articles in %j", (sentence, found) => {
  expect(bareNamesIn(sentence, true, things)).toEqual(found);
});

it.each([
  "Lift the seat out of its place.",
  "Turn it with one torque wrench, from each new nut to the seat.",
  "Go from seat to seat and nut by nut.",
  "Use that kind of nut.",
  "Push the seat back and lay it on back seat covers.",
  "Wipe it with primer, at seat height.",
  "Lift seats off nuts.",
  "Seat rails rust.",
  "Take the maker's value with {seat}.",
  "Set back the lid to seat it.",
])("'%s' leaves out no article", (sentence) => {
  expect(bareNamesIn(sentence, true, things)).toEqual([]);
});

it("a sentence that describes has no verb of a command", () => {
  expect(bareNamesIn("Some seat off its stud.", false, things)).toEqual([]);
});
