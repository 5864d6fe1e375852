import { ewma } from "../stats/ewma.ts";
import { individualsChart, individualsLimits } from "../stats/individuals-chart.ts";
import { mean } from "../stats/summary.ts";
import type { RecheckChart } from "./recheck-types.ts";
import type { HeldTest } from "./response.ts";

/** Moving ranges of fewer tests hardly know a standard deviation; then that of the appliance's runs serves (our choice). */
const enoughRanges = 8;

/**
 * Individuals and EWMA charts of a set-up's hold means, oldest first, centred on
 * the first half of them: where it was before it may have moved.
 *
 * @param tests at least 2
 * @param deviation of single runs about their level, degC
 * @param measured whether repeats stand behind it
 */
export const recheckChart = (
  tests: readonly HeldTest[],
  deviation: number,
  measured: boolean,
): RecheckChart => {
  const means = tests.map(({ settled }) => settled.level);
  const centre = mean(means.slice(0, Math.max(1, Math.floor(means.length / 2))));
  const ranges = means.length > enoughRanges ? individualsChart(means.slice(0, -1)) : null;
  const used = ranges?.deviation ?? deviation;
  const { low, high } = individualsLimits(centre, used);
  const averages = ewma(means, { centre, deviation: used });
  return {
    points: tests.map(({ id }, at) => {
      const average = averages[at]!;
      return {
        testId: id,
        mean: means[at]!,
        ewma: average.value,
        individualSignal: means[at]! < low || means[at]! > high,
        ewmaSignal: average.signal,
        ewmaLow: average.low,
        ewmaHigh: average.high,
      };
    }),
    centre,
    low,
    high,
    deviation: used,
    from: measured || ranges !== null ? "measured" : "assumed",
  };
};
