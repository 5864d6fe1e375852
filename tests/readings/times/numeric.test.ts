import { describe, expect, it } from "vitest";
import {
  createNumericAccumulator,
  timeNumber,
  unitBehind,
} from "../../../src/readings/times/numeric.ts";

describe("timeNumber", () => {
  it.each([
    ["12", 12],
    [" 12.5 ", 12.5],
    ["12,5", 12.5],
    [".5", 0.5],
    ["-3", -3],
    ["1.5e3", 1500],
    ["12.5 min", 12.5],
  ])("%s", (cell, value) => expect(timeNumber(cell)).toBe(value));
  it.each(["", " ", "0x10", "Infinity", "1,234.5", "22:30", "1 2", "min"])("%j is none", (cell) =>
    expect(timeNumber(cell)).toBeNaN(),
  );
});

describe("unitBehind", () => {
  it("is what stands after the number", () => {
    expect(unitBehind("12.5 min")).toBe("min");
    expect(unitBehind("12.5")).toBe("");
  });
});

describe("createNumericAccumulator", () => {
  const serial = {
    format: "spreadsheet-serial",
    secondsEach: 86400,
    perSecond: 1,
    origin: "serial",
  } as const;
  const run = (cells: readonly string[], decimals: number): number[] => {
    const resolution = 86400 / 10 ** decimals;
    const accumulator = createNumericAccumulator({ ...serial, resolution }, {});
    for (const [row, cell] of cells.entries()) accumulator.add([cell], row + 2);
    const found = accumulator.finish();
    return found.ok ? Array.from(found.value.seconds) : [];
  };

  it("rounds a spreadsheet's days to the whole seconds they were made from", () => {
    for (const decimals of [5, 6, 8, 10]) {
      const seconds = Array.from({ length: 500 }, (_, row) => 3600 + row * 5);
      const cells = seconds.map((value) => (45000 + value / 86400).toFixed(decimals));
      expect(run(cells, decimals)).toEqual(seconds);
    }
  });

  it("keeps parts of seconds where the cells show them", () => {
    const cells = [0.25, 0.75, 1.25].map((value) => (45000 + value / 86400).toFixed(9));
    expect(run(cells, 9)).toEqual([0.25, 0.75, 1.25]);
  });

  it("turns away what is no number", () => {
    const accumulator = createNumericAccumulator({ ...serial, resolution: 1 }, {});
    expect(accumulator.add(["ERR"], 2)).toBe(false);
    expect(accumulator.finish()).toMatchObject({
      ok: false,
      problem: { code: "time-undecidable" },
    });
  });
});
