import { describe, expect, it } from "vitest";
import { withCheck } from "../../src/kitchen/edits/with-check.ts";
import { withCulture } from "../../src/kitchen/edits/with-culture.ts";
import { parseKitchen } from "../../src/kitchen/parse-kitchen.ts";
import { sections } from "../../src/kitchen/schema/kitchen-schema.ts";
import { startText } from "../../src/kitchen/start-text.ts";
import { keepsLines, linesOf } from "./decorated.ts";

/** The examples made to count, as the first comment says: the # taken away. */
const uncommented = (text: string): string =>
  text
    .replaceAll(/^# ((?:altitude|room):)/gm, "$1")
    .replaceAll(/^  # /gm, "  ")
    .replace("(64 digits, written by holdband add)", "ab".repeat(32));

describe("startText", () => {
  const text = startText();

  it("is short, in lines that fit a page, and a valid, empty kitchen", () => {
    expect(text.split("\n").length).toBeLessThanOrEqual(60);
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    const parsed = parseKitchen(text, "kitchen.yaml");
    expect(parsed).toMatchObject({ ok: true, value: { shownUnit: "degC", altitude: null } });
    expect(Object.values(parsed.ok ? parsed.value : {}).flat()).toEqual(["degC", null, null]);
  });

  it("has every section", () => {
    for (const section of sections) expect(text).toMatch(new RegExp(`^${section}:$`, "m"));
  });

  it("holds examples that are right when the # is taken away", () => {
    const parsed = parseKitchen(uncommented(text), "kitchen.yaml");
    expect(parsed).toMatchObject({
      ok: true,
      value: {
        altitude: 1450,
        room: { low: 17, high: 24 },
        thermometers: [{ id: "stick", accuracy: 1, checks: [{ kind: "ice" }] }],
        appliances: [{ id: "warm-cooker", control: { kind: "fixed" }, movedOn: "2026-05-01" }],
        containers: [{ id: "jars-in-water", volume: 0.5, changedOn: "2026-05-01" }],
        cultures: [{ id: "reuteri" }, { id: "my-own", hours: 20 }],
        tests: [{ id: "warm-cooker-1", files: [{ probes: [{ thermometer: "stick" }] }] }],
        batches: [{ culture: "reuteri", appliance: "warm-cooker", separated: "a little" }],
      },
    });
  });

  it("keeps its comments when entries are added", () => {
    const one = withCheck(text, "kitchen.yaml", "pen", { ice: [0.2] });
    const two = one.ok ? withCulture(one.value, "kitchen.yaml", "kefir", {}) : one;
    expect(two.ok).toBe(true);
    expect(two.ok && keepsLines(linesOf(text), two.value)).toBe(true);
    expect(two.ok && two.value).toMatch(/^thermometers:\n(?: +#.*\n)+ {2}pen:\n/m);
    expect(two.ok && two.value).toMatch(/^ {2}- kefir$/m);
  });
});
