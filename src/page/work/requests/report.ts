/** The whole kitchen's report. */
import { done } from "../../../problem.ts";
import { keptReport } from "../analyse-kept.ts";
import { shownReport } from "../shown-report.ts";
import { kitchenSummary } from "../summary.ts";
import type { Handler } from "../workroom.ts";

export const report: Handler<"report"> = async (room) => {
  const kitchen = await keptReport(room);
  if (!kitchen.ok) return kitchen;
  const { parts, analysis } = kitchen.value;
  return done(shownReport(parts, kitchenSummary(analysis)));
};
