import { describe, expect, it } from "vitest";
import { createScan, scanStamp } from "../../../src/readings/times/scan.ts";
import { createTemplate } from "../../../src/readings/times/template.ts";

const learnt = (...cells: string[]) => {
  const scan = createScan();
  const template = createTemplate();
  expect(scanStamp(scan, cells)).toBe(true);
  template.learn(scan, cells);
  const numbers = (): number[] =>
    [...scan.values.subarray(0, scan.length)].filter((value) => value !== 0);
  return { fill: (...next: string[]) => template.fill(scan, next), numbers, template };
};

describe("createTemplate", () => {
  it("fills in the numbers of cells that differ in digits alone", () => {
    const { fill, numbers } = learnt("25/11/2026", "22:30:05.250");
    expect(fill("26/12/2027", "23:31:06.375")).toBe(true);
    expect(numbers()).toEqual([26, 12, 2027, 23, 31, 6, 375]);
  });
  it.each([
    [["25/11/2026"]],
    [["25/11/2026", "22:30:5"]],
    [["25-11-2026", "22:30:05"]],
    [["25/11/2026", "22:3a:05"]],
    [["25/11/202", "622:30:05"]],
    [[]],
  ])("does not match %j", (cells) => {
    expect(learnt("25/11/2026", "22:30:05").fill(...cells)).toBe(false);
  });
  it("matches words only as they are", () => {
    expect(learnt("25 Nov 2026 10:30 PM").fill("26 Nov 2026 11:30 PM")).toBe(true);
    expect(learnt("25 Nov 2026 10:30 PM").fill("26 Dec 2026 11:30 PM")).toBe(false);
    expect(learnt("25 Nov 2026 10:30 PM").fill("26 Nov 2026 11:30 AM")).toBe(false);
  });
  it("learns nothing where digits are no numbers of their own", () => {
    expect(learnt("20261125223005").fill("20261125223005")).toBe(false);
    expect(learnt("22:30 (1)").fill("22:30 (1)")).toBe(false);
  });
  it("forgets", () => {
    const { fill, template } = learnt("22:30");
    template.clear();
    expect(fill("22:30")).toBe(false);
    expect(fill()).toBe(false);
  });
});
