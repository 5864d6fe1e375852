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
  "probe-unknown": { option: "--probe", probe: "Jra", probes: '"Jar", "Bath"' },
  "listed-probe-missing": { file: "night.csv", probe: "Jra", probes: '"Jar", "Bath"' },
  "clock-needed": { file: "night.csv" },
  "loggers-apart": {
    first: "jar.csv",
    firstSpan: "2026-02-14 22:00 to 2026-02-15 06:00",
    second: "bath.csv",
    secondSpan: "2026-02-16 21:30 to 2026-02-17 06:00",
  },
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
  "folder-missing": { folder: "kitchen" },
  "folder-is-file": { folder: "kitchen" },
  "kitchen-missing": { folder: "kitchen" },
  "kitchen-exists": { file: "kitchen/kitchen.yaml" },
  "kitchen-in-the-way": { folder: "kitchen", found: "a file called readings" },
  "kitchen-unreadable": { file: "night/kitchen.yaml", why: "permission is denied" },
  "kitchen-too-large": { file: "kitchen/kitchen.yaml", megabytes: 12 },
  "kitchen-not-utf8": { file: "kitchen/kitchen.yaml" },
  "kitchen-changed-meanwhile": { file: "night/kitchen.yaml" },
  "kitchen-locked": {
    folder: "kitchen",
    holder: "process 4711 on pantry",
    since: "2026-11-25 22:30:00 UTC",
  },
  "file-unwritable": { file: "night/kitchen.yaml", why: "the disk is full" },
  "answer-unwritable": { why: "the disk is full" },
  "path-leaves-folder": { path: "../night.csv", why: "it goes up by .." },
  "raw-file-missing": { file: "readings/night.csv" },
  "raw-file-changed": {
    file: "readings/night.csv",
    expected: "ba7816bf8f01",
    found: "cb8379ac2098",
  },
  "file-changed-meanwhile": { file: "night.csv" },
  "check-doubtful": { questions: "Melting ice read 6 degC." },
  "file-known": { file: "night.csv", test: "cooker-38-jars", stored: "readings/a.csv" },
  "not-in-kitchen": { what: "appliance", id: "bax", suggestion: "box", known: "box, bath" },
  stopped: { what: "every question" },
  "worker-unstarted": { why: "it may not run scripts" },
  "no-test-readable": { count: 2, why: "Both files are gone." },
  "reading-unread": {
    line: 3,
    expected: "a temperature",
    found: '"22:30"',
    advice: "Write it like 22:30 41.2.",
  },
  "reading-doubtful": {
    line: 3,
    found: "412",
    why: "outside -40..130 degC",
    advice: "Did you mean 41.2?",
  },
  "kitchen-invalid": {
    file: "kitchen.yaml",
    count: 1,
    list: "- Line 3, room: expected two temperatures, the lower first, found nothing.",
  },
  "kitchen-change-refused": {
    file: "kitchen.yaml",
    list: "- In tests > a > setting: expected a mark, found nothing.",
  },
  "kitchen-change-by-hand": { file: "kitchen.yaml", place: "tests" },
  "kitchen-in-use": {
    what: "the appliance",
    id: "box",
    list: "- Line 9, tests > a.",
    advice: "Change that first",
  },
  "id-taken": { file: "kitchen.yaml", what: "an appliance", id: "box" },
  "id-unknown": {
    file: "kitchen.yaml",
    what: "a thermometer",
    id: "pan",
    suggestion: "pen",
    known: "pen, stick",
  },
  "setting-invalid": {
    appliance: "Warming box",
    expected: "one of its marks (low, high)",
    found: '"hgh"',
    suggestion: "high",
  },
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
