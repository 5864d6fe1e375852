import { celsiusDifference } from "../quantity.ts";
import { mean } from "../stats/summary.ts";
import { fewReadings } from "./fast-residual.ts";
import {
  heldEvidence,
  holdPlays,
  scenarioEvidence,
  type HeldEvidence,
  type HoldPlays,
} from "./hold-plays.ts";
import { pooledThermometer } from "./pooled-thermometer.ts";
import type { NamedThermometer } from "./thermometer-doubt.ts";
import type { ScenarioPlay } from "./probability.ts";
import { strengthLikelihoods, testedHours } from "./scenarios.ts";
import { shiftedEvidence, shiftedPlays } from "./shifted-hold.ts";
import type { VerdictEvidence } from "./verdict-evidence.ts";
import type { Requirement, Verdict } from "./verdict-types.ts";
import { decide, tooLittle, verdictOn } from "./verdict.ts";

/** One test of a set-up: a verdict's evidence, and which thermometer took it. */
export type TestEvidence = VerdictEvidence & NamedThermometer;

type HeldTest = HeldEvidence & NamedThermometer;

/**
 * Decides whether a set-up meets a culture's requirement, all its tests taken
 * together. One test gives exactly what `decide` gives.
 *
 * - Level: the mean of the tests' hold means, each counting alike, since what
 *   sets runs apart (jars, lid, room) is larger than what one run leaves open.
 *   A future run lies about it with the `runToRun` of the evidence, which the
 *   caller takes for this number of tests (see futureRun).
 * - Course: each test's scenarios, moved to that level. How strongly room and
 *   appliance move the food belongs to the set-up, so every test's evidence on
 *   it counts in the scenarios of all; and a test counts in proportion to the
 *   hours it tested, up to the culture's, less where it has too few readings to
 *   show how the food moves between them. So a short or sparse test, which
 *   leaves much open, hardly weakens a long one, as equal weights would.
 * - Doubt: one thermometer's enters once, those of different thermometers as
 *   independent (see pooledThermometer); display steps and the uncertainties of
 *   the means are independent from test to test: root of the sum of squares,
 *   divided by n (JCGM 100:2008, 5.1.2).
 * - Reasons and dwell: those of the test with the longest hold, moved to the
 *   common level. Whether the heat fell away is its word too: a test that ran
 *   longer shows that the appliance did not switch itself off.
 *
 * Tests that did not settle, and those with less hold than could prove
 * anything, are left out where there are better ones (see restsOn).
 *
 * @param tests at least one; their `runToRun` is that of the set-up
 */
export const decideTogether = (
  requirement: Requirement,
  tests: readonly TestEvidence[],
): Verdict => {
  const used = restsOn(tests);
  const held = used.map(heldTest).filter((test) => test !== null);
  if (used.length === 1 || held.length === 0) return decide(requirement, furthest(used));
  const level = mean(held.map(({ hold }) => hold.mean));
  const looks = outlooks(requirement, held);
  const weights = courseWeights(requirement, held);
  const parts = (pick: (look: HoldPlays) => readonly ScenarioPlay[]) =>
    looks.map((look, at) => ({
      weight: weights[at]!,
      plays: shiftedPlays(pick(look), level - held[at]!.hold.mean),
    }));
  return verdictOn(requirement, commonEvidence(held, level), {
    all: parts(({ plays }) => plays),
    tested: () => parts(({ tested }) => tested()),
    unseenUncertainty: Math.hypot(
      ...looks.map(({ unseenUncertainty }, at) => Math.sqrt(weights[at]!) * unseenUncertainty),
    ),
  });
};

/**
 * The tests that a set-up's verdict rests on: those with enough hold to prove
 * something; where there are none, those that settled at all; else all.
 */
export const restsOn = <Test extends Pick<VerdictEvidence, "night">>(
  tests: readonly Test[],
): readonly Test[] => {
  const settled = tests.filter(({ night }) => night.hold !== null);
  const enough = settled.filter(({ night }) => !tooLittle(night.hold!));
  return enough.length > 0 ? enough : settled.length > 0 ? settled : tests;
};

/** The test that came to the highest temperature: where none settled, it says most on whether one can. */
const furthest = (tests: readonly TestEvidence[]): TestEvidence =>
  tests.reduce((a, b) => ((b.night.peak ?? -Infinity) > (a.night.peak ?? -Infinity) ? b : a));

const heldTest = (test: TestEvidence): HeldTest | null => {
  const held = heldEvidence(test);
  return held === null ? null : { ...held, thermometerId: test.thermometerId };
};

/** Each test's outlook, in the light of what the others say of the set-up. */
const outlooks = (requirement: Requirement, held: readonly HeldTest[]): readonly HoldPlays[] => {
  const seen = held.map((test) => strengthLikelihoods(scenarioEvidence(test)));
  return held.map((test, at) => {
    const others = seen.filter((_, other) => other !== at);
    const summed = seen[at]!.map((_, strength) =>
      others.reduce((sum, likelihoods) => sum + likelihoods[strength]!, 0),
    );
    return holdPlays(requirement, test, summed);
  });
};

/** How much each test counts in what is expected of the course; the weights sum to 1. */
const courseWeights = ({ hours }: Requirement, held: readonly HeldTest[]): readonly number[] => {
  const seen = held.map(
    ({ hold }) => Math.min(hours, testedHours(hold)) * Math.min(1, hold.readings / fewReadings),
  );
  const total = seen.reduce((sum, one) => sum + one, 0);
  return seen.map((one) => one / total);
};

/** Standard uncertainty of the mean of independent figures, from theirs. */
const ofMean = (uncertainties: readonly number[]): number =>
  Math.hypot(...uncertainties) / uncertainties.length;

/** The longest test at the common level, with the doubt of all. */
const commonEvidence = (held: readonly HeldTest[], level: number): HeldEvidence => {
  const longest = held.reduce((a, b) => (testedHours(b.hold) > testedHours(a.hold) ? b : a));
  const moved = shiftedEvidence(longest, level - longest.hold.mean);
  return {
    ...moved,
    hold: { ...moved.hold, meanUncertainty: ofMean(held.map(({ hold }) => hold.meanUncertainty)) },
    resolution: celsiusDifference(ofMean(held.map(({ resolution }) => resolution))),
    thermometer: pooledThermometer(held),
  };
};
