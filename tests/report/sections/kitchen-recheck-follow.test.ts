import { describe, expect, it } from "vitest";
import type { BatchFinding } from "../../../src/advice/recheck-types.ts";
import { recheckFollows } from "../../../src/report/sections/kitchen-recheck-follow.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { findings, nothingToRecheck, recheckedKitchen } from "../sample-recheck.ts";

const block = (...all: readonly BatchFinding[]): string | null => {
  const recheck = { ...nothingToRecheck, findings: all };
  const analysis = recheckedKitchen(recheck);
  return recheckFollows({ analysis, recheck, writing: markupWriting("degC") })?.html ?? null;
};

describe("what follows", () => {
  it("lists the causes in their order, each with what to try next", () => {
    const html = block(findings.elsewhere)!;
    const [list] = html.match(/<ol class="causes">[\s\S]*?<\/ol>/)!;
    const items = list.match(/<li>[\s\S]*?<\/li>/g)!;
    expect(items).toHaveLength(2);
    expect(visibleText(items[0]!)).toMatch(/^Held too long.+End the next batch/);
    expect(visibleText(items[1]!)).toMatch(/^Thin milk/);
    for (const item of items) expect(item).toMatch(/<b>[A-Z].+\.<\/b>/);
    expect(visibleText(html)).toContain("does not say the amount of starter");
  });

  it("gives advice instead where the temperature is to blame", () => {
    const html = block(findings.outside)!;
    expect(html).not.toContain("<ol");
    expect(html).toContain('<p class="note">');
    expect(visibleText(html)).toContain("Fisher’s exact test");
  });

  it("has no empty list", () => {
    expect(block(findings.open)).not.toContain("<ol");
    expect(block()).toBeNull();
  });
});
