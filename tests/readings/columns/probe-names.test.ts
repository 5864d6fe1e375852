import { describe, expect, it } from "vitest";
import { guessRole, probeNames, roleOf } from "../../../src/readings/columns/probe-names.ts";

describe("probeNames", () => {
  it("drops units, numbers what is empty, and tells twins apart", () => {
    const columns = [
      { heading: "Jar (°C)", bareName: "Jar" },
      { heading: "", bareName: "" },
      { heading: "Jar °C", bareName: "Jar" },
      { heading: "°C", bareName: "" },
    ];
    expect(probeNames(columns)).toEqual(["Jar", "probe 2", "Jar 2", "temperature"]);
  });
});

describe("roles", () => {
  it.each([
    ["Room", "room"],
    ["Ambient air", "room"],
    ["Zimmertemperatur", "room"],
    ["Wasserbad", "bath"],
    ["Bath 2", "bath"],
    ["Jar", "food"],
    ["CH1", "food"],
  ] as const)("%s is %s", (name, role) => {
    expect(guessRole(name)).toBe(role);
  });
  it("what the person says goes first", () => {
    expect(roleOf("Jar", "Jar (°C)", new Map([["jar", "bath"]]))).toBe("bath");
    expect(roleOf("Jar", "Jar (°C)", new Map([["Jar (°C)", "room"]]))).toBe("room");
    expect(roleOf("Jar", "Jar (°C)", undefined)).toBe("food");
  });
});
