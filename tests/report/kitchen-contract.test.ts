import { expect, it } from "vitest";
import * as z from "zod";
import { toContract } from "../../src/report/contract.ts";
import { toKitchenContract } from "../../src/report/kitchen-contract.ts";
import { hostileKitchen, oneAppliance, sampleKitchen, untestedKitchen } from "./sample-kitchen.ts";

// Contract version 1 of kind "kitchen", written out here and not taken from the code.
const number = z.number();
const text = z.string();
const setting = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("fixed") }),
  z.object({ kind: z.literal("program"), program: text }),
  z.object({ kind: z.literal("step"), celsius: number }),
  z.object({ kind: z.literal("mark"), mark: text }),
]);
const setUp = { appliance: text, setting, container: text };
const figure = z.object({ value: number, standardUncertainty: number });
const verdict = z.object({
  culture: text,
  low: number,
  high: number,
  hours: number,
  verdict: z.enum(["holds", "misses", "unproven"]),
  probability: number.min(0).max(1),
  reasons: z.array(z.string().min(10)),
});
const from = z.enum(["measured", "stated", "assumed"]);
const contract = z.object({
  holdband: text,
  contract: z.literal(1),
  kind: z.literal("kitchen"),
  thermometers: z.array(
    z.object({
      id: text,
      name: text,
      from,
      checked: z.object({ date: text, daysAgo: number, monthsAgo: number }).nullable(),
      doubts: z.array(z.object({ source: text, standardUncertainty: number, from })).min(1),
      doubtsAt: z.literal(38),
      corrections: z
        .array(
          z.object({
            reading: number,
            correction: number,
            standardUncertainty: number,
            degreesOfFreedom: number.nullable(),
            expanded: number,
          }),
        )
        .length(4),
      questions: z.array(z.object({ code: text, leftOut: z.boolean(), text: z.string().min(40) })),
    }),
  ),
  appliances: z.array(z.object({ id: text, name: text, tests: z.int() })),
  setUps: z.array(
    z.object({
      ...setUp,
      tests: z.array(text).min(1),
      mean: number.nullable(),
      runToRun: z.object({ value: number, from }),
      verdicts: z.array(verdict),
    }),
  ),
  tests: z.array(
    z.object({
      id: text,
      ...setUp,
      startedAt: z
        .string()
        .regex(/^\d{4}-\d\d-\d\d \d\d:\d\d$/)
        .nullable(),
      problem: z.object({ code: text, text: z.string().min(20) }).nullable(),
      paths: z.array(text).min(1),
      probes: z.array(z.object({ name: text, role: text, verdicts: z.array(verdict) })),
      responses: z.array(
        z.object({
          food: z.int(),
          bath: z.int(),
          offset: figure,
          lagMinutes: figure.nullable(),
          shareLost: figure.nullable(),
        }),
      ),
    }),
  ),
  notices: z.array(z.object({ code: text, text })),
  share: number,
  confidence: number,
});

it.each([
  ["a kitchen", sampleKitchen],
  ["one appliance", () => oneAppliance("bath")],
  ["an untested kitchen", untestedKitchen],
  ["hostile names", hostileKitchen],
])("keeps contract version 1: %s", (_, kitchen) => {
  const plain = JSON.stringify(toKitchenContract(kitchen()));
  expect(() => contract.parse(JSON.parse(plain))).not.toThrow();
});

it("gives each test the probes of a single check", () => {
  const kitchen = sampleKitchen();
  const { tests } = toKitchenContract(kitchen);
  const [first] = kitchen.tests;
  expect(tests[0]!.probes).toEqual(toContract(first!.analysis!).probes);
  expect(tests[0]!.files).toEqual(toContract(first!.analysis!).files);
  expect(tests[0]!.startedAt).toBe("2026-03-02 21:37");
});

it("says of a test that could not be read why, and keeps its files' paths", () => {
  const unread = toKitchenContract(sampleKitchen()).tests.find(({ problem }) => problem !== null)!;
  expect(unread.problem!.code).toBe("no-temperature-column");
  expect(unread.paths).toEqual(["readings/bath-42.csv"]);
  expect(unread.probes).toEqual([]);
  expect(unread.startedAt).toBeNull();
});

it("says how often each appliance was tested, not tested ones too", () => {
  const tests = toKitchenContract(sampleKitchen()).appliances.map((one) => [one.id, one.tests]);
  expect(tests).toEqual([
    ["warm-cooker", 1],
    ["step-cooker", 3],
    ["bath", 2],
    ["box", 1],
    ["cupboard", 0],
  ]);
});
