import { describe, expect, it } from "vitest";
import type { SeparationCause } from "../../../src/advice/recheck-types.ts";
import { separationCauseText } from "../../../src/report/wording/separation-causes.ts";
import { plainWriting } from "../../../src/report/writing.ts";

const all: readonly SeparationCause[] = [
  { code: "contamination", batches: 1 },
  { code: "first-generation", batches: 2 },
  { code: "held-too-long", equivalentHours: 49.6, wantedHours: 36 },
  { code: "thin-milk", batches: 1 },
  { code: "unheated-milk", batches: 2 },
  { code: "moved-while-setting", batches: 1 },
  { code: "much-starter", starter: 0.15, batches: 2 },
  { code: "not-logged", missing: ["starter", "moved", "hours"] },
];
const say = (cause: SeparationCause, unit: "degC" | "degF" = "degC") =>
  separationCauseText(cause, plainWriting(unit));

describe("another cause than the temperature", () => {
  it("has what the log shows and what to try next, as whole sentences", () => {
    for (const cause of all) {
      const { what, next } = say(cause);
      expect(what).toMatch(/^[A-Z].+\.$/);
      expect(next).toMatch(/^[A-Z].+\.$/);
      expect(`${what} ${next}`).not.toMatch(/undefined|NaN|\bnull\b/);
    }
  });

  it("says where it has no source", () => {
    const sourced = new Set(["contamination", "held-too-long", "not-logged"]);
    for (const cause of all.filter(({ code }) => !sourced.has(code))) {
      expect(say(cause).what, cause.code).toContain("common practice, no source");
    }
    expect(say(all[2]!).what).toMatch(/50 h, and 36 h would do \(an estimate/);
  });

  it("counts the batches that show it", () => {
    expect(say(all[3]!).what).toContain("1 of them was skimmed");
    expect(say(all[1]!).what).toContain("2 of them were its first generation");
    expect(say(all[6]!).what).toContain("up to 15 % in 2 of them");
  });

  it("has all of a troubled batch thrown away", () => {
    expect(say(all[0]!).next).toMatch(/^Discard all of it, clean .+ fresh starter\.$/);
  });

  it("names what the log is silent about in everyday words", () => {
    expect(say(all[7]!).what).toContain(
      "does not say the amount of starter, whether it was moved and the hours held.",
    );
  });

  it("gives temperatures in the person's unit first", () => {
    expect(say(all[4]!).next).toContain("90 °C (194 °F) for 10 min");
    expect(say(all[4]!, "degF").next).toContain("194 °F (90 °C)");
  });

  it("claims nothing about health", () => {
    for (const cause of all) {
      const { what, next } = say(cause);
      expect(`${what} ${next}`).not.toMatch(/\bsafe|health|harmless|cure/i);
    }
  });
});
