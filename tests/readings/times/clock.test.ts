import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recogniseTimes } from "../../../src/readings/times/clock.ts";
import { foundTimes, problemOf, readTimes, secondsFrom } from "./time-rows.ts";

const start = Date.UTC(2026, 10, 25, 22, 30, 5);

/** Stamps made by hand; each pair or triple is 22:30:05 and 22:30:10 on 25 November 2026. */
const written: readonly (readonly [string, readonly (string | readonly string[])[]])[] = [
  ["ISO with a space", ["2026-11-25 22:30:05", "2026-11-25 22:30:10"]],
  ["ISO with T", ["2026-11-25T22:30:05", "2026-11-25T22:30:10"]],
  ["ISO with fraction and Z", ["2026-11-25T22:30:05.000Z", "2026-11-25T22:30:10.000Z"]],
  ["ISO with decimal comma", ["2026-11-25T22:30:05,0", "2026-11-25T22:30:10,0"]],
  ["ISO with offset", ["2026-11-25T22:30:05+01:00", "2026-11-25T22:30:10+01:00"]],
  ["ISO with short offset", ["2026-11-25 22:30:05-0530", "2026-11-25 22:30:10 -05:30"]],
  ["ISO basic", ["20261125T223005Z", "20261125T223010Z"]],
  ["one number", ["20261125223005", "20261125223010"]],
  ["year first, slashes", ["2026/11/25 22:30:05", "2026/11/25 22:30:10"]],
  ["year first, dots", ["2026.11.25 22:30:05", "2026.11.25 22:30:10"]],
  ["year first, dots and spaces", ["2026. 11. 25. 22:30:05", "2026. 11. 25. 22:30:10"]],
  ["day first, slashes", ["25/11/2026 22:30:05", "25/11/2026 22:30:10"]],
  ["day first, dots", ["25.11.2026 22:30:05", "25.11.2026 22:30:10"]],
  ["day first, dots in the time", ["25.11.2026 22.30.05", "25.11.2026 22.30.10"]],
  ["day first, dashes", ["25-11-2026, 22:30:05", "25-11-2026, 22:30:10"]],
  ["day first, two-digit year", ["25.11.26 22:30:05", "25.11.26 22:30:10"]],
  ["month first", ["11/25/2026 22:30:05", "11/25/2026 22:30:10"]],
  ["month first, 12 hours", ["11/25/2026 10:30:05 PM", "11/25/2026 10:30:10 PM"]],
  ["month first, short", ["11/25/26 10:30:05 pm", "11/25/26 10:30:10 pm"]],
  ["dotted halves", ["25/11/2026 10:30:05 p.m.", "25/11/2026 10:30:10 p. m."]],
  ["narrow space", ["11/25/2026, 10:30:05\u202fPM", "11/25/2026, 10:30:10\u202fPM"]],
  ["time before date", ["22:30:05 25/11/2026", "22:30:10 25/11/2026"]],
  ["12 hours before date", ["10:30:05 PM 11/25/2026", "10:30:10 PM 11/25/2026"]],
  ["month's name", ["25 Nov 2026 22:30:05", "25 Nov 2026 22:30:10"]],
  ["month's name first", ["Nov 25, 2026 10:30:05 PM", "November 25th, 2026 10:30:10 PM"]],
  ["month's name, dashes", ["25-Nov-26 22:30:05", "25-Nov-2026 22:30:10"]],
  ["weekday in front", ["Wed, 25 Nov 2026 22:30:05", "Wed, 25 Nov 2026 22:30:10"]],
  ["C's asctime", ["Wed Nov 25 22:30:05 2026", "Wed Nov 25 22:30:10 2026"]],
  ["web server's log", ["25/Nov/2026:22:30:05 +0100", "25/Nov/2026:22:30:10 +0100"]],
  ["French", ["mer. 25 nov. 2026 à 22h30m05", "mer. 25 nov. 2026 à 22h30m10"]],
  ["German", ["Mittwoch, 25. November 2026 um 22:30:05 Uhr", "25. Nov. 2026 22:30:10 Uhr"]],
  ["Spanish", ["25 de noviembre de 2026 22:30:05", "25 de nov. de 2026 22:30:10"]],
  [
    "script engine's text",
    ["Wed Nov 25 2026 22:30:05 GMT+0100 (CET)", "Wed Nov 25 2026 22:30:10 GMT+0100 (CET)"],
  ],
  ["zone's abbreviation", ["2026-11-25 22:30:05 CET", "2026-11-25 22:30:10 CET"]],
  [
    "two columns",
    [
      ["25/11/2026", "22:30:05"],
      ["25/11/2026", "22:30:10"],
    ],
  ],
  [
    "three columns",
    [
      ["11/25/2026", "10:30:05", "PM"],
      ["11/25/2026", "10:30:10", "PM"],
    ],
  ],
  [
    "time column first",
    [
      ["22:30:05", "2026-11-25"],
      ["22:30:10", "2026-11-25"],
    ],
  ],
];

