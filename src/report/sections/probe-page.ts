/** What the sections about one probe share. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import type { Verdict } from "../../culture/verdict-types.ts";
import type { Series } from "../../readings/series.ts";
import { askedRange } from "../temperature-text.ts";
import { shortCultureName } from "../wording/cultures.ts";
import type { Writing } from "../writing.ts";

export interface ProbePage {
  readonly analysis: Analysis;
  readonly probe: ProbeAnalysis;
  readonly writing: Writing;
  /** Unique on the page. */
  readonly id: string;
}

/** Whether a probe is what the answers are about: it has one, or no probe has. */
export const answersFor = (analysis: Analysis, probe: ProbeAnalysis): boolean =>
  probe.verdicts.length > 0 || analysis.probes.every(({ verdicts }) => verdicts.length === 0);

/** The clock time of minute 0. */
export const startOf = ({ analysis, probe }: ProbePage): number | null =>
  analysis.files[probe.fileIndex]?.readings.startWallClock ?? null;

/** Bath and room probes of the same water test. */
export const contextOf = ({ analysis, probe }: ProbePage): readonly Series[] =>
  analysis.probes
    .filter((other) => other.test === probe.test && other !== probe)
    .map(({ series }) => series)
    .filter(({ role }) => role !== "food");

/** "window of Kefir, 18 to 24 °C (64.4 to 75.2 °F)", or "window you gave, ..." where it was typed by hand. */
export const windowName = ({ requirement }: Verdict, writing: Writing): string => {
  const range = askedRange(writing, requirement.low, requirement.high);
  const name = shortCultureName(requirement);
  return requirement.name === "" ? `window you gave, ${range}` : `window of ${name}, ${range}`;
};
