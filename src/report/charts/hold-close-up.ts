/** The hold close up, and beside it the time spent at each temperature, on one scale. */
import type { ProbeAnalysis } from "../../analysis.ts";
import type { Hold, HoldReadings } from "../../hold/hold.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { backdropBoxes, backdropRules, requirementsOf } from "./backdrop.ts";
import type { Backdrop } from "./backdrop.ts";
import { colour, toScale } from "./chart-theme.ts";
import type { Size } from "./chart-theme.ts";
import { timeAtTemperature } from "./histogram.ts";
import { levelTexts } from "./level-texts.ts";
import { gapMinutes, lineRows } from "./line-rows.ts";
import type { Plot, PlotAxis, PlotBox } from "./plot.ts";
import { hourStep, multiples, stretchOf, widened } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";
import { leftAxis, rightAxis } from "./temperature-axes.ts";
import { down } from "./vertical.ts";

const plotHeight = 230;
const mostBars = 60;
const mostTicks = 6;
const space = { left: 62, right: 64, top: 8, bottom: 30 } as const;
/** Widths of the readings, of the bars, and of the room between them, px. */
const shape = {
  wide: { line: 452, between: 12, bars: 130, slots: 230, ticks: 8 },
  narrow: { line: 158, between: 8, bars: 52, slots: 110, ticks: 4 },
} as const;

interface Frame extends Omit<Backdrop, "panel" | "hold"> {
  readonly held: Hold;
  readonly readings: HoldReadings;
}

/** Window edges are shown while they are within reach: a far window must not flatten the hold. */
const reach = 4;

const domainOf = (probe: ProbeAnalysis, held: Hold, unit: TemperatureUnit): Stretch => {
  const guard = probe.guardedBand === null ? [] : [probe.guardedBand.low, probe.guardedBand.high];
  const own = stretchOf([held.min, held.max], [held.band.low, held.band.high, ...guard]);
  const near = requirementsOf(probe)
    .flatMap(({ low, high, ceiling }) => (ceiling === null ? [low, high] : [low, high, ceiling]))
    .filter((edge) => edge > own.low - reach && edge < own.high + reach);
  const all = stretchOf(near, [own.low, own.high]);
  return widened({ low: toScale(unit, all.low), high: toScale(unit, all.high) }, 0.1, 0.2);
};

/** The hour scale runs on under the bars, where it has no ticks. */
const holdAxis = ({ fromMinute, toMinute }: Hold, size: Size): PlotAxis => {
  const { line, between, bars, ticks: most } = shape[size.name];
  const hours = { low: fromMinute / 60, high: toMinute / 60 };
  const length = hours.high - hours.low;
  const ticks = multiples(hours, hourStep(length, most));
  return {
    low: hours.low,
    high: hours.low + (length * (line + between + bars)) / line,
    ticks,
    words: ticks.map((hour) => `${hour} h`),
  };
};

/** No bar finer than the display's steps, nor too thin to see. */
const leastBar = ({ probe, unit, vertical: { domain } }: Frame): number => {
  const step = toScale(unit, probe.series.resolution) - toScale(unit, 0);
  return Math.max(step, (domain.high - domain.low) / mostBars);
};

const barBoxes = (frame: Frame, panel: Stretch): readonly PlotBox[] => {
  const { readings, unit, vertical } = frame;
  const drawn = readings.celsius.map((value) => toScale(unit, value));
  const bars = timeAtTemperature(drawn, readings.weights, 32, leastBar(frame));
  const most = bars.reduce((so, { minutes }) => Math.max(so, minutes), 0) * 1.06 || 1;
  return bars
    .filter(({ minutes }) => minutes > 0)
    .map(({ low, high, minutes }) => ({
      left: panel.low,
      right: panel.low + (minutes / most) * (panel.high - panel.low),
      top: down(vertical, high),
      bottom: down(vertical, low),
      fill: colour.line,
      opacity: 1,
      stroke: colour.paper,
    }));
};

const drawHold = (frame: Frame, size: Size): Plot => {
  const { readings, held, unit, vertical } = frame;
  const { line, between, bars, slots } = shape[size.name];
  const width = line + between + bars;
  const left = { low: 0, high: line };
  const right = { low: line + between, high: width };
  const panels = [
    { ...frame, panel: left, hold: left },
    { ...frame, panel: right, hold: right },
  ];
  const gap = gapMinutes(readings.minutes);
  return {
    width,
    height: plotHeight,
    padding: space,
    x: holdAxis(held, size),
    y: leftAxis(unit, vertical.domain, mostTicks),
    boxes: [...panels.flatMap(backdropBoxes), ...barBoxes(frame, right)],
    rules: panels.flatMap(backdropRules),
    context: [],
    line: lineRows(readings.minutes, readings.celsius, gap, slots, unit),
    points: [],
    texts: [
      ...levelTexts({ ...frame, panel: left, hold: left }),
      ...rightAxis(unit, vertical, mostTicks, width),
    ],
  };
};

/** How to draw it at a size; null where there is no hold to show. */
export const holdPlot = (
  probe: ProbeAnalysis,
  unit: TemperatureUnit,
): ((size: Size) => Plot) | null => {
  const { hold: held, holdReadings: readings } = probe.night;
  if (held === null || readings === null || readings.minutes.length === 0) return null;
  const vertical = { domain: domainOf(probe, held, unit), height: plotHeight };
  return (size) => drawHold({ probe, unit, vertical, held, readings }, size);
};
