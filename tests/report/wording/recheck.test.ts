/** Constructed: the rechecks are invented, see sample-recheck.ts. */
import { describe, expect, it } from "vitest";
import {
  baselineDay,
  onlySameSetUps,
  recheckClause,
  recheckSentence,
  sharedThermometerText,
  warmerText,
  whatWouldTell,
} from "../../../src/report/wording/recheck.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import { cannotTell, difference, moved, notMoved, sampleRecheck } from "../sample-recheck.ts";

const writing = plainWriting("degC");

describe("whether a set-up is still what it was", () => {
  it("says since when, by how much, and within which limits", () => {
    expect(recheckClause(notMoved, writing)).toBe(
      "since 2026-03-04: it now holds 0.1 °C (0.2 °F) warmer, and the difference lies within −0.2 to +0.4 °C (−0.3 to +0.7 °F), too little to matter to what it held.",
    );
    expect(recheckClause(moved, writing)).toBe(
      "since 2026-01-02: it now holds 1.4 °C (2.5 °F) warmer, which is more than chance; the difference lies within +0.8 to +2.0 °C (+1.5 to +3.6 °F).",
    );
    expect(recheckClause(cannotTell, writing)).toBe(
      "whether it moved since its first test: it now holds 0.5 °C (0.9 °F) warmer, but anything within −0.7 to +1.7 °C (−1.2 to +3.0 °F) fits both tests.",
    );
  });

  it("names the set-up where nothing around it does", () => {
    const view = { analysis: sampleKitchen(), recheck: sampleRecheck(), writing };
    expect(recheckSentence(moved, view)).toMatch(
      /^The cooker with one warm program, jars in water: moved since 2026-01-02: it now holds/,
    );
  });

  it("says colder, and the same where nothing would be printed", () => {
    expect(warmerText(difference(38, 37.4, 0.3), writing)).toBe("0.6 °C (1.1 °F) colder");
    expect(warmerText(difference(38, 38.01, 0.3), writing)).toBe("the same");
  });

  it("knows no day of a clock without a date", () => {
    // 1970: a clock that tells no date, see time-text.ts.
    const baseline = { testId: "one", startedAt: 3_600_000 };
    expect(baselineDay({ ...notMoved, baseline })).toBe("its first test");
  });

  it("says whether the thermometer's error cancels", () => {
    expect(sharedThermometerText(moved)).toMatch(/^The same thermometer.+cancels\.$/);
    expect(sharedThermometerText(notMoved)).toMatch(/not the same.+part of the doubt\.$/);
  });

  it("says what would tell only where it cannot be told", () => {
    expect(whatWouldTell(moved)).toBeNull();
    expect(whatWouldTell(notMoved)).toBeNull();
    expect(whatWouldTell(cannotTell)).toMatch(/with the same thermometer/);
    expect(whatWouldTell({ ...cannotTell, thermometer: "shared" })).toMatch(
      /each further test narrows/,
    );
  });

  it("says that other set-ups are not compared so", () => {
    expect(onlySameSetUps).toMatch(/one and the same set-up.+reckoned from all tests/);
  });
});
