import type { Points } from "./grid.ts";
import type { Stretch } from "../stats/time-weights.ts";

/**
 * Where a flat (or slowly drifting) temperature starts to fall or rise for
 * good: change-point by back-extrapolation.
 *
 * A jar in a bath that was switched off does not show it at once: its
 * departure begins flat and steepens only as the bath pulls away. The model is
 * therefore the step response of two lags in series,
 *
 *     base(t)                                                    t <= t0
 *     base(t) + A (1 - (a e^(-s/a) - b e^(-s/b)) / (a - b)),     s = t - t0
 *
 * with b = 0 giving the plain exponential. Least squares over a grid of t0, a
 * and b, the amplitude A in closed form, first coarse in t0, then by the
 * minute. Source: two first-order lags in series, any text on process
 * dynamics; grid search because t0 makes the problem non-smooth.
 */
export interface Departure {
  readonly onset: number;
  readonly amplitude: number;
  /** Sum of the two lags, minutes: the mean delay of the response. */
  readonly lag: number;
}

const slowLags = [3, 5, 8, 12, 18, 27, 40, 60, 90, 135, 200, 300, 450, 700, 1000, 1600];
const fastLags = [0, 4, 10, 20, 40, 80];
/** Points the fit looks at: enough for an onset to the minute. */
const mostFitted = 100;

/**
 * @param base the temperature without the departure, degC at a minute
 * @param window the readings to fit
 * @param onsets where the onset may lie
 * @returns null with fewer than 4 readings in the window or none after the onset
 */
export const fitDeparture = (
  points: Points,
  base: (minute: number) => number,
  window: Stretch,
  onsets: Stretch,
): Departure | null => {
  const data = pickData(points, base, window);
  if (data.minutes.length < 4) return null;
  const coarse = bestOf(data, onsets, Math.max(1, (onsets.to - onsets.from) / 15));
  if (coarse === null) return null;
  const step = Math.max(1, (onsets.to - onsets.from) / 15);
  const near = {
    from: Math.max(onsets.from, coarse.onset - step),
    to: Math.min(onsets.to, coarse.onset + step),
  };
  return bestOf(data, near, Math.max(0.5, step / 8)) ?? coarse;
};

interface Data {
  readonly minutes: Float64Array;
  /** Reading less base, degC. */
  readonly offsets: Float64Array;
}

const pickData = (points: Points, base: (minute: number) => number, window: Stretch): Data => {
  const inside: number[] = [];
  points.minutes.forEach((minute, index) => {
    if (minute >= window.from && minute <= window.to) inside.push(index);
  });
  const stride = Math.max(1, Math.ceil(inside.length / mostFitted));
  const picked = inside.filter((_, index) => index % stride === 0);
  return {
    minutes: Float64Array.from(picked, (index) => points.minutes[index]!),
    offsets: Float64Array.from(
      picked,
      (index) => points.celsius[index]! - base(points.minutes[index]!),
    ),
  };
};

const bestOf = (data: Data, onsets: Stretch, step: number): Departure | null => {
  let best: Departure | null = null;
  let least = Infinity;
  for (let onset = onsets.from; onset <= onsets.to + 1e-9; onset += step) {
    const after = afterOnset(data, onset);
    const fastDecays = fastLags.map((lag) => decayOf(after.minutes, lag));
    for (const slow of slowLags) {
      const slowDecay = decayOf(after.minutes, slow);
      for (let pick = 0; pick < fastLags.length && fastLags[pick]! < slow; pick += 1) {
        const fast = fastLags[pick]!;
        const trial = tryLags(after, slow, slowDecay, fast, fastDecays[pick]!);
        if (trial.squares >= least) continue;
        least = trial.squares;
        best = { onset, amplitude: trial.amplitude, lag: slow + fast };
      }
    }
  }
  return best;
};

/** What lies after an onset, minutes since it; `total` is the sum of squares of all offsets. */
interface After extends Data {
  readonly total: number;
}

const afterOnset = ({ minutes, offsets }: Data, onset: number): After => {
  let first = 0;
  while (first < minutes.length && minutes[first]! <= onset) first += 1;
  let total = 0;
  for (const offset of offsets) total += offset * offset;
  const since = minutes.subarray(first).map((minute) => minute - onset);
  return { minutes: since, offsets: offsets.subarray(first), total };
};

/** e^(-s/lag), once for every pair the lag stands in; nothing is left where the lag is 0. */
const decayOf = (since: Float64Array, lag: number): Float64Array =>
  lag === 0 ? new Float64Array(since.length) : since.map((minutes) => Math.exp(-minutes / lag));

const tryLags = (
  { offsets, total }: After,
  slow: number,
  slowDecay: Float64Array,
  fast: number,
  fastDecay: Float64Array,
): { squares: number; amplitude: number } => {
  let cross = 0;
  let own = 0;
  for (let index = 0; index < offsets.length; index += 1) {
    const response = 1 - (slow * slowDecay[index]! - fast * fastDecay[index]!) / (slow - fast);
    cross += offsets[index]! * response;
    own += response * response;
  }
  if (own === 0) return { squares: total, amplitude: 0 };
  return { squares: total - (cross * cross) / own, amplitude: cross / own };
};
