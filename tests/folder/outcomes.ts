/** Short ways to look at an outcome in a test. */
import { problemText } from "../../src/problem.ts";
import type { Outcome } from "../../src/problem.ts";

export const valueOf = <Value>(outcome: Outcome<Value>): Value => {
  if (outcome.ok) return outcome.value;
  throw new Error(problemText(outcome.problem));
};

export const codeOf = (outcome: Outcome<unknown>): string =>
  outcome.ok ? "" : outcome.problem.code;

export const textOf = (outcome: Outcome<unknown>): string =>
  outcome.ok ? "" : problemText(outcome.problem);
