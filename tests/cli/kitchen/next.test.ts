/** `next` as a program, in kitchens made by the program's own commands. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contractOf, listing } from "../run-holdband.ts";
import { cookerNight, emptyKitchen, equippedKitchen, readings } from "./run-kitchen.ts";
import type { RunningKitchen } from "./run-kitchen.ts";

const box = ["--appliance", "box", "--setting", "2", "--container", "jars"];
const cooker = ["--appliance", "step-cooker", "--setting", "38", "--container", "jars"];

/** The box's night lies close to the window's edge. */
const tested = (): RunningKitchen => {
  const kitchen = equippedKitchen("room: 17..24\ncultures: [reuteri]\n");
  kitchen.ok("add", join(readings, "warming-box.txt"), ...box, "--name", "box night");
  kitchen.ok("add", cookerNight, ...cooker, "--name", "cooker night");
  return kitchen;
};

interface Told {
  readonly kind: string;
  readonly advice: {
    readonly appliances: readonly { readonly appliance: string }[];
    readonly next: {
      readonly tests: readonly {
        readonly appliance: string;
        readonly hours: number;
        readonly gain: number;
      }[];
      readonly open: readonly { readonly appliance: string; readonly culture: string }[];
    };
  };
}
const toldOf = (text: string): Told => JSON.parse(text) as Told;

describe("next", () => {
  it("names a test worth doing, and every verdict that is open", () => {
    const { ok, folder } = tested();
    const before = listing(folder);
    const out = ok("next");
    expect(out).toMatch(/^Worth doing next\n {2}Test /);
    expect(out).toMatch(/Open verdicts[\s\S]+box, mark 2, jars, reuteri: /);
    expect(listing(folder)).toEqual(before);
  });

  it("gives the same as data, the most worth first", () => {
    const { kind, advice } = toldOf(tested().ok("next", "--json"));
    expect(kind).toBe("next");
    expect(advice.next.tests.length).toBeGreaterThan(0);
    expect(advice.next.tests[0]!.hours).toBeGreaterThan(0);
    expect(advice.next.open).toMatchObject([{ appliance: "box", culture: "reuteri" }]);
  });

  it("keeps to one appliance where one is asked for", () => {
    const { ok, run } = tested();
    const { advice } = toldOf(ok("next", "--appliance", "box", "--json"));
    expect(advice.appliances.map(({ appliance }) => appliance)).toEqual(["box"]);
    expect(advice.next.tests.every(({ appliance }) => appliance === "box")).toBe(true);
    const refused = run("next", "--appliance", "bax", "--json");
    expect(refused.exitCode).toBe(2);
    expect(contractOf(refused).problem?.code).toBe("not-in-kitchen");
  });

  it("proposes a first test where none was done", () => {
    const out = equippedKitchen("cultures: [reuteri]\n").ok("next");
    expect(out).toMatch(/^No water test yet/);
    expect(out).toMatch(/Worth doing next\n {2}Test |Begin with any appliance/);
    expect(out).not.toContain("No verdict is open");
  });

  it("says what a kitchen lacks before a test can be named", () => {
    expect(emptyKitchen().ok("next").replaceAll(/\s+/g, " ")).toMatch(
      /No culture in this kitchen yet.+No appliance in this kitchen yet.+No container/,
    );
  });

  it("is refused where tests are listed and none can be read", () => {
    const { run, folder } = tested();
    rmSync(join(folder, "readings"), { recursive: true });
    expect(contractOf(run("next", "--json")).problem?.code).toBe("no-test-readable");
  });
});
