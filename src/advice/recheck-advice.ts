import type { AdviceInput } from "./advice-input.ts";
import { batchFindings } from "./batch-findings.ts";
import { dayOf } from "./calendar-days.ts";
import { recheckAll } from "./recheck.ts";
import { recheckDue } from "./recheck-due.ts";
import type { RecheckAdvice } from "./recheck-types.ts";

/** Whether set-ups are still what they were, which call for a test, and what the batch log says beside that. */
export const recheckAdvice = (input: AdviceInput): RecheckAdvice => {
  const { kitchen, appliance, today, tests } = input;
  const rechecks = recheckAll(input);
  const due = recheckDue({
    ...kitchen,
    batches: kitchen.batches.filter((one) => appliance === null || one.appliance === appliance),
    // A test that could not be read is none.
    tests: tests
      .filter(({ settled }) => settled !== null)
      .map(({ setUp, startedAt }) => ({ setUp, date: dayOf(startedAt) })),
    today,
  });
  return { rechecks, due, findings: batchFindings(input, rechecks) };
};
