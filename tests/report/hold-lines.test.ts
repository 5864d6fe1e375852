import { describe, expect, it } from "vitest";
import { driftText, holdSummary, holdTable, swingText } from "../../src/report/hold-lines.ts";
import { plainWriting } from "../../src/report/writing.ts";
import { holdsNight, noHoldNight } from "./sample-analysis.ts";

const writing = plainWriting("degC");
const [held] = holdsNight().probes;
const drift = {
  perHour: 0.16,
  low: 0.14,
  high: 0.18,
  standardUncertainty: 0.01,
  robustPerHour: 0.16,
};

const tableOf = (probe = held!) => holdTable(probe, 0.95, 0.95, writing);
const labels = (probe = held!): string[] => {
  const { main, others } = tableOf(probe);
  return [...main, ...others].map(({ label }) => label);
};

describe("in words", () => {
  it("names a drift only when zero lies outside its interval", () => {
    expect(driftText(drift, writing)).toBe("drifts up: +0.16 °C (+0.29 °F) an hour");
    expect(driftText({ ...drift, perHour: -0.2, low: -0.3, high: -0.1 }, writing)).toMatch(
      /^drifts down: −0.20/,
    );
    expect(driftText({ ...drift, low: -0.1 }, writing)).toMatch(/^no clear drift/);
  });

  it("tells a swing's height and period, or that there is none", () => {
    expect(swingText({ periodMinutes: 24, peakToPeak: 0.9, cycles: 17 }, writing)).toBe(
      "0.9 °C (1.6 °F) from low to high, every 24 min",
    );
    expect(swingText(null, writing)).toBe("no regular swing");
  });
});

describe("holdSummary", () => {
  it("takes three lines, or one where nothing held", () => {
    expect(holdSummary(held!, 0.95, writing).map(({ label }) => label)).toEqual([
      "Hold",
      "Steady?",
      "Warm-up",
    ]);
    expect(holdSummary(noHoldNight().probes[0]!, 0.95, writing)).toEqual([
      { label: "Hold", text: "none found" },
    ]);
  });
});

describe("holdTable", () => {
  it("puts at most six figures first, and none twice", () => {
    expect(tableOf().main.length).toBe(6);
    expect(new Set(labels()).size).toBe(labels().length);
    expect(labels().length).toBeGreaterThan(9);
  });

  it("shows the median of slopes only where it disagrees with least squares", () => {
    expect(labels()).not.toContain("Drift, by the median of slopes");
    const hold = { ...held!.night.hold!, drift: { ...drift, robustPerHour: 0.4 } };
    expect(labels({ ...held!, night: { ...held!.night, hold } })).toContain(
      "Drift, by the median of slopes",
    );
  });

  it("leaves out what is not there", () => {
    expect(labels(noHoldNight().probes[0]!)).toEqual([]);
    expect(
      labels({ ...held!, guardedBand: null }).some((label) => label.startsWith("Guarded")),
    ).toBe(false);
  });
});
