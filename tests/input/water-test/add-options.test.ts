import { describe, expect, it } from "vitest";
import { addClash, addShape, addedTest } from "../../../src/input/water-test/add-options.ts";
import { problemOf, sampleKitchen, today, valueOf } from "../sample-kitchen.ts";

const given = (path: string) => ({
  name: path.slice(path.lastIndexOf("/") + 1),
  path,
  source: path,
});
const files = [given("logs/jar.csv"), given("bath.csv")];
const said = (options: Record<string, readonly string[]>) => addShape.parse(options);
const setUp = { appliance: ["step-cooker"], setting: ["38"], container: ["jars"] };

describe("addClash", () => {
  it.each([
    [{ starts: ["jra.csv=2026-10-03 22:10"] }, "option-invalid", "logs/jar.csv, bath.csv"],
    [{ starts: ["2026-11-21 00:10"] }, "option-invalid", "not to come"],
    [{ probe: ["Jar=food", "Jar=bath"] }, "options-contradict", "one place"],
  ])("refuses %j", (options, code, words) => {
    const problem = problemOf(addClash(files, said(options), today));
    expect(problem.code).toBe(code);
    expect(JSON.stringify(problem.facts)).toContain(words);
  });

  it("lets a start stand for a file by its name or its path", () => {
    const starts = ["jar.csv=2026-10-03 22:10", "logs/jar.csv=2026-10-03 22:10"];
    expect(addClash(files, said({ starts }), today)).toBeNull();
  });
});

describe("addedTest", () => {
  it("gives each file its own start, else the one for all, and keeps its source", () => {
    const starts = ["2026-10-03 22:00", "jar.csv=2026-10-03 22:10"];
    const test = valueOf(addedTest(files, sampleKitchen, said({ ...setUp, starts, unit: ["C"] })));
    expect(test.files.map((one) => one.starts)).toEqual([
      Date.UTC(2026, 9, 3, 22, 10),
      Date.UTC(2026, 9, 3, 22, 0),
    ]);
    expect(test.files.map(({ source }) => source)).toEqual(["logs/jar.csv", "bath.csv"]);
    expect(test.files[0]?.readingOptions).toEqual({ unit: "degC" });
    expect(test).toMatchObject({ name: null, setting: "38", room: null });
  });

  it("fails at a thermometer that is not in the kitchen, and at a set-up not all said", () => {
    const strange = said({ ...setUp, thermometer: ["Jar=pin"] });
    expect(problemOf(addedTest(files, sampleKitchen, strange))).toMatchObject({
      code: "not-in-kitchen",
      facts: { what: "thermometer", suggestion: "pen" },
    });
    const { container: _, ...short } = setUp;
    expect(problemOf(addedTest(files, sampleKitchen, said(short)))).toMatchObject({
      code: "option-missing",
      facts: { option: "--container" },
    });
  });
});
