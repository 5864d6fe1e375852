/**
 * The calibration study of the verdict.
 *
 *   npm run study -- [--cases 5000] [--seed 1] [--jobs 2] [--json out.json] [--report FILE]
 *   npm run study -- --case 17
 *
 * Cases are seeds `seed` to `seed + cases - 1`. Writes reports/study.md, or
 * FILE; `--case` prints one case's record instead.
 */
import { writeFileSync } from "node:fs";
import { fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { studyCase } from "./case.ts";
import type { StudyRecord } from "./record.ts";
import { studyReport } from "./report.ts";

const { values } = parseArgs({
  options: {
    cases: { type: "string", default: "5000" },
    seed: { type: "string", default: "1" },
    jobs: { type: "string", default: "2" },
    json: { type: "string" },
    report: { type: "string", default: "reports/study.md" },
    case: { type: "string" },
    worker: { type: "string" },
  },
});
const [cases, seed, jobs] = [values.cases, values.seed, values.jobs].map(Number) as [
  number,
  number,
  number,
];

/** Each `jobs`-th seed, so that all jobs are busy to the end. */
async function studied(from: number): Promise<StudyRecord[]> {
  const records: StudyRecord[] = [];
  for (let one = from; one < seed + cases; one += jobs)
    // oxlint-disable-next-line no-await-in-loop -- one case at a time keeps memory small
    records.push(await studyCase(one));
  return records;
}

const inChild = (from: number): Promise<StudyRecord[]> =>
  new Promise((resolve, reject) => {
    const passed = [...process.argv.slice(2), "--worker", String(from)];
    const child = fork(fileURLToPath(import.meta.url), passed);
    child.on("message", (message) => resolve(message as StudyRecord[]));
    child.on("error", reject);
    // After its message a job's end means nothing more; before it, the records are lost.
    child.on("exit", (code) => reject(new Error(`a job ended with ${code} before its records`)));
  });

async function main(): Promise<void> {
  if (values.worker !== undefined) {
    const part = await studied(Number(values.worker));
    // A long message is still on its way when send() returns.
    process.send!(part, () => process.disconnect());
    return;
  }
  if (values.case !== undefined) {
    console.log(JSON.stringify(await studyCase(Number(values.case)), null, 1));
    return;
  }
  const parts = Array.from({ length: jobs }, (_, job) => inChild(seed + job));
  const records = (await Promise.all(parts)).flat().toSorted((a, b) => a.seed - b.seed);
  if (values.json !== undefined) writeFileSync(values.json, JSON.stringify(records));
  const report = studyReport(records, seed);
  writeFileSync(values.report, report);
  console.log(report);
}

await main();
