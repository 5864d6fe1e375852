import { describe, expect, it } from "vitest";
import { checkPoints, displayStep } from "../../src/thermometer/check-points.ts";
import type { Thermometer, ThermometerCheck } from "../../src/thermometer/thermometer.ts";

const ice = (...readings: number[]): ThermometerCheck => ({
  kind: "ice",
  readings,
  date: null,
  confirmed: false,
});
const thermometer = (
  resolution: number | null,
  ...checks: readonly ThermometerCheck[]
): Thermometer => ({ resolution, accuracy: null, checks });

const doubt = (point: ReturnType<typeof checkPoints>[number], source: string) =>
  point.doubts.find((one) => one.source === source);

describe("checkPoints", () => {
  it("takes the mean of the readings and a step of d as d / sqrt(12) (JCGM 100, F.2.2.1)", () => {
    const [point] = checkPoints(thermometer(0.1, ice(0.2, 0.3, 0.4)), [0]);
    expect(point).toMatchObject({ check: 0, truth: 0 });
    expect(point!.reading).toBeCloseTo(0.3, 15);
    expect(doubt(point!, "display step")).toMatchObject({ from: "stated", common: false });
    expect(doubt(point!, "display step")!.standardUncertainty).toBeCloseTo(0.0288675, 7);
    expect(doubt(point!, "ice bath")).toMatchObject({ of: "truth", common: true });
  });

  // By hand: sums of squares 0.02 (2 degrees of freedom) and 0.02 (1), so s^2 = 0.04 / 3
  // (JCGM 100, 4.2.4; H.3.6 pools in the same way).
  it("pools the scatter of all checks", () => {
    const [three, two, one] = checkPoints(
      thermometer(0.1, ice(0.2, 0.3, 0.4), ice(0.1, 0.3), ice(0.2)),
      [0, 1, 2],
    );
    const s = Math.sqrt(0.04 / 3);
    for (const [point, n] of [
      [three, 3],
      [two, 2],
      [one, 1],
    ] as const) {
      const scatter = doubt(point!, "scatter of readings")!;
      expect(scatter.standardUncertainty).toBeCloseTo(s / Math.sqrt(n), 12);
      expect(scatter).toMatchObject({ of: "reading", degreesOfFreedom: 3, from: "measured" });
    }
  });

  it("has no scatter where nothing was read twice, or nothing moved", () => {
    for (const readings of [[0.2], [0.2, 0.2]])
      expect(
        doubt(checkPoints(thermometer(0.1, ice(...readings)), [0])[0]!, "scatter of readings"),
      ).toBeUndefined();
  });

  it("takes only the checks asked for, with readings and a known truth", () => {
    const nowhere: ThermometerCheck = {
      ...ice(98.6),
      kind: "boiling",
      place: { altitude: null, pressure: null },
    };
    const points = checkPoints(thermometer(0.1, ice(), nowhere, ice(0.1), ice(0.2)), [0, 1, 3]);
    expect(points.map((point) => point.check)).toEqual([3]);
  });
});

describe("displayStep", () => {
  it("is stated, or read off all checks", () => {
    expect(displayStep(thermometer(0.5, ice(0.2)))).toBe(0.5);
    expect(displayStep(thermometer(null, ice(0), ice(0.2)))).toBe(0.1);
    const [point] = checkPoints(thermometer(null, ice(0), ice(0.2)), [0]);
    expect(doubt(point!, "display step")!.from).toBe("assumed");
  });
});
