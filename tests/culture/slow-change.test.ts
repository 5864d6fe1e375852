import { describe, expect, it } from "vitest";
import {
  fitSlowChange,
  predictSlowChange,
  slowCovariance,
  type SlowBlocks,
} from "../../src/culture/slow-change.ts";

const strengths = {
  daily: 0.5,
  roomWander: 0.15,
  ownWander: 0.05,
  approach: 0.1,
  approachHours: 2,
};
const blocks = (hours: number[], means: number[], variance = 1e-6): SlowBlocks => ({
  hours: Float64Array.from(hours),
  means: Float64Array.from(means),
  variances: Float64Array.from(hours, () => variance),
});

describe("slow change", () => {
  it("goes through what was seen when the readings are sure", () => {
    const seen = blocks([0.5, 2, 4, 7], [40, 40.4, 40.1, 39.8]);
    const fit = fitSlowChange(seen, strengths)!;
    const { means, covariance } = predictSlowChange(fit, seen, seen.hours);
    means.forEach((mean, i) => expect(mean).toBeCloseTo(seen.means[i]!, 3));
    for (let i = 0; i < 4; i += 1) expect(covariance[i * 4 + i]).toBeLessThan(2e-6);
  });

  it("agrees with the textbook formula for two readings, worked out by hand", () => {
    // Two noisy readings a, b with prior variance v, covariance c, noise s2 (Rasmussen & Williams 2.25):
    // the log likelihood of a 2 x 2 normal with those entries.
    const seen = blocks([1, 3], [40, 41], 0.04);
    const fit = fitSlowChange(seen, strengths)!;
    const v1 = slowCovariance(1, 1, strengths) + 0.04;
    const v2 = slowCovariance(3, 3, strengths) + 0.04;
    const c = slowCovariance(1, 3, strengths);
    const determinant = v1 * v2 - c * c;
    const [a, b] = [-0.5, 0.5];
    const square = (v2 * a * a - 2 * c * a * b + v1 * b * b) / determinant;
    const expected = -Math.log(2 * Math.PI) - 0.5 * Math.log(determinant) - 0.5 * square;
    expect(fit.logLikelihood).toBeCloseTo(expected, 9);
  });

  it("knows less the further it looks ahead, up to the day's wave and wander", () => {
    const hours = Array.from({ length: 16 }, (_, i) => 0.25 + i / 2);
    const seen = blocks(
      hours,
      hours.map(() => 40),
    );
    const fit = fitSlowChange(seen, strengths)!;
    const ahead = Float64Array.of(8.5, 10, 14, 20);
    const { covariance } = predictSlowChange(fit, seen, ahead);
    const spreads = Array.from(ahead, (_, i) => Math.sqrt(covariance[i * 4 + i]!));
    expect(spreads[0]).toBeLessThan(spreads[1]!);
    expect(spreads[1]).toBeLessThan(spreads[2]!);
    expect(spreads[3]).toBeGreaterThan(0.2);
    expect(spreads[3]).toBeLessThan(2);
  });

  it("prefers strong movement when the night moved, weak when it stood still", () => {
    const weak = { ...strengths, daily: 0.02, roomWander: 0.01 };
    const hours = Array.from({ length: 16 }, (_, i) => 0.25 + i / 2);
    const still = blocks(
      hours,
      hours.map(() => 40),
      1e-4,
    );
    const moved = blocks(
      hours,
      hours.map((hour) => 40 + Math.cos((2 * Math.PI * hour) / 24)),
      1e-4,
    );
    const gain = (seen: SlowBlocks): number =>
      fitSlowChange(seen, strengths)!.logLikelihood - fitSlowChange(seen, weak)!.logLikelihood;
    expect(gain(still)).toBeLessThan(0);
    expect(gain(moved)).toBeGreaterThan(5);
  });
});
