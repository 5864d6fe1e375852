import { describe, expect, it } from "vitest";
import { toKitchenTerminal } from "../../src/report/kitchen-terminal.ts";
import { recheckLines } from "../../src/report/recheck-lines.ts";
import { flat, longestOf, screenOf } from "./advice-screen.ts";
import { moved, notMoved, recheckedKitchen, sampleDue } from "./sample-recheck.ts";
import type { RecheckAdvice } from "../../src/advice/recheck-types.ts";

const lines = (more: Partial<RecheckAdvice>) => recheckLines(screenOf(recheckedKitchen(more)));

describe("rechecks in a kitchen's summary", () => {
  it("are told only where something moved or is due", () => {
    expect(lines({ rechecks: [notMoved] })).toEqual([]);
    expect(flat(lines({ rechecks: [notMoved, moved] }))).toMatch(
      /^ Recheck The cooker with one warm program, jars in water: moved since 2026-01-02/,
    );
    expect(flat(lines({ rechecks: [], due: [sampleDue] }))).toMatch(/^ Due Test the warming box/);
  });

  it("stay few, and say where the others are", () => {
    const all = lines({ rechecks: [moved, moved, moved, moved] });
    expect(flat(all).match(/Recheck/g)).toHaveLength(2);
    expect(flat(all)).toMatch(/And 2 more: holdband recheck\.$/);
    expect(flat(lines({ rechecks: [moved, moved] }))).not.toContain("more: holdband");
  });

  it("stand before the advice, within the screen's width", () => {
    const whole = recheckedKitchen({ due: [sampleDue] });
    const text = toKitchenTerminal(whole, { colour: false, ascii: false, width: 60 });
    expect(text.indexOf("  Recheck ")).toBeGreaterThan(-1);
    expect(text.indexOf("  Recheck ")).toBeLessThan(text.indexOf("  Advice "));
    expect(longestOf(text.split("\n"))).toBeLessThanOrEqual(60);
  });
});
