import { describe, expect, it } from "vitest";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { nightPlot } from "../../../src/report/charts/night.ts";
import { draw, widthOf, wordsIn } from "../drawing.ts";
import {
  noHoldNight,
  probe as sampleProbe,
  startWallClock,
  unprovenNight,
} from "../sample-analysis.ts";

const [wide, narrow] = [sizes[0]!, sizes[1]!];
const [probe] = unprovenNight().probes;
const probeOfSeconds = sampleProbe({
  shape: { level: 41, swing: 1, periodMinutes: 11, perHour: 0, stepSeconds: 1, hours: 12 },
});
/** Labels of the left axis end at it. */
const left = (svg: string): string[] =>
  [...svg.matchAll(/<text text-anchor="end"[^>]*>([^<]+)</g)].map(([, text]) => text!);
const night = (size = wide, unit: "degC" | "degF" = "degC") =>
  nightPlot({ probe: probe!, context: [], startWallClock, unit }, size);

describe("the night", () => {
  it("names the phases, both units, hours and clock", async () => {
    const words = wordsIn(await draw(night()));
    for (const word of ["not yet on", "warm-up", "hold", "lid lifted", "probe out"]) {
      expect(words).toContain(word);
    }
    expect(words).toContain("40 °C");
    expect(words).toContain("90");
    expect(words.some((word) => word.endsWith(" °F"))).toBe(true);
    expect(words).toContain("2 h");
    expect(words).toContain("23:37");
  });

  it("puts the person's unit on the left", async () => {
    expect(left(await draw(night(wide, "degC"))).some((text) => text.endsWith("°C"))).toBe(true);
    expect(left(await draw(night(wide, "degF"))).some((text) => text.endsWith("°F"))).toBe(true);
  });

  it("names the window in the chart itself", async () => {
    expect(wordsIn(await draw(night()))).toContain("window");
  });

  it("draws about a point for each px of the plot, however many readings", () => {
    const input = { probe: probeOfSeconds, context: [], startWallClock, unit: "degC" } as const;
    expect(probeOfSeconds.series.minutes.length).toBe(43_200);
    expect(nightPlot(input, wide).line.length).toBeGreaterThan(500);
    expect(nightPlot(input, wide).line.length).toBeLessThan(800);
    expect(nightPlot(input, narrow).line.length).toBeLessThan(400);
  });

  it("fits a page and a phone", async () => {
    expect(widthOf(await draw(night(wide)))).toBeLessThanOrEqual(730);
    expect(widthOf(await draw(night(narrow)))).toBeLessThanOrEqual(352);
  });

  it("draws where nothing held and nothing was asked", async () => {
    const [none] = noHoldNight().probes;
    const plot = nightPlot(
      { probe: { ...none!, verdicts: [] }, context: [], startWallClock: null, unit: "degC" },
      wide,
    );
    expect(wordsIn(await draw(plot))).not.toContain("21:37");
  });
});
