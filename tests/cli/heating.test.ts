import { copyFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { holdband, root, temporaryFolder, write, type Run } from "./run-holdband.ts";

const milk = join(root, "fixtures", "milk-heating.csv");
const demoKitchen = join(root, "fixtures", "kitchen");

interface HeatingData {
  readonly kind: string;
  readonly heating: {
    readonly verdict: string;
    readonly probability: number;
    readonly target: { readonly celsius: number; readonly minutes: number; readonly z: number };
    readonly expandedUncertainty: number;
  };
  readonly coolDown: readonly {
    readonly to: number;
    readonly of: string;
    readonly predicted: { readonly surroundings: number } | null;
  }[];
  readonly thermometer: { readonly id: string | null };
  readonly notices: readonly { readonly code: string }[];
  readonly problem?: { readonly code: string; readonly text: string };
}

const dataOf = (run: Run): HeatingData => JSON.parse(run.out) as HeatingData;
const asked = (...more: string[]): HeatingData =>
  dataOf(holdband(["heating", milk, "--json", ...more]));

describe("heating", () => {
  it("tells heating and cool-down of the invented log", () => {
    const run = holdband([
      "heating",
      milk,
      "--culture",
      "yoghurt",
      "--thermometer-accuracy",
      "0.5",
    ]);
    expect(run).toMatchObject({ err: "", exitCode: 0 });
    expect(run.out).toMatch(/^\[HOLDS\]/);
    expect(run.out).toContain("foretold for");
    expect(run.out).toContain("below 48 °C (118.4 °F)");
  });

  it("asks 90 degC for 10 min where nothing is said, and says what it assumed", () => {
    const data = asked();
    expect(data.kind).toBe("heating");
    expect(data.heating.target).toMatchObject({ celsius: 90, minutes: 10, z: 10 });
    expect(data.notices.map(({ code }) => code)).toEqual(["assumed-thermometer"]);
    expect(data.coolDown).toEqual([]);
  });

  it("takes a step by name, or a target, a time and a z of one's own", () => {
    expect(asked("--step", "milk-85").heating.target).toMatchObject({ celsius: 85, minutes: 30 });
    const own = asked("--target", "161F", "--minutes", "15s", "--z", "7.8F").heating.target;
    expect(own.celsius).toBeCloseTo(71.666667, 5);
    expect(own.minutes).toBe(0.25);
    expect(own.z).toBeCloseTo(4.333333, 5);
  });

  it("cools below the culture's ceiling and window, or what was said", () => {
    const levels = asked("--culture", "reuteri").coolDown.map(({ to, of }) => [to, of]);
    expect(levels).toEqual([
      [43, "ceiling"],
      [39.5, "window"],
    ]);
    expect(asked("--until", "109.4F").coolDown).toMatchObject([{ to: 43, of: "asked" }]);
  });

  it("takes the surroundings said into the forecast", () => {
    const [cold, warm] = ["9..11", "29..31"].map(
      (room) => asked("--until", "43", "--room", room).coolDown[0]?.predicted?.surroundings ?? 0,
    );
    expect(cold!).toBeLessThan(warm!);
  });

  it("uses a kitchen's thermometer, whose doubt at 90 degC is its line's", () => {
    const data = asked("--kitchen", demoKitchen, "--thermometer", "pen", "--culture", "reuteri");
    expect(data.thermometer.id).toBe("pen");
    expect(data.heating.expandedUncertainty).toBeGreaterThan(0.1);
  });

  it("uses the kitchen of the folder it is asked in, and needs none", () => {
    const folder = temporaryFolder();
    copyFileSync(join(demoKitchen, "kitchen.yaml"), join(folder, "kitchen.yaml"));
    const here = holdband(["heating", milk, "--thermometer", "pen", "--json"], { cwd: folder });
    expect(dataOf(here).thermometer.id).toBe("pen");
    const nowhere = holdband(["heating", milk, "--thermometer", "pen", "--json"], {
      cwd: temporaryFolder(),
    });
    expect(dataOf(nowhere).problem?.code).toBe("option-missing");
  });

  it("ends with 1 on anything but holds, with --strict alone", () => {
    expect(holdband(["heating", milk, "--step", "milk-85"]).exitCode).toBe(0);
    const strict = holdband(["heating", milk, "--step", "milk-85", "--strict"]);
    expect(strict.exitCode).toBe(1);
    expect(strict.out).toContain("[MISSES]");
  });

  it.each([
    [["--target", "90"], "option-missing"],
    [["--minutes", "10"], "option-missing"],
    [["--correction", "0.2"], "option-missing"],
    [["--step", "milk-90", "--target", "90", "--minutes", "5"], "options-contradict"],
    [["--culture", "reuteri", "--until", "43"], "options-contradict"],
    [["--thermometer", "pen", "--thermometer-accuracy", "1"], "options-contradict"],
    [["--step", "milk-99"], "option-invalid"],
    [["--minutes", "two", "--target", "90"], "option-invalid"],
    [["--z", "0"], "option-invalid"],
    [["--culture", "yoghort"], "culture-unknown"],
    [["--kitchen", demoKitchen, "--thermometer", "pan"], "not-in-kitchen"],
    [["--kitchen", root], "kitchen-missing"],
    [["--probe", "Pan"], "probe-unknown"],
  ] as const)("refuses %j with a sentence: %s", (more, code) => {
    const run = holdband(["heating", milk, "--json", ...more]);
    expect(run.exitCode).toBe(2);
    expect(dataOf(run).problem?.code).toBe(code);
    expect(run.err).not.toContain("    at ");
  });

  it("refuses what is no log", () => {
    const folder = temporaryFolder();
    for (const text of ["", "a,b\n", "Time,Milk (degC)\n0,20\n"]) {
      const run = holdband(["heating", write(folder, "pot.csv", text), "--json"]);
      expect(run.exitCode).toBe(2);
      expect(dataOf(run).problem?.text).toContain("pot.csv");
    }
    expect(holdband(["heating", join(folder, "none.csv")]).exitCode).toBe(2);
    expect(holdband(["heating"]).exitCode).toBe(2);
  });
});
