/** The person's unit on the left, the other on the right, each with its own round ticks. */
import type { TemperatureUnit } from "../../quantity.ts";
import { otherUnit } from "../writing.ts";
import { colour, fromOther, signOf, toOther } from "./chart-theme.ts";
import type { PlotAxis, PlotText } from "./plot.ts";
import { multiples, roundStep } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";
import { down } from "./vertical.ts";
import type { Vertical } from "./vertical.ts";

/** Round values, each in as many decimals as the step needs; the unit stands once, at the highest. */
const roundTicks = (stretch: Stretch, most: number, unit: TemperatureUnit) => {
  const step = roundStep(stretch.high - stretch.low, most);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const ticks = multiples(stretch, step);
  const words = ticks.map((value, at) => {
    const text = value.toFixed(decimals).replace("-", "\u2212");
    return at === ticks.length - 1 ? `${text} ${signOf(unit)}` : text;
  });
  return { ticks, words };
};

export const leftAxis = (unit: TemperatureUnit, domain: Stretch, most: number): PlotAxis => ({
  ...domain,
  ...roundTicks(domain, most, unit),
});

/** Just right of the plot; they share the left scale, so they are texts and no second axis. */
export const rightAxis = (
  unit: TemperatureUnit,
  vertical: Vertical,
  most: number,
  plotWidth: number,
): readonly PlotText[] => {
  const { low, high } = vertical.domain;
  const other = { low: toOther(unit, low), high: toOther(unit, high) };
  const { ticks, words } = roundTicks(other, most, otherUnit(unit));
  return ticks.map((value, at) => ({
    x: plotWidth + 7,
    y: down(vertical, fromOther(unit, value)),
    text: words[at] ?? "",
    align: "left",
    fill: colour.muted,
    halo: null,
  }));
};
