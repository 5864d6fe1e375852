/** The hold close up, and beside it the time spent at each temperature, on one scale. */
import type { Hold, HoldReadings } from "../../hold/hold.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { ProbeAnalysis } from "../../analysis.ts";
import { backdropLayers, requirementsOf } from "./backdrop.ts";
import { baseConfig, colour, toScale } from "./chart-theme.ts";
import type { Size, Spec } from "./chart-theme.ts";
import { timeAtTemperature } from "./histogram.ts";
import { gapMinutes, lineRows } from "./line-rows.ts";
import { hourStep, multiples, stretchOf, widened } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";
import { fixedScale } from "./styled-marks.ts";
import { leftAxis, rightAxis } from "./temperature-axes.ts";

const plotHeight = 230;
const mostBars = 60;
const shape = {
  wide: { line: 440, bars: 128, slots: 420, ticks: 8 },
  narrow: { line: 150, bars: 50, slots: 150, ticks: 3 },
} as const;

interface Frame {
  readonly probe: ProbeAnalysis;
  readonly hold: Hold;
  readonly readings: HoldReadings;
  readonly unit: TemperatureUnit;
  readonly size: Size;
  readonly domain: Stretch;
}

const quantity = (field: string): Spec => ({ field, type: "quantitative" });

/** Window edges are shown while they are within reach: a far window must not flatten the hold. */
const reach = 4;

const domainOf = (
  { probe, hold }: Pick<Frame, "probe" | "hold">,
  unit: TemperatureUnit,
): Stretch => {
  const own = stretchOf(
    [hold.min, hold.max],
    [
      hold.band.low,
      hold.band.high,
      ...(probe.guardedBand === null ? [] : [probe.guardedBand.low, probe.guardedBand.high]),
    ],
  );
  const near = requirementsOf(probe)
    .flatMap(({ low, high, ceiling }) => (ceiling === null ? [low, high] : [low, high, ceiling]))
    .filter((edge) => edge > own.low - reach && edge < own.high + reach);
  const all = stretchOf(near, [own.low, own.high]);
  return widened({ low: toScale(unit, all.low), high: toScale(unit, all.high) }, 0.08, 0.2);
};

const linePanel = (frame: Frame): Spec => {
  const { readings, hold, unit, size, domain } = frame;
  const hours = { low: hold.fromMinute / 60, high: hold.toMinute / 60 };
  const { line, slots, ticks } = shape[size.name];
  const values = multiples(hours, hourStep(hours.high - hours.low, ticks));
  const rows = lineRows(
    readings.minutes,
    readings.celsius,
    gapMinutes(readings.minutes),
    slots,
    unit,
  );
  return {
    width: line,
    height: plotHeight,
    layer: [
      ...backdropLayers({ ...frame, panel: hours, hold: hours }),
      {
        data: { values: rows },
        mark: { type: "line", color: colour.line, strokeWidth: 1.3, strokeJoin: "round" },
        encoding: {
          x: {
            ...quantity("hour"),
            scale: fixedScale(hours),
            axis: { values, grid: false, labelExpr: "datum.value + ' h'" },
          },
          y: {
            ...quantity("value"),
            scale: fixedScale(domain),
            axis: leftAxis(unit, domain, 6),
          },
        },
      },
    ],
  };
};

/** No bar finer than the display's steps, nor too thin to see. */
const leastBar = ({ probe, unit, domain }: Frame): number => {
  const step = toScale(unit, probe.series.resolution) - toScale(unit, 0);
  return Math.max(step, (domain.high - domain.low) / mostBars);
};

const barPanel = (frame: Frame): Spec => {
  const { readings, unit, size, domain } = frame;
  const drawn = readings.celsius.map((value) => toScale(unit, value));
  const bars = timeAtTemperature(drawn, readings.weights, 32, leastBar(frame));
  const most = bars.reduce((so, { minutes }) => Math.max(so, minutes), 0);
  const along = { low: 0, high: most * 1.06 };
  const width = shape[size.name].bars;
  return {
    width,
    height: plotHeight,
    layer: [
      ...backdropLayers({ ...frame, panel: along, hold: along }),
      {
        data: { values: bars.map(({ low, high, minutes }) => ({ low, high, minutes, zero: 0 })) },
        mark: { type: "rect", color: colour.line, stroke: colour.paper, strokeWidth: 0.6 },
        encoding: {
          x: {
            ...quantity("zero"),
            scale: fixedScale(along),
            axis: null,
          },
          x2: { field: "minutes" },
          y: { ...quantity("low"), scale: fixedScale(domain), axis: null },
          y2: { field: "high" },
        },
      },
      rightAxis(unit, domain, 6, width, size),
    ],
  };
};

/** Null where there is no hold to show. */
export const holdSpec = (probe: ProbeAnalysis, unit: TemperatureUnit, size: Size): Spec | null => {
  const { hold, holdReadings: readings } = probe.night;
  if (hold === null || readings === null || readings.minutes.length === 0) return null;
  const frame: Frame = {
    probe,
    hold,
    readings,
    unit,
    size,
    domain: domainOf({ probe, hold }, unit),
  };
  return {
    config: baseConfig(size),
    spacing: 10,
    hconcat: [linePanel(frame), barPanel(frame)],
  };
};
