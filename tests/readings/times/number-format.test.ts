import { describe, expect, it } from "vitest";
import { numberFormat } from "../../../src/readings/times/number-format.ts";

const format = (cells: readonly string[], ...headings: string[]) => numberFormat(cells, headings);

describe("numberFormat", () => {
  it("knows instants by their size: 2001-09-09 and 2100 bound ten digits", () => {
    expect(format(["1000000000", "1000000005"])?.format).toBe("epoch-seconds");
    expect(format(["999999999", "1000000005"])).toBeNull();
    expect(format(["1795645805000"])?.format).toBe("epoch-milliseconds");
  });
  it("lets the unit in the heading go before a spreadsheet's range", () => {
    expect(format(["20000.5", "20005.5"], "Time (s)")?.format).toBe("elapsed-seconds");
    expect(format(["45000.5", "45000.6"], "Time")?.format).toBe("spreadsheet-serial");
    expect(format(["45000.5", "45000.6"])?.format).toBe("spreadsheet-serial");
  });
  it("takes no whole numbers, and no steps of days, for a spreadsheet's days", () => {
    expect(format(["45000", "45001"])).toBeNull();
    expect(format(["45000.5", "45010.5", "45020.5"])).toBeNull();
  });
  it("asks for the unit under a heading that only says time", () => {
    expect(format(["0", "5"], "Time")?.origin).toBe("undecidable");
    expect(format(["0", "5"], "Elapsed")?.origin).toBe("undecidable");
  });
  it.each([
    ["falling numbers", ["9", "7", "5"], "Time (s)"],
    ["numbers to and fro", ["41.2", "40.9", "41.3", "40.8", "41.1"], "min"],
    ["a row's number", ["1", "2"], "Record no."],
    ["a temperature", ["20", "30"], "Temp 5 min"],
    ["nothing", [], "Time (s)"],
  ] as const)("takes %s for no times", (_name, cells, heading) => {
    expect(format(cells, heading)).toBeNull();
  });
  it("allows for rows out of order", () => {
    const cells = ["0", "5", "10", "15", "20", "18", "25", "30"];
    expect(format(cells, "t [s]")?.format).toBe("elapsed-seconds");
  });
});
