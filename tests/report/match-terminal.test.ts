/** Constructed: the advice is invented, see sample-advice.ts. */
import { describe, expect, it } from "vitest";
import { toMatchTerminal } from "../../src/report/match-terminal.ts";
import { flat, longestOf } from "./advice-screen.ts";
import { expectGolden } from "./golden.ts";
import {
  hostileKitchen,
  manyCultures,
  oneAppliance,
  sampleKitchen,
  untestedKitchen,
} from "./sample-kitchen.ts";

const plain = { colour: false, ascii: false, width: 80 };
const told = (kitchen = sampleKitchen()): string => flat(toMatchTerminal(kitchen, plain));

describe("toMatchTerminal", () => {
  it.each([60, 80, 120])("writes cultures against appliances at %d columns as kept", (width) => {
    expectGolden(`match-${width}.txt`, toMatchTerminal(sampleKitchen(), { ...plain, width }));
  });

  it("says where each goes when all run at the same time, and which place is weakest", () => {
    expect(told()).toContain(
      "If all of them run at the same time, one appliance for each reuteri:",
    );
    expect(told()).toContain("The weakest of these places: 96 % likely to hold.");
  });

  it("says why a culture has no place", () => {
    expect(told(manyCultures())).toContain(
      "own-24: No place: no appliance here is likely enough to hold it",
    );
  });

  it("speaks of one place where there is one culture, and of no weakest", () => {
    const whole = sampleKitchen();
    const one = sampleKitchen({ requirements: whole.requirements.slice(0, 1) });
    expect(told(one)).toContain("Its place reuteri:");
    expect(told(one)).not.toMatch(/same time|weakest/);
  });

  it("tells what the words mean, with the kitchen's own figures", () => {
    expect(told()).toContain("CAN: 95 % likely to hold, or more. MAY: 50 % or more.");
    expect(told(sampleKitchen({ confidence: 0.9 }))).toContain("CAN: 90 % likely to hold");
  });

  it("names the tests that are missing in it", () => {
    expect(told()).toContain("Not read Circulating bath, 42 °C (107.6 °F), Jars in water");
  });

  it("says first that nothing was tested where nothing was", () => {
    expect(told(untestedKitchen())).toMatch(/^No water test yet: what follows is assumed/);
    expect(told()).not.toContain("No water test yet");
  });

  it("shares nothing out where there is one appliance", () => {
    const text = told(oneAppliance("box"));
    expect(text).toContain("One appliance: one culture at a time");
    expect(text).not.toContain("same time");
  });

  it.each(["appliances", "containers"] as const)("says what is missing without %s", (part) => {
    const whole = untestedKitchen();
    const text = told({ ...whole, kitchen: { ...whole.kitchen, [part]: [] } });
    expect(text).toMatch(
      /^No (?:appliance|container) in this kitchen yet\. Enter what .+: holdband/,
    );
    expect(text).not.toContain("same time");
  });

  it.each([40, 60, 80, 120])("keeps to %d columns", (width) => {
    for (const kitchen of [
      sampleKitchen(),
      manyCultures(),
      oneAppliance("box"),
      untestedKitchen(),
      sampleKitchen({ requirements: [] }),
    ]) {
      const text = toMatchTerminal(kitchen, { ...plain, width });
      expect(longestOf(text.split("\n"))).toBeLessThanOrEqual(width);
      expect(text.endsWith("\n")).toBe(true);
    }
  });

  it("keeps to printable ASCII where asked, and lets no name steer the terminal", () => {
    for (const width of [60, 200]) {
      const screen = { ...plain, width };
      expect(toMatchTerminal(hostileKitchen(), { ...screen, ascii: true })).toMatch(
        /^[\u0020-\u007e\n]+$/,
      );
      expect(toMatchTerminal(hostileKitchen(), screen)).not.toMatch(
        // oxlint-disable-next-line no-control-regex
        /[\u0000-\u0009\u000b-\u001f\u202e]/,
      );
    }
  });
});
