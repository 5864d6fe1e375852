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
import { parseArgs } from "node:util";
import { studyCase } from "./case.ts";
import { studied } from "./jobs.ts";
import { studyReport } from "./report.ts";

const { values } = parseArgs({
  options: {
    cases: { type: "string", default: "5000" },
    seed: { type: "string", default: "1" },
    jobs: { type: "string", default: "2" },
    json: { type: "string" },
    report: { type: "string", default: "reports/study.md" },
    case: { type: "string" },
  },
});

async function main(): Promise<void> {
  if (values.case !== undefined) {
    console.log(JSON.stringify(await studyCase(Number(values.case)), null, 1));
    return;
  }
  const seed = Number(values.seed);
  const records = await studied(seed, Number(values.cases), Number(values.jobs));
  if (values.json !== undefined) writeFileSync(values.json, JSON.stringify(records));
  const report = studyReport(records, seed);
  writeFileSync(values.report, report);
  console.log(report);
}

await main();
