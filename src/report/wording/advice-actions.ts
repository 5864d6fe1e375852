/** What to do with an appliance, as a clause, and what has not been tried of it. */
import type { ApplianceAdvice, Candidate, CultureAdvice } from "../../advice/advice-types.ts";
import type { TestedPoint } from "../../advice/response-types.ts";
import type { Kitchen, Setting, SetUp } from "../../kitchen/kitchen.ts";
import type { Writing } from "../writing.ts";
import { atSetting, theAppliance, theContainer, withinTheAppliance } from "./set-up-phrases.ts";
import { settingText, setUpKey } from "./set-ups.ts";

const verbs: Readonly<Record<Setting["kind"], readonly [verb: string, before: string]>> = {
  fixed: ["use", ""],
  step: ["set", "to "],
  program: ["run", "on "],
  mark: ["turn", "to "],
};

/** "set the circulating bath to 38.6 °C (101.5 °F)". */
const setTo = (setUp: SetUp, writing: Writing, called: string): string => {
  const [verb, before] = verbs[setUp.setting.kind];
  const setting = settingText(setUp.setting, writing);
  const which = `${verb} ${called}`;
  return setting === null ? which : `${which} ${before}${setting}`;
};

/** "keep the adjustable cooker at 41 °C (105.8 °F)". */
const keep = (setUp: SetUp, writing: Writing, called: string): string =>
  ["keep", called, atSetting(setUp.setting, writing) ?? "as it is"].join(" ");

const otherContainer = (kitchen: Kitchen, from: SetUp | null, to: SetUp): string =>
  from === null
    ? `use ${theContainer(kitchen, to)}`
    : `change from ${theContainer(kitchen, from)} to ${theContainer(kitchen, to)}`;

/** One is left as it is; of several one is used. */
const severalSetUps = (tests: readonly TestedPoint[]): boolean =>
  new Set(tests.map(({ setting, container }) => setUpKey({ appliance: "", setting, container })))
    .size > 1;

/** To stand before a colon; the candidate is the advice's best, the tests all of its appliance, `called` its name. */
export const actionText = (
  { change, from }: Pick<CultureAdvice, "change" | "from">,
  { setUp }: Candidate,
  kitchen: Kitchen,
  writing: Writing,
  tests: readonly TestedPoint[] = [],
  called: string = theAppliance(kitchen, setUp),
): string => {
  const container = otherContainer(kitchen, from?.setUp ?? null, setUp);
  if (change === "setting")
    return `${setTo(setUp, writing, called)}, ${theContainer(kitchen, setUp)} as tested`;
  if (change === "container") return `${keep(setUp, writing, called)}, but ${container}`;
  if (change === "setting and container") {
    return `${setTo(setUp, writing, called)} and ${container}`;
  }
  const where = withinTheAppliance(kitchen, setUp, writing);
  return change === "none"
    ? `${severalSetUps(tests) ? "use" : "leave"} ${called} as it was tested, ${where}`
    : `${setTo(setUp, writing, called)}, ${theContainer(kitchen, setUp)}`;
};

const sameSetting = (a: Setting, b: Setting): boolean =>
  setUpKey({ appliance: "", container: "", setting: a }) ===
  setUpKey({ appliance: "", container: "", setting: b });

/** Which part of a candidate no test of its appliance has tried; to stand after a semicolon. */
export const untriedText = (
  { setUp }: Candidate,
  { tests }: Pick<ApplianceAdvice, "tests">,
): string => {
  const settingTried = tests.some(({ setting }) => sameSetting(setting, setUp.setting));
  const containerTried = tests.some(({ container }) => container === setUp.container);
  if (tests.length === 0) return "all of that is assumed";
  if (settingTried && containerTried) return "the two were not tested together";
  if (settingTried) return "it was not tested with that container";
  if (containerTried) return "that setting was not tested";
  return "neither that setting nor that container was tested";
};

/** What follows from that. */
export const testFirst = "so test it once with water before trusting a batch to it";
