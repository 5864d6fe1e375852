import { describe, expect, it } from "vitest";
import { recheckedSetUp } from "../../../src/report/sections/kitchen-recheck-set-up.ts";
import type { Recheck } from "../../../src/advice/recheck-types.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { cannotTell, moved, notMoved, recheckedKitchen } from "../sample-recheck.ts";

const page = { analysis: recheckedKitchen(), writing: markupWriting("degC") };
const block = async (recheck: Recheck): Promise<string> =>
  (await recheckedSetUp(page, recheck, "recheck-1")).html;

describe("one set-up against its baseline", () => {
  it("has the word as a mark that differs by more than colour", async () => {
    const classes = { holds: notMoved, misses: moved, unproven: cannotTell };
    for (const [name, recheck] of Object.entries(classes)) {
      // oxlint-disable-next-line no-await-in-loop
      expect(await block(recheck)).toContain(`class="rechecked ${name}"`);
    }
    expect(visibleText(await block(moved))).toContain("Moved since 2026-01-02: it now holds");
  });

  it("has a row for each figure that could be compared, with the limits of its change", async () => {
    const html = await block(moved);
    const rows = html.match(/<tr role="row"><th role="rowheader"[\s\S]*?<\/tr>/g)!.map(visibleText);
    expect(rows).toHaveLength(5);
    expect(rows[0]).toMatch(
      /^Average.+41\.2 °C.+42\.6 °C.+\+1\.4 °C.+, more than chance.+\+0\.8 to/,
    );
    expect(rows[1]).not.toContain("more than chance");
    expect(visibleText(html)).toContain("Baseline, 2026-01-02");
    expect(await block(cannotTell)).toContain(">Baseline<");
  });

  it("has a line for each culture near its window, and one for all others", async () => {
    const items = (await block(moved)).match(/<li><b>[\s\S]*?<\/li>|<li>Outside[\s\S]*?<\/li>/g)!;
    expect(items.map(visibleText)).toEqual([
      expect.stringMatching(/^warm-blend : moved; it had 0\.5 °C/) as string,
      expect.stringMatching(/^yoghurt : moved; it had 1\.5 °C/) as string,
      "Outside its window then and now: reuteri.",
    ]);
  });

  it("says what could not be compared, and whether the thermometer's error cancels", async () => {
    const text = visibleText(await block(cannotTell));
    expect(text).toContain(
      "Not compared, for not both tests show it: spread, swing, drift, warm-up",
    );
    expect(text).toMatch(/part of the doubt\. Test it once more/);
  });
});
