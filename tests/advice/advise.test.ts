import { describe, expect, it } from "vitest";
import { adviseKitchen } from "../../src/advice/advise.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, cooker, fixed, settledTest, step } from "./constructed.ts";

const requirements = [asked(37, 39, 12), { ...asked(41, 43, 12), culture: "warm" }];
const box = cooker({ id: "box", name: "Box", control: { kind: "fixed" } });
const spare = cooker({ id: "spare", name: "Spare", control: { kind: "fixed" } });
const input = adviceInput({
  requirements,
  appliances: [cooker(), box, spare],
  tests: [
    settledTest({ id: "a", level: 38.1, setting: step(38) }),
    settledTest({ id: "b", appliance: "box", level: 42, setting: fixed }),
  ],
});
const advice = adviseKitchen(input);

describe("adviseKitchen", () => {
  it("advises on every appliance, in the kitchen's order", () => {
    expect(advice.appliances.map(({ appliance }) => appliance)).toEqual(["cooker", "box", "spare"]);
    expect(adviseKitchen({ ...input, appliance: "box" }).appliances).toHaveLength(1);
  });

  it("sends a culture that an appliance cannot hold to the one that was proven to", () => {
    const [low, warm] = advice.appliances[1]!.cultures;
    expect(low).toMatchObject({ answer: "cannot", elsewhere: { appliance: "cooker" } });
    expect(low!.elsewhere!.basis).toBe("tested");
    expect(warm).toMatchObject({ answer: "can", elsewhere: null });
    const untested = advice.appliances[2]!.cultures;
    expect(untested.map(({ answer }) => answer)).toEqual(["unknown", "unknown"]);
    expect(untested.map(({ elsewhere }) => elsewhere!.appliance)).toEqual(["cooker", "box"]);
  });

  it("gives each culture the appliance that holds it when both run at once", () => {
    expect(advice.match.places.map(({ placed }) => placed?.appliance)).toEqual(["cooker", "box"]);
    expect(advice.match.weakest).toBeGreaterThan(0.95);
  });

  it("is the same every time", () => {
    expect(JSON.stringify(adviseKitchen(input))).toBe(JSON.stringify(advice));
  });

  it("has nothing to say in an empty kitchen", () => {
    const none = adviseKitchen(adviceInput({ requirements: [], appliances: [], containers: [] }));
    expect(none).toMatchObject({
      appliances: [],
      containers: [],
      match: { places: [], weakest: null },
      next: { tests: [], open: [] },
    });
  });
});
