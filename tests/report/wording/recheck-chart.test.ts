import { describe, expect, it } from "vitest";
import {
  dayOfTest,
  recheckChartCaption,
  recheckDescription,
} from "../../../src/report/wording/recheck-chart.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import { chartOf, moved, notMoved } from "../sample-recheck.ts";

const analysis = sampleKitchen();
const writing = plainWriting("degC");

describe("a chart of tests in words", () => {
  it("tells each test, its day where it is known, the limits and the smoothed end", () => {
    expect(recheckDescription(notMoved, analysis, writing)).toBe(
      "Averages of the hold of 2 tests in their order: 38.2 °C (100.8 °F) on 2026-03-04; 38.3 °C (100.9 °F) on 2026-03-09. Limits of single tests 37.6 to 38.8 °C (99.7 to 101.8 °F). The smoothed average ends at 38.2 °C (100.8 °F), its limits at 38.0 to 38.4 °C (100.4 to 101.2 °F).",
    );
  });

  it("says which lie beyond a limit", () => {
    expect(recheckDescription(moved, analysis, writing)).toContain(
      "42.6 °C (108.7 °F) on 2026-03-02, beyond the limits of single tests, its smoothed average beyond its own limits",
    );
  });

  it("tells of many tests only the ends and those beyond a limit", () => {
    const means = Array.from({ length: 20 }, (_, at) => (at === 9 ? 39.4 : 38.1 + at / 100));
    const chart = chartOf(means.map((mean, at) => [`t${at}`, mean] as const));
    const told = recheckDescription({ ...notMoved, chart }, analysis, writing);
    expect(told).toContain("of 20 tests");
    expect(told).toMatch(/38\.1 °C .+39\.4 °C .+beyond.+38\.3 °C/);
    expect(told.split(";").length).toBeLessThan(20);
  });

  it("knows no day of a test that is not in the kitchen", () => {
    expect(dayOfTest(analysis, "gone")).toBeNull();
  });

  it("says what the limits rest on", () => {
    expect(recheckChartCaption(moved.chart, writing)).toBe(
      "Limits by a standard deviation of 0.20 °C (0.36 °F) from one run to the next (assumed).",
    );
  });
});
