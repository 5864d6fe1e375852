import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { holdband, temporaryFolder, write } from "../run-holdband.ts";
import { bathNights, cookerNight, emptyKitchen } from "./run-kitchen.ts";

const report = (folder: string): string =>
  readFileSync(join(folder, "reports", "kitchen.html"), "utf8");

describe("from an empty folder to a report, by commands only", () => {
  it("works for somebody with a pen thermometer and two appliances", () => {
    const { folder, ok } = emptyKitchen();
    ok(
      "thermometer",
      "pen",
      "--ice",
      "0.3",
      "0.2",
      "0.3",
      "--boiling",
      "95.5",
      "95.4",
      "--altitude",
      "1450m",
    );
    ok("appliance", "pot", "--kind", "cooker", "--steps", "30..45", "--thermostat", "yes");
    ok("appliance", "bath", "--kind", "circulating bath", "--steps", "20..60", "--step", "0.1");
    ok("container", "jars", "--stands", "jars in water", "--volume", "0.5L", "--count", "6");
    ok("culture", "reuteri");
    ok("culture", "yoghurt");
    ok(
      "add",
      cookerNight,
      "--appliance",
      "pot",
      "--setting",
      "38",
      "--container",
      "jars",
      "--thermometer",
      "pen",
    );
    ok("add", ...bathNights, "--appliance", "bath", "--setting", "41", "--container", "jars");
    const out = ok("report");
    expect(out).toMatch(/pot\n.*38 °C.*jars/);
    for (const name of ["pen", "pot", "bath", "jars", "reuteri"]) {
      expect(report(folder)).toContain(name);
    }
  });

  it.each(["my kitchen", "Küche für Käse", "kitchen 🍶", "it's & <b>"])(
    "works in a folder called %s, with a file called so",
    (name) => {
      const { folder, ok, kitchen } = emptyKitchen(name);
      const file = join(folder, "..", `${name} night.csv`);
      copyFileSync(cookerNight, file);
      ok("appliance", name, "--kind", "cooker", "--steps", "30..45");
      ok("container", "Gläser", "--stands", "jars in water");
      ok("culture", "reuteri");
      ok("add", file, "--appliance", name, "--setting", "38", "--container", "Gläser");
      expect(kitchen().tests[0]).toMatchObject({ appliance: name, container: "Gläser" });
      ok("report", "--appliance", name);
      expect(readdirSync(join(folder, "reports"))).toHaveLength(1);
      const around = join(folder, "..");
      const outside = holdband(["report", "--kitchen", name], { cwd: around });
      expect(outside).toMatchObject({ exitCode: 0, err: "" });
      expect(report(folder).includes("& <b>")).toBe(false);
    },
  );

  it("works in degF for somebody who reads degF", () => {
    const { folder, ok, text, kitchen } = emptyKitchen();
    write(folder, "kitchen.yaml", text().replace("unit: C", "unit: F"));
    ok("thermometer", "pen", "--ice", "32.5F", "--boiling", "203.9F", "--altitude", "4760ft");
    ok("appliance", "pot", "--kind", "cooker", "--steps", "86F..113F");
    ok("container", "jars", "--stands", "jars in water", "--volume", "1 qt");
    ok("culture", "mine", "--low", "98F", "--high", "103F", "--ceiling", "109F", "--hours", "36");
    const added = ok(
      "add",
      cookerNight,
      "--appliance",
      "pot",
      "--setting",
      "100F",
      "--container",
      "jars",
      "--thermometer",
      "pen",
      "--room",
      "63F..75F",
    );
    // The person's unit stands first, the other in brackets.
    expect(added).toMatch(/\d °F \(\d[\d.]* °C\)/);
    expect(added).not.toMatch(/\d °C \(\d[\d.]* °F\)/);
    // 100 degF are 37.78 degC.
    const [test] = kitchen().tests;
    expect(test?.setting).toMatchObject({ kind: "step" });
    expect(test?.setting.kind === "step" ? test.setting.celsius : 0).toBeCloseTo(37.78, 2);
    expect(ok("report")).toContain("100 °F (37.8 °C)");
    expect(ok("appliance")).toContain("86 to 113 degF in steps of 1");
    expect(ok("culture")).toContain("98-103");
  });

  it("finds the kitchen from elsewhere, and paths from where the command is given", () => {
    const { folder } = emptyKitchen();
    const elsewhere = temporaryFolder();
    mkdirSync(join(elsewhere, "nights"));
    copyFileSync(cookerNight, join(elsewhere, "nights", "a.csv"));
    const run = (...words: readonly string[]) =>
      holdband([...words, "--kitchen", folder], { cwd: elsewhere });
    run("appliance", "pot", "--kind", "cooker", "--control", "fixed");
    run("container", "jars", "--stands", "jars in water");
    const added = run("add", "nights/a.csv", "--appliance", "pot", "--container", "jars");
    expect(added).toMatchObject({ exitCode: 0, err: "" });
    expect(run("report", "--report", "mine.html").exitCode).toBe(0);
    expect(existsSync(join(elsewhere, "mine.html"))).toBe(true);
    expect(existsSync(join(folder, "readings", "a.csv"))).toBe(true);
  });
});
