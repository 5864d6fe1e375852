/** What a water test could prove, and how likely that is. */
import type { NextTest } from "../../advice/next-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { fixed, percent } from "../number-format.ts";
import type { Writing } from "../writing.ts";
import { shortCultureName } from "./cultures.ts";
import { setUpKey } from "./set-ups.ts";

/** Chances smaller than this are not worth a clause. */
const leastTold = 0.05;
/** That an untested set-up holds a culture it would not be chosen for is told from here on (our choice). */
const welcome = 0.25;

/** What a test may prove of one culture; null where that is not worth a clause. */
export interface Settled {
  readonly culture: string;
  readonly holds: number | null;
  readonly misses: number | null;
}

type Told = Pick<KitchenAnalysis, "confidence" | "advice">;

/** However likely a set-up is that nobody tested: nothing of it is proven. That it misses is then no news. */
const isUnsettled = (basis: NextTest["basis"], now: number, confidence: number): boolean =>
  now > 1 - confidence && (basis !== "tested" || now < confidence);

/** Is it what its appliance would be set to for this culture? */
const isChosen = ({ setUp }: NextTest, culture: string, { advice }: Told): boolean =>
  advice.appliances.some(({ cultures }) =>
    cultures.some(
      (one) =>
        one.culture === culture &&
        one.best !== null &&
        setUpKey(one.best.setUp) === setUpKey(setUp),
    ),
  );

const worthTelling = (chance: number, least = leastTold): number | null =>
  chance >= least ? chance : null;

/** That an untested set-up misses a culture which nobody would put there is no news. */
const settledOf = (
  test: NextTest,
  { culture, now, holds, misses }: NextTest["outcomes"][number],
  analysis: Told,
): Settled | null => {
  if (!isUnsettled(test.basis, now, analysis.confidence)) return null;
  const isNews = test.basis === "tested" || isChosen(test, culture, analysis);
  const settled = isNews
    ? { culture, holds: worthTelling(holds), misses: worthTelling(misses) }
    : { culture, holds: worthTelling(holds, welcome), misses: null };
  return settled.holds === null && settled.misses === null ? null : settled;
};

/** What the test could prove that is not proven now: first what it may well hold. */
export const settledBy = (test: NextTest, analysis: Told): readonly Settled[] =>
  test.outcomes
    .map((outcome) => settledOf(test, outcome, analysis))
    .filter((settled) => settled !== null)
    .toSorted((a, b) => (b.holds ?? 0) - (a.holds ?? 0) || (b.misses ?? 0) - (a.misses ?? 0));

const openCount = (
  { basis, outcomes }: NextTest,
  { confidence }: Pick<KitchenAnalysis, "confidence">,
): number => outcomes.filter(({ now }) => isUnsettled(basis, now, confidence)).length;

const mostTold = 3;

/** A test is simulated with some dozen results: no chance is known closer than to a twentieth. */
const roughly = (chance: number, space: string): string =>
  chance > 0.95
    ? `more than ${percent(0.95, space)}`
    : `about ${percent(Math.round(chance * 20) / 20, space)}`;

const isHeld = ({ setUps }: KitchenAnalysis, culture: string): boolean =>
  setUps.some(({ verdicts }) =>
    verdicts.some(
      ({ verdict, requirement }) => verdict === "holds" && requirement.culture === culture,
    ),
  );

/** "to prove that it holds Yoghurt, which nothing tested holds yet: about 35 %, to rule it out: about 45 %". */
const settledText = (
  { culture, holds, misses }: Settled,
  analysis: KitchenAnalysis,
  { space }: Writing,
): string => {
  const asked = analysis.requirements.find((one) => one.culture === culture);
  const name = asked === undefined ? culture : shortCultureName(asked);
  const first = isHeld(analysis, culture) ? "" : ", which nothing tested holds yet";
  const out = misses === null ? "" : roughly(misses, space);
  if (holds === null) return `to rule out ${name}: ${out}`;
  const proven = `to prove that it holds ${name}${first}: ${roughly(holds, space)}`;
  return misses === null ? proven : `${proven}, to rule it out: ${out}`;
};

/** A single one is told by its chances already; of an untested set-up no verdict is open yet. */
const expectedText = (test: NextTest, analysis: KitchenAnalysis, told: number): string | null => {
  const open = openCount(test, analysis);
  if (open === 0 || (told > 0 && (open < 2 || test.basis !== "tested"))) return null;
  return `To be expected: ${fixed(test.gain, 1)} of its ${open} open ${open === 1 ? "verdict" : "verdicts"} decided.`;
};

/** "Chance to prove that it holds ...: about 55 %, to rule it out: about 25 %. To be expected: 1.4 of its 2 open verdicts decided." */
export const worthText = (test: NextTest, analysis: KitchenAnalysis, writing: Writing): string => {
  const told = settledBy(test, analysis).slice(0, mostTold);
  const chances = told.map((one) => settledText(one, analysis, writing)).join("; ");
  const expected = expectedText(test, analysis, told.length);
  return [told.length === 0 ? null : `Chance ${chances}.`, expected]
    .filter((text) => text !== null)
    .join(" ");
};
