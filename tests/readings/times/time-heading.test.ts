import { describe, expect, it } from "vitest";
import { readTimeHeading } from "../../../src/readings/times/time-heading.ts";

describe("readTimeHeading", () => {
  it.each([
    ["Elapsed (min)", { unit: "minutes", elapsed: true }],
    ["t [s]", { unit: "seconds", time: true }],
    ["Time_s", { unit: "seconds", time: true }],
    ["timeMs", { unit: "milliseconds", time: true }],
    ["Zeit in Stunden", { unit: "hours", time: true }],
    ["Temps écoulé (h)", { unit: "hours", elapsed: true, time: true, other: false }],
    ["Duration", { unit: null, elapsed: true }],
    ["Time", { unit: null, time: true, other: false }],
    ["hh:mm", { parts: "hours-minutes" }],
    ["Zeit [h:mm:ss]", { parts: "hours-minutes" }],
    ["t (mm:ss)", { parts: "minutes-seconds" }],
    ["month minute", { parts: null }],
    ["#", { other: true, time: false }],
    ["No.", { other: true, time: false }],
    ["Record", { other: true, time: false }],
    ["Temp (C)", { other: true, time: false, unit: null }],
    ["Jar", { unit: null, elapsed: false, time: false, parts: null, other: false }],
  ])("%s", (heading, expected) => expect(readTimeHeading([heading])).toMatchObject(expected));
});
