/** The whole kitchen's report. */
import { done } from "../../../problem.ts";
import { keptReport } from "../analyse-kept.ts";
import { shownReport } from "../shown-report.ts";
import type { Handler } from "../workroom.ts";

export const report: Handler<"report"> = async (room) => {
  const kitchen = await keptReport(room);
  if (!kitchen.ok) return kitchen;
  return done(shownReport(kitchen.value.parts, "The report is ready."));
};
