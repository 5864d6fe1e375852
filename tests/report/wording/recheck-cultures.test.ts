import { describe, expect, it } from "vitest";
import {
  isFarOff,
  nearCultures,
  recheckCultureText,
} from "../../../src/report/wording/recheck-cultures.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import { cannotTell, moved, notMoved, sampleRecheck } from "../sample-recheck.ts";

const view = {
  analysis: sampleKitchen(),
  recheck: sampleRecheck(),
  writing: plainWriting("degC"),
};

describe("a culture in the light of a recheck", () => {
  it("is told by what it had to spare, and by the newest test", () => {
    expect(recheckCultureText(notMoved.cultures[0]!, view)).toBe(
      "not moved by as much as half of the 0.9 °C (1.6 °F) it had to spare; the newest test holds (97 %)",
    );
    expect(recheckCultureText(moved.cultures[1]!, view)).toBe(
      "moved; it had 0.5 °C (0.9 °F) to spare; the newest test misses (2 %)",
    );
    expect(recheckCultureText(cannotTell.cultures[0]!, view)).toBe(
      "cannot tell whether half of the 0.3 °C (0.5 °F) it had to spare is gone; the newest test is unproven (70 %)",
    );
  });

  it("that was outside already is not said to have moved out", () => {
    expect(recheckCultureText(notMoved.cultures[2]!, view)).toBe(
      "its window was not kept at the baseline either; the newest test is unproven (44 %)",
    );
  });

  it("needs no line of its own where it was and is outside", () => {
    expect(notMoved.cultures.map(isFarOff)).toEqual([false, true, false]);
    expect(nearCultures(notMoved).map(({ culture }) => culture)).toEqual(["reuteri", "yoghurt"]);
    // It held at the baseline: that it misses now is the news.
    expect(isFarOff(moved.cultures[1]!)).toBe(false);
  });
});
