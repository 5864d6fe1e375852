import { describe, expect, it } from "vitest";
import { toTerminal } from "../../src/report/terminal.ts";
import { expectGolden } from "./golden.ts";
import {
  holdsNight,
  hostileNight,
  missesNight,
  noHoldNight,
  severalProbes,
  unprovenNight,
} from "./sample-analysis.ts";
import { grownNight } from "./sample-growth.ts";

const wide = { colour: false, ascii: false, width: 80, report: "night.html" };
const nights = { holdsNight, unprovenNight, missesNight, noHoldNight, severalProbes };

const growthLines = (text: string): readonly string[] =>
  text.split("\n").filter((line) => line.startsWith("  Growth"));

describe("toTerminal", () => {
  it.each(Object.entries(nights))("writes %s as kept", (name, night) => {
    expectGolden(`${name}.txt`, toTerminal(night(), wide));
  });

  it("answers first, with a word as the mark", () => {
    expect(toTerminal(holdsNight(), wide)).toMatch(/^\[HOLDS\] .*97 % likely to hold\n/);
    expect(toTerminal(missesNight(), wide)).toMatch(/^\[MISSES\] .*< 1 % likely to hold\n/);
  });

  it("starts with all verdicts at a glance where there are several", () => {
    expect(toTerminal(severalProbes(), wide)).toMatch(
      /^jar in night\.csv\n {2}HOLDS +97 % {2}Yoghurt, warm set\n/,
    );
  });

  it("keeps each card of several to about six lines", () => {
    const text = toTerminal(severalProbes(), wide);
    const cards = text.split(/(?=^\[[A-Z]+\])/m).slice(1);
    expect(cards.length).toBe(3);
    for (const card of cards) {
      const own = card
        .split(/^ {2}Hold |^$/m)[0]!
        .trimEnd()
        .split("\n");
      expect(own.length).toBeLessThanOrEqual(7);
    }
  });

  it("uses colour only as an addition: without it every character else is the same", () => {
    const coloured = toTerminal(severalProbes(), { ...wide, colour: true });
    // oxlint-disable-next-line no-control-regex
    const codes = coloured.match(/\u001b\[[\d;]*m/g) ?? [];
    // Three verdicts, each in the overview and on its card, each opened and closed.
    expect(codes.length).toBe(12);
    // oxlint-disable-next-line no-control-regex
    expect(coloured.replaceAll(/\u001b\[[\d;]*m/g, "")).toBe(toTerminal(severalProbes(), wide));
  });

  it("gives growth one line for each culture that has figures", () => {
    expect(growthLines(toTerminal(holdsNight(), wide))).toEqual([]);
    // Whether the figures are right: tests/report/sections/growth.test.ts, from the same night.
    const lines = growthLines(toTerminal(grownNight(), wide));
    expect(lines).toEqual([
      "  Growth    yoghurt: 92 % to > 99 % of the fastest, by a model",
      "  Growth    warm-blend, 1 of 2 organisms: 57 % of the fastest, by a model",
    ]);
  });

  it.each([40, 60, 80, 120])("keeps to %d columns", (width) => {
    const text = toTerminal(unprovenNight(), { ...wide, width });
    for (const line of text.split("\n")) expect([...line].length).toBeLessThanOrEqual(width);
  });

  it("keeps to printable ASCII where asked, whatever the names hold", () => {
    const text = toTerminal(hostileNight(), { ...wide, ascii: true });
    expect(text).toMatch(/^[\u0020-\u007e\n]+$/);
    expect(text).toContain("38 to 43 degC");
  });

  it("lets no name steer the terminal", () => {
    // oxlint-disable-next-line no-control-regex
    expect(toTerminal(hostileNight(), wide)).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
  });
});
