import { describe, expect, it } from "vitest";
import type { KitchenAnalysis } from "../../../src/kitchen-analysis-types.ts";
import type { RecheckAdvice } from "../../../src/advice/recheck-types.ts";
import { testAgainText } from "../../../src/report/wording/recheck-again.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen, untestedKitchen } from "../sample-kitchen.ts";
import { findings, sampleRecheck, setUps } from "../sample-recheck.ts";

const say = (more: Partial<RecheckAdvice> = {}, analysis: KitchenAnalysis = sampleKitchen()) =>
  testAgainText({
    analysis,
    recheck: sampleRecheck({ rechecks: [], findings: [], ...more }),
    writing: plainWriting("degC"),
  }).join(" ");

describe("where nothing was tested twice", () => {
  it("names the set-up of the newest test, and how to test it again", () => {
    expect(say()).toMatch(
      /^No set-up was tested twice yet.+Test the warming box at mark 3, jars on the rack, again: same setting.+holdband add.+holdband next/,
    );
  });

  it("rather names one that batches were made in, and first one that is due", () => {
    const used = [findings.elsewhere, { ...findings.outside, batches: 9 }];
    expect(say({ findings: used })).toContain("Test the cooker with one warm program");
    const due = [{ setUp: setUps.steps, lastTested: null, reasons: [], usual: [] }];
    expect(say({ findings: used, due })).toContain("Test the adjustable cooker at 38 °C");
  });

  it("names none that was never tested", () => {
    const setUp = { ...setUps.bath, setting: { kind: "step", celsius: 55 } } as const;
    expect(say({ findings: [{ ...findings.untested, setUp }] })).toContain("Test the warming box");
  });

  it("asks for a baseline where there is no test at all", () => {
    expect(say({}, untestedKitchen())).toMatch(/^No water test yet.+its baseline\.$/);
  });
});
