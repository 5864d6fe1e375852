import { describe, expect, it } from "vitest";
import { removed } from "../../../src/kitchen/edits/removed.ts";
import { renamed } from "../../../src/kitchen/edits/renamed.ts";
import { withAppliance } from "../../../src/kitchen/edits/with-appliance.ts";
import { withCheck } from "../../../src/kitchen/edits/with-check.ts";
import { withContainer } from "../../../src/kitchen/edits/with-container.ts";
import { withCulture } from "../../../src/kitchen/edits/with-culture.ts";
import { withTest } from "../../../src/kitchen/edits/with-test.ts";
import { withThermometer } from "../../../src/kitchen/edits/with-thermometer.ts";
import type { Outcome } from "../../../src/problem.ts";
import { difference, example, file, sha, textOf } from "./example.ts";

type Edit = (text: string) => Outcome<string>;
const replace = { replace: true };

// What each edit does to the example, line by line; read and found right.
const edits: readonly (readonly [string, Edit, readonly string[]])[] = [
  [
    "a thermometer",
    (text) => withThermometer(text, file, "logger", { name: "Logger: 4 probes", accuracy: 0.5 }),
    ["+  logger:", '+    name: "Logger: 4 probes"', "+    accuracy: 0.5"],
  ],
  [
    "a check where there was an empty list",
    (text) => withCheck(text, file, "pen", { ice: [0.3, "32.4F"], date: "2026-10-03" }),
    [
      "-    checks: [] # none yet",
      "+    checks: # none yet",
      "+      - ice: [0.3, 32.4F]",
      "+        date: 2026-10-03",
    ],
  ],
  [
    "a check of a new thermometer",
    (text) => withCheck(text, file, "new one", { boiling: [95], confirmed: true }),
    ["+  new one:", "+    checks:", "+      - boiling: [95]", "+        confirmed: yes"],
  ],
  [
    "an appliance, parted like the others",
    (text) => withAppliance(text, file, "38", { control: "fixed", thermostat: true }),
    ['+  "38":', "+    control: fixed", "+    thermostat: yes", "+"],
  ],
  [
    "other marks for an appliance",
    (text) => withAppliance(text, file, "box", { marks: ["1", 2, "high"], name: "Box" }, replace),
    ["-    marks: [ 1,2 , 3 ]   # dial", '+    marks: ["1", 2, high]   # dial', "+    name: Box"],
  ],
  [
    "a field of an entry in brackets",
    (text) => withContainer(text, file, "jars", { count: 6, stands: "jars in air" }, replace),
    ["-  jars: {stands: jars in water}", "+  jars: {stands: jars in air, count: 6}"],
  ],
  [
    "a culture among others in brackets",
    (text) => withCulture(text, file, "kefir", {}),
    [
      "-cultures: [ reuteri , { id: warm-blend, high: 42 } ]",
      "+cultures: [ reuteri , { id: warm-blend, high: 42 }, kefir ]",
    ],
  ],
  [
    "own figures for a culture of the catalogue",
    (text) => withCulture(text, file, "reuteri", { hours: "30h" }, replace),
    [
      "-cultures: [ reuteri , { id: warm-blend, high: 42 } ]",
      "+cultures: [ {id: reuteri, hours: 30h} , { id: warm-blend, high: 42 } ]",
    ],
  ],
  [
    "a figure taken away again",
    (text) => withCulture(text, file, "warm-blend", { high: null, name: "Ours" }, replace),
    [
      "-cultures: [ reuteri , { id: warm-blend, high: 42 } ]",
      "+cultures: [ reuteri , { id: warm-blend, name: Ours } ]",
    ],
  ],
  [
    "a water test, before the empty line that ends the section",
    (text) =>
      withTest(text, file, "three", {
        appliance: "bath",
        setting: 38.5,
        container: "tub",
        notes: "two\nlines",
        files: [{ file: "c.csv", sha256: sha, probes: { "38": { place: "food" } } }],
      }),
    [
      "+  three:",
      "+    appliance: bath",
      "+    setting: 38.5",
      "+    container: tub",
      '+    notes: "two\\nlines"',
      "+    files:",
      "+      - file: c.csv",
      `+        sha256: ${sha}`,
      "+        probes:",
      '+          "38": {place: food}',
    ],
  ],
  [
    "a container taken out",
    (text) => removed(text, file, "containers", "tub"),
    ["-  tub:", "-", "-    stands: basin"],
  ],
  [
    "a culture taken out of brackets",
    (text) => removed(text, file, "cultures", "warm-blend"),
    ["-cultures: [ reuteri , { id: warm-blend, high: 42 } ]", "+cultures: [ reuteri ]"],
  ],
];

describe("each edit changes its own lines only", () => {
  it.each(edits)("%s", (_, edit, lines) => {
    expect(difference(example, textOf(edit(example)))).toEqual(lines);
  });

  it.each(edits)("%s, in a file with CRLF", (_, edit, lines) => {
    const windows = `\uFEFF${example.replaceAll("\n", "\r\n")}`;
    const after = textOf(edit(windows));
    expect(after.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    expect(difference(windows, after)).toEqual(lines.map((line) => `${line}\r`));
  });

  it("renames in each place at once", () => {
    const rename = { everywhere: true };
    const after = textOf(renamed(example, file, "thermometers", "pen", "Pen: red", rename));
    const expected = example
      .replace("  'pen':    #", '  "Pen: red":    #')
      .replace("thermometer: pen }", 'thermometer: "Pen: red" }');
    expect(after).toBe(expected);
  });
});

describe("forms in which nothing can be put safely", () => {
  it.each<readonly [string, string, Edit]>([
    [
      "keys written with a question mark",
      "holdband: 1\n? containers\n: ? tub\n  : stands: basin\n",
      (text) => withContainer(text, file, "new", { stands: "basin" }),
    ],
    [
      "a list whose items begin below their dashes",
      "holdband: 1\ncultures:\n  -\n    id: kefir\n    hours: 20\n",
      (text) => withCulture(text, file, "koji", {}),
    ],
    [
      "a list of one without the list",
      "holdband: 1\nthermometers:\n  pen:\n    checks:\n      ice: 0.3\n",
      (text) => withCheck(text, file, "pen", { ice: [0.2] }),
    ],
  ])("%s: refused, or right", (_, text, edit) => {
    const outcome = edit(text);
    if (outcome.ok) return;
    expect(outcome.problem.code).toBe("kitchen-change-by-hand");
    expect(textOf(outcome)).toMatch(/^Expected .* found a form that cannot be changed safely/);
  });
});
