import { describe, expect, it } from "vitest";
import { equivalentMinutes, lethalRate } from "../../src/culture/lethal-rate.ts";
import { impliedZ } from "../../src/culture/heating-targets.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { lethality } from "../reference/values/heating.ts";

describeReferences(lethality);

/** Readings a minute apart. */
const everyMinute = (celsius: readonly number[]) => ({
  minutes: Float64Array.from(celsius, (_, index) => index),
  celsius: Float64Array.from(celsius),
});

describe("equivalentMinutes", () => {
  const process = everyMinute([50, 55, 60, 65, 70, 72, 72, 70, 65, 60]);
  const at70 = { celsius: 70, z: 7.5 };

  it("is the constructed process's trapezoid, recomputed elsewhere to 1e-6", () => {
    const { minutes } = equivalentMinutes(process, at70, 5);
    expect(Math.abs(minutes - 6.207288)).toBeLessThan(1e-6);
    const sum = process.celsius.reduce((total, one) => total + lethalRate(one, at70), 0);
    expect(Math.abs(sum - 6.231573)).toBeLessThan(1e-6);
  });

  it("is the constructed 63 degC process's, with the z its two published pairs imply", () => {
    const z = impliedZ({ celsius: 63, minutes: 30 }, { celsius: 72, minutes: 0.25 });
    const readings = everyMinute([60, 62, 64, 65, 65, 63, 61]);
    const { minutes } = equivalentMinutes(readings, { celsius: 63, z }, 5);
    // Recomputed to 1e-5.
    expect(Math.abs(minutes - 9.35885)).toBeLessThan(1e-5);
  });

  it("says by how much straight lines between the readings would give less", () => {
    // Simpson's rule on 2000 parts of each straight minute: right to 1e-9 here.
    let exact = 0;
    for (let index = 1; index < process.celsius.length; index += 1)
      exact += simpson(process.celsius[index - 1]!, process.celsius[index]!, at70);
    const { minutes, overstated } = equivalentMinutes(process, at70, 5);
    expect(overstated).toBeGreaterThan(0.1);
    expect(Math.abs(minutes - overstated - exact)).toBeLessThan(1e-9);
  });

  it("counts a steady temperature as it is, and nothing over a gap", () => {
    const steady = {
      minutes: Float64Array.from([0, 1, 2, 9, 10]),
      celsius: new Float64Array(5).fill(80),
    };
    const found = equivalentMinutes(steady, { celsius: 70, z: 10 }, 5);
    expect(found.minutes).toBeCloseTo(30, 12);
    expect(found.overstated).toBeCloseTo(0, 12);
    expect(found.centre).toBeCloseTo(80, 12);
  });

  it("has earned most of its minutes near the hottest readings", () => {
    const { centre } = equivalentMinutes(process, at70, 5);
    expect(centre).toBeGreaterThan(69);
    expect(centre).toBeLessThan(72);
  });

  it("counts nothing for a single reading", () => {
    expect(equivalentMinutes(everyMinute([90]), at70, 5)).toMatchObject({
      minutes: 0,
      overstated: 0,
    });
  });
});

const simpson = (from: number, to: number, reference: { celsius: number; z: number }): number => {
  const parts = 2000;
  let sum = 0;
  for (let at = 0; at <= parts; at += 1) {
    const weight = at === 0 || at === parts ? 1 : at % 2 === 1 ? 4 : 2;
    sum += weight * lethalRate(from + ((to - from) * at) / parts, reference);
  }
  return sum / (3 * parts);
};
