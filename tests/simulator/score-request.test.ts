import { describe, expect, it } from "vitest";
import { optionValues, requestOf } from "./score-request.ts";

const typed = ["--low", "37", "--high", "40.5", "--hours", "12", "--run-to-run", "0"];

describe("optionValues", () => {
  it("takes both ways of writing and keeps what comes twice", () => {
    const values = optionValues(["--correction=-0.3", "--probe", "A=bath", "--probe", "B=room"]);
    expect(values.get("--correction")).toEqual(["-0.3"]);
    expect(values.get("--probe")).toEqual(["A=bath", "B=room"]);
  });
});

const open = ["--interval", "5s", "--date-order", "day-first", "--unit", "F"];

describe("requestOf", () => {
  it("reads a window, an accuracy as a rectangle and the room", () => {
    const request = requestOf([...typed, "--thermometer-accuracy", "0.5", "--room", "17.5..23"]);
    expect(request.requirements).toEqual([
      { culture: "window", name: "", low: 37, high: 40.5, ceiling: null, hours: 12, share: 0.95 },
    ]);
    // +-A rectangular: A / sqrt(3), JCGM 100:2008, 4.3.7.
    expect(request.thermometer?.standardUncertainty).toBeCloseTo(0.288675, 6);
    expect(request.room).toEqual({ low: 17.5, high: 23 });
    expect(request.runToRun).toBe(0);
  });

  it("reads a correction, a ceiling and what a file leaves open", () => {
    const request = requestOf([
      ...typed,
      "--ceiling",
      "42",
      "--correction=-0.4",
      "--correction-uncertainty",
      "0.1",
      "--probe",
      "T (=2)=bath",
      ...open,
    ]);
    expect(request.requirements[0]?.ceiling).toBe(42);
    expect(request.thermometer).toMatchObject({ correction: -0.4, standardUncertainty: 0.1 });
    expect(request.reading).toEqual({
      roles: new Map([["T (=2)", "bath"]]),
      intervalSeconds: 5,
      dateOrder: "day-first",
      unit: "degF",
    });
    expect(request.room).toBeNull();
  });
});
