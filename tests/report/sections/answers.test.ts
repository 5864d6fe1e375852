import { expect, it } from "vitest";
import { answersSection } from "../../../src/report/sections/answers.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { analysisOf, missesNight, probe, severalProbes } from "../sample-analysis.ts";

const writing = markupWriting("degC");

it("leads, then gives each probe and requirement a card with mark, chance, culture and next step", () => {
  const { html } = answersSection(severalProbes(), writing);
  const marks = [...html.matchAll(/class="answer (\w+)"/g)].map(([, word]) => word);
  expect(marks).toEqual(["holds", "misses", "unproven"]);
  const text = visibleText(html);
  expect(text).toContain("Holds 97 % likely to hold");
  expect(html.indexOf('class="lead"')).toBeLessThan(html.indexOf('class="answer'));
  expect(text).toContain("warming box, second shelf.csv, box, in the food’s place");
  expect(text).toContain("Yoghurt, warm set (Streptococcus thermophilus)");
  expect(text.match(/What to do/g)!.length).toBe(3);
});

it("lets a single answer lead by itself, in a whole sentence", () => {
  const { html } = answersSection(missesNight(), writing);
  expect(html).not.toMatch(/class="(?:lead|matrix|cards)"/);
  expect(visibleText(html)).toContain(
    "This set-up does not keep the food at 38 to 43 °C (100.4 to 109.4 °F) for 24 h, never above 45 °C (113 °F), as “Yoghurt, warm set (Streptococcus thermophilus)” needs.",
  );
});

it("lists the reasons, and counts a chance below one per cent as that", () => {
  const text = visibleText(answersSection(missesNight(), writing).html);
  expect(text).toContain("Misses &lt; 1 % likely to hold");
  expect(text).toContain("The food sat above 43 °C (109.4 °F) for more than 99 % of the hold.");
});

it("says so when nothing was asked", () => {
  const shape = { level: 40, swing: 0, periodMinutes: 9, perHour: 0, stepSeconds: 600, hours: 5 };
  expect(visibleText(answersSection(analysisOf([probe({ shape })]), writing).html)).toContain(
    "No verdict was asked for",
  );
});
