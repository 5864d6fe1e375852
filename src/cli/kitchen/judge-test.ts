/** What one night says, before it is stored: the kitchen's own analysis with this test alone. */
import { analyseKitchen } from "../../kitchen-analysis.ts";
import type { TestAnalysis } from "../../kitchen-analysis-types.ts";
import type { Kitchen, WaterTest } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { usualConfidence, usualShare } from "../check-request.ts";
import type { Shell } from "../command-result.ts";
import { localDay } from "../local-day.ts";
import { startProgress } from "../progress.ts";
import type { NewTestFile } from "./new-test.ts";
import { openSource } from "./read-source.ts";

/** Fails with the problem that would stand in the report in place of this test. */
export const judgeTest = async (
  kitchen: Kitchen,
  test: WaterTest,
  files: readonly NewTestFile[],
  shell: Shell,
): Promise<Outcome<TestAnalysis>> => {
  const said = {
    version: shell.version,
    today: localDay(shell.now()),
    share: usualShare,
    confidence: usualConfidence,
    appliance: null,
  };
  // The bytes were counted once; this time it is the work that takes long.
  const progress = startProgress(shell.progress, () => 0, Date.now);
  const analysis = await analyseKitchen({ ...kitchen, tests: [test] }, said, async (file) => {
    const source = files[test.files.findIndex(({ sha256 }) => sha256 === file.sha256)];
    if (source === undefined) return failed("file-missing", { file: file.path });
    return openSource(source, progress.add);
  }).finally(progress.end);
  if (!analysis.ok) return analysis;
  const reading = analysis.value.tests[0];
  if (reading === undefined) return failed("internal", { what: "a test without an analysis" });
  return reading.problem === null ? done(reading) : { ok: false, problem: reading.problem };
};
