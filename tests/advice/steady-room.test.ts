import { describe, expect, it } from "vitest";
import { adviseAppliance } from "../../src/advice/appliance-advice.ts";
import { steadyRoom } from "../../src/advice/steady-room.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, cooker, fixed, settledTest } from "./constructed.ts";

const requirement = asked(37, 39.4, 24);
const room = { low: 15, high: 27 };
const found = (thermostat: boolean | null, level: number, tested = true) => {
  const appliance = cooker({ control: { kind: "fixed" }, thermostat });
  const input = adviceInput({
    appliances: [appliance],
    requirements: [requirement],
    room,
    tests: tested
      ? [
          settledTest({
            level,
            setting: fixed,
            hoursHeld: 8,
            batchRoom: room,
            thermostat,
            driftPerHour: -0.15,
          }),
        ]
      : [],
  });
  const { known, choices } = adviseAppliance(appliance, input);
  return { choice: choices[0]!, advice: steadyRoom(known, choices[0]!, requirement) };
};

describe("steadyRoom", () => {
  it("says what a steady room would gain for an appliance that follows it", () => {
    const { choice, advice } = found(false, 38.2);
    expect(choice.chance.verdict).toBe("unproven");
    expect(advice).toMatchObject({ low: 20, high: 22 });
    expect(advice!.probability).toBeGreaterThan(choice.chance.probability + 0.05);
  });

  it("says nothing where a thermostat keeps the room out, where it misses anyway, or untested", () => {
    expect(found(true, 38.2).advice).toBeNull();
    expect(found(false, 45).advice).toBeNull();
    expect(found(false, 38.2, false).advice).toBeNull();
  });
});
