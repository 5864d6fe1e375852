/** The whole night: readings, window, holding band, guarded band, phases, both units, hours and clock. */
import type { ProbeAnalysis } from "../../analysis.ts";
import type { Requirement } from "../../culture/verdict-types.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { Series } from "../../readings/series.ts";
import { clockTime } from "../time-text.ts";
import { baseConfig, colour, toScale } from "./chart-theme.ts";
import type { Size, Spec } from "./chart-theme.ts";
import { gapMinutes, lineRows } from "./line-rows.ts";
import { placePhaseLabels } from "./phase-labels.ts";
import type { PhaseLabel } from "./phase-labels.ts";
import { hourStep, multiples, stretchOf, widened } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";
import { leftAxis, rightAxis, temperatureScale } from "./temperature-axes.ts";

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
const slotsFor = { wide: 750, narrow: 340 } as const;
const contextSlots = 150;
/** With so few readings each is shown as a point as well. */
const fewReadings = 60;

const x = (field: string): Spec => ({ field, type: "quantitative" });

export const requirementsOf = (probe: ProbeAnalysis): readonly Requirement[] =>
  probe.verdicts.map(({ requirement }) => requirement);

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

const xScale = ({ hours }: Frame): Spec => ({ domain: [hours.low, hours.high], nice: false });

const hourAxis = (frame: Frame): Spec => {
  const { hours, size, startWallClock } = frame;
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

const windowLayers = ({ probe, unit }: Frame): readonly Spec[] => {
  const windows = requirementsOf(probe).map(({ low, high }) => ({
    low: toScale(unit, low),
    high: toScale(unit, high),
  }));
  const ceilings = requirementsOf(probe).flatMap(({ ceiling }) =>
    ceiling === null ? [] : [{ at: toScale(unit, ceiling) }],
  );
  return [
    {
      data: { values: windows },
      mark: { type: "rect", color: colour.window },
      encoding: { y: x("low"), y2: { field: "high" } },
    },
    ...["low", "high"].map((edge) => ({
      data: { values: windows },
      mark: { type: "rule", color: colour.windowEdge, strokeWidth: 1.2 },
      encoding: { y: x(edge) },
    })),
    {
      data: { values: ceilings },
      mark: { type: "rule", color: colour.limit, strokeWidth: 1.6, strokeDash: [7, 4] },
      encoding: { y: x("at") },
    },
  ];
};

const bandLayers = ({ probe, unit }: Frame): readonly Spec[] => {
  const { hold } = probe.night;
  if (hold === null) return [];
  const span = { from: hold.fromMinute / 60, to: hold.toMinute / 60 };
  const box = ({ low, high }: Stretch, mark: Spec): Spec => ({
    data: { values: [{ ...span, low: toScale(unit, low), high: toScale(unit, high) }] },
    mark: { type: "rect", ...mark },
    encoding: { x: x("from"), x2: { field: "to" }, y: x("low"), y2: { field: "high" } },
  });
  const guarded = probe.guardedBand;
  return [
    ...(guarded === null
      ? []
      : [
          box(guarded, {
            color: colour.guard,
            stroke: colour.band,
            strokeDash: [3, 3],
            strokeWidth: 1,
          }),
        ]),
    box(hold.band, { color: colour.band, fillOpacity: 0.34, stroke: colour.band, strokeWidth: 1 }),
  ];
};

const labelsOf = ({ probe, plotWidth, hours, size }: Frame): readonly PhaseLabel[] =>
  placePhaseLabels(
    probe.phases,
    (minute) => (minute / 60 / hours.high) * plotWidth,
    plotWidth,
    size.text,
  );

const rowHeight = ({ text }: Size): number => text + 4;

const phaseLayers = ({ size }: Frame, labels: readonly PhaseLabel[]): readonly Spec[] =>
  labels.flatMap(({ text, x: at, from, row }) => [
    {
      data: { values: [{}] },
      mark: { type: "rule", color: colour.muted, strokeWidth: 1, strokeDash: [2, 3], opacity: 0.7 },
      encoding: {
        x: { value: from },
        y: { value: -7 - row * rowHeight(size) - size.text * 0.8 },
        y2: { value: plotHeight },
      },
    },
    {
      data: { values: [{ text }] },
      mark: { type: "text", align: "left", baseline: "bottom", color: colour.ink },
      encoding: {
        x: { value: at },
        y: { value: -6 - row * rowHeight(size) },
        text: { field: "text" },
      },
    },
  ]);

const lineLayer = (series: Series, slots: number, unit: TemperatureUnit, mark: Spec): Spec => ({
  data: {
    values: lineRows(series.minutes, series.celsius, gapMinutes(series.minutes), slots, unit),
  },
  mark: { type: "line", strokeJoin: "round", ...mark },
  encoding: { x: x("hour"), y: x("value") },
});

const contextDashes: Readonly<Record<Series["role"], readonly number[]>> = {
  food: [1, 0],
  bath: [6, 2],
  room: [2, 2],
};

const readingLayers = ({ probe, context, unit, size }: Frame): readonly Spec[] => {
  const { series } = probe;
  const few = series.minutes.length <= fewReadings;
  return [
    ...context.map((other) =>
      lineLayer(other, contextSlots, unit, {
        color: colour.context,
        strokeWidth: 1.2,
        strokeDash: contextDashes[other.role],
      }),
    ),
    lineLayer(series, slotsFor[size.name], unit, {
      color: colour.line,
      strokeWidth: 1.6,
      ...(few ? { point: { color: colour.line, size: 28, filled: true } } : {}),
    }),
  ];
};

const axisLayer = (frame: Frame): Spec => ({
  data: { values: [{ hour: 0, value: frame.domain.low }] },
  mark: { type: "point", color: colour.ink, opacity: 0, size: 0 },
  encoding: {
    x: { ...x("hour"), scale: xScale(frame), axis: hourAxis(frame) },
    y: {
      ...x("value"),
      scale: temperatureScale(frame.domain),
      axis: leftAxis(frame.unit, frame.domain, 8),
    },
  },
});

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
      axisLayer(frame),
      ...windowLayers(frame),
      ...bandLayers(frame),
      ...readingLayers(frame),
      ...phaseLayers(frame, labels),
      rightAxis(frame.unit, frame.domain, 8, frame.plotWidth, size),
    ],
  };
};
