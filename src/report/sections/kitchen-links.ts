/** Links to the tests a statement rests on. */
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { testId } from "../kitchen-page.ts";
import type { ReadTest } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { calendarDay } from "../time-text.ts";
import { separated } from "./verdict-clauses.ts";

/** Each called by its day, kept whole at a line's end, or by its name where that is not known. */
export const testLinks = (
  analysis: KitchenAnalysis,
  tests: readonly ReadTest[],
): readonly Markup[] =>
  separated(
    tests.map((test) => {
      const day = calendarDay(test.startedAt);
      const name = day === null ? markup`${test.test.id}` : markup`<span class="day">${day}</span>`;
      return markup`<a href="#${testId(analysis, test)}">${name}</a>`;
    }),
    ", ",
  );
