import { describe, expect, it } from "vitest";
import { batchChange, changedSetUp } from "../../../src/input/kitchen/batch-change.ts";
import { batchShape } from "../../../src/input/kitchen/batch-options.ts";
import { problemOf, sampleKitchen, valueOf } from "../sample-kitchen.ts";

const [reuteri] = sampleKitchen.batches;
const said = (options: Record<string, string>) =>
  batchShape.parse(Object.fromEntries(Object.entries(options).map(([key, one]) => [key, [one]])));
const change = (options: Record<string, string>) =>
  batchChange(sampleKitchen, reuteri!, said(options));

describe("batchChange", () => {
  it("leaves alone what was not said", () => {
    expect(valueOf(change({ separated: "much" }))).toEqual({ separated: "much" });
    expect(valueOf(change({ container: "basin" }))).toEqual({
      appliance: "step-cooker",
      container: "basin",
    });
  });

  it("asks for the setting anew in another appliance, and takes it away where there is none", () => {
    expect(problemOf(change({ appliance: "box" }))).toMatchObject({
      code: "option-missing",
      facts: { option: "--setting", why: expect.stringContaining("(low, 2, high)") },
    });
    expect(valueOf(change({ appliance: "box", setting: "low" })).setting).toBe("low");
    expect(valueOf(change({ appliance: "warm-cooker" })).setting).toBeNull();
  });

  it("fails at a culture that is not in the kitchen", () => {
    expect(problemOf(change({ culture: "kefir9" })).code).toBe("not-in-kitchen");
  });
});

describe("changedSetUp", () => {
  it("is none where nothing of it was said", () => {
    expect(changedSetUp(sampleKitchen, reuteri!, said({ notes: "n" }))).toBeNull();
    expect(changedSetUp(sampleKitchen, reuteri!, said({ container: "basin" }))).toEqual({
      appliance: "step-cooker",
      setting: "38",
      container: "basin",
    });
  });
});
