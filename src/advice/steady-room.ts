import { decideTogether } from "../culture/decide-together.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import type { Candidate, CultureAdvice } from "./advice-types.ts";
import type { KnownAppliance } from "./candidates.ts";
import { chanceOf } from "./chance.ts";
import type { Choice } from "./choose.ts";
import { courseShapes } from "./course-shape.ts";
import { expect, testsOf, type HeldTest, type Response } from "./response.ts";

/** How far a room that is kept steady still moves either way, degC. */
const steady = 1;
/** A gain in probability worth the trouble. */
const leastGain = 0.05;

/**
 * What the chance would be if the room stayed within a degree of its middle,
 * day and night: the same model with a narrower room.
 *
 * @returns null where that gains less than 0.05, or nothing was tested
 */
export const steadyRoom = (
  { input: { confidence }, response }: KnownAppliance,
  { best, chance }: Choice,
  requirement: Requirement,
): CultureAdvice["steadyRoom"] => {
  if (chance.verdict !== "unproven" || response.tests.length === 0) return null;
  if (response.thermostat === true) return null;
  const { mean } = response.room;
  const room = { low: mean - steady, high: mean + steady };
  const calm: Response = {
    ...response,
    room: { mean, standardDeviation: steady / 2 },
    tests: response.tests.map((test) => inRoom(test, room)),
  };
  const probability =
    best.basis === "tested"
      ? decided(calm, best, requirement)
      : predicted(calm, best, requirement, confidence);
  return probability - chance.probability < leastGain ? null : { ...room, probability };
};

const predicted = (
  calm: Response,
  { setUp }: Candidate,
  requirement: Requirement,
  confidence: number,
): number => {
  const shape = courseShapes(calm)(setUp);
  const asked = { response: calm, confidence };
  return chanceOf(requirement, expect(calm, setUp), shape, asked).probability;
};

/** A tested set-up is decided again, as its verdict was. */
const decided = (calm: Response, { setUp }: Candidate, requirement: Requirement): number => {
  const tests = testsOf(calm, setUp).map(({ settled }) => settled.evidence);
  return tests.length === 0 ? 0 : decideTogether(requirement, tests).probability;
};

const inRoom = (
  test: HeldTest,
  room: { readonly low: number; readonly high: number },
): HeldTest => ({
  ...test,
  settled: { ...test.settled, evidence: { ...test.settled.evidence, room } },
});
