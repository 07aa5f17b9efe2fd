import { questionsOf } from "../questions.js";
import { type Sheet, headOf } from "../sheet.js";
import { skillsOf } from "../skills.js";
import { holdsOf } from "../stops.js";

/** What a trainee learns on the job, how far they came, and who says so; never a release of a hold. */
export const apprentice: Sheet = {
  name: "apprentice",
  applies: ({ steps }) => steps.length > 0,
  view: (input, words) => ({
    ...headOf(input),
    skills: skillsOf(input.steps, holdsOf(input.steps), words),
    questions: questionsOf(input.brief, input.steps, words),
    welds: input.steps.some(({ verb }) => verb === "weld"),
  }),
};
