/** What the advice assumed of each appliance and container beforehand, and what the tests made of it. */
import type { ApplianceAdvice } from "../../advice/advice-types.ts";
import type { ContainerFigure } from "../../advice/response-types.ts";
import { counted } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { roundTogether } from "../number-format.ts";
import { uncertainty } from "../temperature-text.ts";
import { termFigure, termName } from "../wording/responses.ts";
import { applianceName, containerName } from "../wording/set-ups.ts";
import { plusMinus } from "../writing.ts";
import type { Writing } from "../writing.ts";
import { more } from "./more.ts";
import { rowsTable } from "./rows-table.ts";

const applianceTable = ({ analysis, writing }: KitchenPage, advice: ApplianceAdvice): Markup => {
  const { kitchen } = analysis;
  const { scatter } = advice;
  const tests = advice.tests.length;
  return rowsTable({
    caption: applianceName(kitchen, advice),
    columns: [
      "Figure",
      "Assumed beforehand",
      tests === 0 ? "No test yet" : `After ${counted(tests, "test")}`,
    ],
    rows: [
      ...advice.terms.map((term) => ({
        head: termName(term, kitchen, writing),
        cells: [termFigure(term, term.prior, writing), termFigure(term, term.now, writing)],
      })),
      {
        head: "One run about the line",
        cells: [uncertainty(writing, scatter.prior), uncertainty(writing, scatter.now)],
      },
    ],
  });
};

const figureText = (
  { value, standardUncertainty, from }: ContainerFigure,
  scale: number,
  unit: string,
  writing: Writing,
): string => {
  const pair = roundTogether(value * scale, standardUncertainty * scale);
  const figure = [pair.value, plusMinus(writing), pair.uncertainty, unit].join(writing.space);
  return `${figure}, ${from}`;
};

const containerTable = ({ analysis, writing }: KitchenPage): Markup =>
  rowsTable({
    caption: "Containers in a bath",
    columns: ["Container", "Share lost to the room", "Follows its bath after"],
    rows: analysis.advice.containers.map((one) => ({
      head: containerName(analysis.kitchen, one),
      cells: [
        figureText(one.shareLost, 100, "%", writing),
        figureText(one.lagMinutes, 1, "min", writing),
      ],
    })),
  });

/** Folded: long, and for those who want to check. */
export const kitchenAssumed = (page: KitchenPage): Markup | null => {
  const { appliances, containers } = page.analysis.advice;
  if (appliances.length === 0) return null;
  const tables = markup`<p class="small">Each figure of an appliance follows Student’s t: its middle ± its scale. The standard deviation is larger than the scale, by about 15${page.writing.space}% beforehand and by less with each test. A container’s figures stand with their standard uncertainties. What is assumed beforehand is this program’s own choice (common practice, no source). Each test moves a figure from what was assumed towards what was seen, the more so the surer it is.</p>
${appliances.map((advice) => applianceTable(page, advice))}
${containers.length === 0 ? null : containerTable(page)}`;
  return more("What the advice assumed, and what the tests made of it", tables);
};
