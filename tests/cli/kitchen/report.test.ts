import { appendFileSync, existsSync, readFileSync, readdirSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contractOf } from "../run-holdband.ts";
import { bathNights, cookerNight, equippedKitchen } from "./run-kitchen.ts";
import type { RunningKitchen } from "./run-kitchen.ts";

const cooker = ["--appliance", "step-cooker", "--setting", "38", "--container", "jars"];
const bath = ["--appliance", "bath", "--setting", "41", "--container", "jars"];

const tested = (): RunningKitchen => {
  const kitchen = equippedKitchen("cultures:\n  - reuteri\n");
  kitchen.ok("add", cookerNight, ...cooker, "--name", "cooker night");
  kitchen.ok("add", ...bathNights, ...bath, "--name", "bath night");
  return kitchen;
};

interface Told {
  readonly tests: readonly {
    readonly id: string;
    readonly problem: { readonly code: string } | null;
  }[];
  readonly report: string;
}

describe("report", () => {
  it("writes one page and prints the same in short", () => {
    const { ok, folder } = tested();
    const out = ok("report");
    expect(out).toContain(join("reports", "kitchen.html"));
    const page = readFileSync(join(folder, "reports", "kitchen.html"), "utf8");
    expect(page).toMatch(/^<!doctype html>/i);
    expect(page).toContain("step-cooker");
    ok("report", "--report", "elsewhere.html");
    expect(existsSync(join(folder, "elsewhere.html"))).toBe(true);
  });

  it("keeps to one appliance where one is asked for", () => {
    const { ok, folder } = tested();
    const told = JSON.parse(ok("report", "--appliance", "bath", "--json")) as Told;
    expect(told.tests.map(({ id }) => id)).toEqual(["bath night"]);
    expect(told.report).toBe(join(folder, "reports", "kitchen-bath.html"));
    expect(existsSync(told.report)).toBe(true);
  });

  it("names a changed or missing file and still analyses the others", () => {
    const { ok, run, folder } = tested();
    appendFileSync(join(folder, "readings", "adjustable-cooker.csv"), "2026-02-21 12:00;38,0\n");
    const told = JSON.parse(ok("report", "--json")) as Told;
    expect(told.tests.map(({ id, problem }) => [id, problem?.code ?? null])).toEqual(
      expect.arrayContaining([
        ["cooker night", "raw-file-changed"],
        ["bath night", null],
      ]),
    );
    expect(ok("report")).toContain("cooker night");
    rmSync(join(folder, "readings", "adjustable-cooker.csv"));
    expect(ok("report")).toContain("found nothing there");
    const page = readFileSync(join(folder, "reports", "kitchen.html"), "utf8");
    expect(page).toContain("adjustable-cooker.csv");
    expect(run("report", "--strict").exitCode).toBe(1);
  });

  it("is refused, the last report left as it was, where no test can be read", () => {
    const { ok, run, folder } = tested();
    ok("report");
    rmSync(join(folder, "readings"), { recursive: true });
    const page = join(folder, "reports", "kitchen.html");
    const before = statSync(page).mtimeMs;
    const refused = run("report", "--json");
    expect(refused.exitCode).toBe(2);
    expect(contractOf(refused).problem?.code).toBe("no-test-readable");
    expect(statSync(page).mtimeMs).toBe(before);
    expect(readdirSync(join(folder, "reports"))).toEqual(["kitchen.html"]);
  });

  it("gives exit code 1 with --strict where a culture is held nowhere", () => {
    const { ok, run } = tested();
    expect(run("report", "--strict").exitCode).toBe(0);
    ok("culture", "yoghurt");
    expect(run("report").exitCode).toBe(0);
    expect(run("report", "--strict").exitCode).toBe(1);
  });

  it("reports on a kitchen without tests yet", () => {
    const { ok, folder } = equippedKitchen();
    expect(ok("report")).toContain("kitchen.html");
    expect(existsSync(join(folder, "reports", "kitchen.html"))).toBe(true);
  });
});
