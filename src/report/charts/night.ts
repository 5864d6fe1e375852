/** The whole night: readings, window, holding band, guarded band, phases, both units, hours and clock. */
import type { ProbeAnalysis } from "../../analysis.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { Series } from "../../readings/series.ts";
import { backdropLayers, requirementsOf } from "./backdrop.ts";
import { baseConfig, colour, toScale } from "./chart-theme.ts";
import type { Size, Spec } from "./chart-theme.ts";
import { hourAxis } from "./hour-axis.ts";
import { gapMinutes, lineRows } from "./line-rows.ts";
import { placePhaseLabels } from "./phase-labels.ts";
import type { PhaseLabel } from "./phase-labels.ts";
import { phaseLayers, rowHeight } from "./phase-layers.ts";
import { stretchOf, widened } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";
import { fixedScale } from "./styled-marks.ts";
import { leftAxis, rightAxis } from "./temperature-axes.ts";

export interface NightInput {
  readonly probe: ProbeAnalysis;
  /** Bath and room probes of the same file, drawn faintly for context. */
  readonly context: readonly Series[];
  readonly startWallClock: number | null;
  readonly unit: TemperatureUnit;
}

interface Frame extends NightInput {
  readonly size: Size;
  readonly plotWidth: number;
  readonly hours: Stretch;
  readonly domain: Stretch;
}

const plotHeight = 300;
/** Room for the labels around the plot, px: vega without a font at hand would guess too much. */
const space = { left: 54, right: 58, bottom: 46 } as const;
/** About one slot for each px of the plot: finer would not be seen, and costs time to draw. */
const slotsFor = { wide: 600, narrow: 240 } as const;
const contextSlots = 150;
/** With so few readings each is shown as a point as well. */
const fewReadings = 60;

const x = (field: string): Spec => ({ field, type: "quantitative" });

const edges = (probe: ProbeAnalysis): readonly number[] => [
  ...requirementsOf(probe).flatMap(({ low, high, ceiling }) => [low, high, ceiling ?? high]),
  ...(probe.guardedBand === null ? [] : [probe.guardedBand.low, probe.guardedBand.high]),
];

const frameOf = (input: NightInput, size: Size): Frame => {
  const { probe, unit } = input;
  const { minutes, celsius } = probe.series;
  const main = stretchOf(celsius, edges(probe));
  const all = input.context.reduce(
    (so, { celsius: other }) => stretchOf(other, [so.low, so.high]),
    main,
  );
  const domain = widened({ low: toScale(unit, all.low), high: toScale(unit, all.high) }, 0.04, 0.5);
  const last = [minutes, ...input.context.map((other) => other.minutes)].reduce(
    (so, each) => Math.max(so, each[each.length - 1] ?? 0),
    probe.phases.at(-1)?.toMinute ?? 0,
  );
  return {
    ...input,
    size,
    plotWidth: size.width - space.left - space.right,
    hours: { low: 0, high: Math.max(last / 60, 1 / 60) },
    domain,
  };
};

/** Without a hold nothing is drawn along it. */
const holdAlong = ({ probe }: Frame): Stretch => {
  const { hold } = probe.night;
  return hold === null
    ? { low: 0, high: 0 }
    : { low: hold.fromMinute / 60, high: hold.toMinute / 60 };
};

const labelsOf = ({ probe, plotWidth, hours, size }: Frame): readonly PhaseLabel[] =>
  placePhaseLabels(
    probe.phases,
    (minute) => (minute / 60 / hours.high) * plotWidth,
    plotWidth,
    size.text,
  );

const lineLayer = (series: Series, slots: number, frame: Frame, mark: Spec): Spec => ({
  data: {
    values: lineRows(series.minutes, series.celsius, gapMinutes(series.minutes), slots, frame.unit),
  },
  mark: { type: "line", strokeJoin: "round", ...mark },
  encoding: { x: x("hour"), y: x("value") },
});

const contextDashes: Readonly<Record<Series["role"], readonly number[]>> = {
  food: [1, 0],
  bath: [6, 2],
  room: [2, 2],
};

const axes = (frame: Frame): Spec => ({
  x: {
    ...x("hour"),
    scale: fixedScale(frame.hours),
    axis: hourAxis(frame.hours, frame.startWallClock, frame.size),
  },
  y: {
    ...x("value"),
    scale: fixedScale(frame.domain),
    axis: leftAxis(frame.unit, frame.domain, 8),
  },
});

const readingLayers = (frame: Frame): readonly Spec[] => {
  const { series } = frame.probe;
  const few = series.minutes.length <= fewReadings;
  const main = lineLayer(series, slotsFor[frame.size.name], frame, {
    color: colour.line,
    strokeWidth: 1.6,
    ...(few ? { point: { color: colour.line, size: 28, filled: true } } : {}),
  });
  return [
    ...frame.context.map((other) =>
      lineLayer(other, contextSlots, frame, {
        color: colour.context,
        strokeWidth: 1.2,
        strokeDash: contextDashes[other.role],
      }),
    ),
    { ...main, encoding: axes(frame) },
  ];
};

export const nightSpec = (input: NightInput, size: Size): Spec => {
  const frame = frameOf(input, size);
  const labels = labelsOf(frame);
  const rows = labels.reduce((so, { row }) => Math.max(so, row + 1), 0);
  return {
    width: frame.plotWidth,
    height: plotHeight,
    autosize: "none",
    padding: { ...space, top: rows * rowHeight(size) + 10 },
    config: baseConfig(size),
    layer: [
      ...backdropLayers({ ...frame, panel: frame.hours, hold: holdAlong(frame) }),
      ...readingLayers(frame),
      ...phaseLayers(labels, size, plotHeight),
      rightAxis(frame.unit, frame.domain, 8, frame.plotWidth, size),
    ],
  };
};
