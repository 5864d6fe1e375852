/** Spread, swing, drift and warm-up of two tests compared. */
import { differenceOfMeans } from "../stats/two-means.ts";
import type { TestPair } from "./recheck-level.ts";
import type { Recheck, RecheckDifference } from "./recheck-types.ts";

/** Two runs' peak to peak, and their warm-ups, differ by this part of them without anything having moved (assumptions). */
const usualScatter = { swing: 0.1, warmUp: 0.15 } as const;
/** Two runs' drifts differ by this, degC per hour, from the room alone (an assumption). */
const usualDrift = 0.02;

type Shape = Pick<Recheck, "spread" | "swing" | "drift" | "warmUp">;

export const shapeDifferences = ({ baseline, newest }: TestPair): Shape => {
  const [then, now] = [baseline.settled.evidence, newest.settled.evidence];
  return {
    spread: compared(then.hold, now.hold, ({ standardDeviation: value, effectiveReadings }) => [
      value,
      // Of a standard deviation from n independent readings: s / sqrt(2 (n - 1)) (JCGM 100:2008, E.4.3).
      value / Math.sqrt(2 * Math.max(1, effectiveReadings - 1)),
    ]),
    swing: compared(then.hold, now.hold, ({ swing }) =>
      swing === null ? null : [swing.peakToPeak, usualScatter.swing * swing.peakToPeak],
    ),
    drift: compared(then.hold, now.hold, ({ drift }) => [
      drift.perHour,
      Math.hypot(drift.standardUncertainty, usualDrift),
    ]),
    warmUp: compared(then.night.warmUp, now.night.warmUp, (warmUp) =>
      warmUp === null ? null : [warmUp.minutesToHold, usualScatter.warmUp * warmUp.minutesToHold],
    ),
  };
};

type Figure = readonly [value: number, standardUncertainty: number] | null;

const estimate = ([value, standardUncertainty]: NonNullable<Figure>) => ({
  value,
  standardUncertainty,
  degreesOfFreedom: Infinity,
});

const compared = <One>(
  then: One,
  now: One,
  figure: (of: One) => Figure,
): RecheckDifference | null => {
  const [a, b] = [figure(then), figure(now)];
  if (a === null || b === null) return null;
  const { difference, standardUncertainty, degreesOfFreedom, low, high } = differenceOfMeans(
    estimate(b),
    estimate(a),
  );
  const found = { difference, standardUncertainty, degreesOfFreedom, low, high };
  return { baseline: a[0], now: b[0], ...found };
};
