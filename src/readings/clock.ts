import { failed } from "../problem.ts";
import type { TimeOptions, TimeRecogniser } from "./time-types.ts";

export type { FoundTimes, TimeAccumulator, TimeOptions, TimeRecogniser } from "./time-types.ts";

/**
 * What the time cells of some rows look like, or null where they are not
 * times. `samples` holds the candidate cell(s) of each row.
 */
export const recogniseTimes = (
  samples: readonly (readonly string[])[],
  options: TimeOptions,
): TimeRecogniser | null => {
  const first = samples[0]?.[0];
  if (first === undefined || !/^\d{4}-/.test(first)) return null;
  return {
    format: "date-time",
    createAccumulator: () => ({
      add: () => false,
      finish: () => failed("time-undecidable", { file: options.file ?? "", line: 1, found: first }),
    }),
  };
};
