/** Which part of an appliance's response is drawn: near the windows and the tests, thinned. */
import type { ApplianceAdvice } from "../../advice/advice-types.ts";
import type { ResponseCurve, TestedPoint } from "../../advice/response-types.ts";
import type { Requirement } from "../../culture/verdict-types.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { toScale } from "./chart-theme.ts";
import { stretchOf, widened } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";

export interface ResponseInput {
  readonly advice: ApplianceAdvice;
  readonly requirements: readonly Requirement[];
  /** Names of the containers, by their ids, in the kitchen's order: one looks the same in every chart. */
  readonly containers: ReadonlyMap<string, string>;
  readonly unit: TemperatureUnit;
}

type CurvePoint = ResponseCurve["points"][number];

export interface DrawnCurve {
  readonly name: string;
  readonly container: string;
  /** Place among the containers: its look. */
  readonly at: number;
  readonly points: readonly CurvePoint[];
}

/** Settings whose level lies further than this from all windows and tests are not drawn, degC. */
const reach = 3;
/** Points of one curve: nearly straight, so few will do. */
const mostPoints = 16;

/** From the lowest to the highest window edge and test, degC. */
const anchors = ({ advice, requirements }: ResponseInput): Stretch =>
  stretchOf(
    advice.tests.map(({ mean }) => mean),
    requirements.flatMap(({ low, high }) => [low, high]),
  );

/** Every so many, ends kept. */
const thinned = <Row>(rows: readonly Row[]): readonly Row[] => {
  const stride = Math.ceil(rows.length / mostPoints);
  return rows.filter((_, at) => at % stride === 0 || at === rows.length - 1);
};

const isStep = ({ setting }: CurvePoint): boolean => setting.kind === "step";

/** Steps are cut to what is near; the few positions of other controls are all shown. */
export const drawnCurves = (input: ResponseInput): readonly DrawnCurve[] => {
  const { low, high } = anchors(input);
  const near = (point: CurvePoint): boolean =>
    !isStep(point) || (point.level.mean >= low - reach && point.level.mean <= high + reach);
  const order = [...input.containers.keys()];
  return input.advice.curves.flatMap(({ container, points }) => {
    const shown = points.filter(near);
    const few = shown.some(isStep) ? thinned(shown) : shown;
    const name = input.containers.get(container) ?? container;
    return few.length === 0
      ? []
      : [{ name, container, at: Math.max(order.indexOf(container), 0), points: few }];
  });
};

/** How far a test's mean may be off: two standard uncertainties each way, degC. */
export const testLimits = ({ mean, standardUncertainty }: TestedPoint): Stretch => ({
  low: mean - 2 * standardUncertainty,
  high: mean + 2 * standardUncertainty,
});

/** The temperature scale, in the drawn unit: windows, tests, and levels near them; corridors are cut at its ends. */
export const responseDomain = (input: ResponseInput, curves: readonly DrawnCurve[]): Stretch => {
  const { low, high } = anchors(input);
  const tests = input.advice.tests.map(testLimits);
  const levels = curves
    .flatMap(({ points }) => points.map(({ level }) => level.mean))
    .filter((mean) => mean >= low - reach && mean <= high + reach);
  const all = stretchOf(levels, [low, high, ...tests.flatMap((test) => [test.low, test.high])]);
  const shown = { low: toScale(input.unit, all.low), high: toScale(input.unit, all.high) };
  return widened(shown, 0.05, 0.4);
};
