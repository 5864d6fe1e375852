import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { TypedOptions } from "../../../src/input/typed-options.ts";
import { enter } from "../../../src/cli/enter/enter.ts";
import { openKitchen } from "../../../src/cli/kitchen/kitchen-folder.ts";
import { listing, temporaryFolder } from "../run-holdband.ts";
import { night, shellWith, testKitchen } from "./enter-helpers.ts";

const setUp = (kitchen: string) => ({
  kitchen: [kitchen],
  appliance: ["step-cooker"],
  setting: ["38"],
  container: ["jars"],
  thermometer: ["pen"],
});
const piped = (options: TypedOptions, text = night.join("\n")) =>
  enter([], options, shellWith(text));

const csv = [
  "Time,Jar (°C)",
  "2026-10-03T21:30,20.1",
  "2026-10-03T22:30,36.4",
  "2026-10-03T23:30,38.2",
  "2026-10-04T00:30,38.1",
  "2026-10-04T02:00,38.3",
  "2026-10-04T04:10,38.0",
  "2026-10-04T06:00,38.2",
  "2026-10-04T07:00,38.1",
  "",
].join("\n");

describe("enter through a pipe", () => {
  it("stores the night as CSV and lists it as a water test", async () => {
    const kitchen = testKitchen();
    const result = await piped(setUp(kitchen));
    expect(result).toMatchObject({ exitCode: 0, err: "" });
    const name = "step-cooker-38-jars-2026-10-03-by-hand.csv";
    expect(result.out).toContain(`readings/${name}`);
    expect(readFileSync(join(kitchen, "readings", name), "utf8")).toBe(csv);
    const opened = await openKitchen(kitchen);
    expect(opened.ok && opened.value.kitchen.tests).toMatchObject([
      {
        appliance: "step-cooker",
        setting: { kind: "step", celsius: 38 },
        container: "jars",
        notes: "23:30 lid opened",
        files: [{ path: `readings/${name}`, probes: [{ name: "Jar", thermometer: "pen" }] }],
      },
    ]);
  });

  it("answers with the stored test as data", async () => {
    const result = await piped({ ...setUp(testKitchen()), json: true });
    const data = JSON.parse(result.out) as {
      test: { id: string };
      probes: readonly { hold: { mean: number } | null }[];
    };
    expect(data.test.id).toContain("step-cooker");
    // The seven readings after the warm-up have a mean of 38.15 (constructed).
    expect(data.probes[0]?.hold?.mean).toBeCloseTo(38.15, 0);
  });

  it("recognises the same night given twice, and changes nothing", async () => {
    const kitchen = testKitchen();
    await piped(setUp(kitchen));
    const before = listing(kitchen);
    const again = await piped(setUp(kitchen));
    expect(again.exitCode).toBe(2);
    expect(listing(kitchen)).toEqual(before);
  });

  it.each([
    ["a line that cannot be read", {}, "21:30 20.1\n22.30 41", "Line 2"],
    ["a missing appliance", { appliance: undefined }, "21:30 41\n7:00 41", "--appliance"],
    ["an unknown container", { container: ["jras"] }, "21:30 41\n7:00 41", "jars"],
    ["an unknown thermometer", { thermometer: ["pan"] }, "21:30 41\n7:00 41", "pen"],
    ["a setting the cooker has not", { setting: ["90"] }, "21:30 41\n7:00 41", "60"],
  ])("stores nothing for %s", async (_, change, text, words) => {
    const kitchen = testKitchen();
    const before = listing(kitchen);
    const options = Object.entries({ ...setUp(kitchen), ...change }).filter(
      (entry): entry is [string, string[]] => entry[1] !== undefined,
    );
    const result = await piped(Object.fromEntries(options), text);
    expect(result).toMatchObject({ exitCode: 2, out: "" });
    expect(result.err).toContain(words);
    expect(listing(kitchen)).toEqual(before);
  });
});

describe("enter --out", () => {
  it("writes a CSV file and needs no kitchen", async () => {
    const out = join(temporaryFolder(), "night.csv");
    const result = await piped({ out: [out] });
    expect(result).toMatchObject({ exitCode: 0, err: "" });
    expect(result.out).toContain("8 readings, 2026-10-03 21:30 to 2026-10-04 07:00");
    expect(readFileSync(out, "utf8")).toBe(csv);
    expect(readdirSync(join(out, ".."))).toEqual(["night.csv"]);
  });

  it("never writes over a file, and writes none for lines that cannot be read", async () => {
    const out = join(temporaryFolder(), "night.csv");
    await piped({ out: [out] });
    expect(await piped({ out: [out] }, "21:30 1\n7:00 2")).toMatchObject({ exitCode: 2 });
    expect(readFileSync(out, "utf8")).toBe(csv);
    const other = `${out}.2`;
    expect(await piped({ out: [other] }, "21:30 warm\n")).toMatchObject({ exitCode: 2 });
    expect(existsSync(other)).toBe(false);
  });

  it("answers with data", async () => {
    const out = join(temporaryFolder(), "night.csv");
    const result = await piped(
      { out: [out], json: true, probe: ["Jar=food", "Bath=bath"] },
      ["21:30 20.1F 19", "7:00 100.4F -"].join("\n"),
    );
    expect(JSON.parse(result.out)).toMatchObject({
      file: out,
      readings: 2,
      unit: "degF",
      probes: ["Jar", "Bath"],
    });
  });
});
