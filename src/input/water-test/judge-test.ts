/** What one night says, before it is stored: the kitchen's own analysis with this test alone. */
import { analyseKitchen } from "../../kitchen-analysis.ts";
import type { TestAnalysis } from "../../kitchen-analysis-types.ts";
import type { Kitchen, WaterTest } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { usualConfidence, usualShare } from "../check-request.ts";
import type { KitchenStore } from "./kitchen-store.ts";
import type { NewTestFile } from "./new-test.ts";
import type { WorkWatch } from "./work-watch.ts";

export interface JudgedBy {
  readonly version: string;
  /** ISO day, for the age of checks. */
  readonly today: string;
}

/** Fails with the problem that would stand in the report in place of this test. */
export const judgeTest = async <Source>(
  store: Pick<KitchenStore<Source>, "openSource">,
  kitchen: Kitchen,
  test: WaterTest,
  files: readonly NewTestFile<Source>[],
  { version, today }: JudgedBy,
  watch: WorkWatch,
): Promise<Outcome<TestAnalysis>> => {
  const said = {
    version,
    today,
    share: usualShare,
    confidence: usualConfidence,
    appliance: null,
  };
  const analysis = await analyseKitchen({ ...kitchen, tests: [test] }, said, async (file) => {
    const source = files[test.files.findIndex(({ sha256 }) => sha256 === file.sha256)];
    if (source === undefined) return failed("file-missing", { file: file.path });
    return store.openSource(source, watch.onBytes);
  }).finally(watch.onEnd);
  if (!analysis.ok) return analysis;
  const reading = analysis.value.tests[0];
  if (reading === undefined) return failed("internal", { what: "a test without an analysis" });
  return reading.problem === null ? done(reading) : { ok: false, problem: reading.problem };
};
