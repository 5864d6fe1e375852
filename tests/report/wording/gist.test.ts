import { describe, expect, it } from "vitest";
import type { Reason } from "../../../src/culture/verdict-types.ts";
import { gist, missGist, openGist } from "../../../src/report/wording/gist.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { requirement, verdict } from "../sample-analysis.ts";

const writing = plainWriting("degC");
const asked = requirement("window", 38, 43, null, 24);
const misses = (...reasons: Reason[]): string =>
  missGist(verdict("misses", 0.01, asked, reasons), writing);
const open = (...reasons: Reason[]): string => openGist(verdict("unproven", 0.5, asked, reasons));

describe("how it misses", () => {
  it("says by how much and to which side", () => {
    expect(misses({ code: "mean-outside", mean: 44.8, side: "above", by: 1.8 })).toBe(
      "1.8 °C (3.2 °F) too warm",
    );
    expect(misses({ code: "mean-outside", mean: 36, side: "below", by: 2 })).toBe(
      "2.0 °C (3.6 °F) too cold",
    );
  });

  it("names the level before the end of the heat: running on would not help", () => {
    const ended: Reason = { code: "fell-away", afterHours: 8, needed: 24 };
    expect(misses({ code: "mean-outside", mean: 36, side: "below", by: 2 }, ended)).toMatch(
      /too cold/,
    );
  });

  it.each<[Reason, string]>([
    [{ code: "never-reached", low: 38, peak: 33 }, "never warm enough"],
    [{ code: "fell-away", afterHours: 8, needed: 24 }, "heat ends too soon"],
    [{ code: "swing-too-wide", peakToPeak: 4, windowWidth: 3 }, "swings too far"],
    [{ code: "passes-ceiling", ceiling: 45, peak: 46, probability: 1 }, "gets too hot"],
    [{ code: "drifts-out", perHour: -0.2, side: "below" }, "drifts too cold"],
    [{ code: "above-window", high: 43, share: 0.4 }, "too warm for too long"],
  ])("%j", (reason, words) => {
    expect(misses(reason)).toBe(words);
  });

  it("names no side where the reasons tell none", () => {
    expect(misses()).toBe("too long outside the window");
  });
});

describe("what would settle it", () => {
  it("goes for the doubt that would", () => {
    expect(
      open({ code: "would-settle", source: "thermometer", verdict: "holds", probability: 0.97 }),
    ).toBe("check the thermometer");
    expect(open({ code: "no-hold" })).toBe("no steady hold seen");
    expect(open({ code: "too-little-hold", hours: 1, readings: 4 })).toBe(
      "test for longer, with more readings",
    );
    expect(open({ code: "fell-away", afterHours: 8, needed: 24 })).toBe(
      "does the heat end by itself?",
    );
    expect(open()).toBe("test again");
  });
});

it("has nothing to say where it holds", () => {
  expect(gist(verdict("holds", 0.97, asked, []), writing)).toBeNull();
  expect(gist(verdict("unproven", 0.5, asked, []), writing)).toBe("test again");
});
