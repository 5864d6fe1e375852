import type { Hold } from "../hold/hold.ts";
import type { NextTest } from "./next-types.ts";

/** A swing shows its extremes at so many readings a cycle. */
const readingsPerSwing = 12;
const loggerIntervals = [0.5, 1, 2, 5];
const loggerUnknown = 1;

/** By hand: no more often than a person would, no seldomer than tells a night (common practice, no source). */
const hand = { least: 30, most: 60, unknown: 45 } as const;
/** A verdict asks for six readings of the hold; two more for what goes wrong. */
const leastReadings = 8;
/** This near a whole number of swings, as part of one, readings by hand fall into step with it. */
const inStep = 0.15;
/** Nobody reads to the minute: swings shorter than this are met at any point of theirs, minutes. */
const leastSwing = 10;

/**
 * How often to read: a logger twelve times a swing; by hand as often as readings
 * still tell something new (hours over effective readings), out of step with
 * the swing.
 *
 * @param hold of the test that comes nearest; null where there is none
 * @param hours the test is to last
 */
export const readingInterval = (hold: Hold | null, hours: number): NextTest["interval"] => {
  const swing = hold?.swing?.periodMinutes ?? null;
  const wanted = swing === null ? loggerUnknown : swing / readingsPerSwing;
  const logger = loggerIntervals.findLast((one) => one <= wanted) ?? loggerIntervals[0]!;
  return {
    loggerMinutes: logger,
    byHandMinutes: byHand(hold, hours, swing),
    swingMinutes: swing,
  };
};

const byHand = (hold: Hold | null, hours: number, swing: number | null): number => {
  const independent =
    hold === null ? hand.unknown : (hold.hours * 60) / Math.max(1, hold.effectiveReadings);
  const most = Math.max(hand.least, Math.min(hand.most, (hours * 60) / leastReadings));
  const wanted = Math.min(most, Math.max(hand.least, independent));
  const choices = handIntervals
    .filter((one) => one <= most)
    .toSorted((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted));
  return choices.find((one) => !isInStep(one, swing)) ?? choices[0]!;
};

const handIntervals = Array.from(
  { length: (hand.most - hand.least) / 5 + 1 },
  (_, index) => hand.least + 5 * index,
);

const isInStep = (minutes: number, swing: number | null): boolean => {
  if (swing === null || swing < leastSwing) return false;
  const cycles = minutes / swing;
  const whole = Math.round(cycles);
  return whole > 0 && Math.abs(cycles - whole) < inStep;
};
