import { describe, expect, it } from "vitest";
import {
  dialectFits,
  dialectOptions,
  probeOptions,
  sampleDialect,
  writeDialect,
} from "./dialect.ts";
import { timeStyles, type Dialect, type Table, type TimeStyle } from "./dialect-types.ts";

const plain: Dialect = {
  seed: 1,
  encoding: "utf-8",
  delimiter: ",",
  decimal: ".",
  newline: "\n",
  quoting: "needed",
  time: "iso",
  language: "en",
  header: true,
  headerEvery: 0,
  unit: "degC",
  unitPlace: "header",
  unitStyle: 0,
  preamble: "none",
  trailer: "none",
  numbered: false,
  timeLast: false,
  extras: [],
  flag: "ERR",
  shortTimes: false,
  plainNames: false,
};

const table: Table = {
  seconds: Float64Array.of(0, 60, 7200),
  startWallClock: Date.UTC(2024, 0, 5, 22, 30),
  resolution: 0.1,
  columns: [{ role: "food", celsius: Float64Array.of(21.5, NaN, 38) }],
};

const text = (change: Partial<Dialect> = {}): string =>
  new TextDecoder().decode(writeDialect(table, { ...plain, ...change }));
const times = (time: TimeStyle, change: Partial<Dialect> = {}): readonly string[] =>
  text({ ...change, time })
    .split("\n")
    .slice(1, 4)
    .map((line) => line.split(",").slice(0, -1).join(","));

describe("writeDialect", () => {
  it("writes a plain table", () => {
    expect(text()).toBe(
      "Date/Time,Temperature (°C)\n2024-01-05T22:30:00,21.5\n2024-01-05T22:31:00,ERR\n2024-01-06T00:30:00,38.0\n",
    );
  });

  it("writes the time in every style", () => {
    expect(times("day-first dots")[2]).toBe("06.01.2024 00:30:00");
    expect(times("month-first 12 h")).toEqual([
      "1/5/2024 10:30:00 PM",
      "1/5/2024 10:31:00 PM",
      "1/6/2024 12:30:00 AM",
    ]);
    expect(times("clock only 12 h", { shortTimes: true })).toEqual([
      "10:30 PM",
      "10:31 PM",
      "12:30 AM",
    ]);
    expect(times("date and time columns, day-first")[0]).toBe("05.01.2024,22:30:00");
    expect(times("elapsed clock")).toEqual(["0:00:00", "0:01:00", "2:00:00"]);
    expect(times("elapsed minutes")[2]).toBe("120.000");
    expect(times("epoch seconds")[0]).toBe("1704493800");
    // Serial days: 2024-01-05 is day 45296 in the usual spreadsheet count (1900-01-01 is day 1).
    expect(times("spreadsheet serial")[2]).toBe("45297.0208333");
    expect(times("iso with offset")[0]).toBe("2024-01-05T22:30:00+01:00");
    expect(times("index only")).toEqual(["", "", ""]);
  });

  it("quotes what holds the delimiter", () => {
    expect(text({ decimal: "," })).toContain('2024-01-05T22:30:00,"21,5"\n');
    expect(text({ quoting: "all" })).toContain('"2024-01-05T22:30:00","21.5"\n');
    expect(text({ delimiter: ";", decimal: "," })).toContain("2024-01-05T22:30:00;21,5\n");
  });

  it("converts to degF with the unit where it is wanted", () => {
    expect(text({ unit: "degF", unitPlace: "cell" })).toContain(",70.70 °F\n");
    expect(text({ unit: "degF" })).toContain("Temperature (°F)");
    expect(text({ unit: "degF", unitPlace: "nowhere" })).not.toMatch(/°|F/);
  });

  it("marks its encoding", () => {
    const start = (encoding: Dialect["encoding"]): readonly number[] =>
      Array.from(writeDialect(table, { ...plain, encoding }).subarray(0, 4));
    expect(start("utf-8 with mark")).toEqual([0xef, 0xbb, 0xbf, 0x44]);
    expect(start("utf-16le")).toEqual([0xff, 0xfe, 0x44, 0x00]);
    expect(start("utf-16be")).toEqual([0xfe, 0xff, 0x00, 0x44]);
    const narrow = writeDialect(table, { ...plain, encoding: "windows-1252" });
    expect(new TextDecoder("windows-1252").decode(narrow)).toBe(text());
  });

  it("puts lines around and columns beside the readings", () => {
    const full = text({
      preamble: "pairs",
      trailer: "summary",
      numbered: true,
      extras: ["humidity", "status"],
    });
    const lines = full.split("\n");
    expect(lines[0]).toBe("Device,temperature logger");
    expect(lines).toContain("No.,Date/Time,Temperature (°C),Humidity (%RH),Status");
    expect(lines.find((line) => line.startsWith("3,"))).toMatch(
      /^3,2024-01-06T00:30:00,38\.0,[\d.]+,STOP$/,
    );
    expect(lines.at(-2)).toBe("Average,29.75");
  });
});

const startedAt = (month: number, day: number, hours: number): Table => ({
  ...table,
  seconds: Float64Array.of(0, 60, hours * 3600),
  startWallClock: Date.UTC(2024, month, day, 20),
});

const options = (time: TimeStyle, month: number, day: number, hours: number) =>
  dialectOptions(startedAt(month, day, hours), { ...plain, time });

describe("dialectOptions", () => {
  it("are none where the file says it all", () => {
    for (const time of timeStyles.filter((style) => style !== "index only"))
      expect(options(time, 2, 17, 12)).toEqual([]);
  });

  it("ask for the order of dates that one day leaves open", () => {
    expect(options("day-first slashes", 2, 4, 3)).toEqual(["--date-order", "day-first"]);
    expect(options("month-first slashes", 2, 4, 3)).toEqual(["--date-order", "month-first"]);
    expect(options("day-first slashes", 2, 4, 8)).toEqual([]);
    expect(options("day-first slashes", 2, 3, 3)).toEqual([]);
  });

  it("ask for the interval of an index and for a unit that is nowhere", () => {
    expect(options("index only", 2, 17, 12)).toEqual(["--interval", "60s"]);
    const bare = { ...plain, unit: "degF", unitPlace: "nowhere" } as const;
    expect(dialectOptions(table, bare)).toEqual(["--unit", "F"]);
  });
});

describe("dialectFits", () => {
  it("wants even readings for an index and one probe for a file without headings", () => {
    expect(dialectFits(table, { ...plain, time: "index only" })).toBe(false);
    const even = { ...table, seconds: Float64Array.of(0, 5, 10) };
    expect(dialectFits(even, { ...plain, time: "index only" })).toBe(true);
    const two = {
      ...table,
      columns: [table.columns[0]!, { ...table.columns[0]!, role: "bath" as const }],
    };
    expect(dialectFits(two, { ...plain, header: false })).toBe(false);
    expect(probeOptions(two, plain)).toEqual(["--probe", "Bath temperature (°C)=bath"]);
  });
});

describe("sampleDialect", () => {
  it("repeats itself and reaches every style and encoding", () => {
    expect(sampleDialect(9)).toEqual(sampleDialect(9));
    const drawn = Array.from({ length: 500 }, (_, seed) => sampleDialect(seed));
    expect(new Set(drawn.map(({ time }) => time)).size).toBe(timeStyles.length);
    expect(new Set(drawn.map(({ encoding }) => encoding)).size).toBe(5);
    expect(new Set(drawn.map(({ delimiter }) => delimiter)).size).toBe(4);
  });
});
