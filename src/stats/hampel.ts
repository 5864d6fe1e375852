import { scaledMad } from "./median.ts";

export interface HampelResult {
  /** 1 where the reading stands out from its neighbours. */
  readonly flagged: Uint8Array;
  /** Median of each reading's window, in the unit of the values. */
  readonly medians: Float64Array;
}

const insertionPoint = (window: Float64Array, length: number, value: number): number => {
  let low = 0;
  let high = length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (window[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
};

const insert = (window: Float64Array, length: number, value: number): void => {
  const at = insertionPoint(window, length, value);
  window.copyWithin(at + 1, at, length);
  window[at] = value;
};

const remove = (window: Float64Array, length: number, value: number): void => {
  const at = insertionPoint(window, length, value);
  window.copyWithin(at, at + 1, length);
};

const middleOf = (window: Float64Array, length: number): number =>
  (window[(length - 1) >> 1]! + window[length >> 1]!) / 2;

/** Median of |x - centre| over a sorted window: walks outward from the centre, nearer side first. */
const deviationOf = (window: Float64Array, length: number, centre: number): number => {
  let right = insertionPoint(window, length, centre);
  let left = right - 1;
  let previous = 0;
  let current = 0;
  for (let taken = 0; taken <= length >> 1; taken++) {
    const below = left >= 0 ? centre - window[left]! : Infinity;
    const above = right < length ? window[right]! - centre : Infinity;
    previous = current;
    current = Math.min(below, above);
    if (below <= above) left--;
    else right++;
  }
  return length % 2 === 1 ? current : (previous + current) / 2;
};

/**
 * Hampel identifier (Hampel 1974): flags values further from the median of the
 * `halfWindow` readings on either side (and itself) than `threshold` times the
 * scaled median absolute deviation there. The window is cut short at the ends.
 *
 * `floor` (same unit as the values) is the least scaled deviation allowed:
 * readings printed to 0.1 that sit flat have a deviation of zero, and without
 * a floor every single step would be flagged. Time n times halfWindow.
 */
export const hampel = (
  values: ArrayLike<number>,
  halfWindow: number,
  threshold: number,
  floor = 0,
): HampelResult => {
  const n = values.length;
  const flagged = new Uint8Array(n);
  const medians = new Float64Array(n);
  const window = new Float64Array(2 * halfWindow + 2);
  let length = 0;
  for (let next = 0; next < n + halfWindow; next++) {
    if (next < n) insert(window, length++, values[next]!);
    const oldest = next - 2 * halfWindow - 1;
    if (oldest >= 0) remove(window, length--, values[oldest]!);
    const i = next - halfWindow;
    if (i < 0) continue;
    const centre = middleOf(window, length);
    const allowed = threshold * Math.max(floor, scaledMad * deviationOf(window, length, centre));
    medians[i] = centre;
    flagged[i] = Math.abs(values[i]! - centre) > allowed ? 1 : 0;
  }
  return { flagged, medians };
};
