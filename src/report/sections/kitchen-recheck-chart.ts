/** A chart of all tests of one set-up, on the page. */
import type { Recheck } from "../../advice/recheck-types.ts";
import { recheckPlot } from "../charts/recheck.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import type { Markup } from "../markup.ts";
import { dayOfTest, recheckChartCaption, recheckDescription } from "../wording/recheck-chart.ts";
import { fullSetUpText } from "../wording/set-ups.ts";
import { figure } from "./figure.ts";

export const recheckChartFigure = (
  { analysis, writing }: KitchenPage,
  recheck: Recheck,
  id: string,
): Promise<Markup> => {
  const { kitchen, requirements } = analysis;
  const { chart } = recheck;
  const days = chart.points.map(
    ({ testId }, at) => dayOfTest(analysis, testId) ?? `test ${at + 1}`,
  );
  return figure({
    id: `${id}-chart`,
    title: `Tests of ${fullSetUpText(kitchen, recheck.setUp, writing)} in their order`,
    description: recheckDescription(recheck, analysis, writing),
    plot: recheckPlot({ chart, days, requirements, unit: kitchen.shownUnit }),
    key: [],
    caption: recheckChartCaption(chart, writing),
  });
};
