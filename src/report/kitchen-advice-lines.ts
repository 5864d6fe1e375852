/** Advice below a kitchen's overview on a terminal: only what the overview does not say already, and the next test. */
import type { ApplianceAdvice, Candidate, CultureAdvice } from "../advice/advice-types.ts";
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { markOf } from "./kitchen-page.ts";
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { labelled } from "./terminal-page.ts";
import { actionText, untriedText } from "./wording/advice-actions.ts";
import { adviceSentence } from "./wording/advice.ts";
import { sentence } from "./wording/everyday-names.ts";
import { likelyText } from "./wording/expected.ts";
import { nextTestSentence } from "./wording/next-test.ts";
import { obstacleText } from "./wording/obstacles.ts";
import { applianceName } from "./wording/set-ups.ts";

interface Told {
  readonly appliance: ApplianceAdvice;
  readonly advice: CultureAdvice;
}

/** A change that may help, or another appliance for what this one cannot hold. */
const isNew = ({ advice: { answer, change, elsewhere } }: Told): boolean =>
  answer === "can" || answer === "may"
    ? change !== "none" && change !== "first test"
    : answer === "cannot" && elsewhere !== null;

/** Cultures that no tested set-up holds yet: advice on them comes first. */
const openCultures = ({ setUps, requirements }: KitchenAnalysis): ReadonlySet<string> => {
  const held = new Set(
    setUps.flatMap(({ verdicts }) =>
      verdicts.filter(({ verdict }) => verdict === "holds").map((one) => one.requirement.culture),
    ),
  );
  return new Set(requirements.map(({ culture }) => culture).filter((one) => !held.has(one)));
};

/** Of each set-up whose tests disagree, once: more important than any advice. */
const disagreements = ({ analysis, writing }: KitchenTerminal): readonly string[] => {
  const said = analysis.advice.appliances.flatMap((one) =>
    one.cultures.flatMap(({ obstacles }) =>
      obstacles
        .filter(({ code }) => code === "tests-disagree")
        .map((obstacle) => {
          const name = applianceName(analysis.kitchen, one);
          return `${name}: ${obstacleText(obstacle, analysis.kitchen, writing)}. Find out what was different, and test it again.`;
        }),
    ),
  );
  return [...new Set(said)];
};

const proviso = "Test once with water what is not tested, before you trust a batch to it.";

/** More would push the overview off the screen; the report has them all. */
const mostTold = 4;

/** The change and what it promises; figures and reasons stand in the report. */
const briefChange = (best: Candidate, { appliance, advice }: Told, screen: KitchenTerminal) => {
  const { analysis, writing } = screen;
  const action = actionText(advice, best, analysis.kitchen, writing, appliance.tests);
  const likely = likelyText(advice.chance ?? { probability: 0 }, analysis.confidence, writing);
  const tested = best.basis === "tested" ? "tested" : untriedText(best, appliance);
  return sentence(`${action}: ${likely} (${tested})`);
};

const told = (one: Told, screen: KitchenTerminal): string[] => {
  const { appliance, advice } = one;
  const { analysis, writing } = screen;
  const text =
    advice.best === null || advice.answer === "cannot"
      ? adviceSentence(analysis, appliance, advice, writing)
      : briefChange(advice.best, one, screen);
  return labelled("Advice", `${markOf(analysis, advice.culture)}: ${text}`, screen);
};

export const adviceLines = (screen: KitchenTerminal): string[] => {
  const { analysis } = screen;
  const open = openCultures(analysis);
  const all = analysis.advice.appliances
    .flatMap((appliance) => appliance.cultures.map((advice) => ({ appliance, advice })))
    .filter(isNew);
  const rank = ({ advice }: Told): number => (open.has(advice.culture) ? 0 : 1);
  const first = all.toSorted((a, b) => rank(a) - rank(b)).slice(0, mostTold);
  const warned = disagreements(screen).flatMap((text) => labelled("Note", text, screen));
  if (first.length === 0) return warned;
  const more =
    all.length > first.length ? " More of it in the report, and from holdband match." : "";
  const untested = first.some(({ advice: { best } }) => best !== null && best.basis !== "tested");
  const last = `${untested ? proviso : ""}${more}`.trim();
  return [
    ...warned,
    ...first.flatMap((one) => told(one, screen)),
    ...(last === "" ? [] : labelled("", last, screen)),
  ];
};

export const nextLines = (screen: KitchenTerminal): string[] => {
  const [first] = screen.analysis.advice.next.tests;
  if (first === undefined) return [];
  return labelled("Next", nextTestSentence(screen.analysis, first, screen.writing), screen);
};
