import { expect, it } from "vitest";
import { backdropBoxes, backdropRules } from "../../../src/report/charts/backdrop.ts";
import { noHoldNight, probe, requirement, severalProbes, verdict } from "../sample-analysis.ts";

const shape = { level: 40, swing: 1, periodMinutes: 20, perHour: 0, stepSeconds: 60, hours: 6 };
const asked = requirement("window", 38, 43, 45, 24);
const held = probe({ shape, verdicts: [verdict("holds", 0.96, asked, [])] });
const panel = { low: 0, high: 600 };
/** Ten px to a degree, 46 at the top. */
const backdrop = (given = held, low = 20) => ({
  probe: given,
  unit: "degC" as const,
  vertical: { domain: { low, high: 46 }, height: (46 - low) * 10 },
  panel,
  hold: { low: 100, high: 600 },
});

it("draws the window, the guarded band and over it the holding band", () => {
  const { band } = held.night.hold!;
  const boxes = backdropBoxes(backdrop());
  expect(boxes.map(({ left, top, bottom }) => [left, top, bottom])).toEqual([
    [0, expect.closeTo(30, 9), expect.closeTo(80, 9)],
    [
      100,
      expect.closeTo((46 - held.guardedBand!.high) * 10, 9),
      expect.closeTo((46 - held.guardedBand!.low) * 10, 9),
    ],
    [100, expect.closeTo((46 - band.high) * 10, 9), expect.closeTo((46 - band.low) * 10, 9)],
  ]);
});

it("draws the edges along the panel and the ceiling, guarded band dashed along the hold", () => {
  const rules = backdropRules(backdrop());
  const guard = rules.slice(0, 2);
  expect(guard.map(({ left, dash }) => [left, dash])).toEqual([
    [100, [3, 3]],
    [100, [3, 3]],
  ]);
  expect(rules.slice(2).map(({ top }) => Math.round(46 - top / 10))).toEqual([38, 43, 45]);
});

it("cuts off what lies beyond the drawn scale", () => {
  const [window] = backdropBoxes(backdrop(held, 42));
  expect(window).toMatchObject({ top: expect.closeTo(30, 9), bottom: 40 });
  expect(backdropRules(backdrop(held, 44)).map(({ stroke }) => stroke)).toEqual(["var(--limit)"]);
});

it("parts two windows by fill and by dash, and draws a ceiling they share once", () => {
  const both = ["a", "b"].map((name, at) =>
    verdict("holds", 0.96, requirement(name, 36 + at * 3, 39 + at * 3, 45, 24), []),
  );
  const twice = { ...held, verdicts: both };
  const [first, second] = backdropBoxes(backdrop(twice));
  expect(first!.fill).not.toBe(second!.fill);
  const rules = backdropRules(backdrop(twice)).slice(2);
  expect(rules.length).toBe(5);
  expect(rules[0]!.dash).not.toEqual(rules[2]!.dash);
});

it("draws every window asked for, and no band where nothing held", () => {
  expect(backdropBoxes(backdrop(severalProbes().probes[3])).length).toBe(4);
  expect(backdropBoxes(backdrop(noHoldNight().probes[0])).length).toBe(1);
});
