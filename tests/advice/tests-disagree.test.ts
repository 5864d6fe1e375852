import { describe, expect, it } from "vitest";
import type { AdviceTest } from "../../src/advice/advice-input.ts";
import { scatterPrior } from "../../src/advice/response-prior.ts";
import { testsDisagree } from "../../src/advice/tests-disagree.ts";
import { adviceInput, basin, cooker, jars, known, settledTest, step } from "./constructed.ts";

// Constructed tests. Four runs lie further apart than 5.3 of their standard deviations once in a
// thousand (studentised range, infinite degrees of freedom, 0.999 point 5.31; from memory).
const disagree = (...tests: readonly AdviceTest[]) =>
  testsDisagree(
    known(cooker(), adviceInput({ requirements: [], tests, containers: [jars, basin] })),
  );
const at = (level: number, more = {}) => settledTest({ id: `at ${level}`, level, ...more });

describe("testsDisagree", () => {
  it("says nothing of single tests, or of none", () => {
    expect(disagree()).toEqual([]);
    expect(disagree(at(38))).toEqual([]);
  });

  it.each([
    [-0.03, 0],
    [0.03, 1],
  ])("draws the line at five deviations of runs: %s degC off it, %s", (off, count) => {
    const limit = 5 * scatterPrior.standardDeviation;
    expect(disagree(at(38), at(38 + limit + off))).toHaveLength(count);
  });

  it("names the set-up and how far its tests lie apart, all of them together", () => {
    const found = disagree(at(38.5), at(37.7), at(39.2));
    expect(found).toEqual([
      { code: "tests-disagree", setUp: at(38).setUp, spread: expect.closeTo(1.5, 2) },
    ]);
  });

  it("compares only what is the same set-up, in the same place", () => {
    expect(disagree(at(38), at(41, { setting: step(41) }))).toEqual([]);
    expect(disagree(at(38), at(40, { container: "basin" }))).toEqual([]);
    expect(disagree(at(38), at(40, { place: "bath" }))).toEqual([]);
    expect(disagree(at(38), at(40, { appliance: "other" }))).toEqual([]);
  });

  it("names each set-up that does", () => {
    const there = { setting: step(41) };
    const found = disagree(at(38), at(41, there), at(39.5), at(43, there));
    expect(found).toHaveLength(2);
  });
});
