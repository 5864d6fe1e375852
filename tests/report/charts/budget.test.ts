import { expect, it } from "vitest";
import { budgetImage, bySize } from "../../../src/report/charts/budget.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { caption, wordsIn } from "../drawing.ts";
import { holdsNight } from "../sample-analysis.ts";

const components = holdsNight().probes[0]!.uncertainty;

it("draws one bar for each source of doubt, largest first, each with its word", () => {
  const words = wordsIn(budgetImage(components, plainWriting("degC"), caption));
  expect(words.filter((word) => !/\d/.test(word))).toEqual([
    "one run to the next",
    "hours not tested",
    "thermometer",
    "scatter of the hold",
    "steps of the display",
  ]);
  expect(words).toContain("0.30 °C (0.54 °F), assumed");
});

it("makes bars as long as the doubts are large", () => {
  const svg = budgetImage(components, plainWriting("degC"), caption);
  const lengths = [...svg.matchAll(/<rect[^>]* width="([\d.]+)%"/g)].map(([, length]) =>
    Number(length),
  );
  const doubts = bySize(components).map(({ standardUncertainty }) => standardUncertainty);
  expect(lengths.length).toBe(5);
  expect(lengths[0]).toBe(100);
  // Two decimals of a per cent are written.
  lengths.forEach((length, at) =>
    expect(Math.abs(length - (100 * doubts[at]!) / doubts[0]!)).toBeLessThanOrEqual(0.005 + 1e-9),
  );
});

it("parts measured, stated and assumed without colour", () => {
  const bars = budgetImage(components, plainWriting("degC"), caption).match(/<rect[^>]*>/g)!;
  expect(bars.map((bar) => /stroke-dasharray/.test(bar))).toEqual([
    true,
    false,
    false,
    false,
    false,
  ]);
  expect(bars[1]).toContain('fill-opacity="0.35"');
});

it("shows both units, the person's first, differences without the offset", () => {
  expect(wordsIn(budgetImage(components, plainWriting("degF"), caption))).toContain(
    "0.54 °F (0.30 °C), assumed",
  );
});
