import { readNights, type Nights } from "../analysis.ts";
import type { AnalysisRequest, HashedSource } from "../analysis-types.ts";
import type { WaterTest } from "../kitchen/kitchen.ts";
import type { Outcome } from "../problem.ts";
import type { ReadingsFile } from "../readings/readings-file.ts";
import type { OpenTestFile } from "./kitchen-options.ts";

/** Opens and reads all files of a water test and finds its nights. */
export const readTest = async (
  test: WaterTest,
  request: AnalysisRequest,
  open: OpenTestFile,
): Promise<Outcome<Nights>> => {
  const sources: HashedSource[] = [];
  for (const file of test.files) {
    // Each is opened, and looked at, only if the one before it could be.
    // oxlint-disable-next-line no-await-in-loop
    const opened = await open(file, test);
    if (!opened.ok) return opened;
    sources.push(opened.value);
  }
  try {
    return await readNights(request, sources);
  } catch (error) {
    const problem = sources.map((source) => source.broken?.() ?? null).find((one) => one !== null);
    if (problem === undefined) throw error;
    return { ok: false, problem };
  }
};

/**
 * When a test began by its clock, as if in UTC, ms since 1970; null where none
 * of its files tells the date.
 */
export const startedAt = ({ files }: WaterTest, nights: Nights): number | null => {
  const dated = nights.files.some(
    ({ readings }, index) => (files[index]?.startsAt ?? null) !== null || tellsDate(readings),
  );
  return dated ? (nights.files[0]?.readings.startWallClock ?? null) : null;
};

export const tellsDate = ({ startWallClock, timeFormat, notices }: ReadingsFile): boolean =>
  startWallClock !== null &&
  timeFormat !== "clock" &&
  !notices.some(({ code }) => code === "year-unknown");
