/** The answer itself: one sentence for one probe and one requirement. */
import type { Requirement, Verdict, VerdictWord } from "../../culture/verdict-types.ts";
import type { ProbeRole, Series } from "../../readings/series.ts";
import { askedRange, askedTemperature } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import { cultureName } from "./cultures.ts";

/** "38 to 43 °C (100.4 to 109.4 °F) for 24 h, never above 45 °C (113 °F)". */
export const requirementText = (requirement: Requirement, writing: Writing): string => {
  const { low, high, ceiling, hours } = requirement;
  const base = `${askedRange(writing, low, high)} for ${duration(hours * 60, writing.space)}`;
  return ceiling === null ? base : `${base}, never above ${askedTemperature(writing, ceiling)}`;
};

const places: Readonly<Record<ProbeRole, string>> = {
  food: "the food",
  bath: "the bath (not the food in it)",
  room: "the room",
};

const verbs: Readonly<Record<VerdictWord, (place: string) => string>> = {
  holds: (place) => `This set-up keeps ${place} at`,
  misses: (place) => `This set-up does not keep ${place} at`,
  unproven: (place) => `This test does not settle whether the set-up keeps ${place} at`,
};

export const answerText = (verdict: Verdict, role: ProbeRole, writing: Writing): string => {
  const { requirement } = verdict;
  const wanted = requirementText(requirement, writing);
  const whose = requirement.name === "" ? "" : `, as “${cultureName(requirement)}” needs`;
  return `${verbs[verdict.verdict](places[role])} ${wanted}${whose}.`;
};

/** "food", or "food in night.csv" where several files were read. */
export const probeName = (series: Series, file: string, severalFiles: boolean): string =>
  severalFiles ? `${series.name} in ${file}` : series.name;

/** The same for running text, where the name stands in quotation marks. */
export const quotedProbeName = (series: Series, file: string, severalFiles: boolean): string =>
  severalFiles ? `“${series.name}” in ${file}` : `“${series.name}”`;
