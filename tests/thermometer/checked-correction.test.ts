import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkedCorrection } from "../../src/thermometer/checked-correction.ts";
import { correctionAt } from "../../src/thermometer/correction-at.ts";
import { doubtOf, pointAt } from "./point.ts";

const point = (reading: number, truth: number, u = 0.05) =>
  pointAt(reading, truth, doubtOf("truth", u, { source: "reference thermometer" }));
const sources = (model: ReturnType<typeof checkedCorrection>) =>
  model.components.map((one) => one.source);

/** Doubt at 90 degC of a thermometer specified to 0.3 and found off by `offset` in ice. */
const at90 = (offset: number) =>
  correctionAt(checkedCorrection([point(offset, 0)], 0.3), 90).standardUncertainty;

describe("checkedCorrection", () => {
  it("is an offset from one temperature, however often it was checked", () => {
    for (const points of [[point(0.3, 0)], [point(0.3, 0), point(0.3, 0), point(0.4, 0)]]) {
      const model = checkedCorrection(points, null);
      expect(model).toMatchObject({ slope: 0, from: "measured", accuracy: null });
      expect(sources(model)).toContain("unchecked scale");
      expect(sources(model)).not.toContain("linearity");
    }
  });

  it("is a line from two temperatures", () => {
    const model = checkedCorrection([point(0.3, 0), point(60.9, 60)], null);
    // By hand: corrections -0.3 and -0.9 over 60.6 degC.
    expect(model.slope).toBeCloseTo(-0.6 / 60.6, 12);
    expect(sources(model)).toContain("linearity");
  });

  it("stays an offset where two checks tell the slope worse than it is assumed", () => {
    // u(slope) = 0.05 x sqrt(2) / 4 = 0.018 per degC, against the 0.005 assumed.
    const model = checkedCorrection([point(36, 36.2), point(40, 40)], null);
    expect(model.slope).toBe(0);
    expect(correctionAt(model, 38).correction).toBeCloseTo(0.1, 12);
  });

  it.each([
    [10, 10],
    [10, 10.1],
    [30, 10],
  ])("makes no line of readings that do not follow the truth: %d and %d", (first, second) => {
    const model = checkedCorrection([point(first, 0), point(second, 30)], null);
    expect(model.slope).toBe(0);
    // The two corrections are 30 degC apart, and more: that is the doubt, with one degree of freedom.
    const { standardUncertainty, degreesOfFreedom } = correctionAt(model, 10);
    expect(standardUncertainty).toBeGreaterThan(10);
    expect(degreesOfFreedom).toBeLessThan(1.1);
  });

  it("lets a specification limit the unchecked scale, unless the check contradicts it", () => {
    expect(at90(0.1)).toBeCloseTo(Math.hypot(0.05, 0.3 / Math.sqrt(3)), 12);
    expect(at90(0.8)).toBeGreaterThan(0.4);
  });

  it("is never surer far from its checks than near them", () => {
    const u = fc.double({ min: 0.01, max: 0.2, noNaN: true });
    const away = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(u, u, away, away, (ice, boil, one, other) => {
        const two = checkedCorrection([point(0.2, 0, ice), point(100.1, 99.97, boil)], null);
        const single = checkedCorrection([point(0.2, 0, ice)], null);
        const near = Math.min(one, other);
        const far = Math.max(one, other);
        const grows = (model: typeof two, from: number, direction: number) => {
          const at = (distance: number) =>
            correctionAt(model, from + direction * distance).standardUncertainty;
          expect(at(near)).toBeGreaterThan(0);
          expect(at(far)).toBeGreaterThanOrEqual(at(near) - 1e-12);
        };
        grows(two, 100.1, 1);
        grows(two, 0.2, -1);
        grows(single, 0.2, 1);
        grows(single, 0.2, -1);
      }),
    );
  });
});
