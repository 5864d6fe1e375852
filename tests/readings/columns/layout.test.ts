import { describe, expect, it } from "vitest";
import { sampleRecords } from "../../../src/readings/text/dialect.ts";
import { findLayout } from "../../../src/readings/columns/layout.ts";

const layoutOf = (...lines: string[]) => findLayout(sampleRecords(lines.join("\n"), ","));

describe("findLayout", () => {
  it("finds heading and units under a preamble of another shape", () => {
    const layout = layoutOf(
      "Logger 3",
      "Serial,10442",
      "",
      "time,temp,x",
      "s,C,V",
      "0,21.5,3",
      "1,41.2,3",
    );
    expect(layout).toMatchObject({
      headings: ["time", "temp", "x"],
      headerLine: 4,
      units: ["s", "C", "V"],
      firstRow: 4,
      columnCount: 3,
    });
    expect(layout?.preamble).toHaveLength(2);
  });

  it("counts a damaged first row as a row", () => {
    expect(layoutOf("time,temp", "2x:00,21.5", "22:30,41.2", "23:00,41")).toMatchObject({
      headerLine: 1,
      firstRow: 1,
    });
  });

  it("knows a file without heading, and one without rows", () => {
    expect(layoutOf("22:00,21.5", "22:30,41.2")).toMatchObject({
      headings: null,
      headerLine: null,
      firstRow: 0,
    });
    expect(layoutOf("a letter to a friend", "in two lines")).toBeNull();
  });

  it("moves headings that leave out the row names", () => {
    expect(layoutOf("time,temp", "1,22:00,21.5", "2,22:30,41.2")?.headings).toEqual([
      "",
      "time",
      "temp",
    ]);
  });

  it("cuts a heading written with blanks over cells", () => {
    expect(layoutOf("Reading Time Temp", "1,22:00,21.5", "2,22:30,41.2")?.headings).toEqual([
      "Reading",
      "Time",
      "Temp",
    ]);
  });

  it("takes the heading with the most meaning, not a block about sensors", () => {
    expect(
      layoutOf(
        "Sensor,Type,Serial",
        "1,NTC,442",
        "2,NTC,443",
        "Time,Jar,Bath",
        "22:00,21.5,22",
        "22:30,41.2,42",
      )?.headerLine,
    ).toBe(4);
  });
});
