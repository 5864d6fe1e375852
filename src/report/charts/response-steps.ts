/** A response over settings in degrees: a line with its corridor for each container, tests as marks. */
import type { TestedPoint } from "../../advice/response-types.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { short } from "../number-format.ts";
import { otherUnit } from "../writing.ts";
import { colour, signOf, toOther, toScale } from "./chart-theme.ts";
import type { Plot, PlotAxis, PlotRule } from "./plot.ts";
import { containerLook, corridorOpacity } from "./response-looks.ts";
import { testLimits } from "./response-view.ts";
import type { DrawnCurve } from "./response-view.ts";
import { multiples, roundStep, stretchOf, widened } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";
import { down } from "./vertical.ts";
import type { Vertical } from "./vertical.ts";

export interface Panel {
  readonly unit: TemperatureUnit;
  readonly vertical: Vertical;
  readonly width: number;
}

export type Drawn = Pick<Plot, "rules" | "x"> &
  Required<Pick<Plot, "corridors" | "curves" | "markers">>;

type Placed = { readonly setting: DrawnCurve["points"][number]["setting"] };

/** In the drawn unit. */
const shownSetting = ({ setting }: Placed, unit: TemperatureUnit): number =>
  setting.kind === "step" ? toScale(unit, setting.celsius) : 0;

/** The person's unit, below it the other; each unit stands once, at the last tick. */
const settingAxis = (stretch: Stretch, most: number, unit: TemperatureUnit): PlotAxis => {
  const step = roundStep(stretch.high - stretch.low, most);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const ticks = multiples(stretch, step);
  const sign = (at: number, which: TemperatureUnit): string =>
    at === ticks.length - 1 ? ` ${signOf(which)}` : "";
  const words = ticks.map((tick, at) => [
    tick.toFixed(decimals) + sign(at, unit),
    short(toOther(unit, tick), 1) + sign(at, otherUnit(unit)),
  ]);
  return { ...stretch, ticks, words };
};

/** A test's uncertainty as an upright line, px. */
export const testRule = (
  test: TestedPoint,
  x: number,
  { unit, vertical }: Panel,
  stroke: string,
): PlotRule => {
  const { low, high } = testLimits(test);
  return {
    left: x,
    right: x,
    top: down(vertical, toScale(unit, high)),
    bottom: down(vertical, toScale(unit, low)),
    stroke,
    width: 1.6,
    dash: [1, 0],
  };
};

export const stepsResponse = (
  curves: readonly DrawnCurve[],
  tests: readonly TestedPoint[],
  panel: Panel,
  mostTicks: number,
): Drawn => {
  const { unit, vertical, width } = panel;
  const all = [...curves.flatMap(({ points }) => points), ...tests];
  const settings = widened(
    stretchOf(
      all.map((one) => shownSetting(one, unit)),
      [],
    ),
    0.02,
    0.1,
  );
  const across = (one: Placed): number =>
    ((shownSetting(one, unit) - settings.low) / (settings.high - settings.low)) * width;
  const y = (celsius: number): number => down(vertical, toScale(unit, celsius));
  const lookOf = (container: string) =>
    containerLook(curves.find((curve) => curve.container === container)?.at ?? 0);
  return {
    x: settingAxis(settings, mostTicks, unit),
    corridors: curves.flatMap(({ container, at, points }) =>
      points.map((point) => ({
        series: container,
        x: across(point),
        top: y(point.level.high),
        bottom: y(point.level.low),
        fill: containerLook(at).stroke,
        opacity: corridorOpacity,
      })),
    ),
    curves: curves.flatMap(({ container, at, points }) =>
      points.map((point) => ({
        series: container,
        x: across(point),
        y: y(point.level.mean),
        stroke: containerLook(at).stroke,
        dash: containerLook(at).dash,
      })),
    ),
    rules: tests.map((test) => testRule(test, across(test), panel, lookOf(test.container).stroke)),
    markers: tests.map((test) => ({
      x: across(test),
      y: y(test.mean),
      shape: lookOf(test.container).shape,
      fill: test.place === "food" ? lookOf(test.container).stroke : colour.paper,
      stroke: test.place === "food" ? colour.paper : lookOf(test.container).stroke,
    })),
  };
};
