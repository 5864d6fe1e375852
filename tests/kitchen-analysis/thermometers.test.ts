import { describe, expect, it } from "vitest";
import { analyseThermometer, thermometerNotices } from "../../src/kitchen-analysis/thermometers.ts";
import type { KitchenThermometer } from "../../src/kitchen/kitchen.ts";
import { checkedPen, uncheckedPen } from "./small-kitchen.ts";

const noticesOf = (thermometer: KitchenThermometer, today: string) =>
  thermometerNotices(analyseThermometer(thermometer, today));

const warmIce = (confirmed: boolean): KitchenThermometer => ({
  ...uncheckedPen,
  checks: [{ kind: "ice", readings: [6.1, 6, 6.1], date: "2026-05-02", confirmed }],
});

/** Constructed thermometers. */
describe("analyseThermometer", () => {
  it("tells the correction at 20, 38, 43 and 90 degC", () => {
    const { corrections, questions } = analyseThermometer(checkedPen, "2026-06-01");
    expect(corrections.map(({ reading }) => reading)).toEqual([20, 38, 43, 90]);
    // One check: an offset, 37.7 - 38.0, with less doubt where it was made than far away.
    for (const { correction } of corrections) expect(correction).toBeCloseTo(-0.3, 9);
    expect(corrections[3]!.standardUncertainty).toBeGreaterThan(
      corrections[1]!.standardUncertainty,
    );
    expect(questions).toEqual([]);
  });

  it("tells where the doubt at 38 degC comes from; its parts make up the whole", () => {
    const { doubts, corrections } = analyseThermometer(checkedPen, "2026-06-01");
    expect(doubts.reading).toBe(38);
    const sizes = doubts.parts.map(({ standardUncertainty }) => standardUncertainty);
    expect(sizes.length).toBeGreaterThan(1);
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
    // Independent parts add in quadrature (JCGM 100, 5.1.2).
    expect(Math.hypot(...sizes)).toBeCloseTo(corrections[1]!.standardUncertainty, 12);
  });

  it("counts the days since the newest check", () => {
    // 14 February to 1 June 2026: 14 + 31 + 30 + 31 + 1 = 107 days.
    expect(analyseThermometer(checkedPen, "2026-06-01").checked).toEqual({
      date: "2026-02-14",
      daysAgo: 107,
      monthsAgo: 3,
    });
    expect(analyseThermometer(uncheckedPen, "2026-06-01").checked).toBeNull();
  });

  it("does not count a check that was left out as the last one", () => {
    const [sound] = checkedPen.checks;
    const [doubtful] = warmIce(false).checks;
    const later = { ...checkedPen, checks: [sound!, doubtful!] };
    expect(analyseThermometer(later, "2026-06-01").checked?.date).toBe("2026-02-14");
    expect(analyseThermometer(warmIce(false), "2026-06-01").checked).toBeNull();
    // The check that counts is old, however new the other is.
    expect(noticesOf(later, "2027-03-01").map(({ code }) => code)).toEqual([
      "check-left-out",
      "check-old",
    ]);
  });
});

describe("thermometerNotices", () => {
  it("has nothing to say of a fresh check", () => {
    expect(noticesOf(checkedPen, "2027-02-14")).toEqual([]);
  });

  it("says how many months ago an old check was made", () => {
    // 14 February 2026 to 15 April 2027 is 14 months and a day.
    expect(noticesOf(checkedPen, "2027-02-15")).toMatchObject([
      { code: "check-old", facts: { months: 12 } },
    ]);
    expect(noticesOf(checkedPen, "2027-04-15")).toMatchObject([
      { code: "check-old", facts: { thermometer: "Pen thermometer", months: 14 } },
    ]);
  });

  it("says what stands in for a check that was never made", () => {
    expect(noticesOf(uncheckedPen, "2026-06-01")).toMatchObject([
      { code: "thermometer-unchecked", facts: { accuracy: 1, from: "stated" } },
    ]);
    expect(noticesOf({ ...uncheckedPen, accuracy: null }, "2026-06-01")).toMatchObject([
      { code: "thermometer-unchecked", facts: { accuracy: 1, from: "assumed" } },
    ]);
  });

  it("names a doubtful check that was left out, until it is confirmed", () => {
    expect(noticesOf(warmIce(false), "2026-06-01")).toMatchObject([
      { code: "check-left-out", facts: { check: "melting ice, 2026-05-02" } },
    ]);
    expect(noticesOf(warmIce(true), "2026-06-01")).toEqual([]);
  });
});
