import { describe, expect, it } from "vitest";
import { heatingCoolDown } from "../../src/culture/heating-cool-down.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { specifiedThermometer } from "../../src/thermometer/budget.ts";
import { constantCorrection } from "../../src/thermometer/constant-correction.ts";

const target = { celsius: 90, minutes: 10, z: 10, from: { name: "own", source: "constructed" } };
const thermometer = {
  model: constantCorrection(specifiedThermometer(celsiusDifference(0.5), "stated")),
  resolution: 0,
};
const level = { to: 43, of: "ceiling" } as const;

/** Constructed: 92 degC until minute 20, then Newton's law in 20 degC with 50 min; a reading a minute. */
const pot = (until: number, from = 0) => {
  const count = until - from + 1;
  const minutes = Float64Array.from({ length: count }, (_, index) => from + index);
  return { minutes, celsius: minutes.map(potAt) };
};
const potAt = (t: number): number => (t <= 20 ? 92 : 20 + 72 * Math.exp(-(t - 20) / 50));

const coolDown = (readings: ReturnType<typeof pot>, to = level) =>
  heatingCoolDown(readings, target, to, thermometer, { low: 18, high: 22 });

describe("heatingCoolDown", () => {
  it("is done when the reading with its uncertainty on top is below", () => {
    const found = coolDown(pot(120));
    // Closed forms: 92 to 90, and to 43 - 0.475 degC; straight lines between readings a minute apart: 0.01 min.
    expect(Math.abs(found.fromMinute - (20 + 50 * Math.log(72 / 70)))).toBeLessThan(0.01);
    const truth = 20 + 50 * Math.log(72 / (43 - 0.475 - 20));
    expect(Math.abs(found.safeAtMinute! - truth)).toBeLessThan(0.01);
    expect(found).toMatchObject({ to: 43, of: "ceiling", predicted: null, unknown: null });
  });

  it("foretells that moment while it still cools", () => {
    const found = coolDown(pot(50));
    const truth = 20 + 50 * Math.log(72 / (43 - 0.475 - 20));
    expect(found.safeAtMinute).toBeNull();
    expect(found.predicted!.low).toBeLessThan(truth);
    expect(found.predicted!.high!).toBeGreaterThan(truth);
  });

  it("counts the last time it fell below, not the first", () => {
    const again = pot(120);
    again.celsius[115] = 44.5;
    const found = coolDown(again);
    expect(found.safeAtMinute).toBeGreaterThan(115);
  });

  it("counts the end of a gap in which it fell below", () => {
    const whole = pot(120);
    const kept = [...whole.minutes.keys()].filter((minute) => minute < 60 || minute > 90);
    const found = coolDown({
      minutes: Float64Array.from(kept, (index) => whole.minutes[index]!),
      celsius: Float64Array.from(kept, (index) => whole.celsius[index]!),
    });
    expect(found.safeAtMinute).toBe(91);
  });

  it("starts at the peak where the target was never reached", () => {
    const cool = pot(120);
    const found = coolDown({ ...cool, celsius: cool.celsius.map((one) => one - 5) });
    expect(found.fromMinute).toBe(20);
    expect(found.safeAtMinute).not.toBeNull();
  });

  it("tells why where it cannot be told", () => {
    expect(coolDown(pot(22)).unknown).toBe("too-few-readings");
    expect(coolDown(pot(20)).unknown).toBe("too-few-readings");
    const kept = pot(60);
    kept.celsius.fill(70, 25);
    expect(coolDown(kept).unknown).toBe("levels-off");
    for (let minute = 25; minute <= 60; minute += 1) kept.celsius[minute] = 65 + minute / 4;
    expect(coolDown(kept).unknown).toBe("not-cooling");
    const cold = pot(60);
    expect(coolDown({ ...cold, celsius: cold.celsius.map(() => 30) }).unknown).toBe("never-above");
  });

  it("takes a probe that was pulled out for no cooling of the milk", () => {
    const out = pot(60);
    for (let minute = 50; minute <= 60; minute += 1) out.celsius[minute] = 22;
    const found = coolDown(out);
    expect(found).toMatchObject({ safeAtMinute: null, unknown: "probe-out" });
    expect(found.predicted!.minute).toBeGreaterThan(49);
  });
});
