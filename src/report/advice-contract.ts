/**
 * The advice as data, part of `report --json`, `match --json` and `next --json`.
 * Temperatures in degC, times in hours or minutes as named. Every culture's
 * figure carries the culture's id, so that nothing depends on an order. Fields
 * may be added, none renamed or dropped.
 */
import type {
  ApplianceAdvice,
  Candidate,
  Chance,
  CultureAdvice,
  MatchPlace,
} from "../advice/advice-types.ts";
import type { NextTest, OpenVerdict } from "../advice/next-types.ts";
import type { ExpectedLevel } from "../advice/response-types.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { problemText } from "../problem.ts";
import { contractVersion, finite, noticeEntry, rounded, writing } from "./contract.ts";
import { unreadTests } from "./kitchen-page.ts";
import { recheckEntry } from "./recheck-contract.ts";
import { adviceSentence } from "./wording/advice.ts";
import { matchPlaceText } from "./wording/matches.ts";
import { nextTestSentence } from "./wording/next-test.ts";
import { openVerdictText } from "./wording/open-verdicts.ts";

const levelEntry = (level: ExpectedLevel) => ({
  ...level,
  // null: as many as one likes; the t distribution is a normal one then.
  degreesOfFreedom: finite(level.degreesOfFreedom),
});

const candidateEntry = (
  { setUp, basis, testIds, level, band, chances }: Candidate,
  asked: readonly Requirement[],
) => ({
  ...setUp,
  basis,
  tests: [...testIds],
  level: level === null ? null : levelEntry(level),
  band: band === null ? null : { ...band },
  chances: chances.map((chance, at) => ({ culture: asked[at]?.culture ?? "", ...chance })),
});

type Placed = {
  readonly appliance: string;
  readonly candidate: Candidate;
  readonly chance: Chance;
};

const placedEntry = (placed: Placed | null, asked: readonly Requirement[]) =>
  placed === null
    ? null
    : {
        appliance: placed.appliance,
        candidate: candidateEntry(placed.candidate, asked),
        chance: { ...placed.chance },
      };

const elsewhereEntry = ({
  setUp,
  probability,
  basis,
}: NonNullable<CultureAdvice["elsewhere"]>) => ({ ...setUp, probability, basis });

const cultureEntry = (
  advice: CultureAdvice,
  appliance: ApplianceAdvice,
  analysis: KitchenAnalysis,
) => {
  const { best, chance, from, obstacles, elsewhere, ...one } = advice;
  return {
    ...one,
    text: adviceSentence(analysis, appliance, advice, writing),
    best: best === null ? null : candidateEntry(best, analysis.requirements),
    chance: chance === null ? null : { ...chance },
    from: from === null ? null : { ...from.setUp, chance: { ...from.chance } },
    obstacles,
    elsewhere: elsewhere === null ? null : elsewhereEntry(elsewhere),
  };
};

const applianceEntry = (one: ApplianceAdvice, analysis: KitchenAnalysis) => ({
  appliance: one.appliance,
  tests: one.tests.map((test) => ({ ...test })),
  terms: one.terms.map((term) => ({ ...term })),
  scatter: { ...one.scatter },
  curves: one.curves.map(({ container, points }) => ({
    container,
    points: points.map((point) => ({ ...point, level: levelEntry(point.level) })),
  })),
  candidates: one.candidates.map((each) => candidateEntry(each, analysis.requirements)),
  cultures: one.cultures.map((culture) => cultureEntry(culture, one, analysis)),
});

const placeEntry = (place: MatchPlace, analysis: KitchenAnalysis) => ({
  culture: place.culture,
  placed: placedEntry(place.placed, analysis.requirements),
  why: place.why,
  alone: placedEntry(place.alone, analysis.requirements),
  text: matchPlaceText(analysis, place, writing),
});

const nextEntry = ({ setUp, ...test }: NextTest, text: string) => ({ ...setUp, ...test, text });
const openEntry = ({ setUp, ...open }: OpenVerdict, text: string) => ({ ...setUp, ...open, text });

/** Plain data; numbers are rounded by the contract it becomes part of. */
export const adviceEntry = (analysis: KitchenAnalysis) => {
  const { floor, appliances, containers, match, next } = analysis.advice;
  return {
    floor,
    appliances: appliances.map((one) => applianceEntry(one, analysis)),
    containers,
    match: {
      places: match.places.map((one) => placeEntry(one, analysis)),
      weakest: match.weakest,
      floor: match.floor,
    },
    next: {
      tests: next.tests.map((one) => nextEntry(one, nextTestSentence(analysis, one, writing))),
      open: next.open.map((one) => openEntry(one, openVerdictText(analysis, one, writing))),
    },
    recheck: recheckEntry(analysis),
  };
};

const requirementEntry = ({ culture, name, low, high, ceiling, hours, share }: Requirement) => ({
  culture,
  name,
  low,
  high,
  ceiling,
  hours,
  share,
});

/** `match --json` and `next --json`, contract version 1; ready for JSON.stringify. */
export const toAdviceContract = (analysis: KitchenAnalysis, kind: "match" | "next") =>
  rounded({
    holdband: analysis.version,
    contract: contractVersion,
    kind,
    requirements: analysis.requirements.map(requirementEntry),
    advice: adviceEntry(analysis),
    unreadTests: unreadTests(analysis).map(({ test, problem }) => ({
      id: test.id,
      problem: { code: problem.code, text: problemText(problem) },
    })),
    notices: analysis.notices.map(noticeEntry),
    share: analysis.share,
    confidence: analysis.confidence,
  });
