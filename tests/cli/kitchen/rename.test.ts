import { describe, expect, it } from "vitest";
import { contractOf, listing } from "../run-holdband.ts";
import { cookerNight, equippedKitchen } from "./run-kitchen.ts";
import type { RunningKitchen } from "./run-kitchen.ts";

const tested = (): RunningKitchen => {
  const kitchen = equippedKitchen();
  const setUp = ["--appliance", "step-cooker", "--setting", "38", "--container", "jars"];
  kitchen.ok("add", cookerNight, ...setUp, "--name", "first night");
  return kitchen;
};

describe("rename", () => {
  it("renames what nothing names yet", () => {
    const { ok, kitchen } = equippedKitchen();
    expect(ok("rename", "appliance", "box", "old-box")).toContain("old-box");
    expect(kitchen().appliances.map(({ id }) => id)).toContain("old-box");
  });

  it("is refused where a test names it, with the list; and done everywhere where that is asked", () => {
    const { ok, run, kitchen, folder } = tested();
    const before = listing(folder);
    const refused = run("rename", "appliance", "step-cooker", "pot", "--json");
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toContain("first night");
    expect(listing(folder)).toEqual(before);
    ok("rename", "appliances", "step-cooker", "pot", "--everywhere");
    expect(kitchen().tests[0]).toMatchObject({ appliance: "pot" });
  });

  it.each([
    [["pot", "a", "b"], "option-invalid", "thermometer, appliance, container, culture, test"],
    [["appliance", "a", "b"], "id-unknown", '"a"'],
    [["appliance", "box", "bath"], "id-taken", '"bath"'],
    [["appliance", "box"], "usage", "the new name"],
  ])("refuses %j", (words, code, says) => {
    const { run, folder } = equippedKitchen();
    const before = listing(folder);
    const refused = run("rename", ...words, "--json");
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toContain(says);
    expect(contractOf(refused).problem?.code).toBe(code);
    expect(listing(folder)).toEqual(before);
  });
});
