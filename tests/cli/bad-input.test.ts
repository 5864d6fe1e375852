import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contractOf, holdband, listing, temporaryFolder, write } from "./run-holdband.ts";

const window = ["--low", "37C", "--high", "39C", "--hours", "36"];

/** A constructed night: an approach to 38 degC, one reading every five minutes. */
const readings = Array.from({ length: 120 }, (_, row) => ({
  minute: row * 5,
  celsius: (38 - 17 * Math.exp(-row / 8) + 0.1 * Math.sin(row)).toFixed(1),
}));
const night = `minutes,Jar (°C)\n${readings.map((one) => `${one.minute},${one.celsius}`).join("\n")}\n`;
const clock = (minute: number): string =>
  new Date(Date.UTC(2026, 0, 5, 20, minute)).toISOString().slice(0, 16);

interface Case {
  readonly what: string;
  /** Prepares the folder and gives the line to run in it. */
  readonly line: (folder: string) => readonly string[];
  readonly code: string;
  readonly says: string;
}

const inFile =
  (text: string | Uint8Array, ...more: readonly string[]) =>
  (folder: string) => {
    write(folder, "night.csv", text);
    return ["check", "night.csv", ...window, ...more];
  };

const cases: readonly Case[] = [
  {
    what: "a missing file",
    line: () => ["check", "nothing.csv", ...window],
    code: "file-missing",
    says: "nothing.csv",
  },
  { what: "an empty file", line: inFile(""), code: "file-empty", says: "empty" },
  {
    what: "a folder",
    line: (folder) => {
      mkdirSync(join(folder, "nights"));
      return ["check", "nights", ...window];
    },
    code: "file-is-directory",
    says: "nights",
  },
  {
    what: "a binary file",
    line: inFile(gzipSync(Buffer.from(night.repeat(20)))),
    code: "file-binary",
    says: "Export the readings as CSV",
  },
  {
    what: "a file of a single reading",
    line: inFile("minutes,Jar (°C)\n0,38.0\n"),
    code: "too-few-readings",
    says: "found 1",
  },
  {
    what: "a file without a temperature column",
    line: inFile(`Time,Note\n${readings.map((one) => `${clock(one.minute)},fine`).join("\n")}\n`),
    code: "no-temperature-column",
    says: "--column",
  },
  {
    what: "a file without a time column",
    line: inFile(`Jar (°C)\n${readings.map((one) => one.celsius).join("\n")}\n`),
    code: "no-time-column",
    says: "--interval",
  },
  {
    what: "dates that can be read two ways",
    line: inFile(
      `Date,Jar (°C)\n${readings.map((one) => `02/03/2026 ${clock(one.minute % 180).slice(11)},${one.celsius}`).join("\n")}\n`,
    ),
    code: "date-order-undecidable",
    says: "--date-order",
  },
  {
    what: "a column that is not there",
    line: inFile(night, "--column", "Pot"),
    code: "column-unknown",
    says: "Pot",
  },
  {
    what: "options that contradict each other",
    line: inFile(night, "--culture", "kefir"),
    code: "options-contradict",
    says: "--culture and --low",
  },
  {
    what: "an inverted window",
    line: (folder) => {
      write(folder, "night.csv", night);
      return ["check", "night.csv", "--low", "39", "--high", "37", "--hours", "36"];
    },
    code: "window-inverted",
    says: "--low below --high",
  },
  {
    what: "a window in the wrong unit",
    line: (folder) => {
      write(folder, "night.csv", night);
      return ["check", "night.csv", "--low", "98", "--high", "102", "--hours", "36"];
    },
    code: "window-wrong-unit",
    says: "--low 98F --high 102F",
  },
  {
    what: "a report in a folder that is not there",
    line: inFile(night, "--report", "no/such/night.html"),
    code: "report-unwritable",
    says: "no/such/night.html",
  },
  {
    what: "a report over the readings themselves",
    line: inFile(night, "--report", "night.csv"),
    code: "report-unwritable",
    says: "a file that is not a report is there",
  },
  {
    what: "an option that does not exist",
    line: inFile(night, "--windw", "3"),
    code: "usage",
    says: "--windw",
  },
  {
    what: "a culture that does not exist",
    line: (folder) => {
      write(folder, "night.csv", night);
      return ["check", "night.csv", "--culture", "kefri"];
    },
    code: "culture-unknown",
    says: 'Did you mean "kefir"?',
  },
  { what: "no file at all", line: () => ["check", ...window], code: "usage", says: "file" },
  { what: "an unknown command", line: () => ["chek"], code: "usage", says: "check" },
];

describe("bad input", () => {
  it.each(cases)("$what: one sentence, exit code 2, nothing written", ({ line, code, says }) => {
    const folder = temporaryFolder();
    const typed = line(folder);
    const withReport = typed.includes("--report") ? typed : [...typed, "--report", "out.html"];
    const before = listing(folder);
    const plain = holdband(typed[0] === "check" ? withReport : typed, { cwd: folder });
    expect(plain).toMatchObject({ exitCode: 2, out: "" });
    expect(plain.err.trimEnd().split("\n")).toHaveLength(1);
    expect(plain.err).toContain(says);
    expect(plain.err).not.toMatch(/\bat .*:\d+:\d+|node:internal|Error:/);

    const json = holdband([...typed, "--json"], { cwd: folder });
    expect(json.exitCode).toBe(2);
    expect(contractOf(json)).toMatchObject({ contract: 1, problem: { code } });
    expect(contractOf(json).problem?.text).toBe(json.err.trimEnd());
    expect(listing(folder)).toEqual(before);
  });

  it("is not what the good night is", () => {
    const folder = temporaryFolder();
    write(folder, "night.csv", night);
    const run = holdband(["check", "night.csv", ...window, "--report", "out.html"], {
      cwd: folder,
    });
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    expect(readFileSync(join(folder, "out.html"), "utf8")).toMatch(/^<!doctype html>/i);
    expect(readFileSync(join(folder, "night.csv"), "utf8")).toBe(night);
  });

  it("in one of several files stops all of them before the report", () => {
    const folder = temporaryFolder();
    write(folder, "night.csv", night);
    write(folder, "bad.csv", "a,b\nx,y\n");
    const run = holdband(["check", "night.csv", "bad.csv", ...window, "--report", "out.html"], {
      cwd: folder,
    });
    expect(run.exitCode).toBe(2);
    expect(run.err).toContain("bad.csv");
    rmSync(join(folder, "bad.csv"));
    expect(listing(folder)).toHaveLength(1);
  });
});
