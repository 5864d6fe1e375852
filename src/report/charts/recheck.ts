/**
 * All tests of one set-up in their order: single averages with their limits, and
 * the smoothed average with its own, over the cultures' windows.
 */
import { colour, textSize, toScale } from "./chart-theme.ts";
import type { Size } from "./chart-theme.ts";
import { placeLevels } from "./level-labels.ts";
import type { Plot, PlotText } from "./plot.ts";
import { nearWindows, recheckDomain } from "./recheck-view.ts";
import type { RecheckInput } from "./recheck-view.ts";
import { responseBackdrop } from "./response-backdrop.ts";
import { rightAxis, leftAxis } from "./temperature-axes.ts";
import { down } from "./vertical.ts";
import type { Vertical } from "./vertical.ts";

const plotHeight = 210;
const space = { left: 54, right: 68, top: 10, bottom: 46 } as const;
const mostTicks = 6;
/** Px a date needs beside the next one. */
const dateWidth = { wide: 86, narrow: 82 } as const;
/** What lines are called, and the room at the right that is kept for it, px. */
const lineNames = {
  wide: { limit: "limit of a single test", smoothed: "smoothed average", room: 132 },
  narrow: { limit: "limit", smoothed: "smoothed", room: 62 },
} as const;

interface Panel {
  readonly vertical: Vertical;
  /** Of the whole plot, px. */
  readonly width: number;
  /** Of the part the tests stand in, px. */
  readonly testsWidth: number;
  readonly names: (typeof lineNames)[Size["name"]];
}

type Parts = Required<Pick<Plot, "rules" | "corridors" | "curves" | "markers">>;

const heightOf =
  ({ unit }: RecheckInput, { vertical }: Panel) =>
  (celsius: number): number =>
    down(vertical, toScale(unit, celsius));

const limitRules = (input: RecheckInput, panel: Panel): Plot["rules"] =>
  [input.chart.low, input.chart.high].map((limit) => ({
    left: 0,
    right: panel.width,
    top: heightOf(input, panel)(limit),
    bottom: heightOf(input, panel)(limit),
    stroke: colour.limit,
    width: 1.2,
    dash: [6, 4],
  }));

/** Tests stand at even distances: what matters is their order. */
const parts = (input: RecheckInput, panel: Panel): Parts => {
  const y = heightOf(input, panel);
  const { points } = input.chart;
  const column = panel.testsWidth / Math.max(points.length, 1);
  const placed = points.map((point, at) => ({ point, x: (at + 0.5) * column }));
  const series = "smoothed";
  return {
    rules: limitRules(input, panel),
    corridors: placed.map(({ point, x }) => ({
      series,
      x,
      top: y(point.ewmaHigh),
      bottom: y(point.ewmaLow),
      fill: colour.band,
      opacity: 0.2,
    })),
    curves: placed.map(({ point, x }) => ({
      series,
      x,
      y: y(point.ewma),
      stroke: colour.band,
      dash: [1, 0],
    })),
    markers: placed.map(({ point, x }) => ({
      x,
      y: y(point.mean),
      // Beyond a limit by shape too, for eyes and paper without colour.
      shape: point.individualSignal ? "square" : "circle",
      fill: point.individualSignal ? colour.limit : colour.line,
      stroke: colour.paper,
    })),
  };
};

/** The smoothed line's name stands at its end; those of the limits on their lines, and out of its way. */
const lineTexts = (input: RecheckInput, panel: Panel): readonly PlotText[] => {
  const y = heightOf(input, panel);
  const { chart } = input;
  const { width, vertical, names } = panel;
  const end = y(chart.points.at(-1)?.ewma ?? chart.centre);
  const half = textSize;
  const placed = placeLevels(
    [
      { text: names.smoothed, top: end - half, bottom: end + half },
      { text: names.limit, top: y(chart.high), bottom: y(chart.high) },
      { text: names.limit, top: y(chart.low), bottom: y(chart.low) },
    ],
    { readings: null, plotHeight: vertical.height, textSize },
  );
  return placed.map((level, at) => ({
    x: width - 4,
    y: level.y,
    text: level.text,
    align: "right",
    fill: at === 0 ? colour.band : colour.limit,
    halo: colour.paper,
  }));
};

/** Every day where there is room, else every so many, the newest always. */
const dayAxis = (days: readonly string[], panel: Panel, each: number): Plot["x"] => {
  const { width, testsWidth } = panel;
  const stride = Math.max(1, Math.ceil((days.length * each) / testsWidth));
  const last = days.length - 1;
  const shown = days.map((_, at) => at).filter((at) => (last - at) % stride === 0);
  return {
    low: 0,
    high: (Math.max(days.length, 1) * width) / testsWidth,
    ticks: shown.map((at) => at + 0.5),
    words: shown.map((at) => days[at] ?? ""),
  };
};

/** How to draw it at a size. */
export const recheckPlot =
  (input: RecheckInput): ((size: Size) => Plot) =>
  (size) => {
    const width = size.width - space.left - space.right;
    const domain = recheckDomain(input);
    const vertical = { domain, height: plotHeight };
    const names = lineNames[size.name];
    const panel: Panel = { vertical, width, testsWidth: width - names.room, names };
    const { unit } = input;
    const requirements = nearWindows(input);
    const backdrop = responseBackdrop({ requirements, unit, vertical, width });
    const { rules, ...drawn } = parts(input, panel);
    return {
      width,
      height: plotHeight,
      padding: space,
      x: dayAxis(input.days, panel, dateWidth[size.name]),
      y: leftAxis(unit, domain, mostTicks),
      boxes: backdrop.boxes,
      rules: [...backdrop.rules, ...rules],
      ...drawn,
      context: [],
      line: [],
      points: [],
      texts: [
        ...backdrop.texts,
        ...lineTexts(input, panel),
        ...rightAxis(unit, vertical, mostTicks, width),
      ],
    };
  };
