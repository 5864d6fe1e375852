import { describe, expect, it } from "vitest";
import {
  findHeatingTarget,
  heatingTargets,
  impliedZ,
  milkZ,
} from "../../src/culture/heating-targets.ts";

describe("impliedZ", () => {
  // 9 / log10(120), and 7.695337 degF from the printed degF (145 and 161), recomputed elsewhere to 1e-6.
  it("is 4.328627 degC from 63 degC 30 min and 72 degC 15 s", () => {
    const z = impliedZ({ celsius: 63, minutes: 30 }, { celsius: 72, minutes: 0.25 });
    expect(Math.abs(z - 4.328627)).toBeLessThan(1e-6);
  });

  it("is 4.275187 degC from the same pairs as printed in degF", () => {
    const z = impliedZ(
      { celsius: (145 - 32) / 1.8, minutes: 30 },
      { celsius: (161 - 32) / 1.8, minutes: 0.25 },
    );
    expect(Math.abs(z - 4.275187)).toBeLessThan(1e-6);
  });

  it("lies near the milk's default for the two home practices printed side by side", () => {
    const z = impliedZ({ celsius: 85, minutes: 30 }, { celsius: 90, minutes: 10 });
    expect(Math.abs(z - milkZ)).toBeLessThan(0.5);
  });
});

describe("the heating steps known by name", () => {
  // What the works print: McGee 2004; Sfakianakis & Tzia 2014, table 1; 25 TAC 217.1 and MCL 288.697.
  it.each([
    ["milk-90", 90, 10, "McGee"],
    ["milk-85", 85, 30, "McGee"],
    ["yoghurt-85", 85, 20, "Sfakianakis"],
    ["yoghurt-90", 90, 5, "Sfakianakis"],
    ["compare-63", 63, 30, "Texas Administrative Code"],
    ["compare-72", 72, 0.25, "Michigan Compiled Laws"],
  ])("%s is %s degC for %s min, with its source", (name, celsius, minutes, source) => {
    const found = findHeatingTarget(name.toUpperCase());
    expect(found).toMatchObject({ ok: true, value: { celsius, minutes } });
    expect(found.ok && found.value.from.source).toContain(source);
  });

  it("begins with the one that is asked where nothing is said", () => {
    expect(heatingTargets[0]?.from.name).toBe("milk-90");
  });

  it("has each name once and a source for each", () => {
    expect(new Set(heatingTargets.map(({ from }) => from.name)).size).toBe(heatingTargets.length);
    for (const { from } of heatingTargets) expect(from.source.length).toBeGreaterThan(20);
  });

  it("refuses a name it does not know, with all it knows", () => {
    const found = findHeatingTarget("milk-99");
    expect(found).toMatchObject({ ok: false, problem: { code: "option-invalid" } });
    expect(JSON.stringify(found)).toContain("yoghurt-85");
  });
});