describe("stamps with a date", () => {
  it.each(written)("%s", (_name, rows) => {
    const found = foundTimes(rows);
    expect(found.startWallClock).toBe(start);
    expect(found.seconds[1]! - found.seconds[0]!).toBe(5);
    expect(found.format).toBe(rows[0]!.length < 4 ? "date-and-time-columns" : "date-time");
  });

  it("heeds the offset of each stamp and tells the local wall clock of the first", () => {
    // 23:59 at +01:00 and 00:00 at +02:00 an hour apart the other way: instants 22:59Z and 22:00Z.
    const found = foundTimes(["2026-11-25T23:59:00+01:00", "2026-11-26T00:00:00+02:00"]);
    expect(found.seconds[1]! - found.seconds[0]!).toBe(-3540);
    expect(found.startWallClock).toBe(Date.UTC(2026, 10, 25, 23, 59));
  });

  it("takes 12 o'clock as the start of each half of the day", () => {
    const rows = ["11/25/2026 12:05:00 AM", "11/25/2026 12:05:00 PM", "11/25/2026 1:05:00 PM"];
    expect(secondsFrom(rows)).toEqual([0, 43200, 46800]);
    expect(foundTimes(rows).startWallClock).toBe(Date.UTC(2026, 10, 25, 0, 5));
  });

  it("takes 24:00 as the next day's start, and a date alone among stamps as midnight", () => {
    expect(secondsFrom(["25.11.2026 23:59", "25.11.2026 24:00"])).toEqual([0, 60]);
    expect(secondsFrom(["25.11.2026 23:59", "26.11.2026", "26.11.2026 00:01"])).toEqual([
      0, 60, 120,
    ]);
  });
});

describe("times without a date", () => {
  it("runs a clock on over midnight as often as it passes", () => {
    const rows = Array.from({ length: 100 }, (_, index) => `${(22 + index) % 24}:30`);
    expect(secondsFrom(rows)).toEqual(rows.map((_, index) => index * 3600));
    expect(foundTimes(rows).startWallClock).toBe(22.5 * 3600 * 1000);
    expect(foundTimes(rows).format).toBe("clock");
  });

  it("reads 12-hour clocks", () => {
    expect(secondsFrom(["10:30 PM", "11:59 PM", "12:10 AM", "1:00 AM"])).toEqual([
      0, 5340, 6000, 9000,
    ]);
  });

  it("goes round after 12 hours only where the rows then run on", () => {
    const found = foundTimes(["11:30", "12:30", "1:30", "2:30"]);
    expect(Array.from(found.seconds, (value) => value - found.seconds[0]!)).toEqual([
      0, 3600, 7200, 10800,
    ]);
    expect(found.startWallClock).toBeNull();
    expect(problemOf(["9:00", "10:00", "12:00", "7:30"])).toMatchObject({
      code: "time-undecidable",
    });
  });

  it.each([
    ["hours beyond 24", ["0:00:00", "23:59:55", "24:00:05"], {}, [0, 86395, 86405]],
    ["days and a dot", ["23:59:55", "1.00:00:00"], {}, [0, 5]],
    ["days and a letter", ["0d 23:59:55", "1d 02:03:04"], {}, [0, 7389]],
    ["days and a word", ["1 day, 2:03:04", "2 days, 2:03:04"], {}, [0, 86400]],
    ["minutes beyond 59", ["0:00", "30:30", "70:00"], {}, [0, 1830, 4200]],
    ["heading of minutes", ["0:00", "0:30", "1:00"], { headings: ["t (mm:ss)"] }, [0, 30, 60]],
    ["heading of hours", ["0:00", "0:30", "26:00"], { headings: ["t (h:mm)"] }, [0, 1800, 93600]],
    ["hour not shown", ["59:55.0", "00:00.0", "00:05.5"], {}, [0, 5, 10.5]],
    ["heading elapsed", ["0:00:00", "0:00:05"], { headings: ["Elapsed"] }, [0, 5]],
  ] as const)("elapsed: %s", (_name, rows, options, expected) => {
    expect(secondsFrom(rows, options)).toEqual(expected);
    expect(foundTimes(rows, options)).toMatchObject({
      format: "elapsed-clock",
      startWallClock: null,
    });
  });

  it("takes 26:30 for hours where the times rise to the end, and says so", () => {
    const found = foundTimes(["0:00", "13:15", "26:30"]);
    expect(found.format).toBe("elapsed-clock");
    expect([...found.seconds]).toEqual([0, 47_700, 95_400]);
    expect(found.notices).toMatchObject([{ code: "time-decided", facts: { found: "26:30" } }]);
  });

  it("asks where 26:30 may be hours or minutes", () => {
    expect(problemOf(["0:00", "26:30", "13:15"], { file: "night.csv" })).toEqual({
      code: "time-undecidable",
      facts: { file: "night.csv", line: 2, found: "0:00" },
    });
  });
});

