import { describe, expect, it } from "vitest";
import { recheckAll } from "../../src/advice/recheck.ts";
import type { KitchenThermometer } from "../../src/kitchen/kitchen.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, failedTest, settledTest, step } from "./constructed.ts";

const day = 86_400_000;
const start = Date.UTC(2026, 0, 10, 20);
const night = (id: string, level: number, after: number, more = {}) =>
  settledTest({ id, level, startedAt: start + after * day, ...more });
const of = (
  tests: Parameters<typeof adviceInput>[0]["tests"],
  thermometers: readonly KitchenThermometer[] = [],
) => {
  const input = adviceInput({ requirements: [asked(36, 40, 12)], tests: tests ?? [] });
  return recheckAll({ ...input, kitchen: { ...input.kitchen, thermometers } });
};
const penChecked = (date: string): KitchenThermometer => ({
  id: "pen",
  name: "Pen",
  resolution: 0.1,
  accuracy: null,
  checks: [{ kind: "ice", readings: [0.1], date, confirmed: false }],
});

/** Constructed nights. */
describe("recheckAll", () => {
  it("compares the oldest test of a set-up with the newest", () => {
    const [found, ...rest] = of([night("a", 38, 0), night("b", 38.1, 30), night("c", 39.4, 60)]);
    expect(rest).toEqual([]);
    expect(found).toMatchObject({
      baseline: { testId: "a", startedAt: start },
      newest: { testId: "c" },
      word: "moved",
    });
    expect(found!.level.difference).toBeCloseTo(1.4, 2);
    expect(found!.chart.points.map(({ testId }) => testId)).toEqual(["a", "b", "c"]);
  });

  it("compares nothing across set-ups, nor with tests that failed", () => {
    expect(of([night("a", 38, 0), night("b", 39, 30, { setting: step(39) })])).toEqual([]);
    expect(of([night("a", 38, 0), failedTest("b")])).toEqual([]);
    expect(of([])).toEqual([]);
  });

  it("does not take a bath's level for the food's", () => {
    expect(of([night("a", 39, 0, { place: "bath" }), night("b", 38, 30)])).toEqual([]);
  });

  it("lets a thermometer's error cancel unless it was checked anew in between", () => {
    const tests = [night("a", 38, 0), night("b", 38.1, 30)];
    expect(of(tests, [penChecked("2026-01-05")])[0]!.thermometer).toBe("shared");
    expect(of(tests, [penChecked("2026-02-01")])[0]!.thermometer).toBe("changed");
    const other = [tests[0]!, night("b", 38.1, 30, { thermometerId: "spare" })];
    expect(of(other)[0]!.thermometer).toBe("changed");
    const unnamed = [0, 30].map((after) => night(`${after}`, 38, after, { thermometerId: null }));
    expect(of(unnamed)[0]!.thermometer).toBe("changed");
  });

  it("does not let the newest test widen the scatter it is judged by", () => {
    const steady = [0, 1, 2, 3, 4].map((at) => night(`${at}`, 38 + 0.01 * at, 10 * at));
    const [still] = of([...steady, night("now", 38.05, 80)]);
    const [gone] = of([...steady, night("now", 41, 80)]);
    expect(gone!.level.standardUncertainty).toBeCloseTo(still!.level.standardUncertainty, 2);
    expect(gone!.word).toBe("moved");
  });
});
