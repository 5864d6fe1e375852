/** Readings as rows to draw: thinned, in hours and the drawn unit, a null row at each gap. */
import type { TemperatureUnit } from "../../quantity.ts";
import { thin } from "../thinning.ts";
import { toScale } from "./chart-theme.ts";

export interface LineRow {
  readonly hour: number;
  readonly value: number | null;
}

export const lineRows = (
  minutes: Float64Array,
  celsius: Float64Array,
  gapMinutes: number,
  slots: number,
  unit: TemperatureUnit,
): readonly LineRow[] => {
  const { indices, breaks } = thin(minutes, celsius, gapMinutes, slots);
  const rows: LineRow[] = [];
  for (const index of indices) {
    const hour = minutes[index]! / 60;
    rows.push({ hour, value: toScale(unit, celsius[index]!) });
    if (breaks.has(index)) rows.push({ hour, value: null });
  }
  return rows;
};

/** A step this many times the usual one is a gap; the line stops there. */
const gapSteps = 4;

/** Median step of a thousand places over the series, times four; minutes. */
export const gapMinutes = (minutes: Float64Array): number => {
  const stride = Math.max(1, Math.floor(minutes.length / 1000));
  const found: number[] = [];
  for (let index = 1; index < minutes.length; index += stride) {
    found.push(minutes[index]! - minutes[index - 1]!);
  }
  found.sort((a, b) => a - b);
  return (found[Math.floor(found.length / 2)] ?? 0) * gapSteps;
};
