import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contractOf, holdband, listing, program, root, temporaryFolder } from "./run-holdband.ts";

const fixtures = join(root, "fixtures", "kitchen", "readings");
const cooker = join(fixtures, "adjustable-cooker.csv");
const warmProgram = join(fixtures, "cooker-warm-program.csv");
const box = join(fixtures, "warming-box.txt");
const thermometer = ["--correction", "0.1", "--correction-uncertainty", "0.1"];

/** Golden files are written anew by `npm run golden`, never by the tests themselves. */
const golden = (name: string): string => join(root, "tests", "cli", "golden", name);
const withoutVersion = (text: string): string =>
  text.replace(/("holdband": |holdband )"?\d+\.\d+\.\d+"?/g, '$1"x.y.z"');

describe("check", () => {
  it("prints what a person can act on (golden)", async () => {
    const run = holdband(["check", warmProgram, "--culture", "reuteri", ...thermometer]);
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    expect(run.out).not.toContain("\u001B");
    await expect(withoutVersion(run.out)).toMatchFileSnapshot(golden("warm-program.txt"));
  });

  it("shows the unit the window was typed in, and plain ASCII where nothing more is spoken (golden)", async () => {
    const line = ["check", box, "--low", "98F", "--high", "102F", "--hours", "36"];
    const run = holdband(line, { env: { LANG: "C" } });
    expect(run.exitCode).toBe(0);
    expect(run.out).not.toMatch(/[^\n\u0020-\u007E]/);
    await expect(withoutVersion(run.out)).toMatchFileSnapshot(golden("warming-box.txt"));
  });

  it("prints contract version 1 (golden)", async () => {
    const run = holdband(["check", cooker, "--culture", "reuteri", ...thermometer, "--json"]);
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    const bytes = readFileSync(cooker);
    const sha256 = createHash("sha256").update(bytes).digest("hex");
    expect(contractOf(run).files[0]).toMatchObject({ name: "adjustable-cooker.csv", sha256 });
    await expect(withoutVersion(run.out)).toMatchFileSnapshot(golden("adjustable-cooker.json.txt"));
  });

  it("reads each of the demo's dialects without being told", () => {
    const run = holdband(["check", warmProgram, cooker, box, "--culture", "reuteri", "--json"]);
    const { files, probes } = contractOf(run);
    expect(files.map(({ delimiter, decimal, unit }) => [delimiter, decimal, unit])).toEqual([
      [",", ".", "degC"],
      [";", ",", "degC"],
      ["\t", ".", "degF"],
    ]);
    // Rows as the script wrote them: 38 h by 5 min and 12 h by 2 min, both ends counted.
    expect(files.map(({ rowsRead }) => rowsRead)).toEqual([457, 457, 361]);
    expect(probes.map(({ role }) => role)).toEqual(["food", "bath", "food", "food"]);
  });

  it("gives exit code 1 only with --strict and only where not everything holds", () => {
    const holds = ["check", cooker, "--culture", "reuteri", ...thermometer];
    const misses = ["check", cooker, "--culture", "yoghurt", ...thermometer];
    expect(holdband([...holds, "--strict"]).exitCode).toBe(0);
    expect(holdband(misses).exitCode).toBe(0);
    expect(holdband([...misses, "--strict"]).exitCode).toBe(1);
    expect(holdband([...misses, "--strict", "--json"]).exitCode).toBe(1);
  });

  it("writes one report, the same whatever the machine's zone and colour wishes", () => {
    const folder = temporaryFolder();
    const line = ["check", cooker, "--culture", "reuteri", "--report"];
    const reports = ["UTC", "America/New_York"].map((TZ) => {
      const file = join(folder, `${TZ.replace("/", "-")}.html`);
      expect(holdband([...line, file], { env: { TZ, FORCE_COLOR: "1" } }).exitCode).toBe(0);
      return readFileSync(file, "utf8").replaceAll(/\d{4}-\d\d-\d\d,? T?\d\d:\d\d(:[\d.]+)?/g, "");
    });
    expect(reports[0]).toBe(reports[1]);
    expect(reports[0]?.length).toBeLessThan(400_000);
    expect(listing(folder)).toHaveLength(2);
  });

  it("names files by their folder only where two have one name", () => {
    const { files } = contractOf(
      holdband(["check", cooker, cooker, "--culture", "reuteri", "--json"]),
    );
    expect(files.map(({ name }) => name)).toEqual([cooker, cooker]);
  });

  it("ends quietly when its reader stops early", async () => {
    const line = [program, "check", cooker, "--culture", "reuteri", "--json"];
    const child = spawn(process.execPath, line, { stdio: ["ignore", "pipe", "pipe"] });
    let err = "";
    child.stderr.on("data", (chunk: Buffer) => (err += chunk.toString()));
    child.stdout.destroy();
    const code = await new Promise((resolve) => child.on("close", resolve));
    expect(err).toBe("");
    expect(code).toBe(0);
  });
});

describe("--help and --version", () => {
  it("load neither charts nor parsers", () => {
    const run = holdband(["--help"], { env: { NODE_DEBUG: "esm" } });
    expect(run.out).toContain("holdband check night.csv");
    expect(run.err).toContain("holdband.js");
    expect(run.err).not.toMatch(/dist\/(check|demo|html|vega)/);
  });

  it("give the package's version", () => {
    const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
      version: string;
    };
    expect(holdband(["--version"])).toEqual({ out: `${version}\n`, err: "", exitCode: 0 });
  });
});
