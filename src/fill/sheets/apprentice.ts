import { allMessages } from "../messages.js";
import { questionsOf } from "../questions.js";
import { type Sheet, type SheetInput, headOf } from "../sheet.js";
import { type Skill, skillsOf } from "../skills.js";
import { holdsOf } from "../stops.js";

/** What a trainee learns on the job, how far they came, and who says so; never a release of a hold. */
export const apprentice: Sheet = {
  name: "apprentice",
  applies: ({ steps }) => steps.length > 0,
  view: (input, words) => ({
    ...headOf(input),
    ...taskViews(skillsOf(input.steps, holdsOf(input.steps), words)),
    questions: questionsOf(input.brief, input.steps, words),
    dangers: dangersOf(input),
    welds: input.steps.some(({ verb }) => verb === "weld"),
  }),
};

/** The tasks, and once more by name alone the parts that a trainee may come to take off and put back alone. */
function taskViews(skills: readonly Skill[]): { skills: readonly Skill[]; alone: string[] } {
  const free = skills.filter(
    ({ neverAlone, holdsOnly, phase }) => neverAlone === "" && !holdsOnly && phase === "",
  );
  return { skills, alone: free.map(({ title, sides }) => (sides ? `${title}, ${sides}` : title)) };
}

/** Every danger of the job once, with all ways to avoid it that are said of it. */
function dangersOf(input: SheetInput): { hazard: string; avoid: string }[] {
  const said = allMessages(input).filter(({ word }) => word === "danger");
  return [...new Set(said.map(({ hazard }) => hazard))].map((hazard) => {
    const mine = said.filter((one) => one.hazard === hazard);
    return { hazard, avoid: [...new Set(mine.map(({ avoid }) => avoid))].join(" ") };
  });
}
