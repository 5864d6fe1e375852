/** Hours from the first reading, with the logger's clock below where it is known. */
import { clockTime } from "../time-text.ts";
import type { Size } from "./chart-theme.ts";
import type { PlotAxis } from "./plot.ts";
import { hourStep, multiples } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";

export const hourAxis = (hours: Stretch, startWallClock: number | null, size: Size): PlotAxis => {
  const ticks = multiples(hours, hourStep(hours.high, size.name === "wide" ? 12 : 5));
  const words = ticks.map((hour) => {
    const clock = clockTime(startWallClock, hour * 60);
    return clock === null ? [`${hour} h`] : [`${hour} h`, clock];
  });
  return { ...hours, ticks, words };
};
