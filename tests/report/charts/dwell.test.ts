import { expect, it } from "vitest";
import { dwellImage, dwellParts } from "../../../src/report/charts/dwell.ts";
import { caption } from "../drawing.ts";
import { unprovenNight } from "../sample-analysis.ts";

const piecesOf = (svg: string): number[][] =>
  [...svg.matchAll(/<rect x="([\d.]+)%" width="([\d.]+)%"/g)].map(([, x, width]) => [
    Number(x),
    Number(width),
  ]);

it("splits the hold into below, inside and above, which add up to it", () => {
  const { dwell } = unprovenNight().probes[0]!.verdicts[0]!;
  expect(dwellParts(dwell!, 7)).toEqual({ below: 20, inside: 174, above: 226 });
  expect(dwellParts(dwell!, 1).inside).toBe(0);
});

it("makes the parts of the strip as long as they lasted, one behind the other", () => {
  expect(piecesOf(dwellImage({ below: 20, inside: 300, above: 80 }, caption))).toEqual([
    [0, 5],
    [5, 75],
    [80, 20],
  ]);
});

it("draws no part that took no time", () => {
  expect(piecesOf(dwellImage({ below: 0, inside: 5, above: 0 }, caption))).toEqual([[0, 100]]);
});
