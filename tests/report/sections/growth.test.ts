import { expect, it } from "vitest";
import { growthOverHold } from "../../../src/culture/growth-over-hold.ts";
import { bulgaricus, cremoris, reuteri, thermophilus } from "../../../src/culture/organisms.ts";
import { percentInWords } from "../../../src/report/number-format.ts";
import { growthMethod } from "../../../src/report/sections/growth-method.ts";
import { growthPart } from "../../../src/report/sections/growth.ts";
import { methodSection } from "../../../src/report/sections/method.ts";
import { nightSection } from "../../../src/report/sections/night.ts";
import { duration } from "../../../src/report/time-text.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { holdsNight } from "../sample-analysis.ts";
import { grownNight } from "../sample-growth.ts";

const writing = markupWriting("degC");
const page = (analysis: ReturnType<typeof grownNight>) => ({
  analysis,
  probe: analysis.probes[0]!,
  writing,
  id: "p",
});
const part = (analysis: ReturnType<typeof grownNight>): string =>
  growthPart(page(analysis), 3)?.html ?? "";

it("shows what the model makes of the very readings that are drawn", () => {
  const night = grownNight();
  const { series, phases } = night.probes[0]!;
  const { minutes, celsius } = series;
  const text = visibleText(part(night));
  for (const [limits, name] of [
    [thermophilus, "S. thermophilus (yoghurt)"],
    [bulgaricus, "L. delbrueckii subsp. bulgaricus (yoghurt)"],
  ] as const) {
    const byHand = growthOverHold({ minutes, celsius, phases }, limits)!;
    const rate = percentInWords(byHand.meanRate, " ");
    const hours = duration(byHand.equivalentHours * 60, " ");
    const cost = percentInWords(byHand.lostToWarmUp!, " ");
    expect(text).toContain(`${name}: ${rate}, ${hours}; warm-up cost ${cost}`);
  }
  expect(text).not.toContain("reuteri");
});

it("is folded away for several organisms, in the open for one, and absent for none", () => {
  expect(part(grownNight())).toMatch(/^<details><summary>Growth, by a model<\/summary>/);
  expect(part(grownNight({ yoghurt: [thermophilus] }))).toMatch(/^<h3>Growth, by a model<\/h3>/);
  expect(part(grownNight({ low: [reuteri] }))).toBe("");
  expect(part(holdsNight())).toBe("");
});

it("names an organism of two cultures once", () => {
  const text = visibleText(part(grownNight({ short: [thermophilus], long: [thermophilus] })));
  expect(text.match(/S\. thermophilus/g)).toHaveLength(1);
  expect(text).toContain("S. thermophilus (short, long):");
});

it("leads to a method that is on the page, with limits and source", async () => {
  const night = grownNight();
  const html = (await nightSection(page(night))).html;
  const place = /href="#(growth)"/.exec(html)![1]!;
  const method = methodSection(night, writing).html;
  expect(method).toContain(`id="${place}"`);
  const text = visibleText(method);
  expect(text).toContain("Rosso et al. 1993");
  expect(text).toContain("Streptococcus thermophilus (yoghurt) grows from 20 °C (68 °F)");
  expect(text).toContain("From the same.");
  expect(text).toContain("Not estimated for Limosilactobacillus reuteri: not all");
});

it("says in the method alone that there is nothing to go by", () => {
  const { probes } = grownNight({ low: [reuteri], ropy: [cremoris] });
  const text = visibleText(growthMethod(probes, writing)!.html);
  expect(text).not.toContain("Rosso");
  expect(text).toContain("Not estimated for Limosilactobacillus reuteri: not all of their limits");
  expect(text).toContain(
    "Not estimated for Lactococcus lactis subsp. cremoris: the published limits do not fit",
  );
  expect(growthMethod(holdsNight().probes, writing)).toBeNull();
});
