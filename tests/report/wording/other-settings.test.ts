import { describe, expect, it } from "vitest";
import type { Control, Setting } from "../../../src/kitchen/kitchen.ts";
import { otherSettings } from "../../../src/report/wording/other-settings.ts";
import { plainWriting } from "../../../src/report/writing.ts";

const others = (control: Control, setting: Setting, wanted: "lower" | "higher" = "lower") =>
  otherSettings({ control, setting, tests: 1 }, wanted, plainWriting("degC"));

const dial = (...marks: string[]): Control => ({ kind: "marks", marks });
const at = (celsius: number): Setting => ({ kind: "step", celsius });
const mark = (text: string): Setting => ({ kind: "mark", mark: text });

describe("otherSettings", () => {
  it("names the other marks and programs, and picks none", () => {
    expect(others(dial("1", "2", "3"), mark("2"))).toBe(
      "It has other marks (1, 3): test another with water",
    );
    const programs: Control = { kind: "programs", programs: ["warm", "slow"] };
    expect(others(programs, { kind: "program", program: "warm" })).toBe(
      "It has one other program (slow): test that with water",
    );
    expect(others(dial("a", "b", "c", "d", "e", "f", "g", "h", "i"), mark("a"))).toContain(
      "(b, c, d, e, f, g and 2 more)",
    );
  });

  it("tells how far a scale goes on the wanted side", () => {
    const scale: Control = { kind: "steps", low: 30, high: 60, step: 0.1 };
    expect(others(scale, at(41))).toContain("down to 30 °C (86 °F): test a lower setting");
    expect(others(scale, at(41), "higher")).toContain("up to 60 °C (140 °F)");
    expect(others(scale, at(30))).toBeNull();
    // 300 steps of 0.1, added up, miss 60 by an arithmetic remainder.
    expect(others(scale, at(30 + 0.1 * 299.9999999999), "higher")).toBeNull();
  });

  it("has nothing to name where there is nothing else", () => {
    expect(others({ kind: "fixed" }, { kind: "fixed" })).toBeNull();
    expect(others(dial("on"), mark("on"))).toBeNull();
  });
});
