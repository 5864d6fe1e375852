/** What the sections about one probe share. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import type { Verdict } from "../../culture/verdict-types.ts";
import type { Series } from "../../readings/series.ts";
import { askedRange } from "../temperature-text.ts";
import { cultureName } from "../wording/answers.ts";
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

/** The clock time of the first reading. */
export const startOf = ({ analysis, probe }: ProbePage): number | null =>
  analysis.files[probe.fileIndex]?.readings.startWallClock ?? null;

/** Bath and room probes of the same file. */
export const contextOf = ({ analysis, probe }: ProbePage): readonly Series[] =>
  analysis.probes
    .filter((other) => other.fileIndex === probe.fileIndex && other !== probe)
    .map(({ series }) => series)
    .filter(({ role }) => role !== "food");

/** "window, 38 to 43 °C (100.4 to 109.4 °F)", with the culture where it has a name. */
export const windowName = ({ requirement }: Verdict, writing: Writing): string => {
  const culture = cultureName(requirement);
  const range = askedRange(writing, requirement.low, requirement.high);
  return culture === null ? `window, ${range}` : `window of ${culture}, ${range}`;
};
