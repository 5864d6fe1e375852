import { describe, expect, it } from "vitest";
import { toHeatingContract } from "../../src/report/heating-contract.ts";
import { openStep, sampleHeating } from "./sample-heating.ts";

describe("toHeatingContract", () => {
  it("is plain data of kind heating, with figures and sentences", () => {
    const data = toHeatingContract(sampleHeating());
    expect(JSON.parse(JSON.stringify(data))).toEqual(data);
    expect(data).toMatchObject({
      holdband: "0.0.0",
      contract: 1,
      kind: "heating",
      probe: "Milk",
      culture: { id: "yoghurt" },
      heating: { verdict: "holds", probability: 0.998, heldAt: 91.2, next: null },
    });
    expect(data.heating.longest).toEqual({ fromMinute: 30, toMinute: 45.4, minutes: 15.4 });
    expect(data.coolDown.map(({ to }) => to)).toEqual([48, 45]);
    expect(data.coolDown[0]?.text).toContain("below 48 °C");
    expect(data.cautions.length).toBeGreaterThan(0);
  });

  it("tells reasons by code and by sentence, in degC whatever is shown", () => {
    const { heating } = toHeatingContract(sampleHeating({ step: openStep, shownUnit: "degF" }));
    expect(heating.reasonCodes).toEqual(["too-short", "near-target", "coarse"]);
    expect(heating.reasons).toHaveLength(3);
    expect(heating.reasons[1]).toContain("0.2 °C (0.4 °F) below");
    expect(heating.next).toContain("90.5 °C");
  });

  it("carries at most six decimals", () => {
    const step = { ...openStep, probability: 1 / 3 };
    expect(toHeatingContract(sampleHeating({ step })).heating.probability).toBe(0.333333);
  });
});
