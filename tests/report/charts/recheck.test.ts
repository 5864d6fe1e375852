import { describe, expect, it } from "vitest";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { recheckPlot } from "../../../src/report/charts/recheck.ts";
import type { RecheckInput } from "../../../src/report/charts/recheck-view.ts";
import { draw, widthOf, wordsIn } from "../drawing.ts";
import { hostileKitchen, kitchenRequirements } from "../sample-kitchen.ts";
import { hostileNames } from "../sample-analysis.ts";
import { chartOf, moved } from "../sample-recheck.ts";

const [wide, narrow] = sizes;
const days = ["2026-01-02", "2026-01-20", "2026-02-03", "2026-02-19", "2026-03-02"];
const input: RecheckInput = {
  chart: moved.chart,
  days,
  requirements: kitchenRequirements,
  unit: "degC",
};
const plotOf = (more: Partial<RecheckInput> = {}, size = wide!) =>
  recheckPlot({ ...input, ...more })(size);

describe("a chart of a set-up's tests", () => {
  const plot = plotOf();
  const height = (celsius: number): number =>
    ((plot.y.high - celsius) / (plot.y.high - plot.y.low)) * plot.height;

  it("puts every test and its smoothed average where the scale says", () => {
    const { points } = moved.chart;
    expect(plot.markers).toHaveLength(5);
    points.forEach(({ mean, ewma, ewmaLow, ewmaHigh }, at) => {
      expect(plot.markers![at]!.y).toBeCloseTo(height(mean), 6);
      expect(plot.curves![at]!.y).toBeCloseTo(height(ewma), 6);
      expect(plot.corridors![at]!.top).toBeCloseTo(height(ewmaHigh), 6);
      expect(plot.corridors![at]!.bottom).toBeCloseTo(height(ewmaLow), 6);
    });
  });

  it("draws both limits of single tests from edge to edge", () => {
    const limits = plot.rules.filter(({ stroke }) => stroke === "var(--limit)");
    expect(limits.map(({ top }) => top)).toEqual([
      expect.closeTo(height(moved.chart.low), 6),
      expect.closeTo(height(moved.chart.high), 6),
    ]);
    for (const { left, right } of limits) expect([left, right]).toEqual([0, plot.width]);
  });

  it("shows a test beyond them by its shape too", () => {
    const shapes = plot.markers!.map(({ shape }) => shape);
    expect(shapes).toEqual(["circle", "circle", "circle", "square", "square"]);
  });

  it("puts each day under its test, on the axis as in the drawing", () => {
    plot.x.ticks.forEach((tick, at) => {
      const across = ((tick - plot.x.low) / (plot.x.high - plot.x.low)) * plot.width;
      expect(across).toBeCloseTo(plot.markers![at]!.x, 6);
    });
    expect(plot.x.words).toEqual(days);
  });

  it("names lines and windows where they are, in both units", async () => {
    const words = wordsIn(await draw(plot));
    expect(words).toEqual(
      expect.arrayContaining(["limit of a single test", "smoothed average", "warm-blend"]),
    );
    expect(words.join(" ")).toMatch(/°C.*°F/);
  });

  it("leaves the lines' names room that no test stands in", () => {
    for (const size of sizes) {
      const one = plotOf({}, size);
      const last = one.markers!.at(-1)!.x;
      const names = one.texts.filter(({ text }) => /limit|smoothed/.test(text));
      expect(names).toHaveLength(3);
      for (const { x, text } of names) expect(x - text.length * 6.6).toBeGreaterThan(last);
      const heights = names.map(({ y }) => y).toSorted((a, b) => a - b);
      expect(heights[1]! - heights[0]!).toBeGreaterThan(12);
      expect(heights[2]! - heights[1]!).toBeGreaterThan(12);
    }
  });

  it("names the newest of many days, and as many before it as have room", () => {
    const many = Array.from({ length: 30 }, (_, at) => [`t${at}`, 41 + (at % 3) / 10] as const);
    const crowded = plotOf({ chart: chartOf(many), days: many.map(([id]) => id) }, narrow);
    expect(crowded.x.words.at(-1)).toBe("t29");
    expect(crowded.x.words.length).toBeLessThan(4);
    expect(crowded.markers).toHaveLength(30);
  });

  it("is as wide as its size says, and keeps hostile names text", async () => {
    const { requirements } = hostileKitchen();
    for (const size of sizes) {
      // oxlint-disable-next-line no-await-in-loop
      const svg = await draw(plotOf({ requirements, days: hostileNames.slice(0, 5) }, size));
      expect(widthOf(svg)).toBe(size.width);
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      for (const name of hostileNames) if (/[<>]/.test(name)) expect(svg).not.toContain(name);
    }
  });
});
