import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contractOf, listing, temporaryFolder, write } from "../run-holdband.ts";
import type { Contract } from "../run-holdband.ts";
import { bathNights, cookerNight, equippedKitchen } from "./run-kitchen.ts";

const setUp = ["--appliance", "step-cooker", "--setting", "38", "--container", "jars"];
const bathSetUp = ["--appliance", "bath", "--setting", "41", "--container", "jars"];

/** A constructed night: an approach to 38 degC, one reading every five minutes, with clock times. */
const night = (heading: string, celsius = 38, minutes = 600): string => {
  const rows = Array.from({ length: minutes / 5 }, (_, row) => {
    const at = new Date(Date.UTC(2026, 9, 3, 22, row * 5)).toISOString().slice(0, 16);
    return `${at},${(celsius - 17 * Math.exp(-row / 8) + 0.1 * Math.sin(row)).toFixed(1)}`;
  });
  return `Time,${heading}\n${rows.join("\n")}\n`;
};

interface Added extends Contract {
  readonly test: { readonly id: string; readonly files: readonly string[] };
}

describe("add", () => {
  it("copies the file as it came, lists it with its hash, and says what the night says", () => {
    const { ok, kitchen, folder } = equippedKitchen("cultures:\n  - reuteri\n");
    const out = ok("add", cookerNight, ...setUp, "--fill", "2 L", "--room", "17..24");
    expect(out).toContain("Stored as step-cooker-38-jars-2026-02-19");
    expect(out).toMatch(/^\[(?:HOLDS|UNPROVEN)\] Jar/m);
    expect(out).toContain("This judges the night by itself");
    const copy = readFileSync(join(folder, "readings", "adjustable-cooker.csv"));
    expect(copy.equals(readFileSync(cookerNight))).toBe(true);
    const [test] = kitchen().tests;
    expect(test).toMatchObject({
      appliance: "step-cooker",
      setting: { kind: "step", celsius: 38 },
      container: "jars",
      fill: "2 L",
      room: { low: 17, high: 24 },
    });
    expect(test?.files[0]).toMatchObject({
      path: "readings/adjustable-cooker.csv",
      sha256: createHash("sha256").update(copy).digest("hex"),
      probes: [{ name: "Jar", place: "food", thermometer: null }],
    });
  });

  it("names the option that names a probe no file has", () => {
    const { run } = equippedKitchen("thermometers:\n  pen:\n    accuracy: 0.5\n");
    const refused = run("add", cookerNight, ...setUp, "--thermometer", "Jra=pen");
    expect(refused.err).toContain('a probe called "Jra" for --thermometer, found "Jar"');
  });

  it("names a test in the kitchen's unit", () => {
    const { ok, folder, text } = equippedKitchen();
    write(folder, "kitchen.yaml", text().replace("unit: C", "unit: F"));
    expect(ok("add", cookerNight, ...setUp)).toContain(
      "Stored as step-cooker-100.4f-jars-2026-02-19",
    );
  });

  it("recognises the same file under another name, and changes nothing", () => {
    const { ok, run, folder } = equippedKitchen();
    ok("add", cookerNight, ...setUp, "--name", "first night");
    const other = write(temporaryFolder(), "copy.csv", readFileSync(cookerNight));
    const before = listing(folder);
    for (const path of [cookerNight, other, "readings/adjustable-cooker.csv"]) {
      const again = run("add", path, ...bathSetUp, "--json");
      expect(again.exitCode).toBe(2);
      expect(contractOf(again).problem?.code).toBe("file-known");
      expect(again.err).toContain("put this file in its place: readings/adjustable-cooker.csv.");
      expect(again.err).toContain('"first night"');
    }
    expect(listing(folder)).toEqual(before);
  });

  it("puts two loggers on one clock and keeps both files", () => {
    const { ok, kitchen } = equippedKitchen("cultures:\n  - warm-blend\n");
    const added = JSON.parse(ok("add", ...bathNights, ...bathSetUp, "--json")) as Added;
    expect(added.test.files).toEqual(["readings/bath-jar.csv", "readings/bath-water.tsv"]);
    expect(added.probes.map(({ role }) => role)).toEqual(["food", "bath"]);
    expect(added.probes[1]?.verdicts).toEqual([]);
    expect(kitchen().tests[0]?.files.map(({ probes }) => probes[0]?.place)).toEqual([
      "food",
      "bath",
    ]);
  });

  it("says at once that loggers did not run together", () => {
    const { run, folder } = equippedKitchen();
    const before = listing(folder);
    const apart = run("add", cookerNight, bathNights[0] ?? "", ...setUp, "--json");
    expect(contractOf(apart).problem?.code).toBe("loggers-apart");
    expect(listing(folder)).toEqual(before);
    const at = "bath-jar.csv=2026-02-19 21:00";
    expect(run("add", cookerNight, bathNights[0] ?? "", ...setUp, "--starts", at).exitCode).toBe(0);
  });

  it("names each probe's place and thermometer, for one or for all", () => {
    const { ok, kitchen, folder } = equippedKitchen();
    ok("thermometer", "pen", "--ice", "0.3", "--boiling", "95.2", "--altitude", "1450m");
    ok("thermometer", "logger", "--accuracy", "0.5");
    write(
      folder,
      "two.csv",
      `Time,A (°C),B (°C)\n${night("x")
        .split("\n")
        .slice(1, -1)
        .map((row) => `${row},${row.split(",")[1]}`)
        .join("\n")}\n`,
    );
    ok(
      "add",
      "two.csv",
      ...setUp,
      "--probe",
      "b=bath",
      "--thermometer",
      "logger",
      "--thermometer",
      "A=pen",
    );
    expect(kitchen().tests[0]?.files[0]?.probes).toEqual([
      { name: "A", place: "food", thermometer: "pen" },
      { name: "B", place: "bath", thermometer: "logger" },
    ]);
  });

  it("lets the thermometer's correction into the night", () => {
    const { ok } = equippedKitchen("cultures:\n  - reuteri\n");
    // Ice and boiling water both 0.5 high: every reading is, so the hold's mean falls by 0.5.
    const checks = ["--ice", "0.5", "--boiling", "100.47", "--altitude", "0m"];
    ok("thermometer", "pen", ...checks);
    const mean = (words: readonly string[]): number => {
      const added = JSON.parse(ok("add", ...words, "--json")) as Added;
      return Number(added.probes[0]?.hold?.["mean"]);
    };
    const plain = mean([cookerNight, ...setUp]);
    ok("remove", "test", "step-cooker-38-jars-2026-02-19");
    const corrected = mean([cookerNight, ...setUp, "--thermometer", "pen"]);
    expect(corrected - plain).toBeCloseTo(-0.5, 1);
  });

  it("keeps what was said about a file that leaves things open", () => {
    const { ok, run, kitchen, folder } = equippedKitchen();
    const bare = night("Jar").replaceAll(/^(\d{4})-(\d\d)-(\d\d)T/gm, "02/03/2026 ");
    write(folder, "open.csv", bare);
    expect(contractOf(run("add", "open.csv", ...setUp, "--json")).problem?.code).toMatch(
      /date-order/,
    );
    ok("add", "open.csv", ...setUp, "--date-order", "dmy", "--unit", "C", "--column", "Jar");
    expect(kitchen().tests[0]?.files[0]).toMatchObject({
      dateOrder: "day-first",
      unit: "degC",
      columns: ["Jar"],
    });
    expect(ok("report")).toContain("reports/kitchen.html");
  });

  it("says when no culture is listed, and when one is", () => {
    const { ok, folder } = equippedKitchen();
    write(folder, "a.csv", night("Jar"));
    write(folder, "b.csv", night("Jar", 39));
    expect(ok("add", "a.csv", ...setUp)).toContain("No culture is listed in this kitchen");
    ok("culture", "reuteri");
    expect(ok("add", "b.csv", ...setUp)).not.toContain("No culture is listed");
  });

  it("counts on where a day has two tests of one set-up, and refuses a name that is taken", () => {
    const { ok, run, kitchen, folder } = equippedKitchen();
    write(folder, "a.csv", night("Jar"));
    write(folder, "b.csv", night("Jar", 39));
    write(folder, "c.csv", night("Jar", 40));
    ok("add", "a.csv", ...setUp);
    ok("add", "b.csv", ...setUp);
    const ids = kitchen().tests.map(({ id }) => id);
    expect(ids).toEqual(["step-cooker-38-jars-2026-10-03", "step-cooker-38-jars-2026-10-03-2"]);
    const before = listing(folder);
    const taken = run("add", "c.csv", ...setUp, "--name", ids[0] ?? "", "--json");
    expect(contractOf(taken).problem?.code).toBe("id-taken");
    expect(listing(folder)).toEqual(before);
  });
});
