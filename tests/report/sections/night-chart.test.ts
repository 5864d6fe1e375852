import { expect, it } from "vitest";
import { celsius } from "../../../src/quantity.ts";
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
  expect(description).toContain(
    "The hold averages 40.8 °C (105.5 °F); 95 % of it is 40.6 to 41.0 °C",
  );
  expect(description).toContain(
    "Its band lies inside the window of Yoghurt, warm set, 38 to 43 °C (100.4 to 109.4 °F): holds by this test alone (97 %).",
  );
});

it("says to them on which side of its window a band lies", async () => {
  const analysis = severalProbes();
  const [probe] = analysis.probes;
  const { hold } = probe!.night;
  const told = async (low: number, high: number): Promise<string> => {
    const band = { low: celsius(low), high: celsius(high) };
    const night = { ...probe!.night, hold: { ...hold!, band } };
    const moved = { ...probe!, night };
    const { html } = await nightFigure({ analysis, probe: moved, writing, id: "p" });
    return /Its band (\w+ \w+) the window/.exec(html)![1]!;
  };
  // The window is 38 to 43 degC.
  expect(await told(38, 43)).toBe("lies inside");
  expect(await told(43.1, 44)).toBe("lies above");
  expect(await told(36, 37.9)).toBe("lies below");
  expect(await told(42, 43.1)).toBe("reaches above");
  expect(await told(37.9, 39)).toBe("reaches below");
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
