/** One set-up against its baseline: the sentence first, then the figures, the cultures, the chart. */
import type { Recheck } from "../../advice/recheck-types.ts";
import { markOf } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { calendarDay } from "../time-text.ts";
import { wholeDates } from "../whole-dates.ts";
import { isFarOff, nearCultures, recheckCultureText } from "../wording/recheck-cultures.ts";
import { recheckFigures, recheckRemarks } from "../wording/recheck-figures.ts";
import {
  recheckClause,
  recheckLooks,
  recheckWords,
  sharedThermometerText,
  whatWouldTell,
} from "../wording/recheck.ts";
import type { RecheckView } from "../wording/recheck.ts";
import { fullSetUpText } from "../wording/set-ups.ts";
import { recheckChartFigure } from "./kitchen-recheck-chart.ts";
import { rowsTable } from "./rows-table.ts";

const dated = (name: string, startedAt: number | null): Markup => {
  const day = calendarDay(startedAt);
  return markup`${wholeDates(day === null ? name : `${name}, ${day}`)}`;
};

const figuresTable = (recheck: Recheck, { writing }: KitchenPage): Markup =>
  rowsTable({
    caption: "What the two tests show",
    columns: [
      "Hold",
      dated("Baseline", recheck.baseline.startedAt),
      dated("Newest", recheck.newest.startedAt),
      `Change, 95${writing.space}% range`,
    ],
    rows: recheckFigures(recheck, writing).map(({ name, before, now, change, range, changed }) => ({
      head: name,
      cells: [
        before,
        now,
        markup`${changed ? markup`<b>${change}</b>, more than chance` : change}<span class="asked">${range}</span>`,
      ],
    })),
  });

const culturesList = (recheck: Recheck, view: RecheckView): Markup | null => {
  const { analysis } = view;
  const far = recheck.cultures.filter(isFarOff).map(({ culture }) => markOf(analysis, culture));
  const near = nearCultures(recheck).map(
    (one) =>
      markup`<li><b>${markOf(analysis, one.culture)}</b>: ${recheckCultureText(one, view)}.</li>\n`,
  );
  const outside =
    far.length === 0
      ? null
      : markup`<li>Outside its window then and now: ${far.join(", ")}.</li>\n`;
  return near.length + far.length === 0 ? null : markup`<ul>\n${near}${outside}</ul>`;
};

/** `id` is its place on the page. */
export const recheckedSetUp = async (
  page: KitchenPage,
  recheck: Recheck,
  id: string,
): Promise<Markup> => {
  const { analysis, writing } = page;
  const view: RecheckView = { ...page, recheck: analysis.advice.recheck };
  const remarks = [
    ...recheckRemarks(recheck, writing),
    sharedThermometerText(recheck),
    whatWouldTell(recheck) ?? "",
  ];
  return markup`<h3 id="${id}">${fullSetUpText(analysis.kitchen, recheck.setUp, writing)}</h3>
<p class="rechecked ${recheckLooks[recheck.word]}"><span class="mark">${recheckWords[recheck.word]}</span> ${recheckClause(recheck, writing)}</p>
${culturesList(recheck, view)}
${figuresTable(recheck, page)}
<p class="small">${remarks.join(" ").trim()}</p>
${await recheckChartFigure(page, recheck, id)}
`;
};
