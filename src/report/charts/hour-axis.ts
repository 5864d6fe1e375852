/** Hours from the first reading, with the logger's clock below where it is known. */
import { clockTime } from "../time-text.ts";
import { colour } from "./chart-theme.ts";
import type { Size, Spec } from "./chart-theme.ts";
import { hourStep, multiples } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";

export const hourAxis = (hours: Stretch, startWallClock: number | null, size: Size): Spec => {
  const values = multiples(hours, hourStep(hours.high, size.name === "wide" ? 12 : 5));
  const labels = values.map((value) => {
    const clock = clockTime(startWallClock, value * 60);
    return clock === null ? [`${value} h`] : [`${value} h`, clock];
  });
  return {
    values,
    grid: false,
    ticks: true,
    tickColor: colour.rule,
    tickSize: 5,
    labelExpr: `${JSON.stringify(labels)}[indexof(${JSON.stringify(values)}, datum.value)]`,
  };
};
