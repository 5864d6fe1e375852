import { usualRoomRange } from "../culture/slow-prior.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import type { CultureAdvice } from "./advice-types.ts";
import type { KnownAppliance } from "./candidates.ts";
import { chanceOf } from "./chance.ts";
import type { Choice } from "./choose.ts";
import { courseShapes } from "./course-shape.ts";

import { expectedRun } from "./expected.ts";
import type { Response } from "./response.ts";

/** How far a room that is kept steady still moves either way, degC. */
const steady = 1;
/** A gain in probability worth the trouble. */
const leastGain = 0.1;

/**
 * What the chance would be if the room stayed within a degree of its middle,
 * day and night. Without a thermostat the slow movement is taken for the room's,
 * and shrinks as the room's range does (an assumption).
 *
 * @returns null where a thermostat keeps the room out, where that gains less
 *   than 0.1, or where nothing was tested
 */
export const steadyRoom = (
  { input: { confidence, kitchen }, response }: KnownAppliance,
  { best, chance }: Choice,
  requirement: Requirement,
): CultureAdvice["steadyRoom"] => {
  if (chance.verdict !== "unproven" || response.tests.length === 0) return null;
  if (response.thermostat === true) return null;
  const { mean } = response.room;
  const range = kitchen.room === null ? usualRoomRange : kitchen.room.high - kitchen.room.low;
  const calm: Response = { ...response, room: { mean, standardDeviation: steady / 2 } };
  const chanceWith = (one: Response, slowShare: number): number =>
    chanceOf(requirement, expectedRun(one, best.setUp), courseShapes(one, slowShare)(best.setUp), {
      response: one,
      confidence,
    }).probability;
  const gain = chanceWith(calm, Math.min(1, (2 * steady) / range)) - chanceWith(response, 1);
  if (gain < leastGain) return null;
  // A tested set-up has a verdict of its own; what a steady room adds is the same.
  const probability = Math.min(1, chance.probability + gain);
  return { low: mean - steady, high: mean + steady, probability };
};
