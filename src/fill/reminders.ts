import type { Step } from "../model/plan.js";
import type { Rating } from "../model/rating.js";
import { putsOn } from "../model/verbs.js";
import type { Words } from "../model/words.js";
import type { SheetInput } from "./sheet.js";

/** A reminder at a step that is easily left out: what, how many, and before what. */
export interface ReminderView {
  what: string;
  hiddenBy: string;
  features: string;
}

/** The last look before all is closed: what lies hidden, by zone. */
export interface CloseUpView {
  lines: { zone: string; what: string }[];
}

/** The reminders of a plan, by step; the close-up stands after the last step that hides something. */
export interface Reminders {
  at: ReadonlyMap<string, ReminderView>;
  closeUpAfter: string;
  closeUp: CloseUpView;
}

const fewest = 3;
const most = 10;

/** Reminds of the ten steps that show the most features, if they show three at least (both numbers are ours), on each side. */
export function remindersOf(input: SheetInput, { features, sides }: Words): Reminders {
  const steps = new Map(input.steps.map((step) => [step.id, step]));
  const sideless = ({ id }: Rating): string => withoutSide(id, steps.get(id));
  const shown = input.ratings.filter((one) => one.features.length >= fewest);
  const first = new Set(shown.slice(0, most).map(sideless));
  const top = shown.filter((one) => first.has(sideless(one)));
  const last = input.steps.filter((step) => step.hides.length > 0 && putsOn(step)).at(-1);
  const view = (rating: Rating): ReminderView => ({
    what: whatOf(steps.get(rating.id)),
    hiddenBy: rating.hiddenBy ?? "",
    features: rating.features.map((name) => features[name] ?? name).join(", "),
  });
  return {
    at: new Map(top.map((rating) => [rating.id, view(rating)])),
    closeUpAfter: last?.id ?? "",
    closeUp: { lines: hiddenLines(input, sides) },
  };
}

/** The name of a step without its side: what is reminded of on one side is reminded of on the other. */
function withoutSide(id: string, step: Step | undefined): string {
  return step?.position ? id.replace(`.${step.position}.`, ".") : id;
}

/** The fixings of a step with their number, or what the step belongs to. */
function whatOf(step: Step | undefined): string {
  const named = (step?.fixings ?? []).map(({ count, name, plural }) =>
    count === 1 ? `1 ${name}` : `${count} ${plural}`,
  );
  return named.length > 0 ? named.join(", ") : (step?.title ?? "");
}

/** What is hidden in each zone, by the names of the tasks and their sides. */
function hiddenLines(
  { steps, ratings, brief }: SheetInput,
  sides: Words["sides"],
): CloseUpView["lines"] {
  const hidden = new Set(ratings.filter((one) => one.hiddenBy !== undefined).map((one) => one.id));
  const zones = new Map<string, Map<string, Set<string>>>();
  for (const step of steps.filter((one) => hidden.has(one.id))) {
    const titles = zones.get(step.zone) ?? new Map<string, Set<string>>();
    const places = titles.get(step.title) ?? new Set<string>();
    if (step.position !== "") places.add(sides[step.position] ?? step.position);
    zones.set(step.zone, titles.set(step.title, places));
  }
  return [...zones].map(([zone, titles]) => ({
    zone: brief.zones[zone] ?? zone,
    what: [...titles].map(([title, places]) => [title, ...places].join(", ")).join("; "),
  }));
}
