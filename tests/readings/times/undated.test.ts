import { describe, expect, it } from "vitest";
import { readTimeHeading } from "../../../src/readings/times/time-heading.ts";
import { readUndated } from "../../../src/readings/times/undated.ts";
import { foundTimes } from "./time-rows.ts";

const hour = 3600;
const facts = {
  days: false,
  minutesSeconds: false,
  twoPart: false,
  half: false,
  largest: 20 * hour,
  longestBack: 0,
};

describe("readUndated", () => {
  const two = { ...facts, twoPart: true };
  it.each([
    ["hours below 24", facts, "Time", "clock"],
    ["hours below 24, elapsed", facts, "Elapsed", "elapsed"],
    ["hours beyond 24", { ...facts, largest: 25 * hour }, "Time", "elapsed"],
    ["24:00:00 and no more", { ...facts, largest: 24 * hour }, "Time", "clock"],
    ["AM and PM under elapsed", { ...facts, half: true }, "Elapsed", "clock"],
    ["days counted", { ...facts, days: true }, "Time", "elapsed"],
    ["two parts below 24", two, "Time", "clock"],
    ["two parts below 24, minutes said", two, "mm:ss", "minutes-seconds"],
    ["two parts beyond 59", { ...two, largest: 60 * hour }, "Time", "minutes-seconds"],
    ["two parts, 24 to 59, rising", { ...two, largest: 30 * hour }, "Time", "elapsed"],
    [
      "two parts, 24 to 59, once back",
      { ...two, largest: 30 * hour, longestBack: hour },
      "Time",
      "undecidable",
    ],
    ["two parts, 24 to 59, hours said", { ...two, largest: 30 * hour }, "h:mm", "elapsed"],
    [
      "two parts, back from 59 to 0",
      { ...two, largest: 59 * hour, longestBack: 59 * hour },
      "Time",
      "minutes-seconds",
    ],
  ])("%s", (_name, known, heading, expected) => {
    expect(readUndated(known, readTimeHeading([heading]))).toBe(expected);
  });
});

describe("createUndatedAccumulator", () => {
  it("runs elapsed times on that start again at 24 hours", () => {
    const rows = ["23:59:50", "23:59:55", "00:00:00", "00:00:05"];
    expect(
      Array.from(foundTimes(rows, { headings: ["Elapsed"] }).seconds, (value) => value - 86390),
    ).toEqual([0, 5, 10, 15]);
  });
  it("heeds an offset behind a clock", () => {
    const found = foundTimes(["22:30:00+01:00", "22:30:05+01:00"]);
    expect(found.startWallClock).toBe(81_000_000);
  });
});
