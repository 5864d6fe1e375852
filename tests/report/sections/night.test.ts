import { expect, it } from "vitest";
import { nightSection } from "../../../src/report/sections/night.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { noHoldNight, severalProbes, unprovenNight } from "../sample-analysis.ts";

const writing = markupWriting("degC");
const section = async (analysis: ReturnType<typeof unprovenNight>, at: number): Promise<string> =>
  (await nightSection({ analysis, probe: analysis.probes[at]!, writing, id: "p" })).html;

it("shows curve, close-up, dwell, figures and what happened when", async () => {
  const html = await section(unprovenNight(), 0);
  const headings = [...html.matchAll(/<(?:h3|caption class="heard"|summary)>([^<]+)</g)].map(
    ([, text]) => text,
  );
  expect(headings).toEqual([
    "The hold, close up",
    "Time inside and outside",
    "In figures",
    "The hold in figures",
    "More figures",
    "More figures of the hold",
    "What happened when",
    "What happened when",
  ]);
  expect(visibleText(html)).toContain("lid lifted 02:37 to 03:03, 26 min");
});

it("keeps to the curve and the figures for a bath beside the food", async () => {
  const html = await section(severalProbes(), 1);
  expect(html).not.toContain("The hold, close up");
  expect(html).toContain("In figures");
});

it("keeps the main figures in view and folds the others away", async () => {
  const html = await section(unprovenNight(), 0);
  const inView = html.replaceAll(/<details>[\s\S]*?<\/details>/g, "");
  expect(inView.match(/<tr>/g)!.length).toBe(6);
  expect(visibleText(inView)).not.toContain("Noise from reading to reading");
  expect(visibleText(html)).toContain("Noise from reading to reading");
});

it("makes do without a hold", async () => {
  const html = await section(noHoldNight(), 0);
  expect(html).not.toContain("The hold, close up");
  expect(html).not.toContain("More figures");
});

it("has no heading over figures that are not there", async () => {
  const night = noHoldNight();
  const [probe] = night.probes;
  const bare = { ...probe!, night: { ...probe!.night, warmUp: null } };
  const html = await section({ ...night, probes: [bare] }, 0);
  expect(html).not.toContain("In figures");
  expect(html).toContain("What happened when");
});
