import { describe, expect, it } from "vitest";
import { shownProblem } from "../../../../src/page/screen/form/field-problem.ts";
import type { Field } from "../../../../src/page/screen/form/field-types.ts";
import { failed, problemText } from "../../../../src/problem.ts";
import type { Outcome, Problem } from "../../../../src/problem.ts";

const fields: readonly Field[] = [
  { kind: "text", key: "low", label: "Lowest temperature" },
  { kind: "text", key: "high", label: "Highest temperature" },
  { kind: "choice", key: "pressureAt", label: "That pressure is", choices: [], none: null },
  { kind: "choice", key: "dateOrder", label: "Order of day and month", choices: [], none: "" },
];

const problemOf = (outcome: Outcome<never>): Problem => {
  if (outcome.ok) throw new Error("no problem");
  return outcome.problem;
};

const expected = "a temperature between -40 and 200 degC, such as 38, 38C or 100.4F";

describe("shownProblem", () => {
  it("stands at the field that was filled in wrongly, in the same words with the field's name", () => {
    const problem = problemOf(
      failed("option-invalid", { option: "--low", expected, found: "abc" }),
    );
    const { text, key } = shownProblem(problem, fields);
    expect(key).toBe("low");
    expect(text).toBe(problemText(problem).replace("--low", "“Lowest temperature”"));
  });

  it("knows flags of several words", () => {
    const problem = problemOf(failed("option-missing", { option: "--pressure-at", why: "x" }));
    expect(shownProblem(problem, fields)).toEqual({
      key: "pressureAt",
      text: "“That pressure is” is needed: x.",
    });
  });

  it("finds the field that a file's problem asks for", () => {
    const facts = { file: "night.csv", line: 2, found: "03/04/2026" };
    const { key, text } = shownProblem(problemOf(failed("date-order-undecidable", facts)), fields);
    expect(key).toBe("dateOrder");
    expect(text).toContain("night.csv");
    expect(text).not.toContain("--");
  });

  it("stands at the lower edge where the window is upside down", () => {
    const problem = problemOf(failed("window-inverted", { low: 40, high: 38 }));
    expect(shownProblem(problem, fields)).toMatchObject({ key: "low" });
  });

  it("stands at a field drawn elsewhere, by its name there", () => {
    const problem = problemOf(failed("option-missing", { option: "--files", why: "x" }));
    const labels = { files: "The logger’s files" };
    expect(shownProblem(problem, fields, labels)).toEqual({
      key: "files",
      text: "“The logger’s files” is needed: x.",
    });
  });

  it("belongs to the whole form where no field is to blame", () => {
    const problem = problemOf(failed("file-empty", { file: "night.csv" }));
    expect(shownProblem(problem, fields)).toEqual({ key: null, text: problemText(problem) });
  });
});
