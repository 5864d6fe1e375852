/** `recheck` as a program, in kitchens made by the program's own commands; the nights are the demo's. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contractOf, listing } from "../run-holdband.ts";
import { bathNights, cookerNight, equippedKitchen, readings } from "./run-kitchen.ts";

const setUp = ["--appliance", "step-cooker", "--setting", "38", "--container", "jars"];
const [otherNight = ""] = bathNights;
const again = join(readings, "adjustable-cooker-again.csv");
const logger = `cultures: [reuteri]
thermometers:
  logger:
    accuracy: 0.3
    resolution: 0.1
`;
const by = ["--thermometer", "logger"];

/** The night, then another file as a second test of the same set-up. */
const tested = (second: string) => {
  const kitchen = equippedKitchen(logger);
  kitchen.ok("add", cookerNight, ...setUp, ...by);
  kitchen.ok("add", second, ...setUp, ...by);
  return kitchen;
};

interface Told {
  readonly kind: string;
  readonly recheck: {
    readonly rechecks: readonly {
      readonly word: string;
      readonly thermometer: string;
      readonly level: { readonly difference: number; readonly low: number; readonly high: number };
      readonly cultures: readonly { readonly culture: string; readonly word: string }[];
    }[];
    readonly due: readonly { readonly text: string }[];
    readonly follows: readonly { readonly culture: string; readonly advice: string | null }[];
  };
}
const toldOf = (text: string): Told => JSON.parse(text) as Told;

// Several processes each.
describe("recheck", { timeout: 60_000 }, () => {
  it("finds a cooker that is simulated the same way again not moved, and changes nothing", () => {
    const { ok, run, folder } = tested(again);
    const before = listing(folder);
    const { kind, recheck } = toldOf(ok("recheck", "--json"));
    expect(kind).toBe("recheck");
    expect(recheck.rechecks).toHaveLength(1);
    const [cooker] = recheck.rechecks;
    expect(cooker!.word).not.toBe("moved");
    expect(cooker!.thermometer).toBe("shared");
    expect(Math.abs(cooker!.level.difference)).toBeLessThan(0.1);
    expect(ok("recheck")).toContain("step-cooker, 38 °C (100.4 °F), jars");
    expect(run("recheck", "--strict").exitCode).toBe(0);
    expect(listing(folder)).toEqual(before);
  });

  it("finds it moved where the second night was of another bath, near 40.7 degC", () => {
    const { ok, run } = tested(otherNight);
    const { recheck } = toldOf(ok("recheck", "--json"));
    const [cooker] = recheck.rechecks;
    expect(cooker!.word).toBe("moved");
    // 38.0 and 40.7 degC by the fixtures' simulation.
    expect(cooker!.level.difference).toBeCloseTo(2.7, 0);
    expect(cooker!.cultures).toMatchObject([{ culture: "reuteri", word: "moved" }]);
    expect(recheck.follows).toMatchObject([{ culture: "reuteri" }]);
    expect(recheck.follows[0]?.advice).not.toBeNull();
    expect(run("recheck").exitCode).toBe(0);
    expect(run("recheck", "--strict").exitCode).toBe(1);
    expect(ok("report").replaceAll(/\s+/g, " ")).toContain("Recheck Step-cooker at 38");
  });

  it("gives exit code 1 with --strict where a test is due", () => {
    const { ok, run } = equippedKitchen(logger);
    ok("batch", "--culture", "reuteri", ...setUp, "--date", "2026-03-01", "--separated", "none");
    const strict = run("recheck", "--strict");
    expect(strict).toMatchObject({ exitCode: 1, err: "" });
    expect(strict.out).toMatch(/Due +Test step-cooker/);
  });

  it("asks for a baseline, then for the same test again", () => {
    const { ok, run } = equippedKitchen(logger);
    expect(ok("recheck")).toMatch(/^No water test yet/);
    ok("add", cookerNight, ...setUp, ...by);
    expect(ok("recheck").replaceAll(/\s+/g, " ")).toMatch(
      /^No set-up was tested twice yet.+Test step-cooker at 38 °C/,
    );
    expect(run("recheck", "--strict").exitCode).toBe(0);
  });

  it("looks at one appliance only where asked, and refuses one there is not", () => {
    const { ok, run } = tested(again);
    expect(toldOf(ok("recheck", "--appliance", "bath", "--json")).recheck.rechecks).toEqual([]);
    const refused = run("recheck", "--appliance", "step-coker", "--json");
    expect(refused.exitCode).toBe(2);
    expect(contractOf(refused).problem?.code).toBe("not-in-kitchen");
  });

  it("is refused where tests are listed and none can be read", () => {
    const { run, folder } = tested(again);
    rmSync(join(folder, "readings"), { recursive: true });
    const refused = run("recheck", "--json");
    expect(refused.exitCode).toBe(2);
    expect(contractOf(refused).problem?.code).toBe("no-test-readable");
  });

  it("answers the same bytes to the same question", () => {
    const { ok } = tested(again);
    expect(ok("recheck", "--json")).toBe(ok("recheck", "--json"));
  });
});
