/** Set-ups against cultures, grouped by appliance. */
import type { Requirement } from "../../culture/verdict-types.ts";
import type { SetUpAnalysis } from "../../kitchen-analysis-types.ts";
import { appliancesOf, counted, setUpId, setUpsOf } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { setUpText } from "../wording/set-ups.ts";
import { columnHead, columnsOf, matrixClass, verdictCells } from "./verdict-cells.ts";

const row = (
  { analysis, writing }: KitchenPage,
  setUp: SetUpAnalysis,
  columns: readonly Requirement[],
): Markup => {
  const name = setUpText(analysis.kitchen, setUp.setUp, writing);
  const cells = verdictCells(setUp.verdicts, columns, analysis.confidence, writing);
  return markup`<tr role="row"><th role="rowheader" scope="row"><a href="#${setUpId(analysis, setUp)}">${name}</a><span class="asked">${counted(setUp.testIds.length, "test")}</span></th>${cells}</tr>\n`;
};

/** Roles are said outright: shown as a list on a phone, a table would lose them. */
export const kitchenMatrix = (page: KitchenPage): Markup | null => {
  const { analysis, writing } = page;
  const columns = columnsOf(analysis.setUps.flatMap(({ verdicts }) => verdicts));
  if (columns.length === 0) return null;
  const groups = appliancesOf(analysis).map((appliance) => {
    const setUps = setUpsOf(analysis, appliance);
    return setUps.length === 0
      ? null
      : markup`<tbody role="rowgroup">
<tr role="row" class="group"><th role="rowheader" scope="rowgroup" colspan="${columns.length + 1}">${appliance.name}</th></tr>
${setUps.map((setUp) => row(page, setUp, columns))}</tbody>\n`;
  });
  return markup`
<section aria-labelledby="matrix">
<h2 id="matrix">Every tested set-up</h2>
<table role="table" class="${matrixClass(columns)} grouped"><caption class="heard">Which set-up holds which culture, and how likely</caption>
<thead role="rowgroup"><tr role="row"><th role="columnheader" scope="col">Set-up</th>${columns.map((column) => columnHead(column, writing))}</tr></thead>
${groups}</table>
</section>`;
};
