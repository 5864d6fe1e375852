/** Constructed: the rechecks are invented, see sample-recheck.ts. */
import { describe, expect, it } from "vitest";
import type { KitchenAnalysis } from "../../../src/kitchen-analysis-types.ts";
import { kitchenRecheck, recheckHeading } from "../../../src/report/sections/kitchen-recheck.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { hostileKitchen } from "../sample-kitchen.ts";
import { hostileNames } from "../sample-analysis.ts";
import { findings, nothingToRecheck, recheckedKitchen, sampleDue } from "../sample-recheck.ts";

const section = async (analysis: KitchenAnalysis): Promise<string | null> =>
  (await kitchenRecheck({ analysis, writing: markupWriting("degC") }))?.html ?? null;

describe("is it still what it was?", () => {
  it("is a section of its own, each set-up with its sentence before its figures and chart", async () => {
    const html = (await section(recheckedKitchen()))!;
    expect(html).toContain(`<h2 id="recheck">${recheckHeading}</h2>`);
    const order = ["Adjustable cooker", "Not moved", "What the two tests show", "<svg"];
    const places = order.map((text) => html.indexOf(text));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(html.match(/<h3 id="recheck-\d"/g)).toHaveLength(3);
    expect(visibleText(html)).toContain("one and the same set-up");
  });

  it("is not there where nothing is to be said", async () => {
    expect(await section(recheckedKitchen(nothingToRecheck))).toBeNull();
    const sound = { ...findings.elsewhere, separated: 0 };
    expect(await section(recheckedKitchen({ ...nothingToRecheck, findings: [sound] }))).toBeNull();
  });

  it("is there for a test that is due, for batches that separated, and for trouble", async () => {
    const due = (await section(recheckedKitchen({ ...nothingToRecheck, due: [sampleDue] })))!;
    expect(visibleText(due)).toMatch(/Tests that are due Test the warming box.+2026-04-02/);
    const log = { ...nothingToRecheck, findings: [findings.elsewhere] };
    expect(await section(recheckedKitchen(log))).toContain("What follows");
  });

  it("says a caution before anything else", async () => {
    const whole = recheckedKitchen(nothingToRecheck);
    const batch = { ...findings.elsewhere.setUp, date: "2026-03-20", culture: "reuteri" };
    const said = {
      milk: null,
      heated: null,
      generation: null,
      starter: null,
      hours: null,
      separated: null,
      sourness: null,
      trouble: ["pink"],
      moved: null,
      notes: null,
    } as const;
    const batches = [{ ...batch, ...said }];
    const html = (await section({ ...whole, kitchen: { ...whole.kitchen, batches } }))!;
    expect(visibleText(html)).toMatch(/^Is it still what it was\? Caution\. Logged for 2026-03-20/);
    expect(visibleText(html)).toContain("throw all of it away");
  });

  it("keeps hostile names text", async () => {
    const html = (await section(recheckedKitchen({ due: [sampleDue] }, hostileKitchen())))!;
    for (const name of hostileNames) if (/[<>]/.test(name)) expect(html).not.toContain(name);
  });
});
