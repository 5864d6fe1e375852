import type { CheckPoint } from "./check-points.ts";

/** A check that cannot be right together with another. */
export interface ScaleConflict {
  readonly check: number;
  /** How far the scale would be off, degC of correction per 100 degC of reading. */
  readonly perHundred: number;
}

/** degC per degC: more is a slip rather than a thermometer (common practice, no source). */
const mostSlope = 0.02;
/** Checks closer than this, degC, say little about the scale. */
const leastDistance = 10;

/** Slope of the correction between two checks, where it is more than a thermometer has; else null. */
const slopeBetween = (one: CheckPoint, other: CheckPoint): number | null => {
  const away = other.reading - one.reading;
  if (Math.abs(other.truth - one.truth) < leastDistance || away === 0) return null;
  const change = other.truth - other.reading - (one.truth - one.reading);
  const doubt = Math.hypot(
    ...[...one.doubts, ...other.doubts].map((each) => each.standardUncertainty),
  );
  const slope = change / away;
  return Math.abs(slope) > mostSlope && Math.abs(change) > 2 * doubt ? slope : null;
};

/** Of each point: the slopes that contradict it. */
const contradictions = (points: readonly CheckPoint[]): ReadonlyMap<CheckPoint, number[]> =>
  new Map(
    points.map((one) => [
      one,
      points.flatMap((other) => (other === one ? [] : (slopeBetween(one, other) ?? []))),
    ]),
  );

const widest = (slopes: readonly number[]): number =>
  slopes.reduce((most, slope) => (Math.abs(slope) > Math.abs(most) ? slope : most), 0);

/**
 * Checks that would make the scale off by more than 2 degC in 100, beyond twice
 * their doubts. Those contradicted by most others are named first and the rest
 * looked at again, so that one wrong check among several is found alone; of two
 * that contradict each other either may be wrong, and both are named.
 */
export const scaleConflicts = (points: readonly CheckPoint[]): readonly ScaleConflict[] => {
  const conflicts: ScaleConflict[] = [];
  let left = points;
  for (;;) {
    const against = contradictions(left);
    const most = Math.max(0, ...[...against.values()].map((slopes) => slopes.length));
    if (most === 0) break;
    for (const [{ check }, slopes] of against)
      if (slopes.length === most) conflicts.push({ check, perHundred: 100 * widest(slopes) });
    left = left.filter((point) => against.get(point)!.length < most);
  }
  return conflicts.toSorted((a, b) => a.check - b.check);
};
