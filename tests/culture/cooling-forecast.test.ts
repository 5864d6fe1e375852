import { describe, expect, it } from "vitest";
import { forecast } from "../../src/culture/cooling-forecast.ts";
import { readCooling } from "../../src/culture/read-cooling.ts";
import { coolingPot, potKinds, type PotKind } from "./heated-pots.ts";

/** Exact readings of Newton's law from 90 degC, every half minute, to 0.01 degC. */
const newton = (surroundings: number, constant: number, until: number) => {
  const minutes = Float64Array.from({ length: until * 2 + 1 }, (_, index) => index / 2);
  const at = (t: number): number => surroundings + (90 - surroundings) * Math.exp(-t / constant);
  return { minutes, celsius: minutes.map((minute) => Math.round(at(minute) * 100) / 100) };
};

const foretell = (
  readings: ReturnType<typeof newton>,
  level: number,
  around: { low: number; high: number } | null = null,
) => {
  const cooling = readCooling(readings, 0, 0.01, around);
  if (typeof cooling === "string") throw new Error(cooling);
  return forecast(cooling, level);
};

describe("forecast", () => {
  it("foretells Newton's law", () => {
    // Closed form: 50 ln((90 - 21) / (43 - 21)).
    const truth = 50 * Math.log(69 / 22);
    const found = foretell(newton(21, 50, 30), 43, { low: 20, high: 22 });
    if (typeof found === "string") throw new Error(found);
    expect(Math.abs(found.minute - truth)).toBeLessThan(1.5);
    expect(found.low).toBeLessThan(truth);
    expect(found.high).toBeGreaterThan(truth);
    expect(Math.abs(found.timeConstantMinutes - 50)).toBeLessThan(3);
    expect(Math.abs(found.surroundings - 21)).toBeLessThan(1.5);
  });

  it("is surer the longer the pot was watched, and never before the last reading", () => {
    const widths = [12, 30, 50].map((until) => {
      const found = foretell(newton(21, 50, until), 43);
      if (typeof found === "string" || found.high === null) throw new Error("no interval");
      expect(found.low).toBeGreaterThanOrEqual(until);
      return found.high - found.low;
    });
    expect(widths.toSorted((a, b) => b - a)).toEqual(widths);
  });

  it("says that it levels off in surroundings that are too warm", () => {
    expect(foretell(newton(50, 20, 60), 43, { low: 49, high: 51 })).toBe("levels-off");
  });

  it("knows no upper end where that is only possible", () => {
    const found = foretell(newton(38, 30, 12), 39, { low: 30, high: 44 });
    expect(found).toMatchObject({ high: null });
  });
});

const share = (kind: PotKind, said: boolean): { covered: number; told: number } => {
  let [told, covered] = [0, 0];
  for (let seed = 1; seed <= 60; seed += 1) {
    const pot = coolingPot(seed, kind);
    const cooling = readCooling(pot.log, 0, pot.log.resolution, said ? pot.room : null);
    const found = typeof cooling === "string" ? cooling : forecast(cooling, pot.level);
    if (typeof found === "string") continue;
    told += 1;
    if (found.low <= pot.truth && pot.truth <= (found.high ?? Infinity)) covered += 1;
  }
  return { covered: covered / told, told };
};

describe("forecast on constructed pots that cool by more than Newton's law", () => {
  it.each(potKinds.flatMap((kind) => [[kind, true] as const, [kind, false] as const]))(
    "covers the true time in at least 90 %% of its 95 %% intervals: %s, surroundings said: %s",
    (kind, said) => {
      const { covered, told } = share(kind, said);
      expect(told).toBeGreaterThan(45);
      expect(covered).toBeGreaterThanOrEqual(0.9);
    },
    30_000,
  );
});
