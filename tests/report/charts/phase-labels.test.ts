import { expect, it } from "vitest";
import { placePhaseLabels } from "../../../src/report/charts/phase-labels.ts";

const phases = [
  { kind: "idle", fromMinute: 0, toMinute: 10 },
  { kind: "warm-up", fromMinute: 10, toMinute: 60 },
  { kind: "hold", fromMinute: 60, toMinute: 690 },
  { kind: "cool-down", cause: "probe-out", fromMinute: 690, toMinute: 700 },
] as const;

it("starts each name at its phase, lifts what would touch, and stays on the plot", () => {
  const labels = placePhaseLabels(phases, (minute) => minute * 0.5, 350, 12);
  expect(labels.map(({ text }) => text)).toEqual(["not yet on", "warm-up", "hold", "probe out"]);
  expect(labels.map(({ row }) => row)).toEqual([2, 1, 0, 0]);
  expect(labels.map(({ from }) => from)).toEqual([0, 5, 30, 345]);
  for (const { text, x } of labels) expect(x + text.length * 12 * 0.6).toBeLessThanOrEqual(350);
});

it("keeps all in one row where there is room", () => {
  const roomy = phases.map(({ kind }, at) => ({
    kind,
    fromMinute: at * 200,
    toMinute: at * 200 + 200,
  }));
  const labels = placePhaseLabels(roomy, (minute) => minute, 800, 12);
  expect(labels.map(({ row }) => row)).toEqual([0, 0, 0, 0]);
});
