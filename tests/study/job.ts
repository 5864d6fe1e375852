/** One process's part of a study: `job.ts FIRST END STEP`, seeds FIRST, FIRST + STEP, ... below END. */
import { studyCase } from "./case.ts";
import type { StudyRecord } from "./record.ts";

const [first, end, step] = process.argv.slice(2).map(Number) as [number, number, number];
const records: StudyRecord[] = [];
for (let seed = first; seed < end; seed += step)
  // oxlint-disable-next-line no-await-in-loop -- one case at a time keeps memory small
  records.push(await studyCase(seed));
// A long message is still on its way when send() returns.
process.send!(records, () => process.disconnect());
