import type { Hold } from "../hold/hold.ts";
import type { NextTest } from "./next-types.ts";

/** A swing shows its extremes at so many readings a cycle. */
const readingsPerSwing = 12;
const loggerIntervals = [0.5, 1, 2, 5];
const loggerUnknown = 1;
const loggerSlowest = 5;

/** By hand: no more often than a person would, no seldomer than tells a night (common practice, no source). */
const hand = { least: 20, most: 60, unknown: 45 } as const;
/** A verdict asks for six readings of the hold; two more for what goes wrong. */
const leastReadings = 8;
/** This near a whole number of swings, readings by hand fall into step with it. */
const inStep = 0.15;

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
    loggerMinutes: hold === null ? loggerUnknown : Math.min(logger, loggerSlowest),
    byHandMinutes: byHand(hold, hours, swing),
    swingMinutes: swing,
  };
};

const byHand = (hold: Hold | null, hours: number, swing: number | null): number => {
  const independent =
    hold === null ? hand.unknown : (hold.hours * 60) / Math.max(1, hold.effectiveReadings);
  const most = Math.min(hand.most, (hours * 60) / leastReadings);
  const wanted = roundedTo5(Math.max(hand.least, Math.min(most, independent)));
  const choices = [0, -5, 5, -10, 10, -15, 15].map((step) => wanted + step);
  const free = choices.find((one) => one >= hand.least && one <= most && !isInStep(one, swing));
  return free ?? wanted;
};

const roundedTo5 = (minutes: number): number => 5 * Math.round(minutes / 5);

const isInStep = (minutes: number, swing: number | null): boolean => {
  if (swing === null || swing < 2 * inStep) return false;
  const cycles = minutes / swing;
  // Between many short swings any reading by hand is out of step by itself.
  return cycles < 3 && Math.abs(cycles - Math.round(cycles)) < inStep && Math.round(cycles) > 0;
};
