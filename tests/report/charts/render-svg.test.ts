import { describe, expect, it } from "vitest";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { holdPlot } from "../../../src/report/charts/hold-close-up.ts";
import { nightPlot } from "../../../src/report/charts/night.ts";
import { bare, draw, wordsIn } from "../drawing.ts";
import { hostileNight, startWallClock, unprovenNight } from "../sample-analysis.ts";

const [wide, narrow] = [sizes[0]!, sizes[1]!];
const [probe] = unprovenNight().probes;

const ticks = (values: number[]) =>
  bare({ x: { low: 0, high: 10, ticks: values, words: values.map(String) } });

const plots = {
  night: nightPlot({ probe: probe!, context: [], startWallClock, unit: "degC" }, wide),
  hold: holdPlot(probe!, "degC")!(wide),
  context: nightPlot(
    {
      probe: hostileNight().probes[0]!,
      context: [hostileNight().probes[1]!.series],
      startWallClock,
      unit: "degF",
    },
    narrow,
  ),
};

describe("renderSvg", () => {
  it.each(Object.entries(plots))("%s: two decimals, no colour of its own", async (_name, plot) => {
    const tags = (await draw(plot)).match(/<[^>]+>/g)!.join("");
    expect(tags).not.toMatch(/\d\.\d{3}/);
    expect(tags).not.toMatch(/#[0-9a-f]{3,8}\b|rgb\(|"(?:black|white|steelblue)"/i);
    expect(tags).not.toMatch(/NaN|undefined|Infinity/);
    expect(tags).not.toMatch(/\sstyle=/);
  });

  it("gives the same bytes whatever was drawn before", async () => {
    const first = await Promise.all(Object.values(plots).map(draw));
    const again = await Promise.all(Object.values(plots).toReversed().map(draw));
    expect(again.toReversed()).toEqual(first);
  });

  it("keeps ticks in order after a plot that had some of them", async () => {
    await draw(ticks([2, 8]));
    expect(wordsIn(await draw(ticks([0, 2, 5, 8])))).toEqual(["0", "2", "5", "8"]);
  });

  it("draws the next one after one that could not be drawn", async () => {
    const broken = { ...bare(), x: null as never };
    const [bad, good] = await Promise.allSettled([draw(broken), draw(bare())]);
    expect([bad.status, good.status]).toEqual(["rejected", "fulfilled"]);
  });
});
