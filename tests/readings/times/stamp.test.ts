import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createStampReader } from "../../../src/readings/times/stamp.ts";

const read = (...cells: string[]) => {
  const reader = createStampReader();
  return reader.read(cells) ? { ...reader.stamp } : null;
};

describe("createStampReader", () => {
  it("reads the parts of a stamp", () => {
    expect(read("2026-11-25T22:30:05.25+01:30")).toMatchObject({
      year: 2026,
      month: 11,
      day: 25,
      seconds: 81005.25,
      offset: 5400,
      timed: true,
    });
    expect(read("25/11/26 12:05 AM")).toMatchObject({
      year: 2026,
      month: 25,
      day: 11,
      seconds: 300,
      shortYear: true,
    });
    expect(read("22:30 PM")).toMatchObject({ seconds: 81000, offset: NaN });
    expect(read("2.03:00:00")).toMatchObject({ seconds: 2 * 86400 + 10800 });
    expect(read("2026-11-25")).toMatchObject({ timed: false });
  });

  it.each(["22:60", "22:30:60", "2026-11-25 25:00", "2026-11-25 24:01", "20261125 226000"])(
    "turns away %s",
    (cell) => expect(read(cell)).toBeNull(),
  );

  it("reads each stamp by its own shape, whatever came before", () => {
    const reader = createStampReader();
    const cells = [
      "25.11.2026 22:30",
      "junk",
      "2026-11-25 22:31",
      "25.11.2026 22:32",
      "25.11.2026",
      "25.11.2026 22:33:05",
    ];
    const seconds = cells.map((cell) => (reader.read([cell]) ? reader.stamp.seconds : null));
    expect(seconds).toEqual([81000, null, 81060, 81120, 0, 81185]);
  });
});

describe("the way by positions", () => {
  const cells = [
    "2026-11-25 22:30:05",
    "2026-11-25 22:30:10",
    "2026-12-01 00:00:15",
    "2026-11-25 22:61:05",
    "2026-11-25 22:3a:05",
    "2026-11-25T22:30:05",
    "25.11.2026 22:30:05",
    "26.11.2026 22:30:05",
    "25 Nov 2026 10:30 PM",
    "25 Dec 2026 10:30 AM",
    "20261125223005",
    "20261125223010",
    "22:30:05 (1)",
    "22:30:05 (2)",
    "1.22:30:05",
    "",
    "junk",
  ];
  it("reads each stamp as a new reader would, in whatever order they come", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...cells), { maxLength: 40 }), (rows) => {
        const reader = createStampReader();
        for (const row of rows)
          expect([row, reader.read([row]) ? { ...reader.stamp } : null]).toEqual([row, read(row)]);
      }),
      { numRuns: 500, seed: 5 },
    );
  });
  it("does not carry one layout's parts over to another", () => {
    const reader = createStampReader();
    for (const row of ["25.11.26 22:30", "25.11.26 22:31", "2026-11-25 22:31"]) reader.read([row]);
    expect(reader.stamp.shortYear).toBe(false);
  });
});
