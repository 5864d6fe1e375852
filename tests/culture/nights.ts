/** Constructed nights for the verdict's tests: a warm-up, then a hold of known shape. */
import { celsius, celsiusDifference, fraction, hours } from "../../src/quantity.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import type { VerdictEvidence } from "../../src/culture/verdict-evidence.ts";
import { readNight } from "../../src/hold/night.ts";
import { specifiedThermometer } from "../../src/thermometer/budget.ts";

export interface NightShape {
  readonly hoursHeld: number;
  /** Temperature of the hold at an hour from its start, degC. */
  readonly hold: (hour: number) => number;
  readonly stepMinutes?: number;
}

const warmUpMinutes = 60;

/** Readings: an hour's straight ramp from 20 degC, then the hold, rounded to 0.01 degC. */
export const nightSeries = ({ hoursHeld, hold, stepMinutes = 1 }: NightShape) => {
  const count = Math.floor((warmUpMinutes + hoursHeld * 60) / stepMinutes) + 1;
  const minutes = Float64Array.from({ length: count }, (_, i) => i * stepMinutes);
  const start = hold(0);
  const celsiusRead = minutes.map((minute) => {
    const value =
      minute < warmUpMinutes
        ? 20 + ((start - 20) * minute) / warmUpMinutes
        : hold((minute - warmUpMinutes) / 60);
    return Math.round(value * 100) / 100;
  });
  return { minutes, celsius: celsiusRead, resolution: 0.01 };
};

/** Everything a verdict needs about such a night; the thermometer is +-0.1 degC unless said otherwise. */
export const evidenceOf = (
  shape: NightShape,
  more: Partial<VerdictEvidence> = {},
): VerdictEvidence => ({
  night: readNight(nightSeries(shape), { share: 0.95 }),
  resolution: 0.01,
  thermometer: specifiedThermometer(celsiusDifference(0.1), "stated"),
  runToRun: { value: celsiusDifference(0), from: "stated" },
  room: null,
  confidence: 0.95,
  ...more,
});

/** A window with hours, and a ceiling where one is given. */
export const asked = (
  low: number,
  high: number,
  hoursNeeded: number,
  ceiling: number | null = null,
): Requirement => ({
  culture: "window",
  name: "",
  low: celsius(low),
  high: celsius(high),
  ceiling: ceiling === null ? null : celsius(ceiling),
  hours: hours(hoursNeeded),
  share: fraction(0.95),
});

/** A thermostat's swing as a sine, degC. */
export const swinging =
  (level: number, amplitude: number, periodMinutes: number) =>
  (hour: number): number =>
    level + amplitude * Math.sin((2 * Math.PI * hour * 60) / periodMinutes);
