import { describe, expect, it } from "vitest";
import type { Message, Step } from "../../src/model/plan.js";
import type { Wear } from "../../src/model/wear.js";
import { filled, lists, repairs, seen } from "./filled.js";

/** A bar before a step: what it reads, whether it says its message whole, and the step that it stands at. */
interface Bar {
  text: string;
  whole: boolean;
  at: number;
}

/** The bars of a block of the checklist, in the order in which they stand. */
function barsOf(block: string, steps: readonly Step[]): Bar[] {
  return block.split('data-about="step ').flatMap((part) => {
    const n = /^([\d.]+)"/.exec(part)?.[1] ?? "";
    const at = steps.findIndex((step) => step.n === n);
    return part
      .split('<div class="message ')
      .slice(1)
      .flatMap((bar) => {
        const whole = !bar.startsWith("short");
        const lines = (bar.split('<div class="text">')[1] ?? "").split("</div>")[0] ?? "";
        return lines
          .split("</p>")
          .map((line) => ({ text: seen(line).trim(), whole, at }))
          .filter(({ text }) => text !== "");
      });
  });
}

const wholly = ({ hazard, avoid, consequence }: Message): string =>
  `${hazard}. ${avoid} ${consequence}`;
const shortly = ({ hazard, short }: Message): string => `${hazard}. ${short}`;

/** The blocks of the checklist with their steps that are no pause. */
function blocksOf(html: string, steps: readonly Step[]): { block: string; mine: Step[] }[] {
  return html
    .split("<section data-continued=")
    .slice(1)
    .map((block) => {
      const numbers = new Set([...block.matchAll(/data-about="step ([\d.]+)"/g)].map((m) => m[1]));
      return { block, mine: steps.filter((step) => numbers.has(step.n)) };
    });
}

describe.each(repairs)("the safety messages of $name", ({ opened, plan }) => {
  const blocks = blocksOf(filled("checklist", opened, plan), plan.steps);
  const place = new Map(plan.steps.map((step, i) => [step.n, i]));
  const placeOf = ({ n }: Step): number => place.get(n) ?? -1;

  it("stand before each step of theirs, whole or in short, with no hold or pause between", () => {
    let asked = 0;
    for (const { block, mine } of blocks) {
      const bars = barsOf(block, plan.steps);
      for (const step of mine)
        for (const message of step.messages) {
          const at = placeOf(step);
          const near = bars.filter(
            ({ text, at: from }) =>
              (text.endsWith(wholly(message)) || text.endsWith(shortly(message))) &&
              (from === at || lists(/^Steps (.*?):/.exec(text)?.[1] ?? "", step.n)),
          );
          expect(near, `${step.n} ${message.hazard}`).toHaveLength(1);
          const from = near[0]?.at ?? -1;
          expect(at - from).toBeLessThan(6);
          const between = plan.steps.slice(from + 1, at + 1);
          expect(between.filter(({ hold, checks }) => hold || checks.length > 0)).toEqual([]);
          asked++;
        }
    }
    expect(asked).toBeGreaterThan(300);
  });

  it("stand whole in the block or the one before it before they are said in short, and again after a pause", () => {
    let short = 0;
    for (const [i, { block, mine }] of blocks.entries()) {
      const bars = [
        ...barsOf(blocks[i - 1]?.block ?? "", plan.steps),
        ...barsOf(block, plan.steps),
      ];
      const known = mine.flatMap(({ messages }) => messages);
      for (const bar of barsOf(block, plan.steps).filter(({ whole }) => !whole)) {
        const message = known.find((one) => bar.text.endsWith(shortly(one)));
        if (!message) throw new Error(`no message of the block reads '${bar.text}'`);
        const before = bars.find(
          ({ text, whole, at }) =>
            whole &&
            text.endsWith(wholly(message)) &&
            at < bar.at &&
            plan.steps.slice(at, bar.at).every(({ checks }) => checks.length === 0),
        );
        expect(before, bar.text).toBeDefined();
        short++;
      }
    }
    expect(short).toBeGreaterThan(60);
  });

  it("name in short all that the whole message says to wear", () => {
    const named: Record<Wear["for"], RegExp> = {
      hands: /gloves/,
      eyes: /\beye protection|eye and ear protection/,
      face: /welding mask|face shield/,
      ears: /ear protection/,
      lungs: /mask|respirator/,
      head: /head protection/,
      feet: /footwear/,
      body: /clothes/,
    };
    const worn = plan.steps
      .flatMap(({ messages }) => messages)
      .flatMap(({ short = "", wear = [] }) => wear.map((one) => ({ short, one })))
      .filter(({ short }) => short !== "");
    expect(worn.length).toBeGreaterThan(100);
    for (const { short, one } of worn) expect(short, one.name).toMatch(named[one.for]);
  });
});
