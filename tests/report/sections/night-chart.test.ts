import { expect, it } from "vitest";
import { nightFigure } from "../../../src/report/sections/night-chart.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { noHoldNight, severalProbes } from "../sample-analysis.ts";

const writing = markupWriting("degC");

it("tells those who cannot see it what the chart shows", async () => {
  const analysis = severalProbes();
  const { html } = await nightFigure({ analysis, probe: analysis.probes[0]!, writing, id: "p" });
  const description = /<desc[^>]*>([^<]+)</.exec(html)![1]!.replaceAll("\u00a0", " ");
  expect(description).toContain(
    "In order: not yet on 12 min, warm-up 1 h 13 min, hold 9 h 35 min.",
  );
  expect(description).toContain("95 % of the hold lies between 40.6 to 41.0 °C");
  expect(description).toContain(
    "The window asked for (Yoghurt, warm set (Streptococcus thermophilus)) is 38 to 43 °C",
  );
});

it("names in the key what is not named in the chart, bath and room too", async () => {
  const analysis = severalProbes();
  const { html } = await nightFigure({ analysis, probe: analysis.probes[0]!, writing, id: "p" });
  const key = [...html.matchAll(/<span>([^<]+)<\/span>/g)].map(([, text]) =>
    text!.replaceAll("\u00a0", " "),
  );
  expect(key).toEqual([
    "readings, thermometer corrected",
    "holding band, 95 % of the hold",
    "guarded band, doubt included",
    "basin, in the bath",
    "kitchen, in the room",
  ]);
});

it("names no band where nothing held", async () => {
  const analysis = noHoldNight();
  const { html } = await nightFigure({ analysis, probe: analysis.probes[0]!, writing, id: "p" });
  expect(html).not.toContain("holding band");
  expect(html).toContain("No hold was found.");
});
