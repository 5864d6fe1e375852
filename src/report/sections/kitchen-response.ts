/** What each setting of each appliance is expected to give: a chart for each. */
import type { ApplianceAdvice } from "../../advice/advice-types.ts";
import { responsePlot } from "../charts/response.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { responseDescription } from "../wording/responses.ts";
import { applianceName } from "../wording/set-ups.ts";
import { adviceId } from "./kitchen-advice.ts";
import { figure } from "./figure.ts";

/** What stands along the chart and up it. */
const axesText = ({ curves }: ApplianceAdvice): string => {
  const kind = curves[0]?.points[0]?.setting.kind;
  const along = {
    fixed: "the container, as nothing can be set",
    step: "the temperature set",
    program: "the program",
    mark: "the mark",
  }[kind ?? "fixed"];
  return `Along: ${along}. Upright: the average of the hold.`;
};

const chart = async (page: KitchenPage, advice: ApplianceAdvice): Promise<Markup | null> => {
  const { analysis, writing } = page;
  const { kitchen, requirements } = analysis;
  const plot = responsePlot({
    advice,
    requirements,
    containers: new Map(kitchen.containers.map(({ id, name }) => [id, name])),
    unit: kitchen.shownUnit,
  });
  if (plot === null) return null;
  const name = applianceName(kitchen, advice);
  const drawing = await figure({
    id: `response-${adviceId(page, advice.appliance)}`,
    title: `What to expect of ${name}`,
    description: responseDescription(advice, analysis, writing),
    plot,
    key: [],
    caption: axesText(advice),
  });
  return markup`<h3>${name}</h3>
${drawing}`;
};

/** Of an appliance without a test nothing but assumptions could be drawn. */
const untested = ({ analysis }: KitchenPage): Markup | null => {
  const names = analysis.advice.appliances
    .filter(({ tests }) => tests.length === 0)
    .map((one) => applianceName(analysis.kitchen, one));
  return names.length === 0
    ? null
    : markup`<p class="small">Not drawn, because nothing of it was tested: ${names.join(", ")}.</p>`;
};

export const kitchenResponse = async (page: KitchenPage): Promise<Markup | null> => {
  const tested = page.analysis.advice.appliances.filter(({ tests }) => tests.length > 0);
  const charts = await Promise.all(tested.map((advice) => chart(page, advice)));
  if (charts.every((drawn) => drawn === null)) return null;
  return markup`
<section aria-labelledby="response">
<h2 id="response">What each setting should give</h2>
<p>The average temperature of the next hold that is to be expected, for each container: a line, and around it the range where 95 of 100 such runs would come to lie. Marks are the tests, with twice their standard uncertainty; an open mark was measured in the bath. Shaded bands are the cultures’ windows.</p>
${charts}
${untested(page)}
</section>`;
};
