import { expect, it } from "vitest";
import { backdropLayers } from "../../../src/report/charts/backdrop.ts";
import { noHoldNight, probe, requirement, severalProbes, verdict } from "../sample-analysis.ts";

interface Layer {
  readonly data: { readonly values: readonly Readonly<Record<string, unknown>>[] };
}

const shape = { level: 40, swing: 1, periodMinutes: 20, perHour: 0, stepSeconds: 60, hours: 6 };
const asked = requirement("window", 38, 43, 45, 24);
const held = probe({ shape, verdicts: [verdict("holds", 0.96, asked, [])] });
const panel = { low: 0, high: 6 };
const layers = (
  domain: { low: number; high: number },
  given = held,
  unit: "degC" | "degF" = "degC",
): readonly Layer[] =>
  backdropLayers({ probe: given, unit, domain, panel, hold: { low: 1, high: 6 } }) as never;

it("draws window and band, dashed guarded band, then edges and ceiling", () => {
  const [solid, dashed, rules] = layers({ low: 20, high: 46 });
  expect(solid!.data.values.map(({ low, high, from }) => [low, high, from])).toEqual([
    [38, 43, 0],
    [held.night.hold!.band.low, held.night.hold!.band.high, 1],
  ]);
  expect(dashed!.data.values[0]).toMatchObject({ low: held.guardedBand!.low, from: 1, to: 6 });
  expect(rules!.data.values.map(({ at }) => at)).toEqual([38, 43, 45]);
});

it("cuts off what lies beyond the drawn scale, in the drawn unit", () => {
  const [solid, , rules] = layers({ low: 103, high: 108 }, held, "degF");
  expect(solid!.data.values[0]).toMatchObject({ low: 103, high: 108 });
  expect(rules!.data.values).toEqual([]);
});

it("draws every window asked for, and no band where nothing held", () => {
  const twice = severalProbes().probes[3]!;
  expect(layers({ low: 20, high: 46 }, twice)[0]!.data.values.length).toBe(3);
  const [solid, dashed] = layers({ low: 20, high: 46 }, noHoldNight().probes[0]);
  expect(solid!.data.values.length).toBe(1);
  expect(dashed!.data.values).toEqual([]);
});
