import { describe, expect, it } from "vitest";
import { contractOf, holdband, listing, temporaryFolder, write } from "../run-holdband.ts";
import type { Run } from "../run-holdband.ts";
import { emptyKitchen, equippedKitchen } from "./run-kitchen.ts";

interface Told {
  readonly from: string;
  readonly stored: string | null;
  readonly corrections: readonly {
    readonly reading: number;
    readonly correction: number;
    readonly expanded: number;
  }[];
  readonly boiling: readonly { readonly celsius: number; readonly how: string }[];
  readonly windows: readonly { readonly word: string; readonly name: string | null }[];
}

const told = (run: Run): Told => JSON.parse(run.out) as Told;
const alone = (...words: readonly string[]): Run =>
  holdband(["thermometer", ...words], { cwd: temporaryFolder() });

describe("thermometer without a kitchen", () => {
  it("gives the line through ice and boiling water, worked out by hand", () => {
    // Sea level: IAPWS-IF97 boils at 99.974 degC at 1013.25 hPa. Readings 0.4 and 100.174 make
    // corrections of -0.4 and -0.2; at a reading of 50.287, half-way, that is -0.3.
    const run = alone("--ice", "0.4", "--boiling", "100.174", "--altitude", "0m", "--json");
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    const { corrections, boiling, from, stored } = told(run);
    expect(boiling[0]?.celsius).toBeCloseTo(99.974, 2);
    // 20 degC lies 19.6/99.774 of the way: -0.4 + 0.2 * 0.1964 = -0.3607.
    expect(corrections[0]?.correction).toBeCloseTo(-0.361, 2);
    expect(corrections.map(({ reading }) => reading)).toEqual([20, 38, 43, 90]);
    expect({ from, stored }).toEqual({ from: "measured", stored: null });
  });

  it("takes degF, feet and inches of mercury for the same check", () => {
    const metric = told(
      alone("--boiling", "95.2", "--pressure", "851 hPa", "--pressure-at", "station", "--json"),
    );
    const other = told(
      alone(
        "--boiling",
        "203.36F",
        "--pressure",
        "25.13 inHg",
        "--pressure-at",
        "station",
        "--json",
      ),
    );
    // 25.13 inHg are 851.0 hPa (NIST SP 811); 203.36 degF are 95.2 degC.
    expect(other.corrections[3]?.correction).toBeCloseTo(metric.corrections[3]?.correction ?? 9, 2);
    const heights = ["1450m", "4757.2ft"].map((height) =>
      told(alone("--boiling", "95.2", "--altitude", height, "--json")),
    );
    expect(heights[1]?.boiling[0]?.celsius).toBeCloseTo(heights[0]?.boiling[0]?.celsius ?? 0, 3);
  });

  it("compares with a reference: 40.0 against 40.4 and 40.2 is -0.3", () => {
    const words = ["--reference", "40.0", "--reads", "40.4", "40.2", "--json"];
    const { corrections } = told(alone(...words, "--reference-uncertainty", "0.05"));
    expect(corrections[1]?.correction).toBeCloseTo(-0.3, 2);
  });

  it("judges for a window typed and for a culture", () => {
    const { windows } = told(
      alone("--ice", "0.1", "0.1", "--window", "20..60", "--culture", "reuteri", "--json"),
    );
    expect(windows).toHaveLength(2);
    expect(windows[0]?.word).not.toBe("too coarse");
    expect(windows[1]?.name).toContain("reuteri");
    expect(alone("--ice", "0.1", "--window", "39..37").err).toContain("the lower first");
    expect(alone("--ice", "0.1", "--culture", "kefri").err).toContain('Did you mean "kefir"?');
  });

  it("writes nothing and says so", () => {
    const folder = temporaryFolder();
    const run = holdband(["thermometer", "--ice", "0.3"], { cwd: folder });
    expect(run.out).toContain("Nothing was stored");
    expect(listing(folder)).toEqual([]);
  });

  it.each([
    [["--ice", "6"], "check-doubtful", "too much water and too little ice"],
    [["--ice", "32.4"], "check-doubtful", "write 32.4F"],
    [["--boiling", "212", "--altitude", "0m"], "check-doubtful", "write 212F"],
    [["--boiling", "90", "--altitude", "0m"], "check-doubtful", "rolling boil"],
    [["--boiling", "103", "--altitude", "1450m"], "check-doubtful", "bottom of the pot"],
    [["--boiling", "97"], "option-missing", "--altitude or --pressure"],
    [["--boiling", "97", "--pressure", "851 hPa"], "option-missing", "--pressure-at"],
    [["--pressure-at", "station"], "option-missing", "--pressure"],
    [["--altitude", "1450m"], "option-missing", "--boiling"],
    [["--reads", "40"], "option-missing", "--reference"],
    [["--reference", "40"], "option-missing", "--reads"],
    [["--boiling", "97", "--altitude", "1450"], "option-invalid", "with its unit"],
    [["--boiling", "97", "--altitude", "20km"], "option-invalid", "with its unit"],
    [["--boiling", "97", "--pressure", "851"], "option-invalid", "with its unit"],
    [["--ice", "cold"], "option-invalid", "--ice expects"],
    [["--ice", "0.3", "--date", "2026-02-30"], "option-invalid", "--date expects"],
    [["--ice", "0.3", "--date", "2099-01-01"], "option-invalid", "not to come"],
    [
      ["--boiling", "97", "--pressure", "1013 hPa", "--pressure-at", "sea-level"],
      "option-missing",
      "--altitude is needed",
    ],
    [["--accuracy", "0"], "option-invalid", "--accuracy expects"],
    [[], "option-missing", "--ice, --boiling or --reference"],
    [["pen", "--ice", "0.3"], "kitchen-missing", "holdband init"],
  ])("refuses %j", (words, code, says) => {
    const run = alone(...words, "--json");
    expect(run.exitCode).toBe(2);
    expect(contractOf(run).problem?.code).toBe(code);
    expect(run.err).toContain(says);
  });
});

