import { describe, expect, it } from "vitest";
import type { AnalysisRequest, FileRequest, HashedSource } from "../src/analysis-types.ts";
import { readFiles } from "../src/read-files.ts";
import { assumedRequest } from "./probe-files.ts";

const encoder = new TextEncoder();
const source = (text: string, name: string): HashedSource => ({
  name,
  chunks: (async function* chunks() {
    yield encoder.encode(text);
  })(),
  sha256: () => name.padEnd(64, "0"),
});
const jar = "Time,Jar\n2026-02-14 22:10,38.0\n2026-02-14 22:20,38.5\n2026-02-14 22:30,38.5\n";
const bath = "Time;Bath\n2026-02-14 22:00;40,0\n2026-02-14 22:20;40,5\n2026-02-14 22:40;40,2\n";
const elapsed = "Minutes,Bath\n0,40.0\n10,40.5\n20,40.2\n";

const plain: FileRequest = { reading: { unit: "degC" }, thermometers: new Map(), startsAt: null };
const read = (texts: readonly string[], more: Partial<AnalysisRequest>) =>
  readFiles(
    { ...assumedRequest([12]).request, reading: { unit: "degC" }, ...more },
    texts.map((text, at) => source(text, `${at + 1}.csv`)),
  );

/** Constructed files. */
describe("readFiles", () => {
  it("reads each file by what is said of it", async () => {
    const roles = new Map([["Bath", "bath"]] as const);
    const found = await read([jar, bath], {
      files: [plain, { ...plain, reading: { unit: "degC", roles } }],
    });
    if (!found.ok) throw new Error(found.problem.code);
    expect(found.value.map(({ readings }) => readings.probes[0]!.role)).toEqual(["food", "bath"]);
    expect(found.value[1]!.sha256).toMatch(/^2\.csv/);
  });

  it("puts loggers that ran together on one clock", async () => {
    const found = await read([jar, bath], { files: [plain, plain], together: true });
    if (!found.ok) throw new Error(found.problem.code);
    expect(found.value.map(({ readings }) => readings.probes[0]!.minutes)).toEqual([
      Float64Array.of(10, 20, 30),
      Float64Array.of(0, 20, 40),
    ]);
  });

  it("leaves files that are tests of their own on their own clocks", async () => {
    const found = await read([jar, bath], {});
    expect(found).toMatchObject({
      value: [{ readings: { probes: [{ minutes: Float64Array.of(0, 10, 20) }] } }, {}],
    });
  });

  it("takes the clock of a file without one from the person", async () => {
    const startsAt = Date.UTC(2026, 1, 14, 22, 0);
    const one = await read([elapsed], { files: [{ ...plain, startsAt }] });
    expect(one).toMatchObject({ value: [{ readings: { startWallClock: startsAt } }] });
    const two = await read([jar, elapsed], {
      files: [plain, { ...plain, startsAt }],
      together: true,
    });
    expect(two).toMatchObject({
      value: [{ readings: { probes: [{ minutes: Float64Array.of(10, 20, 30) }] } }, {}],
    });
    expect(await read([jar, elapsed], { files: [plain, plain], together: true })).toMatchObject({
      problem: { code: "clock-needed", facts: { file: "2.csv" } },
    });
  });

  it("names a probe that is listed but not in the file", async () => {
    const roles = new Map([["Jra", "food"]] as const);
    const said = { ...plain, reading: { unit: "degC", roles } } as const;
    expect(await read([jar], { files: [said] })).toMatchObject({
      problem: {
        code: "listed-probe-missing",
        facts: { file: "1.csv", probe: "Jra", probes: '"Jar"' },
      },
    });
  });

  it("refuses a role for all files that none of them has", async () => {
    const roles = new Map([["Jra", "food"]] as const);
    expect(await read([jar, bath], { reading: { unit: "degC", roles } })).toMatchObject({
      problem: { code: "probe-unknown", facts: { probes: '"Jar", "Bath"' } },
    });
  });

  it("passes a file's problem on", async () => {
    expect(await read([jar, ""], {})).toMatchObject({ problem: { code: "file-empty" } });
  });
});
