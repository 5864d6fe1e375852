import { describe, expect, it } from "vitest";
import { heatingStep } from "../../src/culture/heating-step.ts";
import { milkZ } from "../../src/culture/heating-targets.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer, specifiedThermometer } from "../../src/thermometer/budget.ts";
import { constantCorrection } from "../../src/thermometer/constant-correction.ts";
import { heatedPot } from "./heated-pots.ts";

const target = { celsius: 90, minutes: 10, z: milkZ, from: { name: "own", source: "constructed" } };

const within = (accuracy: number, resolution = 0) => ({
  model: constantCorrection(specifiedThermometer(celsiusDifference(accuracy), "stated")),
  resolution,
});

/** A constructed log: a straight rise from 20 degC, a plateau, a fall of 2 degC a minute; a reading a minute. */
const pot = (plateau: number, held: number, from = 0, to = Infinity) => {
  const rise = 20;
  const at = (minute: number): number =>
    minute < rise
      ? 20 + ((plateau - 20) * minute) / rise
      : plateau - 2 * Math.max(0, minute - rise - held);
  const minutes = Array.from({ length: rise + held + 30 }, (_, index) => index).filter(
    (minute) => minute >= from && minute <= to,
  );
  return {
    minutes: Float64Array.from(minutes),
    celsius: Float64Array.from(minutes, at),
  };
};

const word = (readings: ReturnType<typeof pot>, accuracy = 0.5) =>
  heatingStep(readings, target, within(accuracy), 0.95);

describe("heatingStep", () => {
  it("holds where the plateau lies above the target by more than the doubt", () => {
    const step = word(pot(92, 12));
    expect(step).toMatchObject({ verdict: "holds", probability: 1, reasons: [] });
    // By hand: up through 90 at 20 * 70/72 min, down through it one minute after the plateau.
    expect(step.longest?.fromMinute).toBeCloseTo((20 * 70) / 72, 9);
    expect(step.longest?.toMinute).toBeCloseTo(33, 9);
    // 0.475 degC taken off: up through 90.475, down through it 0.7625 min after the plateau.
    expect(step.guarded?.fromMinute).toBeCloseTo((20 * 70.475) / 72, 6);
    expect(step.guarded?.toMinute).toBeCloseTo(32.7625, 6);
    expect(step.peak).toBe(92);
    expect(step.surelyAtReading).toBeCloseTo(90.475, 9);
    // Held 12 min at 92 and up to 10 min at it.
    expect(step.heldAt).toBeCloseTo(92, 6);
  });

  it("misses where the plateau lies below it, or was too short", () => {
    expect(word(pot(89, 15))).toMatchObject({
      verdict: "misses",
      longest: null,
      guarded: null,
      reasons: [{ code: "never-reached", peak: 89 }],
    });
    const short = word(pot(92, 5));
    expect(short.verdict).toBe("misses");
    expect(short.reasons).toMatchObject([{ code: "too-short" }]);
  });

  it("is unproven where the thermometer cannot tell, and its probability is the offset's", () => {
    const step = word(pot(90.2, 15));
    expect(step.verdict).toBe("unproven");
    // The plateau shows 90.2 with +-0.5: 0.7 of the rectangle lies at or above 90.
    expect(step.probability).toBeCloseTo(0.7, 6);
    expect(step.reasons).toMatchObject([{ code: "near-target" }]);
    expect(step.guarded).toBeNull();
  });

  it("is unproven, not missed, where the log ends or begins hot, or has a gap", () => {
    const ends = word(pot(92, 15, 0, 25));
    expect(ends).toMatchObject({ verdict: "unproven", probability: 0 });
    expect(ends.reasons.map(({ code }) => code)).toEqual(["too-short", "log-ends-hot"]);
    const starts = word(pot(92, 12, 27));
    expect(starts.verdict).toBe("unproven");
    expect(starts.reasons.map(({ code }) => code)).toEqual(["too-short", "log-starts-hot"]);
    const whole = pot(92, 14);
    const kept = [...whole.minutes.keys()].filter((index) => index < 23 || index > 29);
    const gapped = word({
      minutes: Float64Array.from(kept, (index) => whole.minutes[index]!),
      celsius: Float64Array.from(kept, (index) => whole.celsius[index]!),
    });
    expect(gapped.verdict).toBe("unproven");
    expect(gapped.reasons.map(({ code }) => code)).toContain("gap");
  });

  it("never holds on fewer than four readings, and says what coarse ones cannot show", () => {
    const minutes = Float64Array.from([0, 10, 20, 30, 40]);
    const readings = { minutes, celsius: Float64Array.from([50, 95, 95, 95, 50]) };
    const step = heatingStep(readings, target, within(0.5), 0.95);
    expect(step.probability).toBe(1);
    expect(step.verdict).toBe("unproven");
    expect(step.reasons).toEqual([
      { code: "few-readings", readings: 3 },
      { code: "coarse", intervalMinutes: 10 },
    ]);
  });

  it("carries the thermometer's doubt over to the equivalent minutes", () => {
    const step = heatingStep(pot(92, 12), target, within(0.3), 0.95);
    const { value, standardUncertainty } = step.equivalentMinutes;
    // An offset of one standard uncertainty, 0.3 / sqrt(3), multiplies the minutes by 10^(u / z).
    const u = 0.3 / Math.sqrt(3);
    const shifted = pot(92, 12);
    shifted.celsius.forEach((one, index) => (shifted.celsius[index] = one + u));
    const up = heatingStep(shifted, target, within(0.3), 0.95).equivalentMinutes.value;
    // First order against the true change, and the coarse steps' small share on top: 5 %.
    expect(Math.abs(standardUncertainty - (up - value)) / (up - value)).toBeLessThan(0.05);
  });
});

describe("heatingStep on constructed pots with a known truth", () => {
  const found = Array.from({ length: 1500 }, (_, index) => {
    const { log, accuracy, specified, truth } = heatedPot(index + 1);
    const a = celsiusDifference(accuracy);
    const statement = specified
      ? specifiedThermometer(a, "stated")
      : correctedThermometer(celsiusDifference(0), celsiusDifference(accuracy / 1.7));
    const thermometer = { model: constantCorrection(statement), resolution: log.resolution };
    const { verdict, probability } = heatingStep(log, target, thermometer, 0.95);
    return { verdict, probability, reached: truth >= target.minutes };
  });

  it("is wrong in at most one of twenty of its `holds`, and of its `misses`", () => {
    const held = found.filter(({ verdict }) => verdict === "holds");
    const missed = found.filter(({ verdict }) => verdict === "misses");
    expect(held.length).toBeGreaterThan(200);
    expect(missed.length).toBeGreaterThan(200);
    expect(held.filter(({ reached }) => !reached).length / held.length).toBeLessThan(0.05);
    expect(missed.filter(({ reached }) => reached).length / missed.length).toBeLessThan(0.05);
  });

  it("gives probabilities that come true at their rate", () => {
    for (const [low, high] of [
      [0, 0.05],
      [0.05, 0.35],
      [0.35, 0.65],
      [0.65, 0.95],
      [0.95, 1.01],
    ] as const) {
      const some = found.filter(({ probability: p }) => p >= low && p < high);
      const meant = some.reduce((sum, { probability }) => sum + probability, 0) / some.length;
      const came = some.filter(({ reached }) => reached).length / some.length;
      // 0.05, and three standard deviations of a share of so many.
      const chance = 3 * Math.sqrt((meant * (1 - meant)) / some.length);
      expect(Math.abs(came - meant), `${low} to ${high}`).toBeLessThan(0.05 + chance);
    }
  });
});
