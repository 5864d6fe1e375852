import { describe, expect, it } from "vitest";
import type { BatchFinding } from "../../src/advice/recheck-types.ts";
import { associationLines, followBlocks } from "../../src/report/recheck-follow-terminal.ts";
import { flat, screenOf } from "./advice-screen.ts";
import { findings, nothingToRecheck, recheckedKitchen } from "./sample-recheck.ts";

const screen = (...all: readonly BatchFinding[]) => {
  const recheck = { ...nothingToRecheck, findings: all };
  return { ...screenOf(recheckedKitchen(recheck)), recheck };
};

describe("what follows, on a terminal", () => {
  it("numbers the causes in their order", () => {
    const [block = []] = followBlocks(screen(findings.elsewhere));
    expect(flat(block)).toMatch(
      /^reuteri in the adjustable cooker at 38 °C .+temperature is not it.+1\. Held too long.+2\. Thin milk.+does not say the amount of starter/,
    );
    expect(block.filter((line) => /^ {2}\d\. /.test(line))).toHaveLength(2);
  });

  it("gives advice where the temperature is or may be to blame", () => {
    expect(flat(followBlocks(screen(findings.open))[0]!)).toMatch(
      /stays open.+Keep the warming box at mark 3.+The log points to no other cause\. Of the batches/,
    );
    expect(flat(followBlocks(screen(findings.outside))[0]!)).not.toContain("The log points");
  });

  it("has a block for each, and none for batches that did not separate", () => {
    expect(followBlocks(screen(...Object.values(findings)))).toHaveLength(4);
    expect(followBlocks(screen({ ...findings.elsewhere, separated: 0 }))).toEqual([]);
  });

  it("says what the whole log says", () => {
    const text = flat(associationLines(screen(findings.outside, findings.elsewhere)));
    expect(text).toMatch(/^warm-blend: over the log.+The log of reuteri is still too short/);
  });
});
