/** Constructed: the advice is invented, see sample-advice.ts. */
import { expect, it } from "vitest";
import * as z from "zod";
import { adviceEntry, toAdviceContract } from "../../src/report/advice-contract.ts";
import { toKitchenContract } from "../../src/report/kitchen-contract.ts";
import {
  hostileKitchen,
  manyCultures,
  oneAppliance,
  sampleKitchen,
  untestedKitchen,
} from "./sample-kitchen.ts";

// The advice's part of contract version 1, written out here and not taken from the code.
const number = z.number();
const text = z.string();
const sentence = z.string().min(10);
const chanceNumber = number.min(0).max(1);
const word = z.enum(["holds", "misses", "unproven"]);
const basis = z.enum(["tested", "interpolated", "extrapolated", "assumed"]);
const setting = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("fixed") }),
  z.strictObject({ kind: z.literal("program"), program: text }),
  z.strictObject({ kind: z.literal("step"), celsius: number }),
  z.strictObject({ kind: z.literal("mark"), mark: text }),
]);
const setUp = { appliance: text, setting, container: text };
const chance = {
  probability: chanceNumber,
  ceilingRisk: chanceNumber.nullable(),
  verdict: word,
};
const level = z.object({
  mean: number,
  standardUncertainty: number,
  degreesOfFreedom: number.nullable(),
  low: number,
  high: number,
});
const candidate = z.object({
  ...setUp,
  basis,
  tests: z.array(text),
  level: level.nullable(),
  band: z.object({ low: number, high: number }).nullable(),
  chances: z.array(z.object({ culture: text, ...chance })).min(1),
});
const placed = z.object({ appliance: text, candidate, chance: z.object(chance) }).nullable();
const figure = z.object({
  value: number,
  standardUncertainty: number,
  from: z.enum(["measured", "assumed"]),
  testIds: z.array(text),
});
const beforeAndAfter = z.object({ mean: number, standardDeviation: number });
const advice = z.object({
  floor: chanceNumber,
  appliances: z.array(
    z.object({
      appliance: text,
      tests: z.array(z.object({ testId: text, setting, container: text, mean: number })),
      terms: z.array(
        z.object({ term: z.object({ code: text }), prior: beforeAndAfter, now: beforeAndAfter }),
      ),
      scatter: z.object({ prior: number, now: number }),
      curves: z.array(
        z.object({ container: text, points: z.array(z.object({ setting, basis, level })) }),
      ),
      candidates: z.array(candidate),
      cultures: z.array(
        z.object({
          culture: text,
          answer: z.enum(["can", "may", "cannot", "unknown"]),
          text: sentence,
          best: candidate.nullable(),
          chance: z.object(chance).nullable(),
          change: z.enum(["none", "setting", "container", "setting and container", "first test"]),
          from: z.object({ ...setUp, chance: z.object(chance) }).nullable(),
          steadyRoom: z.object({ low: number, high: number, probability: chanceNumber }).nullable(),
          obstacles: z.array(z.object({ code: text })),
          elsewhere: z.object({ ...setUp, probability: chanceNumber, basis }).nullable(),
        }),
      ),
    }),
  ),
  containers: z.array(z.object({ container: text, shareLost: figure, lagMinutes: figure })),
  match: z.object({
    places: z.array(
      z.object({
        culture: text,
        placed,
        why: z.enum(["none-can", "none-left", "nothing-known"]).nullable(),
        alone: placed,
        text: sentence,
      }),
    ),
    weakest: chanceNumber.nullable(),
    floor: chanceNumber,
  }),
  next: z.object({
    tests: z.array(
      z.object({
        ...setUp,
        basis,
        hours: number,
        daytime: z.boolean(),
        interval: z.object({
          loggerMinutes: number,
          byHandMinutes: number,
          swingMinutes: number.nullable(),
        }),
        thermometer: z
          .object({
            id: text,
            standardUncertainty: number,
            word: z.enum(["good", "usable", "too coarse"]),
          })
          .nullable(),
        gain: number,
        served: number,
        outcomes: z.array(
          z.object({ culture: text, now: chanceNumber, holds: chanceNumber, misses: chanceNumber }),
        ),
        text: sentence,
      }),
    ),
    open: z.array(
      z.object({
        ...setUp,
        culture: text,
        probability: chanceNumber,
        doubt: z
          .object({
            source: text,
            standardUncertainty: number,
            from: z.enum(["measured", "stated", "assumed"]),
            share: chanceNumber,
          })
          .nullable(),
        without: z.object({ verdict: word, probability: chanceNumber }).nullable(),
        text: sentence,
      }),
    ),
  }),
});
const own = z.object({
  holdband: text,
  contract: z.literal(1),
  kind: z.enum(["match", "next"]),
  requirements: z.array(
    z.object({
      culture: text,
      name: text,
      low: number,
      high: number,
      ceiling: number.nullable(),
      hours: number,
      share: chanceNumber,
    }),
  ),
  advice,
  unreadTests: z.array(z.object({ id: text, problem: z.object({ code: text, text: sentence }) })),
  notices: z.array(z.object({ code: text, text })),
  share: number,
  confidence: number,
});

const throughJson = (plain: unknown): unknown => JSON.parse(JSON.stringify(plain));

it.each([
  ["a kitchen", sampleKitchen],
  ["one appliance", () => oneAppliance("bath")],
  ["an untested kitchen", untestedKitchen],
  ["cultures without a place", manyCultures],
  ["hostile names", hostileKitchen],
])("keeps contract version 1: %s", (_, kitchen) => {
  for (const kind of ["match", "next"] as const) {
    const parsed = own.parse(throughJson(toAdviceContract(kitchen(), kind)));
    expect(parsed.kind).toBe(kind);
  }
});

it("is the same advice in a kitchen's report", () => {
  const kitchen = sampleKitchen();
  const { advice: inReport } = toKitchenContract(kitchen);
  expect(inReport).toEqual(toAdviceContract(kitchen, "match").advice);
  expect(() => advice.parse(throughJson(inReport))).not.toThrow();
});

it("gives each chance the culture it is about", () => {
  const [first] = adviceEntry(sampleKitchen()).appliances;
  expect(first!.cultures[0]!.best!.chances.map(({ culture }) => culture)).toEqual([
    "reuteri",
    "warm-blend",
    "yoghurt",
  ]);
});

it("keeps figures without an end out of the data", () => {
  const kitchen = sampleKitchen();
  const endless = JSON.parse(JSON.stringify(kitchen.advice), (key, value: unknown) =>
    key === "degreesOfFreedom" ? Infinity : key === "standardUncertainty" ? NaN : value,
  ) as typeof kitchen.advice;
  const { appliances } = toAdviceContract({ ...kitchen, advice: endless }, "match").advice;
  const found = appliances[0]!.curves[0]!.points[0]!.level;
  expect(found.degreesOfFreedom).toBeNull();
  expect(found.standardUncertainty).toBeNull();
});

it("names tests that could not be read, whose advice is missing", () => {
  expect(toAdviceContract(sampleKitchen(), "next").unreadTests).toMatchObject([
    { id: "bath-42-jars", problem: { code: "no-temperature-column" } },
  ]);
});
