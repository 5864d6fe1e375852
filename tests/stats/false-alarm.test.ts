import { describe, expect, it } from "vitest";
import { baluevFalseAlarm } from "../../src/stats/false-alarm.ts";
import { strongestPeriod } from "../../src/stats/periodogram.ts";
import { seededNormal } from "./seeded-noise.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { falseAlarm } from "../reference/values/robust.ts";

describeReferences(falseAlarm);

const evenly = (n: number): Float64Array => Float64Array.from({ length: n }, (_, i) => i);

describe("baluevFalseAlarm", () => {
  // At a single frequency the power of noise follows a beta distribution,
  // P(power > z) = (1 - z)^((n - 3)/2) (Baluev 2008, table 1).
  it("is the single-frequency probability without bandwidth", () => {
    expect(baluevFalseAlarm(0.3, evenly(41), 0)).toBeCloseTo(0.7 ** 19, 15);
  });

  it("is certain for no peak, impossible for a perfect one, and falls between", () => {
    const times = evenly(100);
    expect(baluevFalseAlarm(0, times, 0.4)).toBe(1);
    expect(baluevFalseAlarm(1, times, 0.4)).toBe(0);
    const found = [0.1, 0.2, 0.3, 0.5].map((power) => baluevFalseAlarm(power, times, 0.4));
    for (let i = 1; i < found.length; i++) expect(found[i]).toBeLessThan(found[i - 1]!);
    expect(baluevFalseAlarm(0.05, times, 0.4)).toBeGreaterThan(baluevFalseAlarm(0.05, times, 0.02));
  });

  // Constructed: 600 series of independent noise. Baluev's figure is an upper
  // bound that is close where it is small; 3 binomial standard deviations are 3.7 %
  // at 10 % and 1.2 % at 1 %.
  it("comes true on noise", () => {
    const normal = seededNormal(41);
    const times = evenly(120);
    let tenth = 0;
    let hundredth = 0;
    for (let run = 0; run < 600; run++) {
      const values = times.map(() => normal());
      const found = strongestPeriod(times, values, { shortest: 2.5, longest: 40 })!;
      if (found.falseAlarmProbability < 0.1) tenth++;
      if (found.falseAlarmProbability < 0.01) hundredth++;
    }
    expect(tenth / 600).toBeGreaterThan(0.05);
    expect(tenth / 600).toBeLessThan(0.137);
    expect(hundredth / 600).toBeLessThan(0.022);
  });
});
