/** On which day each water test began: its files are read, nothing is decided. */
import type { TestedOn } from "../advice/recheck-due.ts";
import { dayOf } from "../advice/calendar-days.ts";
import type { WaterTest } from "../kitchen/kitchen.ts";
import { readReadings } from "../readings/read-readings.ts";
import type { ReadingsFile } from "../readings/readings-file.ts";
import type { OpenTestFile } from "./kitchen-options.ts";
import { tellsDate } from "./read-test.ts";
import { readingOptions } from "./test-request.ts";

/** null where a file cannot be read; `report` says why. */
const readAll = async (
  test: WaterTest,
  open: OpenTestFile,
): Promise<readonly ReadingsFile[] | null> => {
  const read: ReadingsFile[] = [];
  for (const file of test.files) {
    // oxlint-disable-next-line no-await-in-loop -- two at once would only double the memory
    const opened = await open(file, test);
    if (!opened.ok) return null;
    try {
      // oxlint-disable-next-line no-await-in-loop
      const readings = await readReadings(opened.value, readingOptions(file));
      if (!readings.ok) return null;
      read.push(readings.value);
    } catch (error) {
      if ((opened.value.broken?.() ?? null) === null) throw error;
      return null;
    }
  }
  return read;
};

/** By the first file that tells it: loggers of one test ran together. */
const dayIn = ({ files }: WaterTest, read: readonly ReadingsFile[]): string | null => {
  const starts = read.map(
    (one, index) => files[index]?.startsAt ?? (tellsDate(one) ? one.startWallClock : null),
  );
  return dayOf(starts.find((start) => start !== null) ?? null);
};

/** Tests that cannot be read are left out: they say nothing of their set-up. */
export const testDays = async (
  tests: readonly WaterTest[],
  open: OpenTestFile,
): Promise<readonly TestedOn[]> => {
  const days: TestedOn[] = [];
  for (const test of tests) {
    // oxlint-disable-next-line no-await-in-loop -- as above
    const read = await readAll(test, open);
    if (read !== null) days.push({ setUp: test, date: dayIn(test, read) });
  }
  return days;
};
