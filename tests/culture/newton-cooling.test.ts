import { describe, expect, it } from "vitest";
import {
  fitCooling,
  minutesTo,
  straightened,
  timeConstantAtEnd,
  unstraightened,
} from "../../src/culture/newton-cooling.ts";

/** Exact readings of Newton's law every minute. */
const newton = (start: number, surroundings: number, constant: number, until: number) => {
  const minutes = Float64Array.from({ length: until + 1 }, (_, minute) => minute);
  return {
    minutes,
    celsius: minutes.map((t) => surroundings + (start - surroundings) * Math.exp(-t / constant)),
    uncertainty: new Float64Array(until + 1).fill(0.05),
  };
};

describe("straightened", () => {
  // The warm-up of 22 to 41 degC with 45 min turned upside down: 60 to 41; recomputed elsewhere to 1e-5.
  it.each([
    [15, 27.38591],
    [30, 31.24507],
    [45, 34.01029],
    [60, 35.99165],
    [90, 38.42863],
    [120, 39.67981],
    [180, 40.652],
  ])("falls in a straight line with time: %s min", (minute, warming) => {
    const law = { surroundings: 41, excess: 0 };
    const cooled = unstraightened(straightened(60, law) - minute / 45, law);
    expect(Math.abs(cooled - (82 - warming))).toBeLessThan(1e-5);
  });

  it("is undone by its inverse, whatever the law", () => {
    for (const excess of [0, 0.25, 0.6]) {
      const law = { surroundings: 20, excess };
      expect(unstraightened(straightened(77.7, law), law)).toBeCloseTo(77.7, 9);
    }
  });

  it("falls in a straight line for still air too: against steps of a ten-thousandth of a minute", () => {
    const law = { surroundings: 20, excess: 0.25 };
    const rate = 0.006;
    let celsius = 90;
    // Midpoint steps: an error far below the 1e-6 asked.
    for (let step = 0; step < 300_000; step += 1) {
      const half = celsius - 0.00005 * rate * (celsius - 20) ** 1.25;
      celsius -= 0.0001 * rate * (half - 20) ** 1.25;
    }
    expect(Math.abs(unstraightened(straightened(90, law) - rate * 30, law) - celsius)).toBeLessThan(
      1e-6,
    );
  });
});

describe("fitCooling", () => {
  it("finds rate and time constant of exact readings", () => {
    const fit = fitCooling(newton(90, 22, 40, 30), { surroundings: 22, excess: 0 })!;
    expect(fit.rate).toBeCloseTo(1 / 40, 12);
    expect(timeConstantAtEnd(fit)).toBeCloseTo(40, 9);
    expect(fit.chiSquared).toBeLessThan(1e-15);
  });

  it("fits a wrong law worse, and worst at the end", () => {
    const fit = fitCooling(newton(90, 22, 40, 30), { surroundings: 0, excess: 0 })!;
    expect(fit.chiSquared).toBeGreaterThan(1);
    expect(fit.late).toBeGreaterThan(fit.chiSquared / 31);
  });

  it("needs three points, all above the surroundings", () => {
    expect(fitCooling(newton(90, 22, 40, 1), { surroundings: 22, excess: 0 })).toBeNull();
    expect(fitCooling(newton(90, 22, 40, 30), { surroundings: 60, excess: 0 })).toBeNull();
  });
});

describe("minutesTo", () => {
  // Closed forms, each turned into a cooling: recomputed elsewhere.
  it.each([
    ["a thermostat's off time: 42 to 40 in 22 degC, 60 min", 42, 22, 60, 40, 6.321631, 1e-6],
    ["a bead's response: 174 of 175 degC lost, 1", 375, 200, 1, 201, 5.164786, 1e-6],
    ["the warm-up to within half a degree, 45 min", 60, 41, 45, 41.5, 163.691377, 1e-5],
  ])("is %s", (_, start, surroundings, constant, level, minutes, tolerance) => {
    const before = newton(start + 1, surroundings, constant, 2);
    const fit = fitCooling(before, { surroundings, excess: 0 })!;
    const reached = unstraightened(fit.atEnd, fit.law);
    // From where the fit ends to the start of the published case, and on to its end.
    const toStart = constant * Math.log((reached - surroundings) / (start - surroundings));
    expect(Math.abs(minutesTo(fit, level).minutes - toStart - minutes)).toBeLessThan(tolerance);
  });

  it("has no end where the surroundings are as warm", () => {
    const fit = fitCooling(newton(90, 45, 40, 30), { surroundings: 45, excess: 0 })!;
    expect(minutesTo(fit, 43).minutes).toBe(Infinity);
  });

  it("has the standard uncertainty that repeating shows", () => {
    const exact = newton(90, 22, 40, 20);
    const law = { surroundings: 22, excess: 0 };
    const expected = minutesTo(fitCooling(exact, law)!, 43);
    // Each point moved by one uncertainty alone: squares of the changes add up (JCGM 100:2008, 5.1.2).
    let squares = 0;
    for (let index = 0; index < exact.minutes.length; index += 1) {
      const celsius = exact.celsius.slice();
      celsius[index]! += 0.05;
      squares +=
        (minutesTo(fitCooling({ ...exact, celsius }, law)!, 43).minutes - expected.minutes) ** 2;
    }
    const ratio = Math.sqrt(squares) / expected.standardUncertainty;
    expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
  });
});
