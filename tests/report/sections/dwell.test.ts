import { expect, it } from "vitest";
import { dwellBlock } from "../../../src/report/sections/dwell.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { holdsNight, noHoldNight, unprovenNight } from "../sample-analysis.ts";

const writing = markupWriting("degC");
const block = (analysis: ReturnType<typeof holdsNight>): string | null => {
  const [probe] = analysis.probes;
  const found = dwellBlock({ analysis, probe: probe!, writing, id: "p" }, probe!.verdicts[0]!, 0);
  return found === null ? null : visibleText(found.html);
};

it("says it in a sentence when all of the hold lay inside", () => {
  expect(block(holdsNight())).toBe(
    "All 9 h 35 min of the hold lay inside the window of Yoghurt, warm set, 38 to 43 °C (100.4 to 109.4 °F).",
  );
});

it("says it in a sentence when all of the hold lay outside on one side", () => {
  const night = holdsNight();
  const [probe] = night.probes;
  const [verdict] = probe!.verdicts;
  const dwell = { ...verdict!.dwell!, belowMinutes: probe!.night.hold!.hours * 60 };
  const below = { ...probe!, verdicts: [{ ...verdict!, dwell }] };
  expect(block({ ...night, probes: [below] })).toMatch(/^All 9 h 35 min of the hold lay below the/);
});

it("draws a strip with its parts in words otherwise", () => {
  const text = block(unprovenNight());
  expect(text).toContain("below for 20 min inside for 3 h 11 min above for 3 h 46 min");
  expect(text).toContain("The longest spell outside lasted 57 min.");
});

it("is left out without a hold", () => {
  expect(block(noHoldNight())).toBeNull();
});
