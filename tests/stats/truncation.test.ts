import { describe, expect, it } from "vitest";
import { marginalStandardErrorTruncation } from "../../src/stats/truncation.ts";
import { autoregressive, seededNormal } from "./seeded-noise.ts";

describe("marginalStandardErrorTruncation", () => {
  // The rule written out: the d up to half that makes sum (y - m)^2 / (n - d)^2 least (White 1997).
  it("is the definition, written out slowly", () => {
    const normal = seededNormal(51);
    for (let run = 0; run < 50; run++) {
      const values = Array.from({ length: 83 }, (_, i) => 10 * Math.exp(-i / 9) + normal());
      let best = 0;
      let least = Infinity;
      for (let d = 0; d <= 41; d++) {
        const rest = values.slice(d);
        const centre = rest.reduce((sum, value) => sum + value, 0) / rest.length;
        const error =
          rest.reduce((sum, value) => sum + (value - centre) ** 2, 0) / rest.length ** 2;
        if (error < least) [best, least] = [d, error];
      }
      expect(marginalStandardErrorTruncation(values, 1)).toBe(best);
    }
  });

  // Constructed: a warm-up from 22 to 41 degC with time constant 30 readings and
  // noise 0.2 is within one noise deviation after 30 ln(19/0.2) = 137 readings.
  it("finds where a warm-up ends", () => {
    const normal = seededNormal(52);
    const values = Array.from(
      { length: 900 },
      (_, i) => 41 - 19 * Math.exp(-i / 30) + 0.2 * normal(),
    );
    const found = marginalStandardErrorTruncation(values);
    expect(found % 5).toBe(0);
    expect(Math.abs(found - 137)).toBeLessThan(45);
  });

  it("drops little where there is no start to drop", () => {
    const normal = seededNormal(53);
    let dropped = 0;
    for (let run = 0; run < 100; run++) {
      dropped += marginalStandardErrorTruncation(autoregressive(1000, 0.5, normal)) / 100;
    }
    expect(dropped).toBeLessThan(150);
  });

  it("drops nothing of next to nothing", () => {
    expect(marginalStandardErrorTruncation([1, 2, 3])).toBe(0);
    expect(marginalStandardErrorTruncation([])).toBe(0);
    expect(marginalStandardErrorTruncation(new Float64Array(40).fill(7))).toBe(0);
  });
});
