import { expect, it } from "vitest";
import { joined, obstacles, steadyRoom } from "../../../src/report/wording/advice-clauses.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const analysis = sampleKitchen();
const [appliance] = analysis.advice.appliances;
const [cannot, may] = appliance!.cultures;
const context = { analysis, appliance: appliance!, writing: plainWriting("degC") };

it("joins what there is", () => {
  expect(joined(["a", null, "b"])).toBe("a; b");
  expect(joined([null])).toBe("");
});

it("tells the most telling obstacles, and none that is told otherwise", () => {
  const [first] = cannot!.obstacles;
  const advice = { ...cannot!, obstacles: [{ code: "not-tested" }, first!, first!] } as const;
  expect(obstacles({ ...context, advice }, 1)).toBe("it has not been tested");
  expect(obstacles({ ...context, advice }, 2, ["not-tested"])).toMatch(/^it is .*, and it is /);
  expect(obstacles({ ...context, advice }, 2, ["not-tested", first!.code])).toBeNull();
});

it("speaks of the room only where that would help", () => {
  expect(steadyRoom({ ...context, advice: may! })).toBe(
    "with the room kept within 20 to 22 °C (68.0 to 71.6 °F) it would be 89 %",
  );
  expect(steadyRoom({ ...context, advice: cannot! })).toBeNull();
});
