/** The chart of a set-up's tests in words, for those who cannot see it, and what stands below it. */
import type { Recheck, RecheckChart } from "../../advice/recheck-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { temperature, temperatureRange, uncertainty } from "../temperature-text.ts";
import { calendarDay } from "../time-text.ts";
import type { Writing } from "../writing.ts";

type Point = RecheckChart["points"][number];

/** The day of a test, by its id; null where not known. */
export const dayOfTest = ({ tests }: KitchenAnalysis, testId: string): string | null =>
  calendarDay(tests.find(({ test }) => test.id === testId)?.startedAt ?? null);

const pointText = (point: Point, analysis: KitchenAnalysis, writing: Writing): string => {
  const day = dayOfTest(analysis, point.testId);
  const out = [
    ...(point.individualSignal ? ["beyond the limits of single tests"] : []),
    ...(point.ewmaSignal ? ["its smoothed average beyond its own limits"] : []),
  ];
  const where = out.length === 0 ? "" : `, ${out.join(", ")}`;
  return `${temperature(writing, point.mean)}${day === null ? "" : ` on ${day}`}${where}`;
};

/** So many are told one by one; of more only the ends and those beyond a limit. */
const mostTold = 8;

const told = ({ points }: RecheckChart): readonly Point[] =>
  points.length <= mostTold
    ? points
    : points.filter(
        ({ individualSignal, ewmaSignal }, at) =>
          at === 0 || at === points.length - 1 || individualSignal || ewmaSignal,
      );

/** What the chart shows, in a few sentences. */
export const recheckDescription = (
  { chart }: Recheck,
  analysis: KitchenAnalysis,
  writing: Writing,
): string => {
  const tests = told(chart)
    .map((point) => pointText(point, analysis, writing))
    .join("; ");
  const last = chart.points.at(-1);
  const smoothed =
    last === undefined
      ? ""
      : ` The smoothed average ends at ${temperature(writing, last.ewma)}, its limits at ${temperatureRange(writing, last.ewmaLow, last.ewmaHigh)}.`;
  return `Averages of the hold of ${chart.points.length} tests in their order: ${tests}. Limits of single tests ${temperatureRange(writing, chart.low, chart.high)}.${smoothed}`;
};

/** How to read every such chart; said once. */
export const recheckChartsText =
  "In the charts the tests stand in their order. Dots are the averages of single holds, with dashed lines as their limits; a square lies beyond them. The line is the average smoothed over the tests (exponentially weighted, each new test counting three tenths), the corridor its limits. Limits are three standard deviations about the first half of the tests: what stays within them may be chance.";

/** What the limits of one chart rest on. */
export const recheckChartCaption = ({ deviation, from }: RecheckChart, writing: Writing): string =>
  `Limits by a standard deviation of ${uncertainty(writing, deviation)} from one run to the next (${from}).`;
