import { normalQuantile } from "../stats/normal.ts";
import type { DecidedSetUp } from "./advice-input.ts";
import type { ExpectedLevel } from "./response-types.ts";

/**
 * The next run of a tested set-up as its verdict takes it: about the mean of its
 * tests, normal, with the doubts of thermometer, readings and run to run
 * (JCGM 100:2008, 5.1.2). null where no test settled.
 */
export const normalLevel = ({ mean, runToRun, verdicts }: DecidedSetUp): ExpectedLevel | null => {
  if (mean === null) return null;
  const doubts = (verdicts[0]?.uncertainty ?? []).filter(
    ({ source }) => source !== "hours not tested" && source !== "run to run",
  );
  const standardUncertainty = Math.hypot(
    runToRun,
    ...doubts.map((doubt) => doubt.standardUncertainty),
  );
  const reach = normalQuantile(0.975) * standardUncertainty;
  return {
    mean,
    standardUncertainty,
    degreesOfFreedom: Infinity,
    low: mean - reach,
    high: mean + reach,
  };
};
