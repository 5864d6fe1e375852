import { describe, expect, it } from "vitest";
import { draftText, readDraft } from "../../../src/cli/enter/draft.ts";
import { saidOfFile } from "../../../src/input/water-test/said-of-test.ts";
import { logOf } from "../../readings/typed/typed-helpers.ts";

const test = saidOfFile("night.csv", [{ name: "Jar", place: "food", thermometer: null }]);
const draft = { test, log: logOf(["22:30 41.20 # lid", "7:00 41"]) };
const text = draftText(draft);

describe("draftText and readDraft", () => {
  it("are each other's inverse, to the digit", () => {
    expect(readDraft(text)).toEqual(draft);
  });

  it.each([
    ["nothing", ""],
    ["half a file", text.slice(0, text.length / 2)],
    ["something else", '{"holdband": 1}'],
    ["a list", "[]"],
    ["another version", text.replace('"holdband": 1', '"holdband": 2')],
    ["a number that is none", text.replace('"41.20"', '"41.2.0"')],
    ["a value too many", text.replace('"41.20"', '"41.20", "3"')],
    ["a probe too many", text.replace('"probes": [\n      "Jar"', '"probes": [\n      "Jar", "X"')],
  ])("%s is no draft", (_, damaged) => {
    expect(damaged).not.toBe(text);
    expect(readDraft(damaged)).toBeNull();
  });
});
