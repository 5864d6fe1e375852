/** Constructed: the rechecks are invented, see sample-recheck.ts. */
import { describe, expect, it } from "vitest";
import { toRecheckTerminal } from "../../src/report/recheck-terminal.ts";
import { colourCodes, flat, longestOf } from "./advice-screen.ts";
import { expectGolden } from "./golden.ts";
import { hostileKitchen, untestedKitchen } from "./sample-kitchen.ts";
import { findings, nothingToRecheck, recheckedKitchen, sampleDue } from "./sample-recheck.ts";

const plain = { colour: false, ascii: false, width: 80 };
const whole = recheckedKitchen({ due: [sampleDue] });
const told = (kitchen = whole): string => flat(toRecheckTerminal(kitchen, plain));

describe("toRecheckTerminal", () => {
  it.each([60, 80])("writes the rechecks at %d columns as kept", (width) => {
    expectGolden(`recheck-${width}.txt`, toRecheckTerminal(whole, { ...plain, width }));
  });

  it("has the word first under each set-up's name", () => {
    const lines = toRecheckTerminal(whole, plain).split("\n");
    const at = lines.indexOf("Adjustable cooker, 38 °C (100.4 °F), Jars in water");
    expect(lines[at + 1]).toMatch(/^ {2}NOT MOVED since 2026-03-04/);
    expect(told()).toMatch(/MOVED since 2026-01-02.+CANNOT TELL whether it moved/);
  });

  it("says that other set-ups are not compared so", () => {
    expect(told()).toContain("Only tests of one and the same set-up are compared here.");
  });

  it("names the tests that are due", () => {
    expect(told()).toMatch(/Due Test the warming box at mark 3.+2026-04-02/);
  });

  it("names a set-up to test again where nothing was tested twice", () => {
    const text = told(recheckedKitchen(nothingToRecheck));
    expect(text).toMatch(/^No set-up was tested twice yet.+Test the warming box/);
    expect(text).not.toContain("are compared here");
    expect(told(recheckedKitchen(nothingToRecheck, untestedKitchen()))).toMatch(
      /^No water test yet/,
    );
  });

  it("still tells of batches where nothing was tested twice", () => {
    const text = told(recheckedKitchen({ ...nothingToRecheck, findings: [findings.untested] }));
    expect(text).toMatch(/^yoghurt in the circulating bath.+No set-up was tested twice/);
  });

  it("colours the words, and nothing else", () => {
    const coloured = toRecheckTerminal(whole, { ...plain, colour: true });
    expect(coloured.match(colourCodes)).toHaveLength(6);
    expect(coloured.replaceAll(colourCodes, "")).toBe(toRecheckTerminal(whole, plain));
  });

  it.each([40, 60, 80, 120])("keeps to %d columns", (width) => {
    for (const kitchen of [whole, recheckedKitchen(nothingToRecheck, untestedKitchen())]) {
      const text = toRecheckTerminal(kitchen, { ...plain, width });
      expect(longestOf(text.split("\n"))).toBeLessThanOrEqual(width);
    }
  });

  it("keeps to printable ASCII where asked, and lets no name steer the terminal", () => {
    const hostile = recheckedKitchen({ due: [sampleDue] }, hostileKitchen());
    expect(toRecheckTerminal(hostile, { ...plain, ascii: true })).toMatch(/^[\u0020-\u007e\n]+$/);
    expect(toRecheckTerminal(hostile, plain)).not.toMatch(
      // oxlint-disable-next-line no-control-regex
      /[\u0000-\u0009\u000b-\u001f\u202e]/,
    );
  });
});
