import { expect, it } from "vitest";
import { budgetSpec, bySize } from "../../../src/report/charts/budget.ts";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { draw, wordsIn } from "../drawing.ts";
import { holdsNight } from "../sample-analysis.ts";

const components = holdsNight().probes[0]!.uncertainty;

it("draws one bar for each source of doubt, largest first, each with its word", async () => {
  const svg = await draw(budgetSpec(components, "degC", sizes[0]!));
  const words = wordsIn(svg);
  expect(words.filter((word) => !/\d/.test(word))).toEqual([
    "one night to the next",
    "hours not tested",
    "thermometer",
    "scatter of the hold",
    "steps of the display",
  ]);
  expect(words).toContain("0.30 °C, assumed");
});

it("makes bars as long as the doubts are large", async () => {
  const svg = await draw(budgetSpec(components, "degC", sizes[0]!));
  const lengths = [...svg.matchAll(/d="M0,[\d.]+h([\d.]+)v11/g)]
    .map(([, length]) => Number(length))
    .toSorted((a, b) => b - a);
  const doubts = bySize(components).map(({ standardUncertainty }) => standardUncertainty);
  expect(lengths.length).toBe(5);
  lengths.forEach((length, at) =>
    expect(length / lengths[0]!).toBeCloseTo(doubts[at]! / doubts[0]!, 3),
  );
});

it("shows the person's unit, differences without the offset", async () => {
  expect(wordsIn(await draw(budgetSpec(components, "degF", sizes[1]!)))).toContain(
    "0.54 °F, assumed",
  );
});
