/** One sentence for an appliance and a culture that a person can act on. */
import type {
  Answer,
  ApplianceAdvice,
  Candidate,
  Chance,
  CultureAdvice,
} from "../../advice/advice-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { askedRange } from "../temperature-text.ts";
import type { Writing } from "../writing.ts";
import { actionText, testFirst, untriedText } from "./advice-actions.ts";
import { elsewhereText } from "./elsewhere.ts";
import { sentence } from "./everyday-names.ts";
import { levelText, likelyText, outlookText } from "./expected.ts";
import { obstacleText } from "./obstacles.ts";
import { probabilityText } from "./probability.ts";
import { theAppliance, theSetUp, withinTheAppliance } from "./set-up-phrases.ts";

interface Context {
  readonly analysis: KitchenAnalysis;
  readonly appliance: ApplianceAdvice;
  readonly advice: CultureAdvice;
  readonly writing: Writing;
}

const testAsked = "test it with water first";

type Known = Context & { readonly best: Candidate; readonly chance: Chance };

const joined = (parts: readonly (string | null)[], between = "; "): string =>
  parts.filter((part) => part !== null).join(between);

/** The most telling, as clauses joined; null where there is none to tell. */
const obstacles = (
  { analysis, advice, writing }: Context,
  most: number,
  untold: readonly string[] = [],
): string | null => {
  const told = advice.obstacles.filter(({ code }) => !untold.includes(code)).slice(0, most);
  return told.length === 0
    ? null
    : told.map((one) => obstacleText(one, analysis.kitchen, writing)).join(", and ");
};

const steadyRoom = ({ advice, analysis, writing }: Context): string | null => {
  if (advice.steadyRoom === null) return null;
  const { low, high, probability } = advice.steadyRoom;
  const likely = probabilityText(probability, analysis.confidence, writing.space);
  return `with the room kept within ${askedRange(writing, low, high)} it would be ${likely}`;
};

/** What the tests behind it leave to be done before a batch. */
const proviso = ({ best, appliance, advice }: Known): string | null => {
  if (best.basis !== "tested") return `${untriedText(best, appliance)}, ${testFirst}`;
  if (best.testIds.length > 1) return null;
  return advice.answer === "can"
    ? "that rests on one test"
    : "that rests on one test, so repeat it";
};

const chanceIn = ({ chance, analysis, writing }: Known): string =>
  probabilityText(chance.probability, analysis.confidence, writing.space);

/** "it holds (96 %)", "81 % likely to hold", "expected 38.0 °C (...), 93 % likely to hold". */
const outlook = (known: Known): string => {
  const { best, chance, analysis, writing } = known;
  if (best.basis !== "tested") return outlookText(best, chance, analysis.confidence, writing);
  return chance.verdict === "holds"
    ? `it holds (${chanceIn(known)})`
    : `${likelyText(chance, analysis.confidence, writing)}, not proven`;
};

const action = ({ advice, best, appliance, analysis, writing }: Known): string =>
  actionText(advice, best, analysis.kitchen, writing, appliance.tests);

const can = (known: Known): string =>
  joined([`${action(known)}: ${outlook(known)}`, proviso(known)]);

const may = (known: Known): string =>
  joined([
    `${action(known)}: ${outlook(known)}`,
    obstacles(known, 1, ["not-tested"]),
    steadyRoom(known),
    proviso(known),
    elsewhereText(known),
  ]);

const nearest = ({ best, analysis, writing, chance }: Known): string =>
  `${withinTheAppliance(analysis.kitchen, best.setUp, writing)}, it comes nearest and is ${likelyText(chance, analysis.confidence, writing)}`;

const cannot = (known: Known): string => {
  const name = theAppliance(known.analysis.kitchen, known.best.setUp);
  const why = obstacles(known, 2) ?? nearest(known);
  return joined([
    `${name} cannot hold this: ${why}`,
    steadyRoom(known),
    elsewhereText(known) ?? noneElsewhere(known),
  ]);
};

const untested = (known: Known): string => {
  const { best, analysis, writing, chance } = known;
  const name = theAppliance(analysis.kitchen, best.setUp);
  const where = withinTheAppliance(analysis.kitchen, best.setUp, writing);
  const likely = likelyText(chance, analysis.confidence, writing);
  const level = best.level === null ? "" : `comes to ${levelText(best.level, writing)}, and `;
  return joined([
    `${name} is not tested yet: by assumption alone, ${where}, it ${level}is ${likely}`,
    testAsked,
    elsewhereText(known),
  ]);
};

const unknown = (known: Known): string => {
  const { best, analysis, appliance, advice, writing } = known;
  const failed = obstacles(known, 1, ["not-tested"]);
  if (appliance.tests.length === 0 && (failed === null || advice.change === "first test")) {
    return failed === null ? untested(known) : `${failed}: ${testAgain(known)}`;
  }
  const name = theAppliance(analysis.kitchen, best.setUp);
  const where = withinTheAppliance(analysis.kitchen, best.setUp, writing);
  return joined([
    `too little is known of ${name} for this: ${where}, ${outlookText(best, known.chance, analysis.confidence, writing)}`,
    failed,
    steadyRoom(known),
    "test it there with water before trusting it",
    elsewhereText(known),
  ]);
};

const testAgain = (known: Known): string => {
  const { analysis, best, writing } = known;
  return joined([
    `test ${theSetUp(analysis.kitchen, best.setUp, writing)}, again with water, and look at the curve`,
    elsewhereText(known),
  ]);
};

/** Said only where every other appliance was looked at. */
const noneElsewhere = ({ analysis }: Context): string | null =>
  analysis.appliance === null && analysis.kitchen.appliances.length > 1
    ? "no other appliance here is likely to"
    : null;

/** Where the appliance offers nothing that could be judged. */
const nothing = (context: Context): string => {
  const { analysis, appliance } = context;
  const name = theAppliance(analysis.kitchen, appliance);
  const why = obstacles(context, 1);
  return joined([
    `nothing can be said of ${name} for this${why === null ? "" : `: ${why}`}`,
    testAsked,
    elsewhereText(context),
  ]);
};

const sentences: Readonly<Record<Answer, (known: Known) => string>> = {
  can,
  may,
  cannot,
  unknown,
};

/** The culture is not named: it stands beside the sentence. */
export const adviceSentence = (
  analysis: KitchenAnalysis,
  appliance: ApplianceAdvice,
  advice: CultureAdvice,
  writing: Writing,
): string => {
  const context = { analysis, appliance, advice, writing };
  const { best, chance } = advice;
  return sentence(
    best === null || chance === null
      ? nothing(context)
      : sentences[advice.answer]({ ...context, best, chance }),
  );
};
