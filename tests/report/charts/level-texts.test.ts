import { expect, it } from "vitest";
import { levelTexts } from "../../../src/report/charts/level-texts.ts";
import { probe, requirement, verdict } from "../sample-analysis.ts";

const shape = { level: 40, swing: 1, periodMinutes: 20, perHour: 0, stepSeconds: 60, hours: 6 };
const textsFor = (
  requirements: readonly ReturnType<typeof requirement>[],
  low = 20,
  unit: "degC" | "degF" = "degC",
) => {
  const verdicts = requirements.map((asked) => verdict("holds", 0.96, asked, []));
  const [bottom, top] = unit === "degC" ? [low, 47] : [low * 1.8 + 32, 47 * 1.8 + 32];
  return levelTexts({
    probe: probe({ shape, verdicts }),
    unit,
    vertical: { domain: { low: bottom, high: top }, height: 300 },
    panel: { low: 0, high: 600 },
    hold: { low: 100, high: 600 },
  });
};
const words = (...given: Parameters<typeof textsFor>): string[] =>
  textsFor(...given).map(({ text }) => text.replaceAll("\u00a0", " "));

it("names windows by one word, and each ceiling once, in the drawn unit", () => {
  const two = [requirement("kefir", 18, 24, 43, 24), requirement("window", 38, 42, 43, 24)];
  expect(words(two, 10)).toEqual(["never above 43 °C", "kefir", "window"]);
  expect(words(two, 10, "degF")[0]).toBe("never above 109.4 °F");
});

it("stands at the right edge, on a halo", () => {
  for (const { x, align, halo } of textsFor([requirement("kefir", 30, 35, 43, 24)])) {
    expect([align, halo]).toEqual(["right", "var(--paper)"]);
    expect(x).toBe(595);
  }
});

it("names nothing that is not on the plot", () => {
  expect(words([requirement("kefir", 18, 24, 30, 24)], 36)).toEqual([]);
});
