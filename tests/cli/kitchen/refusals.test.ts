import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contractOf, listing, write } from "../run-holdband.ts";
import { cookerNight, equippedKitchen } from "./run-kitchen.ts";

const setUp = ["--appliance", "step-cooker", "--setting", "38", "--container", "jars"];

/** Each stands alone: one sentence, exit code 2, nothing stored. */
const refusals: readonly (readonly [words: readonly string[], code: string, says: string])[] = [
  [["add", "nothing.csv", ...setUp], "file-missing", "nothing.csv"],
  [["add", "empty.csv", ...setUp], "file-empty", "empty"],
  [["add", "words.csv", ...setUp], "no-temperature-column", "words.csv"],
  [["add", "folder", ...setUp], "file-is-directory", "folder"],
  [["add", ...setUp], "usage", "at least one logger's file"],
  [["add", cookerNight, "--setting", "38", "--container", "jars"], "option-missing", "--appliance"],
  [["add", cookerNight, ...setUp.slice(0, 4)], "option-missing", "jars, basin"],
  [["add", cookerNight, ...setUp.slice(0, 2), ...setUp.slice(4)], "option-missing", "--setting"],
  [
    ["add", cookerNight, "--appliance", "box", "--container", "jars"],
    "option-missing",
    "low, 2, high",
  ],
  [
    ["add", cookerNight, "--appliance", "stepcooker", ...setUp.slice(2)],
    "not-in-kitchen",
    'Did you mean "step-cooker"?',
  ],
  [
    ["add", cookerNight, ...setUp.slice(0, 4), "--container", "jar"],
    "not-in-kitchen",
    'Did you mean "jars"?',
  ],
  [
    ["add", cookerNight, ...setUp, "--thermometer", "pen"],
    "not-in-kitchen",
    "holdband thermometer --help",
  ],
  [
    ["add", cookerNight, "--appliance", "step-cooker", "--setting", "38.5", "--container", "jars"],
    "setting-invalid",
    "38 or 39",
  ],
  [
    ["add", cookerNight, "--appliance", "warm-cooker", "--setting", "38", "--container", "jars"],
    "setting-invalid",
    "fixed",
  ],
  [
    ["add", cookerNight, "--appliance", "box", "--setting", "hig", "--container", "jars"],
    "setting-invalid",
    'Did you mean "high"?',
  ],
  [["add", cookerNight, ...setUp, "--probe", "Jra=food"], "probe-unknown", "for --probe"],
  [["add", cookerNight, ...setUp, "--room", "65..75"], "option-invalid", "63F..77F"],
  [
    ["add", cookerNight, ...setUp, "--probe", "Jar=food", "--probe", "Jar=bath"],
    "options-contradict",
    "one place",
  ],
  [["add", cookerNight, cookerNight, ...setUp], "options-contradict", "one file"],
  [["add", cookerNight, ...setUp, "--column", "Pot"], "column-unknown", "Pot"],
  [["add", cookerNight, ...setUp, "--starts", "tomorrow"], "option-invalid", "--starts expects"],
  [["add", cookerNight, ...setUp, "--starts", "2099-01-01 20:00"], "option-invalid", "not to come"],
  [["container", "pots", "--stands", "jars", "in", "water"], "usage", 'found "in" (words that'],
  [["add", cookerNight, ...setUp, "--starts", "x.csv=2026-10-03 22:10"], "option-invalid", "x.csv"],
  [["add", cookerNight, ...setUp, "--room", "25..17"], "option-invalid", "--room expects"],
  [["add", cookerNight, ...setUp, "--name", "a\u0007b"], "kitchen-change-refused", "name"],
  [["report", "--appliance", "oven"], "not-in-kitchen", "step-cooker"],
  [["report", "--report", "no/such/kitchen.html"], "report-unwritable", "no/such"],
  [["report", "--report", "kitchen.yaml"], "report-unwritable", "not a report"],
  [["report", "--kitchen", "elsewhere"], "folder-missing", "holdband init"],
  [["report", "--kitchen", "folder"], "kitchen-missing", "holdband init"],
  [["report", "--kitchen", "kitchen.yaml"], "folder-is-file", "holds kitchen.yaml"],
  [["report", "--kitchen", "folder", "--kitchen", "."], "options-contradict", "one value only"],
];

describe("what cannot be done in a kitchen", () => {
  it.each(refusals)("refuses %j: one sentence, and nothing is stored", (words, code, says) => {
    const { run, folder } = equippedKitchen();
    mkdirSync(join(folder, "folder"));
    mkdirSync(join(folder, "reports"));
    write(folder, "empty.csv", "");
    write(folder, "words.csv", "a,b\nx,y\nz,w\n");
    const before = listing(folder);
    const refused = run(...words, "--json");
    expect(refused.exitCode).toBe(2);
    expect(contractOf(refused).problem).toMatchObject({ code, text: refused.err.trimEnd() });
    expect(refused.err).toContain(says);
    expect(refused.err).not.toMatch(/\bat .*:\d+:\d+|node:internal|Error:|undefined|null/);
    expect(listing(folder)).toEqual(before);
  });

  it("names line and mistake of a kitchen.yaml that cannot be read, for every command", () => {
    const { run, folder } = equippedKitchen("aplliances:\n  x:\n    kind: pot\n");
    const before = listing(folder);
    for (const words of [
      ["appliance"],
      ["culture"],
      ["thermometer"],
      ["report"],
      ["add", cookerNight, ...setUp],
    ]) {
      const refused = run(...words);
      expect(refused).toMatchObject({ exitCode: 2, out: "" });
      expect(refused.err).toMatch(/Line 22\b.*did you mean "appliances"\?/s);
    }
    expect(listing(folder)).toEqual(before);
  });
});
