import { describe, expect, it } from "vitest";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { renderSvg } from "../../../src/report/charts/render-svg.ts";
import { responsePlot } from "../../../src/report/charts/response.ts";
import { drawnCurves } from "../../../src/report/charts/response-view.ts";
import type { ResponseInput } from "../../../src/report/charts/response-view.ts";
import { caption, widthOf, wordsIn } from "../drawing.ts";
import { hostileNames } from "../sample-analysis.ts";
import { hostileKitchen, manyCultures, sampleKitchen } from "../sample-kitchen.ts";

const [wide, narrow] = sizes;

const inputOf = (appliance: string, analysis = sampleKitchen()): ResponseInput => ({
  advice: analysis.advice.appliances.find((one) => one.appliance === appliance)!,
  requirements: analysis.requirements,
  containers: new Map(analysis.kitchen.containers.map(({ id, name }) => [id, name])),
  unit: analysis.kitchen.shownUnit,
});
const plotOf = (input: ResponseInput, size = wide!) => responsePlot(input)!(size);

describe("over settings in degrees", () => {
  const input = inputOf("bath");
  const plot = plotOf(input);

  it("draws only settings whose level comes near a window or a test, and few points of them", () => {
    // 401 steps are offered; the windows reach from 36.5 to 43 degC.
    expect(input.advice.curves[0]!.points.length).toBe(401);
    for (const { points } of drawnCurves(input)) {
      expect(points.length).toBeLessThanOrEqual(18);
      expect(points[0]!.level.mean).toBeGreaterThan(36.5 - 3.2);
      expect(points.at(-1)!.level.mean).toBeLessThan(43 + 3.2);
    }
  });

  it("puts a setting and its level where both scales say", () => {
    const [first] = plot.curves!;
    const [point] = drawnCurves(input)[0]!.points;
    const setting = point!.setting.kind === "step" ? point!.setting.celsius : 0;
    const { low, high } = plot.x;
    expect(first!.x).toBeCloseTo(((setting - low) / (high - low)) * plot.width, 6);
    const share = (plot.y.high - point!.level.mean) / (plot.y.high - plot.y.low);
    expect(first!.y).toBeCloseTo(share * plot.height, 6);
  });

  it("keeps corridors between the ends of the scale, each around its line", () => {
    plot.corridors!.forEach(({ top, bottom }, at) => {
      expect(top).toBeGreaterThanOrEqual(0);
      expect(bottom).toBeLessThanOrEqual(plot.height);
      expect(plot.curves![at]!.y).toBeGreaterThanOrEqual(top);
      expect(plot.curves![at]!.y).toBeLessThanOrEqual(bottom);
    });
  });

  it("tells containers apart by dash and by shape, not by colour alone, and names each", async () => {
    const dashes = new Map(plot.curves!.map(({ series, dash }) => [series, dash.join()]));
    expect(dashes.size).toBe(3);
    expect(new Set(dashes.values()).size).toBe(3);
    expect(new Set(plot.markers!.map(({ shape }) => shape)).size).toBe(3);
    const words = wordsIn(await renderSvg({ ...caption, plot }));
    for (const name of ["Jars in water", "Jars on the rack", "Straight in the basin"]) {
      expect(words).toContain(name);
    }
    expect(words).toEqual(expect.arrayContaining(["reuteri", "warm-blend", "yoghurt"]));
  });

  it("writes settings in both units", () => {
    expect(plot.x.words[0]).toEqual(["34", "93.2"]);
    expect(plot.x.words.at(-1)!.toString()).toMatch(/°C,.*°F/);
    const fahrenheit = plotOf({ ...input, unit: "degF" });
    expect(fahrenheit.x.words.at(-1)!.toString()).toMatch(/°F,.*°C/);
    expect(fahrenheit.y.high).toBeGreaterThan(100);
  });

  it("marks each test with its uncertainty, filled where it was in the food's place", () => {
    const cooker = plotOf(inputOf("step-cooker"));
    const tests = cooker.markers!.slice(0, 3);
    expect(tests.map(({ fill }) => fill)).toEqual(["var(--line)", "var(--line)", "var(--context)"]);
    const bath = { ...input.advice.tests[0]!, place: "bath" } as const;
    const open = plotOf({ ...input, advice: { ...input.advice, tests: [bath] } });
    expect(open.markers![0]).toMatchObject({ fill: "var(--paper)", stroke: "var(--line)" });
    // 0.12 degC and its double each way.
    const upright = plot.rules.find(({ left, right, width }) => left === right && width === 1.6)!;
    const perDegree = plot.height / (plot.y.high - plot.y.low);
    expect(upright.bottom - upright.top).toBeCloseTo(4 * 0.12 * perDegree, 6);
  });
});

describe("over marks, programs and containers", () => {
  it("gives each mark a column, and each container its place in it", () => {
    const plot = plotOf(inputOf("box"));
    expect(plot.x.words).toEqual([1, 2, 3, 4, 5].map((mark) => [`mark ${mark}`]));
    expect(plot.curves).toEqual([]);
    const means = plot.rules.filter(({ width, top, bottom }) => width === 2 && top === bottom);
    const middles = means.map(({ left, right }) => (left + right) / 2);
    expect(new Set(middles.map((middle) => middle.toFixed(3))).size).toBe(middles.length);
  });

  it("gives each container a column where nothing can be set", () => {
    const plot = plotOf(inputOf("warm-cooker"));
    expect(plot.x.words).toEqual([
      ["Jars in water"],
      ["Jars on the rack"],
      ["Straight in the basin"],
    ]);
    // Their names stand there: they need no second place.
    expect(plot.markers!.length).toBe(1);
  });

  it("breaks or cuts names that are too long for their column", () => {
    const plot = plotOf(inputOf("warm-cooker"), narrow);
    expect(plot.x.words[2]).toEqual(["Straight in", "the basin"]);
  });
});

describe("any response", () => {
  const kitchens = [sampleKitchen(), hostileKitchen(), manyCultures()];
  const inputs = kitchens.flatMap((kitchen) =>
    kitchen.advice.appliances.map(({ appliance }) => inputOf(appliance, kitchen)),
  );

  it("is as wide as its size says, and keeps hostile names text", async () => {
    for (const input of inputs) {
      for (const size of sizes) {
        const plot = responsePlot(input)?.(size);
        if (plot === undefined) continue;
        // oxlint-disable-next-line no-await-in-loop
        const svg = await renderSvg({ ...caption, plot });
        expect(widthOf(svg)).toBe(size.width);
        expect(svg).not.toMatch(/NaN|undefined|Infinity/);
        for (const name of hostileNames) if (/[<>]/.test(name)) expect(svg).not.toContain(name);
      }
    }
    expect(inputs.length).toBe(15);
  });

  it("is not drawn where there is nothing to draw", () => {
    const input = inputOf("bath");
    expect(responsePlot({ ...input, requirements: [] })).toBeNull();
    expect(responsePlot({ ...input, advice: { ...input.advice, curves: [] } })).toBeNull();
  });
});
