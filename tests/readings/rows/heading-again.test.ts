import { describe, expect, it } from "vitest";
import {
  createHeadingFollower,
  readHeadingAgain,
} from "../../../src/readings/rows/heading-again.ts";
import { problemOf, read } from "../reading-helpers.ts";

const headings = ["Time", "Jar C", "Bath C"];

describe("readHeadingAgain", () => {
  it.each([
    ["another order", ["time", "Bath C", "Jar C"], { kind: "moved", places: [0, 2, 1] }],
    ["one left out", ["Time", "Bath C"], { kind: "moved", places: [0, -1, 1] }],
    ["one more", ["Time", "Jar C", "Bath C", "Room C"], { kind: "other" }],
    ["another name", ["Time", "Lid C", "Bath C"], { kind: "other" }],
    ["no heading", ["Boot", "2"], { kind: "none" }],
    ["a row", ["22:00", "41.2", "40"], { kind: "none" }],
  ] as const)("%s", (_, cells, found) => {
    expect(readHeadingAgain(cells, headings, [0])).toEqual(found);
  });
  it("tells two columns of one heading apart by their order", () => {
    expect(readHeadingAgain(["Temp", "Time", "Temp"], ["Time", "Temp", "Temp"], [0])).toEqual({
      kind: "moved",
      places: [1, 0, 2],
    });
  });
});

describe("createHeadingFollower", () => {
  it("puts cells back until the first heading stands again", () => {
    const follower = createHeadingFollower(headings, [0]);
    expect(follower.follow(["Time", "Bath C", "Jar C"], 9)).toBe(true);
    expect(follower.inPlace(["22:00", "40", "38"])).toEqual(["22:00", "38", "40"]);
    follower.reset();
    expect(follower.inPlace(["22:00", "38", "40"])).toEqual(["22:00", "38", "40"]);
    expect(follower.movedAt()).toBe(9);
  });
  it("complains of other columns only where readings stand under them", () => {
    const follower = createHeadingFollower(headings, [0]);
    follower.follow(["Time", "Lid C"], 9);
    expect(follower.other()).toBeNull();
    follower.reading();
    expect(follower.other()).toEqual({ line: 9, found: "Time, Lid C" });
  });
});

/** Made by hand: what a logger may print after a power cut. */
describe("columns that change in the middle", () => {
  const before = "time,jar C,bath C\n22:00,21.5,30\n22:30,41.2,42\n";

  it("follows another order and back", async () => {
    const file = await read(
      `${before}time,bath C,jar C\n23:00,43,41\n23:30,43.5,41.5\ntime,jar C,bath C\n23:40,41.1,43.1\n`,
    );
    expect([...file.probes[0]!.celsius]).toEqual([21.5, 41.2, 41, 41.5, 41.1]);
    expect([...file.probes[1]!.celsius]).toEqual([30, 42, 43, 43.5, 43.1]);
    expect(file.setAside).toEqual([{ reason: "repeated-header", count: 2, firstLine: 4 }]);
    expect(file.notices).toContainEqual({ code: "columns-moved", facts: { line: 4 } });
  });

  it("a probe fewer: its cells are missing, the other's are its own", async () => {
    const file = await read(`${before}time,bath C\n23:00,43\n23:30,43.5\n`);
    expect([...file.probes[0]!.celsius]).toEqual([21.5, 41.2]);
    expect([...file.probes[1]!.celsius]).toEqual([30, 42, 43, 43.5]);
    expect(file.cellsSetAside).toMatchObject([{ reason: "missing", count: 2, firstLine: 5 }]);
  });

  it("refuses other columns, but not a table below the readings", async () => {
    expect(await problemOf(`${before}time,lid C,bath C\n23:00,43,41\n`)).toEqual({
      code: "columns-changed",
      facts: { file: "night.csv", line: 4, found: "time, lid C, bath C" },
    });
    const file = await read(`${before}23:00,41,42\nStatistic,Time,Temperature\nMax,,43\n`);
    expect(file.setAside).toEqual([{ reason: "trailer", count: 2, firstLine: 5 }]);
  });
});
