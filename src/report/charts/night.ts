/** The whole night: readings, window, holding band, guarded band, phases, both units, hours and clock. */
import type { ProbeAnalysis } from "../../analysis.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { Series } from "../../readings/series.ts";
import { backdropBoxes, backdropRules, requirementsOf } from "./backdrop.ts";
import type { Backdrop } from "./backdrop.ts";
import { textSize, toScale } from "./chart-theme.ts";
import type { Size } from "./chart-theme.ts";
import { hourAxis } from "./hour-axis.ts";
import { levelTexts } from "./level-texts.ts";
import { gapMinutes, lineRows } from "./line-rows.ts";
import type { LineRow } from "./line-rows.ts";
import { placePhaseLabels } from "./phase-labels.ts";
import { phaseMarks, rowHeight } from "./phase-marks.ts";
import type { ContextRow, Plot } from "./plot.ts";
import { stretchOf, widened } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";
import { leftAxis, rightAxis } from "./temperature-axes.ts";

export interface NightInput {
  readonly probe: ProbeAnalysis;
  /** Bath and room probes of the same file, drawn faintly for context. */
  readonly context: readonly Series[];
  readonly startWallClock: number | null;
  readonly unit: TemperatureUnit;
}

const plotHeight = 300;
/** Room for the labels around the plot, px: vega without a font at hand would guess too much. */
const space = { left: 54, right: 58, bottom: 46 } as const;
const mostTicks = 8;
/** Each slot gives two points: lowest and highest. About a point for each px of the plot. */
const slotsFor = { wide: 320, narrow: 150 } as const;
const contextSlots = 120;
/** With so few readings each is shown as a point as well. */
const fewReadings = 60;

const edges = (probe: ProbeAnalysis): readonly number[] => [
  ...requirementsOf(probe).flatMap(({ low, high, ceiling }) => [low, high, ceiling ?? high]),
  ...(probe.guardedBand === null ? [] : [probe.guardedBand.low, probe.guardedBand.high]),
];

const domainOf = ({ probe, context, unit }: NightInput): Stretch => {
  const all = context.reduce(
    (so, { celsius }) => stretchOf(celsius, [so.low, so.high]),
    stretchOf(probe.series.celsius, edges(probe)),
  );
  return widened({ low: toScale(unit, all.low), high: toScale(unit, all.high) }, 0.075, 0.5);
};

const hoursOf = ({ probe, context }: NightInput): Stretch => {
  const last = [probe.series, ...context].reduce(
    (so, { minutes }) => Math.max(so, minutes[minutes.length - 1] ?? 0),
    probe.phases.at(-1)?.toMinute ?? 0,
  );
  return { low: 0, high: Math.max(last / 60, 1 / 60) };
};

const rowsOf = (
  { minutes, celsius }: Series,
  slots: number,
  unit: TemperatureUnit,
): readonly LineRow[] => lineRows(minutes, celsius, gapMinutes(minutes), slots, unit);

const contextDashes: Readonly<Record<Series["role"], readonly number[]>> = {
  food: [1, 0],
  bath: [6, 2],
  room: [2, 2],
};

const contextRows = ({ context, unit }: NightInput): readonly ContextRow[] =>
  context.flatMap((series, at) =>
    rowsOf(series, contextSlots, unit).map(({ hour, value }) => ({
      hour,
      value,
      series: String(at),
      dash: contextDashes[series.role],
    })),
  );

const backdropOf = (input: NightInput, hours: Stretch, width: number): Backdrop => {
  const { hold } = input.probe.night;
  const across = (minute: number): number => (minute / 60 / hours.high) * width;
  return {
    ...input,
    vertical: { domain: domainOf(input), height: plotHeight },
    panel: { low: 0, high: width },
    // Without a hold nothing is drawn along it.
    hold:
      hold === null
        ? { low: 0, high: 0 }
        : { low: across(hold.fromMinute), high: across(hold.toMinute) },
  };
};

export const nightPlot = (input: NightInput, size: Size): Plot => {
  const { probe, unit } = input;
  const width = size.width - space.left - space.right;
  const hours = hoursOf(input);
  const backdrop = backdropOf(input, hours, width);
  const { vertical } = backdrop;
  const across = (minute: number): number => (minute / 60 / hours.high) * width;
  const labels = placePhaseLabels(probe.phases, across, width, textSize);
  const phases = phaseMarks(labels, plotHeight);
  const rows = labels.reduce((so, { row }) => Math.max(so, row + 1), 0);
  const line = rowsOf(probe.series, slotsFor[size.name], unit);
  return {
    width,
    height: plotHeight,
    padding: { ...space, top: rows * rowHeight + 10 },
    x: hourAxis(hours, input.startWallClock, size),
    y: leftAxis(unit, vertical.domain, mostTicks),
    boxes: backdropBoxes(backdrop),
    rules: [...backdropRules(backdrop), ...phases.rules],
    context: contextRows(input),
    line,
    points:
      probe.series.minutes.length <= fewReadings ? line.filter(({ value }) => value !== null) : [],
    texts: [
      ...phases.texts,
      ...levelTexts(backdrop),
      ...rightAxis(unit, vertical, mostTicks, width),
    ],
  };
};
