import { describe, expect, it } from "vitest";
import { budgetSpec } from "../../../src/report/charts/budget.ts";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import type { Spec } from "../../../src/report/charts/chart-theme.ts";
import { dwellSpec } from "../../../src/report/charts/dwell.ts";
import { holdSpec } from "../../../src/report/charts/hold-close-up.ts";
import { nightSpec } from "../../../src/report/charts/night.ts";
import { renderSvg } from "../../../src/report/charts/render-svg.ts";
import { hostileNight, noHoldNight, startWallClock, unprovenNight } from "../sample-analysis.ts";

const [wide, narrow] = [sizes[0]!, sizes[1]!];
const [probe] = unprovenNight().probes;
const draw = (spec: Spec): Promise<string> =>
  renderSvg({ id: "x", title: "t", description: "d", spec });
const texts = (svg: string): string[] =>
  [...svg.matchAll(/<(?:text|tspan)[^>]*>([^<]+)</g)].map(([, text]) => text!);
const widthOf = (svg: string): number => Number(/viewBox="0 0 ([\d.]+)/.exec(svg)![1]);
/** Labels of the left axis end at it. */
const left = (svg: string): string[] =>
  [...svg.matchAll(/<text text-anchor="end"[^>]*>([^<]+)</g)].map(([, text]) => text!);
const night = (size = wide, unit: "degC" | "degF" = "degC") =>
  nightSpec({ probe: probe!, context: [], startWallClock, unit }, size);

describe("the night", () => {
  it("names the phases, both units, hours and clock", async () => {
    const words = texts(await draw(night()));
    for (const word of ["not yet on", "warm-up", "hold", "lid lifted", "probe out"]) {
      expect(words).toContain(word);
    }
    expect(words).toContain("40 °C");
    expect(words).toContain("100");
    expect(words.some((word) => word.endsWith(" °F"))).toBe(true);
    expect(words).toContain("2 h");
    expect(words).toContain("23:37");
  });

  it("puts the person's unit on the left", async () => {
    expect(left(await draw(night(wide, "degC"))).some((text) => text.endsWith("°C"))).toBe(true);
    expect(left(await draw(night(wide, "degF"))).some((text) => text.endsWith("°F"))).toBe(true);
  });

  it("fits a page and a phone", async () => {
    expect(widthOf(await draw(night(wide)))).toBeLessThanOrEqual(730);
    expect(widthOf(await draw(night(narrow)))).toBeLessThanOrEqual(352);
    expect(widthOf(await draw(holdSpec(probe!, "degC", wide)!))).toBeLessThanOrEqual(740);
    expect(widthOf(await draw(holdSpec(probe!, "degC", narrow)!))).toBeLessThanOrEqual(365);
  });

  it("draws where nothing held and nothing was asked", async () => {
    const [none] = noHoldNight().probes;
    const spec = nightSpec(
      { probe: { ...none!, verdicts: [] }, context: [], startWallClock: null, unit: "degC" },
      wide,
    );
    expect(texts(await draw(spec))).not.toContain("21:37");
    expect(holdSpec(none!, "degC", wide)).toBeNull();
  });
});

describe("every chart", () => {
  const specs = {
    night: night(),
    hold: holdSpec(probe!, "degC", wide)!,
    budget: budgetSpec(probe!.uncertainty, "degC", wide),
    dwell: dwellSpec({ below: 20, inside: 300, above: 100 }, wide),
    context: nightSpec(
      {
        probe: hostileNight().probes[0]!,
        context: [hostileNight().probes[1]!.series],
        startWallClock,
        unit: "degF",
      },
      narrow,
    ),
  };

  it.each(Object.entries(specs))(
    "%s: same bytes again, two decimals, no colour of its own",
    async (_name, spec) => {
      const svg = await draw(spec);
      expect(await draw(spec)).toBe(svg);
      const tags = svg.match(/<[^>]+>/g)!.join("");
      expect(tags).not.toMatch(/\d\.\d{3}/);
      expect(tags).not.toMatch(/#[0-9a-f]{3,8}\b|rgb\(|"(?:black|white|steelblue)"/i);
      expect(tags).not.toMatch(/NaN|undefined|Infinity/);
      expect(tags).not.toMatch(/\sstyle=/);
    },
  );

  it("draws one bar for each source of doubt, largest first, each with its word", async () => {
    const words = texts(await draw(specs.budget));
    const sources = words.filter((word) => !/\d/.test(word));
    expect(sources).toEqual([
      "one night to the next",
      "hours not tested",
      "thermometer",
      "scatter of the hold",
      "steps of the display",
    ]);
    expect(words).toContain("0.30 °C, assumed");
  });

  it("makes the parts of the dwell strip as long as they lasted", async () => {
    const svg = await draw(specs.dwell);
    const lengths = [...svg.matchAll(/d="M[\d.]+,0h([\d.]+)v26/g)].map(([, length]) =>
      Number(length),
    );
    expect(lengths.length).toBe(3);
    const total = lengths.reduce((sum, length) => sum + length);
    expect(lengths.map((length) => length / total)).toEqual([
      expect.closeTo(20 / 420, 3),
      expect.closeTo(300 / 420, 3),
      expect.closeTo(100 / 420, 3),
    ]);
  });
});
