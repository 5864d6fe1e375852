import type { HeldTest, Response } from "./response.ts";
import { assumedDeviation } from "../culture/run-to-run.ts";
import { effectiveDegreesOfFreedom } from "../stats/effective-degrees-of-freedom.ts";
import { studentTQuantile } from "../stats/student-t.ts";
import { resolutionUncertainty } from "../thermometer/budget.ts";
import { scatterPrior } from "./response-prior.ts";
import type { RecheckDifference } from "./recheck-types.ts";

/** Figures of two tests of one set-up. */
export interface TestPair {
  readonly baseline: HeldTest;
  readonly newest: HeldTest;
  /** One thermometer took both, and nothing of it was checked anew in between. */
  readonly sharedThermometer: boolean;
  /** Hold means of all the set-up's tests but the newest, degC. */
  readonly earlier: readonly number[];
  /** The appliance's response without the newest test: how far its runs scatter. */
  readonly before: Response;
}

/** An uncertainty with the degrees of freedom behind it. */
interface Doubt {
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
}

const known = (standardUncertainty: number): Doubt => ({
  standardUncertainty,
  degreesOfFreedom: Infinity,
});

/** Newest minus baseline with independent doubts (JCGM 100:2008, 5.1.2 and G.4.1). */
export const differenceOf = (
  baseline: number,
  now: number,
  doubts: readonly Doubt[],
): RecheckDifference => {
  const standardUncertainty = Math.hypot(...doubts.map((one) => one.standardUncertainty));
  const degreesOfFreedom = effectiveDegreesOfFreedom(doubts);
  const reach = studentTQuantile(0.975, degreesOfFreedom) * standardUncertainty;
  const difference = now - baseline;
  return {
    baseline,
    now,
    difference,
    standardUncertainty,
    degreesOfFreedom,
    low: difference - reach,
    high: difference + reach,
  };
};

/**
 * Difference of the hold means of two tests. Each run lies about the set-up's
 * level with the scatter of runs, so that twice its variance counts; a shared
 * thermometer's error cancels, different ones' add; what the room's difference
 * lets expect, counts as doubt.
 */
export const levelDifference = ({
  baseline,
  newest,
  sharedThermometer,
  before,
}: TestPair): RecheckDifference => {
  const [then, now] = [baseline.settled, newest.settled];
  const thermometers = sharedThermometer
    ? []
    : [then, now].map(({ evidence }) => known(evidence.thermometer.standardUncertainty));
  const own = [then, now].flatMap(({ evidence: { hold, resolution } }) => [
    known(hold.meanUncertainty),
    known(resolutionUncertainty(resolution)),
  ]);
  return differenceOf(then.level, now.level, [
    ...own,
    ...thermometers,
    known(roomDoubt(before, baseline, newest)),
    {
      standardUncertainty: Math.SQRT2 * runDeviation(before),
      degreesOfFreedom: before.fit.degreesOfFreedom,
    },
  ]);
};

/**
 * Standard deviation of single runs for a recheck. Calling an appliance moved is
 * a claim, so the prior scatter is the larger one that a verdict assumes from
 * run to run, in place of the response's own, with the same weight.
 */
export const runDeviation = ({ fit: { scale, degreesOfFreedom } }: Response): number => {
  const { standardDeviation, degreesOfFreedom: weight } = scatterPrior;
  const more = weight * (assumedDeviation ** 2 - standardDeviation ** 2);
  return Math.sqrt(scale ** 2 + more / degreesOfFreedom);
};

/** What a warmer or cooler room, and not knowing it, does to the level, degC. */
const roomDoubt = ({ design, fit }: Response, a: HeldTest, b: HeldTest): number => {
  const at = design.terms.findIndex(({ term }) => term.code === "room");
  const slope = Math.max(0, fit.coefficients[at]!);
  const [one, other] = [a.settled.room, b.settled.room];
  return slope * Math.hypot(one.mean - other.mean, one.standardDeviation, other.standardDeviation);
};
