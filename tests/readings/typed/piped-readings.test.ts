import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/problem.ts";
import { pipedReadings } from "../../../src/readings/typed/piped-readings.ts";
import type { PipedOptions } from "../../../src/readings/typed/piped-readings.ts";
import { typedCsv } from "../../../src/readings/typed/typed-csv.ts";
import { morning, shown, wall } from "./typed-helpers.ts";

const usual: PipedOptions = {
  probes: ["Jar"],
  unit: null,
  usualUnit: "degC",
  firstDay: null,
  now: morning,
};

const logOf = (text: string, options: Partial<PipedOptions> = {}) => {
  const log = pipedReadings(text, { ...usual, ...options });
  if (!log.ok) throw new Error(problemText(log.problem));
  return log.value;
};
const refusal = (text: string, options: Partial<PipedOptions> = {}): string => {
  const log = pipedReadings(text, { ...usual, ...options });
  return log.ok ? `read as ${typedCsv(log.value)}` : problemText(log.problem);
};

describe("pipedReadings", () => {
  it("reads a night, with blank lines, comments and any line ends", () => {
    const text =
      "\uFEFF# step cooker\r\n21:30 20.1\r\n\r\n23:50 41,2 # lid\r\n0:40 41.1\n7:00 41.0";
    const log = logOf(text);
    expect(shown(log)).toEqual([
      "2026-10-03 21:30 20.1",
      "2026-10-03 23:50 41.2",
      "2026-10-04 00:40 41.1",
      "2026-10-04 07:00 41.0",
    ]);
    expect(log.readings[1]?.comment).toBe("lid");
  });

  it("sets a night typed the next evening on the night that is past", () => {
    const log = logOf("21:30 20.1\n23:00 41\n7:00 41.0", { now: wall("2026-10-04 22:00") });
    expect(shown(log)[0]).toBe("2026-10-03 21:30 20.1");
    expect(shown(log)[2]).toBe("2026-10-04 07:00 41.0");
  });

  it("begins on the date said", () => {
    const firstDay = wall("2026-09-01 00:00") / 86_400;
    expect(shown(logOf("21:30 20.1\n7:00 41", { firstDay }))[1]).toBe("2026-09-02 07:00 41");
  });

  it("takes the unit as said, else by the letter anywhere, else as usual", () => {
    expect(logOf("21:30 105.8\n7:00 106", { unit: "degF" }).unit).toBe("degF");
    expect(logOf("21:30 105.8\n7:00 106F").unit).toBe("degF");
    expect(logOf("21:30 105.8\n7:00 106", { usualUnit: "degF" }).unit).toBe("degF");
    expect(logOf("21:30 41\n7:00 41").unit).toBe("degC");
    expect(shown(logOf("21:30 41.0C\n7:00 105.8F"))[1]).toContain("41.00");
  });

  it.each([
    ["21:30 20.1\n22.30 41.2", "Line 2: Expected a time and a temperature"],
    ["21:30 20.1\n\n22:30 warm", "Line 3: Expected a temperature"],
    ["21:30 20.1\n21:30 20.2", "Line 2: Expected a time that has no reading yet"],
    ["23:30 41\n23:10 41", "Line 2: 23:10 is 20 min before the last reading"],
    ["21:30 41\n22:30 412", "Line 2: 412 is outside -40..130 degC"],
    ["21:30 105.8\n22:30 106", "Line 1: 105.8 is hotter than boiling water in degC"],
    ["+15 41\n22:30 41", "Line 1: Expected a clock's time for the first reading"],
    ["2026-10-05 21:30 41\n7:00 41", "still to come by this computer's clock"],
    ["21:30 41", "at least two readings, found 1."],
    ["", "at least two readings"],
    ["PK\u0003\u0004\0\0", "Line 1: Expected"],
  ])("%j is refused: %s", (text, words) => {
    expect(refusal(text)).toContain(words);
  });

  it("takes what looks odd where the line says that it is right", () => {
    expect(refusal("21:30 20.1\n22:30 88.0")).toContain('put "!" at the end of the line');
    expect(shown(logOf("21:30 20.1\n22:30 88.0 !"))[1]).toContain("88.0");
    expect(shown(logOf("23:30 41\n23:10 40 ! # forgotten"))[0]).toBe("2026-10-03 23:10 40");
  });

  it("turns away what no hand has typed", () => {
    const text = Array.from({ length: 10_001 }, () => "+1 41").join("\n");
    expect(refusal(`21:30 41\n${text}`)).toContain("Give a logger's file to add");
  });
});
