import { describe, expect, it } from "vitest";
import { readSteps } from "../../../src/kitchen/schema/control-text.ts";

// Constructed; 86 degF = 30 degC and 113 degF = 45 degC exactly, 1 degF is 1/1.8 degC.

describe("readSteps", () => {
  it.each([
    ["30..45 by 0.5", 30, 45, 0.5],
    ["30..45", 30, 45, 1],
    ["20..60 BY 0.1", 20, 60, 0.1],
    ["86F..113F by 1F", 30, 45, 0.555555556],
    ["86..113F by 1", 30, 45, 0.555555556],
    ["86F..113F", 30, 45, 0.555555556],
    ["30..45 by 0,5", 30, 45, 0.5],
  ])("%s", (text, low, high, step) => {
    expect(readSteps(text)).toEqual({ kind: "steps", low, high, step });
  });

  it.each([
    "30..45 by 4",
    "30..45 by 0",
    "30..45 by -1",
    "45..30 by 1",
    "30..30 by 1",
    "30..45 by 1 by 2",
    "30..45 by",
    "30 to 45",
    "30..45 step 1",
    "30..900 by 1",
    // degF without its letter.
    "86..113 by 1",
    "30..45 by 0.0001",
    "",
  ])("not %j", (text) => expect(readSteps(text)).toBeNull());
});
