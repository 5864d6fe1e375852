import { describe, expect, it } from "vitest";
import { done, failed, problemText } from "../src/problem.ts";
import type { Problem, ProblemCode, ProblemFacts } from "../src/problem.ts";

/** Constructed facts, one set for each code; the compiler asks for every code. */
const samples: { readonly [Code in ProblemCode]: ProblemFacts[Code] } = {
  "file-missing": { file: "night.csv" },
  "file-is-directory": { file: "nights" },
  "file-unreadable": { file: "night.csv", why: "permission is denied" },
  "file-empty": { file: "night.csv" },
  "file-binary": { file: "night.xls" },
  "too-few-readings": { file: "night.csv", found: 1 },
  "no-temperature-column": { file: "night.csv", line: 3, columns: "Time, Humidity" },
  "temperature-column-undecidable": {
    file: "night.csv",
    line: 1,
    columns: "column 2, column 3",
  },
  "no-time-column": { file: "night.csv", line: 3, columns: "Jar" },
  "time-undecidable": { file: "night.csv", line: 4, found: "12" },
  "date-order-undecidable": { file: "night.csv", line: 4, found: "02/03/2026" },
  "date-order-contradicted": {
    file: "night.csv",
    line: 4,
    found: "25/11/2026",
    order: "month first",
  },
  "decimal-undecidable": { file: "night.csv", line: 5, found: "38,125" },
  "unit-undecidable": { file: "night.csv", middle: 60 },
  "units-mixed": { file: "night.csv", line: 9, found: "100.4F" },
  "columns-changed": { file: "night.csv", line: 300, found: "Time, Lid" },
  "probe-unknown": { probe: "Jra", probes: '"Jar", "Bath"' },
  "column-unknown": { file: "night.csv", column: "Jra", columns: "Jar, Bath" },
  "no-readings-left": { file: "night.csv", rowsRead: 12, setAside: "12 sensor fault, line 2" },
  "option-invalid": { option: "--low", expected: "a temperature, such as 38C", found: "warm" },
  "option-missing": { option: "--hours", why: "a window has a length of time" },
  "options-contradict": { first: "--culture", second: "--low", why: "both say the window" },
  "window-inverted": { low: 39, high: 37 },
  "window-wrong-unit": { low: 98, high: 102, readings: "about 38 degC" },
  "ceiling-below-window": { ceiling: 38, high: 39 },
  "culture-unknown": { culture: "yogurt", suggestion: "yoghurt", known: "yoghurt, kefir" },
  "report-unwritable": { file: "there/night.html", why: "the folder does not exist" },
  "folder-in-use": { folder: "kitchen", found: "notes.txt" },
  usage: {
    expected: "an option that exists",
    found: "--lwo",
    suggestion: "--low",
    command: "holdband check",
  },
  internal: { what: "an unexpected value" },
};

const problems = Object.entries(samples).map(([code, facts]) => ({ code, facts }) as Problem);

describe("problemText", () => {
  it.each(problems)("$code is a whole sentence with its facts and what to do", (problem) => {
    const text = problemText(problem);
    expect(text).toMatch(/^[A-Z0-9"-]|^night/);
    expect(text).toMatch(/[.]$/);
    expect(text).not.toMatch(/undefined|null|NaN|\[object|\s{2}/);
    for (const fact of Object.values(problem.facts)) expect(text).toContain(String(fact));
  });

  it("leaves out a suggestion it does not have", () => {
    const text = problemText({
      code: "culture-unknown",
      facts: { culture: "xyz", suggestion: "", known: "kefir" },
    });
    expect(text).not.toContain("Did you mean");
  });

  it("says how to write a window that was meant in degF", () => {
    const text = problemText({ code: "window-wrong-unit", facts: samples["window-wrong-unit"] });
    expect(text).toContain("--low 98F --high 102F");
  });
});

describe("outcomes", () => {
  it("carry a value or a problem, never both", () => {
    expect(done(3)).toEqual({ ok: true, value: 3 });
    expect(failed("file-empty", { file: "a" })).toEqual({
      ok: false,
      problem: { code: "file-empty", facts: { file: "a" } },
    });
  });
});
