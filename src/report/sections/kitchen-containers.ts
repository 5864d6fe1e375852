/** How the food follows its bath, where a probe stood in each. */
import type { ResponseFigure } from "../../container/container-response.ts";
import type { ProbeResponse } from "../../kitchen-analysis-types.ts";
import { readTests, testId } from "../kitchen-page.ts";
import type { KitchenPage, ReadTest } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { roundTogether } from "../number-format.ts";
import { differenceWithUncertainty, temperature } from "../temperature-text.ts";
import { applianceName, containerName, settingText } from "../wording/set-ups.ts";
import { plusMinus } from "../writing.ts";
import type { Writing } from "../writing.ts";
import { rowsTable } from "./rows-table.ts";
import type { TableRow } from "./rows-table.ts";

const pair = ({ value, standardUncertainty }: ResponseFigure, writing: Writing): string => {
  const rounded = roundTogether(value, standardUncertainty);
  return [rounded.value, plusMinus(writing), rounded.uncertainty].join(writing.space);
};

const standsText = ({ value, standardUncertainty }: ResponseFigure, writing: Writing): string => {
  const size = differenceWithUncertainty(writing, Math.abs(value), standardUncertainty);
  return value < 0 ? `${size} above it` : size;
};

const lostText = ({ shareLost, room }: ProbeResponse["response"], writing: Writing): string => {
  if (shareLost === null) return room === null ? "room not known" : "not to be told";
  const share = {
    value: shareLost.value * 100,
    standardUncertainty: shareLost.standardUncertainty * 100,
  };
  const where =
    room === null
      ? ""
      : ` (room ${temperature(writing, room.mean)}, ${room.from === "measured" ? "measured" : "as you said"})`;
  return `${pair(share, writing)}${writing.space}%${where}`;
};

const rowOf = (
  { analysis, writing }: KitchenPage,
  test: ReadTest,
  { response }: ProbeResponse,
): TableRow => {
  const { kitchen } = analysis;
  const setting = settingText(test.test.setting, writing);
  const place = `${applianceName(kitchen, test.test)}${setting === null ? "" : `, ${setting}`}`;
  return {
    head: markup`<a href="#${testId(analysis, test)}">${containerName(kitchen, test.test)}</a><span class="asked">${place}</span>`,
    cells: [
      standsText(response.offset, writing),
      response.lagMinutes === null
        ? "not to be told"
        : `${pair(response.lagMinutes, writing)}${writing.space}min`,
      lostText(response, writing),
    ],
  };
};

export const kitchenContainers = (page: KitchenPage): Markup | null => {
  const rows = readTests(page.analysis).flatMap((test) =>
    test.responses.map((response) => rowOf(page, test, response)),
  );
  if (rows.length === 0) return null;
  return markup`
<section aria-labelledby="containers">
<h2 id="containers">Food and its bath</h2>
<p>Where one probe stood in the food’s place and another in the bath, the two curves tell what the container does: how far the food stays below the bath, and how slowly it follows.</p>
${rowsTable({
  caption: "What each container does",
  columns: ["Container", "Stands below its bath", "Follows after", "Part lost to the room"],
  rows,
})}
<p class="small">With standard uncertainties, the thermometers’ included. “Follows after” is the time constant: after so long the food has made up 63${page.writing.space}% of a change of its bath, after three times as long 95${page.writing.space}%. The last column is the part of the difference between bath and room by which the food stands lower.</p>
</section>`;
};
