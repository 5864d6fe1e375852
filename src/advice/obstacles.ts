import type { Requirement } from "../culture/verdict-types.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import { testedHours } from "../culture/scenarios.ts";
import type { AdviceInput } from "./advice-input.ts";
import type { Candidate, Obstacle } from "./advice-types.ts";
import type { KnownAppliance } from "./candidates.ts";
import { heatEnds } from "./chance.ts";
import type { Choice } from "./choose.ts";
import type { HeldTest } from "./response.ts";
import { testsDisagree } from "./tests-disagree.ts";

/** A risk of passing the ceiling worth a sentence. */
const worthSaying = 0.05;

/**
 * Why an appliance does not serve a culture, or not surely; most telling first.
 * Empty where its best set-up is proven.
 */
export const obstaclesFor = (
  known: KnownAppliance,
  candidates: readonly Candidate[],
  choice: Choice | null,
  requirement: Requirement,
): readonly Obstacle[] => {
  if (choice === null || choice.chance.verdict === "holds") return [];
  return [
    ...missingTests(known.input, known),
    ...standsAlone(known.input, choice, requirement),
    ...reachObstacles(candidates, requirement),
    ...shapeObstacles(known, choice, requirement),
    ...ceilingObstacle(choice, requirement),
    ...testsDisagree(known),
  ];
};

const missingTests = ({ tests }: AdviceInput, { response }: KnownAppliance): Obstacle[] => {
  if (response.tests.length > 0) return [];
  const own = tests.filter(({ setUp }) => setUp.appliance === response.appliance.id).length;
  return own === 0 ? [{ code: "not-tested" }] : [{ code: "only-failed-tests", tests: own }];
};

/** A verdict of `holds` that the advice does not share. */
const standsAlone = (
  { setUps, requirements }: AdviceInput,
  { best }: Choice,
  requirement: Requirement,
): Obstacle[] => {
  if (best.basis !== "tested") return [];
  const own = setUps.find(({ setUp }) => setUpKey(setUp) === setUpKey(best.setUp));
  const verdict = own?.verdicts[requirements.indexOf(requirement)];
  return verdict?.verdict === "holds"
    ? [{ code: "stands-alone", setUp: best.setUp, alone: verdict.probability }]
    : [];
};

type Levelled = Candidate & { readonly level: NonNullable<Candidate["level"]> };

const at = ({ setUp, level: { mean } }: Levelled) => ({ setUp, mean });

/** Too warm at its lowest, too cold at its highest, or nothing between two neighbours. */
const reachObstacles = (
  candidates: readonly Candidate[],
  { low, high }: Requirement,
): Obstacle[] => {
  // A program nobody tested may come to anything: it is not known what the lowest is.
  if (
    candidates.some(({ setUp, basis }) => basis === "assumed" && setUp.setting.kind === "program")
  ) {
    return [];
  }
  const levelled = candidates
    .filter((one): one is Levelled => one.level !== null && one.basis !== "assumed")
    .toSorted((a, b) => a.level.mean - b.level.mean);
  const lowest = levelled[0];
  const highest = levelled.at(-1);
  if (lowest === undefined || highest === undefined) return [];
  const warm = lowest.level.mean - high;
  const cold = low - highest.level.mean;
  if (warm > 0) return [{ code: "too-warm-at-lowest", ...at(lowest), by: warm }];
  if (cold > 0) return [{ code: "too-cold-at-highest", ...at(highest), by: cold }];
  if (levelled.some(({ level: { mean } }) => mean >= low && mean <= high)) return [];
  const below = levelled.findLast(({ level: { mean } }) => mean < low)!;
  const above = levelled.find(({ level: { mean } }) => mean > high)!;
  return [{ code: "settings-too-coarse", below: at(below), above: at(above) }];
};

const shapeObstacles = (
  { response, shapeOf }: KnownAppliance,
  { best }: Choice,
  { low, high, hours }: Requirement,
): Obstacle[] => {
  const shape = shapeOf(best.setUp);
  if (shape.reference === null) return [];
  const obstacles: Obstacle[] = [];
  const windowWidth = high - low;
  const bandWidth = shape.band.high - shape.band.low;
  if (shape.peakToPeak !== null && shape.peakToPeak > windowWidth) {
    obstacles.push({ code: "swings-too-wide", peakToPeak: shape.peakToPeak, windowWidth });
  } else if (bandWidth > windowWidth) {
    obstacles.push({ code: "band-too-wide", bandWidth, windowWidth });
  }
  const { drift } = shape.reference.settled.evidence.hold;
  const proven = drift.low > 0 || drift.high < 0;
  if (proven && Math.abs(drift.perHour) * hours > windowWidth) {
    obstacles.push({ code: "drifts", perHour: drift.perHour });
  }
  const ends = heatEnds(response, hours);
  if (ends !== null) obstacles.push(endObstacle(ends, hours));
  return obstacles;
};

const endObstacle = ({ settled }: HeldTest, needed: number): Obstacle => ({
  code: "fell-away",
  afterHours: testedHours(settled.evidence.hold),
  needed,
});

const ceilingObstacle = ({ chance }: Choice, { ceiling }: Requirement): Obstacle[] => {
  const risk = chance.ceilingRisk ?? 0;
  return ceiling !== null && risk > worthSaying ? [{ code: "passes-ceiling", ceiling, risk }] : [];
};
