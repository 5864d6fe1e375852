import { expect, it } from "vitest";
import type { Obstacle } from "../../../src/advice/advice-types.ts";
import { obstacleText } from "../../../src/report/wording/obstacles.ts";
import { plainWriting, terminalWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const { kitchen } = sampleKitchen();
const text = (obstacle: Obstacle): string => obstacleText(obstacle, kitchen, plainWriting("degC"));

const cooker = {
  appliance: "warm-cooker",
  setting: { kind: "fixed" },
  container: "jars-in-water",
} as const;
const step = (celsius: number) =>
  ({ appliance: "step-cooker", setting: { kind: "step", celsius }, container: "basin" }) as const;

const every: readonly (readonly [Obstacle, string])[] = [
  [
    { code: "too-warm-at-lowest", setUp: cooker, mean: 41.3, by: 1.8 },
    "it is 1.8 °C (3.2 °F) too warm (jars in water) and has no other setting",
  ],
  [
    { code: "too-warm-at-lowest", setUp: step(30), mean: 41.3, by: 1.8 },
    "even at 30 °C (86 °F), straight in the basin, it is 1.8 °C (3.2 °F) too warm",
  ],
  [
    { code: "too-cold-at-highest", setUp: step(60), mean: 35, by: 1.5 },
    "even at 60 °C (140 °F), straight in the basin, it stays 1.5 °C (2.7 °F) too cold",
  ],
  [
    {
      code: "settings-too-coarse",
      below: { setUp: step(36), mean: 36.1 },
      above: { setUp: step(40), mean: 40.2 },
    },
    "it comes to 36.1 °C (97.0 °F) at 36 °C (96.8 °F), and at 40 °C (104 °F), the next, already to 40.2 °C (104.4 °F)",
  ],
  [
    { code: "swings-too-wide", peakToPeak: 4, windowWidth: 3 },
    "it swings by 4.0 °C (7.2 °F), and the window is 3.0 °C (5.4 °F) wide",
  ],
  [
    { code: "band-too-wide", bandWidth: 4, windowWidth: 3 },
    "it wanders over 4.0 °C (7.2 °F), and the window is 3.0 °C (5.4 °F) wide",
  ],
  [{ code: "drifts", perHour: -0.12 }, "it drifts down by 0.12 °C (0.22 °F) an hour"],
  [
    { code: "passes-ceiling", ceiling: 43, risk: 0.3 },
    "it is 30 % likely to go above 43 °C (109.4 °F), where this culture must never be",
  ],
  [
    { code: "fell-away", afterHours: 8, needed: 36 },
    "its heat ended after 8 h of hold, and this culture needs 36 h",
  ],
  [{ code: "not-tested" }, "it has not been tested"],
  [{ code: "only-failed-tests", tests: 1 }, "its only test did not settle or could not be read"],
  [{ code: "only-failed-tests", tests: 2 }, "none of its 2 tests settled or could be read"],
  [
    { code: "tests-disagree", setUp: step(41), spread: 2.1 },
    "its tests at 41 °C (105.8 °F), straight in the basin, lie 2.1 °C (3.8 °F) apart, further than runs usually do",
  ],
];

it.each(every)("says %o", (obstacle, words) => {
  expect(text(obstacle)).toBe(words);
});

it("knows an appliance with one program or mark to have no other setting", () => {
  const [first] = kitchen.appliances;
  const one = {
    ...kitchen,
    appliances: [{ ...first!, control: { kind: "programs", programs: ["Warm"] } }],
  };
  const setUp = { ...cooker, setting: { kind: "program", program: "Warm" } } as const;
  const obstacle: Obstacle = { code: "too-warm-at-lowest", setUp, mean: 42, by: 1 };
  expect(obstacleText(obstacle, one as never, plainWriting("degC"))).toContain("no other setting");
});

it("keeps to signs a plain terminal can show", () => {
  const plain = terminalWriting("degC", true);
  for (const [obstacle] of every) {
    expect(obstacleText(obstacle, kitchen, plain)).toMatch(/^[\u0020-\u007e\u00a0]+$/);
  }
});