describe("numbers", () => {
  it.each([
    ["epoch-seconds", ["1795645805", "1795645810.5"], [], [0, 5.5], start],
    ["epoch-milliseconds", ["1795645805000", "1795645810001"], [], [0, 5.001], start],
    ["epoch-microseconds", ["1795645805000000", "1795645805000001"], [], [0, 1e-6], start],
    ["elapsed-minutes", ["0", "7,5"], ["Elapsed (min)"], [0, 450], null],
    ["elapsed-seconds", ["0", "7.5"], ["t [s]"], [0, 7.5], null],
    ["elapsed-seconds", ["0", "7.5"], ["Time_s"], [0, 7.5], null],
    ["elapsed-hours", ["0.5", "1.25"], ["hours"], [0, 2700], null],
    ["elapsed-minutes", ["1", "2"], ["minutes"], [0, 60], null],
    ["elapsed-milliseconds", ["1000", "6001"], ["millis"], [0, 5.001], null],
    ["elapsed-minutes", ["1.5 min", "2 min"], [], [0, 30], null],
  ] as const)("%s %j", (format, rows, headings, seconds, wallClock) => {
    expect(Date.UTC(2026, 10, 25, 22, 30, 5) / 1000).toBe(1795645805);
    const found = foundTimes(rows, { headings });
    expect(found.format).toBe(format);
    expect(Array.from(found.seconds, (value) => value - found.seconds[0]!)).toEqual(seconds);
    expect(found.startWallClock).toBe(wallClock);
  });

  it("reads a spreadsheet's days: 45000.93056 is 15 March 2023, 22:20", () => {
    const found = foundTimes(["45000.93056", "45000.93062"], { headings: ["Date"] });
    expect(found.format).toBe("spreadsheet-serial");
    expect(found.startWallClock).toBe(Date.UTC(2023, 2, 15, 22, 20, 0));
    expect(found.seconds[1]! - found.seconds[0]!).toBe(6);
  });

  it("asks for the unit where a heading says time and nothing more", () => {
    expect(problemOf(["0", "5", "10"], { headings: ["time"] })).toMatchObject({
      code: "time-undecidable",
    });
  });

  it.each([
    [["1", "2", "3"], ["#"]],
    [["1", "2", "3"], ["No."]],
    [["1", "2", "3"], ["Record"]],
    [["1", "2", "3"], ["index"]],
    [["1", "2", "3"], []],
    [["36.5", "36.6", "36.6"], ["Jar"]],
    [["20.1", "36.6", "38.2"], ["Temp 1h"]],
    [["41.2", "40.9", "41.1", "40.8"], ["min"]],
    [["ERR", "open"], ["Time"]],
    [["2026-11-25", "2026-11-26"], ["Date"]],
    [["", " "], ["Time"]],
    [["12/25", "1:2:3:4:5"], ["Time"]],
  ])("takes %j under %j for no times", (cells, headings) => {
    expect(
      recogniseTimes(
        cells.map((cell) => [cell]),
        { headings },
      ),
    ).toBeNull();
  });
});

describe("broken rows", () => {
  it("turns away what is no time and keeps the rest", () => {
    const rows = ["2026-11-25 22:30:05", "", "2026-13-45 22:30:05", "ERR", "2026-11-25 22:61:05"];
    const found = readTimes([...rows, "2026-11-25 22:30:10", "22:30:15", "2026-11-25 22:30:20"]);
    expect(found.taken).toEqual([true, false, false, false, false, true, false, true]);
    expect(found.ok && found.value.seconds.length).toBe(3);
  });

  it("never throws, and keeps one time for each row it took, whatever the cells hold", () => {
    const alphabet = [
      ..."0123456789-/.:, TZapmPM+dhsNov\u202fé(",
      "2026-11-25 ",
      "22:30:05",
      "1795645805",
    ];
    const cell = fc
      .array(fc.constantFrom(...alphabet), { maxLength: 12 })
      .map((all) => all.join(""));
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 12 }), cell, (cells, heading) => {
        const recogniser = recogniseTimes(
          cells.map((text) => [text]),
          { headings: [heading] },
        );
        if (recogniser === null) return;
        const accumulator = recogniser.createAccumulator();
        const taken = cells.filter((text, index) => accumulator.add([text], index + 1)).length;
        const found = accumulator.finish();
        if (!found.ok) return;
        expect(found.value.seconds.length).toBe(taken);
        expect(found.value.seconds.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 3000, seed: 11 },
    );
  });
});
