import { describe, expect, it } from "vitest";
import { judgeForWindow } from "../../src/thermometer/window-fitness.ts";

const correction = (expanded: number) => ({
  reading: 38,
  correction: 0,
  standardUncertainty: expanded / 2,
  degreesOfFreedom: 60,
  expanded,
});

describe("judgeForWindow", () => {
  it("takes the expanded uncertainty on both sides as a share of the window", () => {
    const found = judgeForWindow(correction(0.3), 37, 39);
    expect(found.expanded).toBe(0.3);
    expect(found.shareTaken).toBeCloseTo(0.3, 12);
  });

  // A 4 to 1 test uncertainty ratio is 2 U / width = 1 / 4; 2 to 1 is half. By hand: 2 U / 4.
  it.each([
    [0.5, "good"],
    [0.51, "usable"],
    [1, "usable"],
    [1.01, "too coarse"],
  ])("U %d in a window of 4 degC: %s", (expanded, word) => {
    expect(judgeForWindow(correction(expanded), 36, 40).word).toBe(word);
  });

  it("has no good word for a window without width, nor doubt about an exact correction", () => {
    expect(judgeForWindow(correction(0.01), 38, 38).word).toBe("too coarse");
    expect(judgeForWindow(correction(0), 36, 40)).toEqual({
      word: "good",
      expanded: 0,
      shareTaken: 0,
    });
  });
});
