import { describe, expect, it } from "vitest";
import { figureLines } from "../../src/report/recheck-figures-terminal.ts";
import { longestOf, screenOf } from "./advice-screen.ts";
import { cannotTell, moved, notMoved, recheckedKitchen } from "./sample-recheck.ts";

const at = (width: number, ascii = false) => screenOf(recheckedKitchen(), { width, ascii });

describe("two tests side by side", () => {
  it("are a table where it fits, columns under their days", () => {
    const [head = "", average = "", ...rest] = figureLines(moved, at(80));
    expect(head).toMatch(/^ +2026-01-02 +2026-03-02 +change$/);
    expect(average).toMatch(/^ {2}Average +41\.2 °C \(106\.2 °F\) +42\.6 °C/);
    expect(average.indexOf("41.2")).toBe(head.indexOf("2026-01-02"));
    expect(average.indexOf("+1.4")).toBe(head.indexOf("change"));
    expect(rest).toHaveLength(5);
  });

  it("mark what changed by more than chance, and say what the mark means", () => {
    const lines = figureLines(moved, at(80));
    expect(lines.filter((line) => line.endsWith(" *"))).toHaveLength(2);
    expect(lines.at(-1)).toBe("  * more than chance");
    expect(figureLines(notMoved, at(80)).join("\n")).not.toContain("*");
  });

  it("are a line each where the table has no room", () => {
    const lines = figureLines(moved, at(60));
    expect(lines[0]).toMatch(/^ {2}Average 41\.2 °C .+, now 42\.6 °C/);
    expect(lines.at(-1)).toBe("  * more than chance");
    // A number is never parted from its unit.
    for (const line of lines) expect(line).not.toMatch(/^ *°[CF]|\d$/);
  });

  it.each([40, 60, 80, 120])("keep to %d columns", (width) => {
    for (const recheck of [moved, notMoved, cannotTell]) {
      expect(longestOf(figureLines(recheck, at(width)))).toBeLessThanOrEqual(width);
    }
  });

  it("call a test without a day by its place", () => {
    expect(figureLines(cannotTell, at(80))[0]).toMatch(/baseline +2026-03-15/);
  });
});
