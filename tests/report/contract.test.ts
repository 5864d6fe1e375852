import { describe, expect, it } from "vitest";
import * as z from "zod";
import { toContract } from "../../src/report/contract.ts";
import * as samples from "./sample-analysis.ts";

// Contract version 1 as it was promised, written out here and not taken from the code.
const number = z.number();
const count = z.int().nonnegative();
const range = z.object({ low: number, high: number });
const noticeShape = z.object({ code: z.string(), text: z.string().min(10) });
const dwellShape = z.object({
  insideFraction: number.min(0).max(1),
  belowMinutes: number.nonnegative(),
  aboveMinutes: number.nonnegative(),
  longestOutsideMinutes: number.nonnegative(),
  degreeHoursOutside: number.nonnegative(),
});
const contractShape = z.object({
  holdband: z.string(),
  contract: z.literal(1),
  files: z.array(
    z.object({
      name: z.string(),
      sha256: z.string().length(64),
      rowsRead: count,
      rowsUsed: count,
      setAside: z.array(z.object({ reason: z.string(), count, firstLine: count })),
      delimiter: z.enum([",", ";", "\t", "|"]),
      decimal: z.enum([".", ","]),
      timeFormat: z.string(),
      unit: z.enum(["degC", "degF"]),
      intervalSeconds: number,
      notices: z.array(noticeShape),
    }),
  ),
  probes: z.array(
    z.object({
      name: z.string(),
      role: z.enum(["food", "bath", "room"]),
      phases: z.array(
        z.object({
          kind: z.enum(["idle", "warm-up", "hold", "disturbance", "cool-down"]),
          fromMinute: number,
          toMinute: number,
        }),
      ),
      warmUp: z
        .object({ minutesToHold: number, timeConstantMinutes: number.nullable() })
        .nullable(),
      hold: z
        .object({
          hours: number,
          mean: number,
          median: number,
          min: number,
          max: number,
          standardDeviation: number,
          band: range,
          guardedBand: range,
          standardUncertainty: number,
          effectiveReadings: number,
          drift: z.object({ perHour: number, low: number, high: number }),
          swing: z.object({ periodMinutes: number, peakToPeak: number }).nullable(),
        })
        .nullable(),
      uncertainty: z.array(
        z.object({
          source: z.string(),
          standardUncertainty: number,
          from: z.enum(["measured", "stated", "assumed"]),
        }),
      ),
      verdicts: z.array(
        z.object({
          culture: z.string(),
          name: z.string(),
          low: number,
          high: number,
          ceiling: number.nullable(),
          hours: number,
          verdict: z.enum(["holds", "misses", "unproven"]),
          probability: number.min(0).max(1),
          dwell: dwellShape.nullable(),
          reasons: z.array(z.string().min(10)),
        }),
      ),
    }),
  ),
});

const nights = {
  holds: samples.holdsNight,
  unproven: samples.unprovenNight,
  misses: samples.missesNight,
  "no hold": samples.noHoldNight,
  "several probes": samples.severalProbes,
  "hostile names": samples.hostileNight,
};

const numbersIn = (value: unknown): number[] => {
  if (typeof value === "number") return [value];
  if (value === null || typeof value !== "object") return [];
  return Object.values(value).flatMap(numbersIn);
};

describe("toContract", () => {
  it.each(Object.entries(nights))("keeps contract version 1: %s", (_name, night) => {
    const text = JSON.stringify(toContract(night()));
    expect(() => contractShape.parse(JSON.parse(text))).not.toThrow();
  });

  it("rounds to six decimals and writes no negative zero", () => {
    for (const value of numbersIn(toContract(samples.unprovenNight()))) {
      expect(value).toBe(Number(value.toFixed(6)));
      expect(Object.is(value, -0)).toBe(false);
    }
  });

  it("stays in degC, and says reasons in degC first, whatever unit is shown", () => {
    const [probe] = toContract(samples.missesNight()).probes;
    expect(probe!.hold!.mean).toBeGreaterThan(45);
    expect(probe!.hold!.mean).toBeLessThan(47);
    expect(probe!.verdicts[0]!.reasons[1]).toBe(
      "The food sat above 43 °C (109.4 °F) for more than 99 % of the hold.",
    );
  });

  it("does not change the Analysis it was given", () => {
    const analysis = samples.severalProbes();
    toContract(analysis);
    expect(toContract(analysis)).toEqual(toContract(samples.severalProbes()));
  });

  it("writes null for what no JSON number can say", () => {
    const night = samples.holdsNight();
    const [probe] = night.probes;
    const hold = { ...probe!.night.hold!, effectiveReadings: Number.POSITIVE_INFINITY };
    const changed = { ...probe!, night: { ...probe!.night, hold } };
    const contract = toContract({ ...night, probes: [changed] });
    expect(contract.probes[0]!.hold!.effectiveReadings).toBeNull();
  });
});
