import { describe, expect, it } from "vitest";
import { enterShape } from "../../../src/cli/enter/enter-shape.ts";
import { enteredProbes } from "../../../src/input/water-test/entered-probes.ts";
import { openKitchen } from "../../../src/cli/kitchen/kitchen-folder.ts";
import { problemText } from "../../../src/problem.ts";
import { testKitchen } from "../../cli/enter/enter-helpers.ts";

const probesOf = (typed: Record<string, readonly string[]>) => {
  const probes = enteredProbes(enterShape.parse(typed), null);
  return probes.ok ? probes.value : problemText(probes.problem);
};

describe("enteredProbes", () => {
  it("is one in the food's place where nothing is said", () => {
    expect(probesOf({})).toEqual([{ name: "Jar", place: "food", thermometer: null }]);
  });

  it("keeps the order said, each with its own thermometer or the general one", () => {
    const said = { probe: ["Bath=bath", "Jar=food"], thermometer: ["pen", "bath=second"] };
    expect(probesOf(said)).toEqual([
      { name: "Bath", place: "bath", thermometer: "second" },
      { name: "Jar", place: "food", thermometer: "pen" },
    ]);
  });

  it.each([
    [{ thermometer: ["Jra=pen"] }, "Jra"],
    [{ probe: ["Max=food"] }, "such as Jar"],
    [{ probe: ["Jar=food", "Jar=bath"] }, "a probe sat in one place"],
    [{ probe: ["Jar=food", "jar=food"] }, "each name once"],
  ])("refuses %j", (said, words) => {
    expect(probesOf(said)).toContain(words);
  });

  it("knows the kitchen's thermometers", async () => {
    const opened = await openKitchen(testKitchen());
    const kitchen = opened.ok ? opened.value.kitchen : null;
    expect(kitchen).not.toBeNull();
    const wrong = enteredProbes(enterShape.parse({ thermometer: ["pan"] }), kitchen);
    expect(wrong.ok ? "" : problemText(wrong.problem)).toContain("pen");
    expect(enteredProbes(enterShape.parse({ thermometer: ["pen"] }), kitchen).ok).toBe(true);
  });
});
