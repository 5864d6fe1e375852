import { describe, expect, it } from "vitest";
import {
  missingProblem,
  ofWaterTest,
  settledSetUp,
  setUpProgress,
} from "../../src/input/set-up.ts";
import type { SaidSetUp } from "../../src/input/set-up.ts";
import { problemOf, sampleKitchen, valueOf } from "./sample-kitchen.ts";

const progress = (said: SaidSetUp) => setUpProgress(sampleKitchen, said, ofWaterTest);
const settled = (said: SaidSetUp) => settledSetUp(sampleKitchen, said, ofWaterTest);

describe("setUpProgress", () => {
  it("opens one part after the other, with what can be chosen", () => {
    expect(valueOf(progress({}))).toMatchObject({
      open: "appliance",
      missing: { known: ["step-cooker", "warm-cooker", "box"] },
    });
    expect(valueOf(progress({ appliance: "box" }))).toMatchObject({
      open: "setting",
      missing: { known: ["low", "2", "high"] },
    });
    // Steps are typed, not chosen.
    expect(valueOf(progress({ appliance: "step-cooker" }))).toMatchObject({
      open: "setting",
      missing: { known: null },
    });
    expect(valueOf(progress({ appliance: "warm-cooker" }))).toMatchObject({ open: "container" });
  });

  it("fails at the first part that is not in the kitchen, before it asks for another", () => {
    expect(problemOf(progress({ appliance: "boxx" }))).toMatchObject({
      code: "not-in-kitchen",
      facts: { suggestion: "box" },
    });
    expect(problemOf(progress({ appliance: "step-cooker", setting: "38.5" })).code).toBe(
      "setting-invalid",
    );
  });
});

describe("settledSetUp", () => {
  it("keeps the setting as it was typed, and none where nothing can be set", () => {
    expect(
      valueOf(settled({ appliance: "step-cooker", setting: "100.4F", container: "jars" })),
    ).toEqual({ appliance: "step-cooker", setting: "100.4F", container: "jars" });
    expect(valueOf(settled({ appliance: "warm-cooker", container: "jars" })).setting).toBeNull();
  });

  it("says why a part is needed and what there is", () => {
    expect(problemOf(settled({ appliance: "warm-cooker" }))).toEqual({
      code: "option-missing",
      facts: { option: "--container", why: "the water stood in something (jars, basin)" },
    });
    expect(
      missingProblem({ option: "--container", why: "it stood somewhere", known: [] }).problem.facts,
    ).toEqual({
      option: "--container",
      why: 'it stood somewhere; none is entered yet, and "holdband container --help" shows how',
    });
  });
});
