import { describe, expect, it } from "vitest";
import { slowPrior, type SlowEvidence } from "../../src/culture/slow-prior.ts";

const evidence: SlowEvidence = {
  cycling: false,
  roomRange: null,
  warmUpMinutes: 60,
};
const meanDaily = (more: Partial<SlowEvidence>) =>
  slowPrior({ ...evidence, ...more }).reduce(
    (sum, { strengths, weight }) => sum + weight * strengths.daily,
    0,
  );

describe("slowPrior", () => {
  it("believes what is known of a thermostat before what the night seems to show", () => {
    expect(meanDaily({ thermostat: false, cycling: true })).toBeGreaterThan(
      meanDaily({ cycling: false, warmUpMinutes: null }),
    );
    expect(meanDaily({ thermostat: true })).toBeCloseTo(meanDaily({ cycling: true }), 12);
  });

  it("is a distribution", () => {
    for (const cycling of [true, false]) {
      const total = slowPrior({ ...evidence, cycling }).reduce(
        (sum, { weight }) => sum + weight,
        0,
      );
      expect(total).toBeCloseTo(1, 12);
    }
  });

  it("expects less of the room where something switches by temperature", () => {
    expect(meanDaily({ cycling: true })).toBeLessThan(meanDaily({ cycling: false }));
    const unknown = meanDaily({ cycling: false, warmUpMinutes: null });
    expect(meanDaily({ cycling: true })).toBeLessThan(unknown / 2);
  });

  it("expects more of the room where the warm-up crept for hours, as at fixed power", () => {
    const expected = [60, 200, null, 400].map((warmUpMinutes) => meanDaily({ warmUpMinutes }));
    expect(expected).toEqual(expected.toSorted((a, b) => a - b));
    expect(expected[3]).toBeGreaterThan(1.5 * expected[0]!);
  });

  it("scales with the room's stated range", () => {
    expect(meanDaily({ roomRange: 8 })).toBeCloseTo(8 * meanDaily({ roomRange: 1 }), 9);
  });
});
