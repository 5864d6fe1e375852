/** One sentence for an appliance and a culture that a person can act on. */
import type { Answer, ApplianceAdvice, CultureAdvice } from "../../advice/advice-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import type { Writing } from "../writing.ts";
import { actionText, testFirst, untriedText } from "./advice-actions.ts";
import { joined, obstacles, steadyRoom, testAsked } from "./advice-clauses.ts";
import type { Context, Known } from "./advice-clauses.ts";
import { unknown } from "./advice-unknown.ts";
import { elsewhereText } from "./elsewhere.ts";
import { sentence } from "./everyday-names.ts";
import { likelyText, outlookText } from "./expected.ts";
import { probabilityText } from "./probability.ts";
import { remedyText } from "./open-verdicts.ts";
import { theAppliance, withinTheAppliance } from "./set-up-phrases.ts";
import { setUpKey } from "./set-ups.ts";

/** What would make a tested set-up surer: the same as beside its open verdict. */
const toBeSurer = ({ analysis, best, advice }: Known): string | null => {
  const open = analysis.advice.next.open.find(
    ({ culture, setUp }) => culture === advice.culture && setUpKey(setUp) === setUpKey(best.setUp),
  );
  return open === undefined ? null : `to be surer, ${remedyText(open)}`;
};

/** What the tests behind it leave to be done before a batch. */
const proviso = (known: Known): string | null => {
  const { best, appliance, advice } = known;
  if (best.basis !== "tested") {
    const one = appliance.tests.length === 1 ? ", and all of this rests on one test" : "";
    return `${untriedText(best, appliance)}${one}, ${testFirst}`;
  }
  const one = best.testIds.length > 1 ? null : "that rests on one test";
  return advice.answer === "can" ? one : joined([one, toBeSurer(known)], ": ");
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

/** What is not proven is not advised: it is said, no more. */
const mayAsTested = ({ best, analysis, writing }: Known): string =>
  `${theAppliance(analysis.kitchen, best.setUp)} as it was tested, ${withinTheAppliance(analysis.kitchen, best.setUp, writing)}`;

const may = (known: Known): string =>
  joined([
    `${known.advice.change === "none" ? mayAsTested(known) : action(known)}: ${outlook(known)}`,
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
