/** Appliance, setting and container of a new water test or batch: as said, else asked at the terminal. */
import { missingProblem, ofWaterTest, setUpProgress } from "../../input/set-up.ts";
import type {
  Missing,
  SaidSetUp,
  SettledSetUp,
  SetUpProgress,
  SetUpPurpose,
} from "../../input/set-up.ts";
import type { Appliance, Kitchen } from "../../kitchen/kitchen.ts";
import { parseSetting } from "../../kitchen/setting.ts";
import { done, failed, problemText } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { Shell } from "../command-result.ts";
import type { Choice } from "./ask.ts";

export const stopped = failed("stopped", { what: "every question" });

/** One of several, by its id: asked at a terminal, else missed. */
export const choose = async (
  question: string,
  choices: readonly Choice[],
  missing: Missing,
  shell: Shell,
): Promise<Outcome<string>> => {
  if (choices.length === 0 || !shell.asks) return missingProblem(missing);
  const chosen = await (await import("./ask.ts")).chooseOne(question, choices);
  return chosen === null ? stopped : done(chosen);
};

/** By their names, with the id where that is another. */
export const choicesOf = (
  entries: readonly { readonly id: string; readonly name: string }[],
): readonly Choice[] =>
  entries.map(({ id, name }) =>
    Object.assign({ value: id, label: name }, name === id ? {} : { hint: id }),
  );

const typeSetting = async (
  appliance: Appliance,
  unit: TemperatureUnit,
): Promise<Outcome<string>> => {
  const { askText } = await import("./ask.ts");
  const example = unit === "degF" ? "100F" : "38";
  const typed = await askText(`What was ${appliance.name} set to?`, example, (text) => {
    const parsed = parseSetting(appliance, text, unit);
    return parsed.ok ? undefined : problemText(parsed.problem);
  });
  return typed === null ? stopped : done(typed);
};

type Open = Extract<SetUpProgress, { readonly open: string }>;

const askOpen = async (
  { open, missing, appliance }: Open,
  kitchen: Kitchen,
  shell: Shell,
): Promise<Outcome<string>> => {
  if (open === "appliance") {
    return choose("Which appliance?", choicesOf(kitchen.appliances), missing, shell);
  }
  if (open === "container" || appliance === null) {
    return choose("Which container?", choicesOf(kitchen.containers), missing, shell);
  }
  const { known } = missing;
  if (known === null) {
    return shell.asks ? typeSetting(appliance, kitchen.shownUnit) : missingProblem(missing);
  }
  const choices = known.map((value) => ({ value, label: value }));
  return choose(`What was ${appliance.name} set to?`, choices, missing, shell);
};

/** Fails where something is missing and nobody can be asked, or is not in the kitchen. */
export const askSetUp = async (
  kitchen: Kitchen,
  { appliance, setting, container }: SaidSetUp,
  shell: Shell,
  purpose: SetUpPurpose = ofWaterTest,
): Promise<Outcome<SettledSetUp>> => {
  const said: SaidSetUp = { appliance, setting, container };
  const progress = setUpProgress(kitchen, said, purpose);
  if (!progress.ok) return progress;
  if ("settled" in progress.value) return done(progress.value.settled);
  const answer = await askOpen(progress.value, kitchen, shell);
  if (!answer.ok) return answer;
  return askSetUp(kitchen, { ...said, [progress.value.open]: answer.value }, shell, purpose);
};
