import { expect, it } from "vitest";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { dwellParts, dwellSpec } from "../../../src/report/charts/dwell.ts";
import { draw } from "../drawing.ts";
import { unprovenNight } from "../sample-analysis.ts";

const lengthsOf = (svg: string): number[] =>
  [...svg.matchAll(/d="M[\d.]+,0h([\d.]+)v26/g)].map(([, length]) => Number(length));

it("splits the hold into below, inside and above, which add up to it", () => {
  const { dwell } = unprovenNight().probes[0]!.verdicts[0]!;
  expect(dwellParts(dwell!, 7)).toEqual({ below: 20, inside: 174, above: 226 });
  expect(dwellParts(dwell!, 1).inside).toBe(0);
});

it("makes the parts of the strip as long as they lasted", async () => {
  const lengths = lengthsOf(
    await draw(dwellSpec({ below: 20, inside: 300, above: 100 }, sizes[0]!)),
  );
  const total = lengths.reduce((sum, length) => sum + length);
  const shares = lengths.map((length) => length / total).toSorted((a, b) => a - b);
  expect(shares).toEqual([
    expect.closeTo(20 / 420, 3),
    expect.closeTo(100 / 420, 3),
    expect.closeTo(300 / 420, 3),
  ]);
});

it("draws no part that took no time", async () => {
  expect(
    lengthsOf(await draw(dwellSpec({ below: 0, inside: 5, above: 0 }, sizes[0]!))).length,
  ).toBe(1);
});
