import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { failed, problemText, type Outcome } from "../problem.ts";

/** Tests there are, and none of them can be read: better refused than answered from nothing. */
export const nothingRead = ({ tests }: Pick<KitchenAnalysis, "tests">): Outcome<never> | null => {
  if (tests.length === 0 || tests.some(({ problem }) => problem === null)) return null;
  const why = tests.flatMap(({ problem }) => (problem === null ? [] : [problemText(problem)]));
  return failed("no-test-readable", { count: tests.length, why: [...new Set(why)].join(" ") });
};
