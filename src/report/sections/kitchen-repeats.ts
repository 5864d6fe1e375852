/** How much one run of a set-up differs from the next: measured where it was repeated, else assumed. */
import type { RunToRun } from "../../analysis-types.ts";
import type { SetUpAnalysis } from "../../kitchen-analysis-types.ts";
import { counted, shownProbeOf, testsBehind } from "../kitchen-page.ts";
import type { KitchenPage, ReadTest } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { temperature, temperatureWithUncertainty, uncertainty } from "../temperature-text.ts";
import { calendarDay } from "../time-text.ts";
import { fullSetUpText } from "../wording/set-ups.ts";
import type { Writing } from "../writing.ts";
import { rowsTable } from "./rows-table.ts";
import { separated } from "./verdict-clauses.ts";

/** "0.21 °C (0.38 °F), with 2 repeats on this appliance". */
export const runToRunText = ({ value, from, repeats }: RunToRun, writing: Writing): string => {
  const size = uncertainty(writing, value);
  if (from === "stated") return `${size}, as you said`;
  if (from === "assumed") return `${size}, assumed`;
  return repeats === undefined
    ? `${size}, measured`
    : `${size}, with ${counted(repeats, "repeat")} on this appliance`;
};

const average = (test: ReadTest, setUp: SetUpAnalysis, writing: Writing): Markup | null => {
  const probe = shownProbeOf(test, setUp);
  const hold = probe?.night.hold;
  if (probe === null || hold == null) return null;
  const text =
    probe.standardUncertainty === null
      ? temperature(writing, hold.mean)
      : temperatureWithUncertainty(writing, hold.mean, probe.standardUncertainty);
  const day = calendarDay(test.startedAt);
  return markup`<span class="run">${text}${day === null ? null : markup` <span class="when">${day}</span>`}</span>`;
};

const averages = ({ analysis, writing }: KitchenPage, setUp: SetUpAnalysis): Markup => {
  const found = testsBehind(analysis, setUp)
    .map((test) => average(test, setUp, writing))
    .filter((text) => text !== null);
  return found.length === 0 ? markup`no hold found` : markup`${separated(found, " ")}`;
};

export const kitchenRepeats = (page: KitchenPage): Markup | null => {
  const { analysis, writing } = page;
  if (analysis.setUps.length === 0) return null;
  return markup`
<section aria-labelledby="repeats">
<h2 id="repeats">One run and the next</h2>
<p>The same set-up settles a little differently each time. Tests that repeat a set-up show by how much, for its whole appliance. Until there are any, a figure is assumed; it still counts while repeats are few.</p>
${rowsTable({
  caption: "How far the next run may lie from those measured",
  columns: ["Set-up", "Average of each test’s hold", "One run to the next"],
  rows: analysis.setUps.map((setUp) => ({
    head: fullSetUpText(analysis.kitchen, setUp.setUp, writing),
    cells: [averages(page, setUp), runToRunText(setUp.runToRun, writing)],
  })),
})}
<p class="small">All with standard uncertainties.</p>
</section>`;
};
