import { describe, expect, it } from "vitest";
import { listing } from "../run-holdband.ts";
import { cookerNight, equippedKitchen } from "./run-kitchen.ts";
import type { RunningKitchen } from "./run-kitchen.ts";

const tested = (): RunningKitchen => {
  const kitchen = equippedKitchen();
  const setUp = ["--appliance", "step-cooker", "--setting", "38", "--container", "jars"];
  kitchen.ok("add", cookerNight, ...setUp, "--name", "first night");
  return kitchen;
};

describe("remove", () => {
  it("takes out what nothing needs", () => {
    const { ok, kitchen } = tested();
    expect(ok("remove", "container", "basin")).toContain("kitchen.previous.yaml");
    expect(kitchen().containers.map(({ id }) => id)).toEqual(["jars"]);
  });

  it("is refused where a test needs it, with the list", () => {
    const { run, folder } = tested();
    const before = listing(folder);
    const refused = run("remove", "container", "jars");
    expect(refused).toMatchObject({ exitCode: 2, out: "" });
    expect(refused.err).toContain("first night");
    expect(listing(folder)).toEqual(before);
  });

  it("takes a test out and leaves its readings where they are", () => {
    const { ok, kitchen, folder } = tested();
    const out = ok("remove", "test", "first night");
    expect(out).toContain("readings/adjustable-cooker.csv");
    expect(kitchen().tests).toEqual([]);
    expect(listing(folder).join("\n")).toContain("adjustable-cooker.csv");
  });
});
