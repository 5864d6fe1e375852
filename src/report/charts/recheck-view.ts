/** Which stretch of temperature and which windows a chart of repeated tests shows. */
import type { RecheckChart } from "../../advice/recheck-types.ts";
import type { Requirement } from "../../culture/verdict-types.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { toScale } from "./chart-theme.ts";
import { stretchOf, widened } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";

export interface RecheckInput {
  readonly chart: RecheckChart;
  /** What stands under each point: its day, or which test it is. */
  readonly days: readonly string[];
  readonly requirements: readonly Requirement[];
  readonly unit: TemperatureUnit;
}

/** A window whose edge lies within this of a test or limit is shown to that edge, degC. */
const reach = 1;

const drawn = ({ chart: { points, low, high } }: RecheckInput): Stretch =>
  stretchOf(
    points.flatMap(({ mean, ewma, ewmaLow, ewmaHigh }) => [mean, ewma, ewmaLow, ewmaHigh]),
    [low, high],
  );

/** Those that reach into what is drawn, or nearly so. */
export const nearWindows = (input: RecheckInput): readonly Requirement[] => {
  const { low, high } = drawn(input);
  return input.requirements.filter((one) => one.high >= low - reach && one.low <= high + reach);
};

/** In the drawn unit. */
export const recheckDomain = (input: RecheckInput): Stretch => {
  const { low, high } = drawn(input);
  const edges = nearWindows(input)
    .flatMap((one) => [one.low, one.high])
    .filter((edge) => edge >= low - reach && edge <= high + reach);
  const all = stretchOf(edges, [low, high]);
  const shown = { low: toScale(input.unit, all.low), high: toScale(input.unit, all.high) };
  return widened(shown, 0.06, 0.15);
};