describe("thermometer in a kitchen", () => {
  it("stores checks in the words they were typed in, and once", () => {
    const { ok, kitchen, text } = emptyKitchen();
    const words = ["thermometer", "pen", "--ice", "32.5F", "32.4F", "--date", "2026-02-14"];
    expect(ok(...words, "--accuracy", "1", "--name", "Pen thermometer")).toContain("kitchen.yaml");
    expect(text()).toContain("32.5F");
    const [pen] = kitchen().thermometers;
    expect(pen).toMatchObject({ id: "pen", name: "Pen thermometer", accuracy: 1 });
    // 32.5 degF are 0.5 / 1.8 = 0.278 degC.
    expect(pen?.checks[0]?.readings[0]).toBeCloseTo(0.278, 3);
    expect(pen?.checks[0]?.date).toBe("2026-02-14");
    ok(...words);
    expect(kitchen().thermometers[0]?.checks).toHaveLength(1);
  });

  it("says once where the height is kept for all checks to come", () => {
    const { ok, folder, text } = emptyKitchen();
    const words = ["thermometer", "pen", "--boiling", "95.5", "--altitude", "1450 m"];
    expect(ok(...words)).toContain('With "altitude: 1450 m" in kitchen.yaml');
    write(folder, "kitchen.yaml", text().replace("# altitude: 1450 m #", "altitude: 1450 m #"));
    expect(ok(...words, "--date", "2026-02-14")).not.toContain("With ");
    expect(ok("thermometer", "pen", "--boiling", "95.6", "--date", "2026-02-15")).toContain(
      "Stored",
    );
  });

  it("dates a check today where no day was said", () => {
    const { ok, kitchen } = emptyKitchen();
    const days = [new Date().toISOString().slice(0, 10)];
    ok("thermometer", "pen", "--ice", "0.3");
    days.push(new Date().toISOString().slice(0, 10));
    expect(days).toContain(kitchen().thermometers[0]?.checks[0]?.date);
  });

  it("takes the kitchen's own height where a check says none", () => {
    const { ok } = equippedKitchen("altitude: 1450 m\n");
    const run = ok("thermometer", "pen", "--boiling", "95.2", "--json");
    expect((JSON.parse(run) as Told).boiling[0]?.how).toBe("altitude");
  });

  it("questions a doubtful check and stores it only when confirmed", () => {
    const { folder, run, ok, kitchen } = emptyKitchen();
    const before = listing(folder);
    const doubtful = run("thermometer", "pen", "--ice", "6");
    expect(doubtful).toMatchObject({ exitCode: 2, out: "" });
    expect(doubtful.err).toContain("say --confirm");
    expect(doubtful.err).not.toContain("left out of the correction");
    expect(run("thermometer", "pen", "--ice", "0.3", "--culture", "kefri").exitCode).toBe(2);
    expect(listing(folder)).toEqual(before);
    ok("thermometer", "pen", "--ice", "6", "--confirm");
    expect(kitchen().thermometers[0]?.checks[0]).toMatchObject({ confirmed: true });
  });

  it("lets a confirmed check stand beside an older one it contradicts", () => {
    const { ok, run, kitchen } = emptyKitchen();
    ok("thermometer", "pen", "--ice", "0", "--boiling", "95.1", "--altitude", "1450m");
    expect(run("thermometer", "pen", "--ice", "2.9", "--date", "2026-02-14").exitCode).toBe(2);
    ok("thermometer", "pen", "--ice", "2.9", "--date", "2026-02-14", "--confirm");
    expect(kitchen().thermometers[0]?.checks).toHaveLength(3);
  });

  it("shows one, lists all, and knows when there is none", () => {
    const { ok, run } = emptyKitchen();
    expect(ok("thermometer")).toContain("no thermometers in this kitchen yet");
    ok("thermometer", "pen", "--ice", "0.3");
    ok("thermometer", "logger", "--accuracy", "0.5");
    expect(ok("thermometer", "logger")).toContain("known only by its specification");
    expect(ok("thermometer")).toMatch(/^pen .*\n(?:.*\n)*logger /m);
    const { thermometers } = JSON.parse(ok("thermometer", "--json")) as {
      thermometers: readonly { id: string }[];
    };
    expect(thermometers.map(({ id }) => id)).toEqual(["pen", "logger"]);
    expect(run("thermometer", "loger").err).toContain('Did you mean "logger"?');
  });
});
