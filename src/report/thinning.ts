/**
 * Fewer points for drawing, with nothing hidden: time is cut into equal slots,
 * and each slot keeps its lowest and its highest reading (and the series its
 * first and last), so every spike and every dip stays on the page.
 */

/** Indices to draw, in order; a line must not join `index` and the one after it when `breaks` has it. */
export interface Thinned {
  readonly indices: Int32Array;
  readonly breaks: ReadonlySet<number>;
}

const defaultSlots = 750;

/**
 * Thins `values` over `minutes` (increasing, same length) to at most about
 * 2 x `slots` points. A step longer than `gapMinutes` breaks the line, if it
 * is also wider than one slot and so can be seen. Linear in the readings.
 */
export const thin = (
  minutes: Float64Array,
  values: Float64Array,
  gapMinutes: number,
  slots: number = defaultSlots,
): Thinned => {
  const count = minutes.length;
  const first = minutes[0] ?? 0;
  const slotMinutes = ((minutes[count - 1] ?? 0) - first) / slots;
  const visibleGap = Math.max(gapMinutes, slotMinutes);
  const kept: number[] = [];
  const breaks = new Set<number>();
  let start = 0;
  for (let index = 1; index <= count; index += 1) {
    const gap = index < count && minutes[index]! - minutes[index - 1]! > visibleGap;
    const sameSlot =
      index < count &&
      Math.floor((minutes[index]! - first) / slotMinutes) ===
        Math.floor((minutes[start]! - first) / slotMinutes);
    if (sameSlot && !gap) continue;
    keepExtremes(values, start, index, kept);
    if (gap) {
      push(kept, index - 1);
      breaks.add(index - 1);
      push(kept, index);
    }
    start = index;
  }
  if (count > 0) push(kept, count - 1);
  if (kept[0] !== 0 && count > 0) kept.unshift(0);
  return { indices: Int32Array.from(kept), breaks };
};

const push = (kept: number[], index: number): void => {
  if (kept.length === 0 || index > kept[kept.length - 1]!) kept.push(index);
};

const keepExtremes = (values: Float64Array, from: number, to: number, kept: number[]): void => {
  let lowest = from;
  let highest = from;
  for (let index = from + 1; index < to; index += 1) {
    if (values[index]! < values[lowest]!) lowest = index;
    if (values[index]! > values[highest]!) highest = index;
  }
  push(kept, Math.min(lowest, highest));
  push(kept, Math.max(lowest, highest));
};
