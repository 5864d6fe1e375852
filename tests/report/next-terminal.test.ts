/** Constructed: the advice is invented, see sample-advice.ts. */
import { describe, expect, it } from "vitest";
import type { NextAdvice } from "../../src/advice/next-types.ts";
import type { KitchenAnalysis } from "../../src/kitchen-analysis-types.ts";
import { toNextTerminal } from "../../src/report/next-terminal.ts";
import { flat, longestOf } from "./advice-screen.ts";
import { expectGolden } from "./golden.ts";
import { hostileKitchen, sampleKitchen, untestedKitchen } from "./sample-kitchen.ts";

const plain = { colour: false, ascii: false, width: 80 };
const told = (kitchen = sampleKitchen()): string => flat(toNextTerminal(kitchen, plain));

const withNext = (change: Partial<NextAdvice>, kitchen = sampleKitchen()): KitchenAnalysis => ({
  ...kitchen,
  advice: { ...kitchen.advice, next: { ...kitchen.advice.next, ...change } },
});

/** The sample's one test, on several marks of the box. */
const several = (count: number): KitchenAnalysis => {
  const whole = sampleKitchen();
  const [test] = whole.advice.next.tests;
  const tests = Array.from({ length: count }, (_, at) => ({
    ...test!,
    setUp: { ...test!.setUp, setting: { kind: "mark" as const, mark: String(at + 1) } },
  }));
  return withNext({ tests }, whole);
};

describe("toNextTerminal", () => {
  it.each([60, 80, 120])("writes the next test at %d columns as kept", (width) => {
    expectGolden(`next-${width}.txt`, toNextTerminal(several(3), { ...plain, width }));
  });

  it("tells of the first test how, how long, how often and with what", () => {
    expect(told()).toContain(
      "Worth doing next Test the warming box at mark 3, jars on the rack, for 36 h",
    );
    expect(told()).toMatch(/day and night.+every 2 min.+0\.12 °C/);
  });

  it("names up to four more in short, with what each could settle", () => {
    expect(told()).not.toContain("After that");
    const after = (count: number) =>
      told(several(count)).match(/ - Warming box, mark \d, .+?, for/g);
    expect(after(3)).toHaveLength(2);
    expect(after(9)).toHaveLength(4);
    expect(told(several(2))).toContain(
      "After that - Warming box, mark 2, Jars on the rack, for 36 h: may prove or rule out reuteri",
    );
  });

  it("gives each open verdict its dominant doubt and what it would be without it", () => {
    expect(told()).toMatch(
      / - Warming box, mark 3, Jars on the rack, reuteri: 31 % likely to hold.+without that doubt: holds \(97 %\)/,
    );
  });

  it("says when to test again where nothing is open", () => {
    const text = told(withNext({ tests: [], open: [] }));
    expect(text).toMatch(/^No verdict is open/);
    expect(text).toMatch(/season.+moved.+container.+common practice/);
    expect(text).not.toContain("Open verdicts");
  });

  it("keeps the open verdicts where no one test would decide them", () => {
    const text = told(withNext({ tests: [] }));
    expect(text).toMatch(/^No one water test would be expected to decide what is open/);
    expect(text).toContain("Open verdicts");
  });

  it("asks for a first test where there is none", () => {
    const text = told(withNext({ tests: [], open: [] }, untestedKitchen()));
    expect(text).toMatch(/^No water test yet: .+Begin with any appliance/);
    expect(text).not.toContain("No verdict is open");
  });

  it("says what the kitchen lacks before a test can be named", () => {
    expect(told(sampleKitchen({ requirements: [] }))).toMatch(/^No culture in this kitchen yet/);
  });

  it("names the tests that could not be read", () => {
    expect(told()).toContain("Not read Circulating bath, 42 °C (107.6 °F), Jars in water");
  });

  it.each([40, 60, 80, 120])("keeps to %d columns", (width) => {
    for (const kitchen of [several(5), untestedKitchen(), withNext({ tests: [], open: [] })]) {
      const text = toNextTerminal(kitchen, { ...plain, width });
      expect(longestOf(text.split("\n"))).toBeLessThanOrEqual(width);
    }
  });

  it("keeps to printable ASCII where asked, and lets no name steer the terminal", () => {
    expect(toNextTerminal(hostileKitchen(), { ...plain, ascii: true })).toMatch(
      /^[\u0020-\u007e\n]+$/,
    );
    expect(toNextTerminal(hostileKitchen(), plain)).not.toMatch(
      // oxlint-disable-next-line no-control-regex
      /[\u0000-\u0009\u000b-\u001f\u202e]/,
    );
  });
});
