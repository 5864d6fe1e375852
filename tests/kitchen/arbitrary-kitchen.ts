/** Random valid kitchens; constructed, nothing in them was measured. */
import fc from "fast-check";
import { cultures as catalogue } from "../../src/culture/catalogue.ts";
import type { Culture } from "../../src/culture/culture.ts";
import {
  applianceKinds,
  containerStands,
  milkBodies,
  separations,
  sournesses,
  troubles,
} from "../../src/kitchen/kitchen.ts";
import type {
  Appliance,
  Batch,
  Container,
  Control,
  Kitchen,
  KitchenThermometer,
  Setting,
  TestFile,
  WaterTest,
} from "../../src/kitchen/kitchen.ts";
import { celsius, hours } from "../../src/quantity.ts";
import { probeRoles } from "../../src/readings/series.ts";
import type { ThermometerCheck } from "../../src/thermometer/thermometer.ts";

/** Names that YAML or JavaScript could take for something else. */
const awkward = [
  "yes",
  "null",
  "~",
  "38",
  "1e3",
  "0x1F",
  "2026-10-03",
  "- a",
  "a: b",
  "a #b",
  "#x",
  "{a}",
  "[b",
  "'",
  '"',
  "\\n",
  "*a",
  "&b",
  "!c",
  "%d",
  "@e",
  "`f`",
  "<<",
  "? g",
  "|",
  ">",
  "constructor",
  "toString",
  "hasOwnProperty",
  "Küche",
  "温度計",
  "🍯 jar",
  "a, b",
  "...",
  "---",
];

const plainName = fc
  .string({ unit: fc.constantFrom(..."abcXYZ019 -_.,:#'\"éß温"), minLength: 1, maxLength: 12 })
  .map((text) => text.trim())
  .filter((text) => text !== "");
export const anyName = fc.oneof(
  { weight: 3, arbitrary: plainName },
  { weight: 1, arbitrary: fc.constantFrom(...awkward) },
);

const decimal = (low: number, high: number, digits: number): fc.Arbitrary<number> => {
  const scale = 10 ** digits;
  return fc
    .integer({ min: Math.ceil(low * scale), max: Math.floor(high * scale) })
    .map((value) => value / scale);
};
const maybe = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> =>
  fc.option(value, { nil: null });

const date = fc
  .integer({ min: 0, max: 20_000 })
  .map((day) => new Date(Date.UTC(1990, 0, 1) + day * 86_400_000).toISOString().slice(0, 10));
const room = fc
  .tuple(decimal(-20, 40, 1), fc.integer({ min: 0, max: 20 }))
  .map(([low, width]) => ({ low, high: Math.round((low + width) * 10) / 10 }));
const note = fc
  .array(anyName, { minLength: 1, maxLength: 4 })
  .map((lines) => lines.join("\n").trim());

const readings = fc.array(decimal(-5, 110, 2), { minLength: 1, maxLength: 4 });
const facts = { readings, date: maybe(date), confirmed: fc.boolean() };

const check = (altitude: number | null): fc.Arbitrary<ThermometerCheck> =>
  fc.oneof(
    fc.record({ kind: fc.constant("ice" as const), ...facts }),
    fc.record({
      kind: fc.constant("boiling" as const),
      place: fc.record({
        altitude:
          altitude === null
            ? maybe(decimal(-100, 5000, 0))
            : fc.oneof(fc.constant(altitude), decimal(-100, 5000, 0)),
        pressure: maybe(
          fc.record({
            hectopascal: decimal(500, 1080, 1),
            reduced: fc.constantFrom("station" as const, "sea-level" as const),
          }),
        ),
      }),
      ...facts,
    }),
    fc.record({
      kind: fc.constant("reference" as const),
      truth: decimal(0, 100, 2),
      truthUncertainty: maybe(decimal(0, 1, 3)),
      ...facts,
    }),
  );

const thermometer = (altitude: number | null): fc.Arbitrary<Omit<KitchenThermometer, "id">> =>
  fc.record({
    name: anyName,
    resolution: maybe(decimal(0.001, 1, 3)),
    accuracy: maybe(decimal(0.01, 3, 2)),
    checks: fc.array(check(altitude), { maxLength: 3 }),
  });

const names = fc.uniqueArray(anyName, {
  minLength: 1,
  maxLength: 4,
  selector: (name) => name.toLowerCase(),
});
const steps = fc
  .tuple(decimal(20, 40, 1), fc.constantFrom(0.1, 0.25, 0.5, 1, 2), fc.integer({ min: 1, max: 60 }))
  .map(([low, step, count]): Control => {
    const high = Math.round((low + step * count) * 1e6) / 1e6;
    return { kind: "steps", low, high, step };
  });
const control: fc.Arbitrary<Control> = fc.oneof(
  fc.constant<Control>({ kind: "fixed" }),
  names.map((programs): Control => ({ kind: "programs", programs })),
  names.map((marks): Control => ({ kind: "marks", marks })),
  steps,
);

export const anySetting = (one: Control): fc.Arbitrary<Setting> => {
  if (one.kind === "fixed") return fc.constant({ kind: "fixed" });
  if (one.kind === "programs") {
    return fc.constantFrom(...one.programs).map((program) => ({ kind: "program", program }));
  }
  if (one.kind === "marks") {
    return fc.constantFrom(...one.marks).map((mark) => ({ kind: "mark", mark }));
  }
  const count = Math.round((one.high - one.low) / one.step);
  return fc.integer({ min: 0, max: count }).map((index) => ({
    kind: "step",
    celsius: Math.round((one.low + index * one.step) * 1e9) / 1e9,
  }));
};

const appliance: fc.Arbitrary<Omit<Appliance, "id">> = fc.record({
  name: anyName,
  kind: fc.constantFrom(...applianceKinds),
  control,
  thermostat: maybe(fc.boolean()),
  movedOn: maybe(date),
});

const container: fc.Arbitrary<Omit<Container, "id">> = fc.record({
  name: anyName,
  stands: fc.constantFrom(...containerStands),
  volume: maybe(decimal(0.05, 20, 2)),
  count: maybe(fc.integer({ min: 1, max: 40 })),
  changedOn: maybe(date),
});

const known = new Set(catalogue.map(({ id }) => id));
const own = { kind: "own" } as const;
const ownCulture: fc.Arbitrary<Culture> = fc
  .tuple(anyName, anyName, decimal(10, 50, 1), fc.integer({ min: 1, max: 9 }), decimal(1, 240, 1))
  .filter(([id]) => !known.has(id))
  .map(([id, name, low, width, time]) => ({
    id,
    name,
    low: celsius(low),
    high: celsius(low + width),
    target: celsius(low + width / 2),
    ceiling: celsius(low + width + 1),
    hours: hours(time),
    sources: { window: own, target: own, ceiling: own, hours: own },
    growth: [],
  }));
const changedCulture = fc
  .tuple(fc.constantFrom(...catalogue), decimal(1, 240, 1))
  .map(([one, time]): Culture => {
    const sources = Object.assign({}, one.sources, { hours: own });
    return Object.assign({}, one, { hours: hours(time), sources });
  });
const culture = fc.oneof(fc.constantFrom(...catalogue), changedCulture, ownCulture);

const withIds = <Entry>(entry: fc.Arbitrary<Entry>, minLength = 0) =>
  fc
    .uniqueArray(fc.tuple(anyName, entry), { minLength, maxLength: 4, selector: ([id]) => id })
    .map((entries) => entries.map(([id, one]) => ({ ...one, id })));

const pathStep = fc.string({ unit: fc.constantFrom(..."abc01_- é"), minLength: 1, maxLength: 8 });
const path = fc
  .array(
    pathStep.filter((text) => text.trim() === text),
    { minLength: 1, maxLength: 3 },
  )
  .map((parts) => [...parts, "night.csv"].join("/"));

const idOf = (entries: readonly { readonly id: string }[]): fc.Arbitrary<string> =>
  fc.constantFrom(...entries.map(({ id }) => id));

const testFile = (thermometers: readonly KitchenThermometer[]): fc.Arbitrary<TestFile> =>
  fc.record({
    path,
    sha256: fc.string({
      unit: fc.constantFrom(..."0123456789abcdef"),
      minLength: 64,
      maxLength: 64,
    }),
    startsAt: maybe(fc.integer({ min: 0, max: 2_000_000_000 }).map((seconds) => seconds * 1000)),
    unit: maybe(fc.constantFrom("degC" as const, "degF" as const)),
    dateOrder: maybe(fc.constantFrom("day-first" as const, "month-first" as const)),
    decimal: maybe(fc.constantFrom("." as const, "," as const)),
    intervalSeconds: maybe(decimal(0.5, 600, 1)),
    columns: fc.array(anyName, { maxLength: 3 }),
    probes: fc.uniqueArray(
      fc.record({
        name: anyName,
        place: fc.constantFrom(...probeRoles),
        thermometer: thermometers.length === 0 ? fc.constant(null) : maybe(idOf(thermometers)),
      }),
      { maxLength: 3, selector: ({ name }) => name },
    ),
  });

type Parts = Omit<Kitchen, "tests" | "batches">;

const setUp = ({ appliances, containers }: Parts) =>
  fc.constantFrom(...appliances).chain((one) =>
    fc.record({
      appliance: fc.constant(one.id),
      setting: anySetting(one.control),
      container: idOf(containers),
    }),
  );

const waterTest = (parts: Parts): fc.Arbitrary<Omit<WaterTest, "id">> =>
  fc
    .tuple(
      setUp(parts),
      fc.record({
        fill: maybe(anyName),
        room: maybe(room),
        notes: maybe(note),
        files: fc.array(testFile(parts.thermometers), { minLength: 1, maxLength: 2 }),
      }),
    )
    .map(([one, rest]) => Object.assign({}, one, rest));

const batch = (parts: Parts): fc.Arbitrary<Batch> =>
  fc
    .tuple(
      setUp(parts),
      fc.record({
        date,
        culture: idOf(parts.cultures),
        milk: maybe(fc.constantFrom(...milkBodies)),
        heated: maybe(fc.boolean()),
        generation: maybe(fc.integer({ min: 1, max: 1000 })),
        // In hundredths of a percent, as anybody could weigh it.
        starter: maybe(fc.integer({ min: 0, max: 10_000 }).map((part) => part / 10_000)),
        hours: maybe(decimal(0.1, 240, 1)),
        separated: maybe(fc.constantFrom(...separations)),
        sourness: maybe(fc.constantFrom(...sournesses)),
        trouble: fc.subarray([...troubles]),
        moved: maybe(fc.boolean()),
        notes: maybe(note),
      }),
    )
    .map(([one, rest]) => Object.assign({}, one, rest));

const parts: fc.Arbitrary<Parts> = maybe(decimal(-100, 5000, 0)).chain((altitude) =>
  fc.record({
    shownUnit: fc.constantFrom("degC" as const, "degF" as const),
    altitude: fc.constant(altitude),
    room: maybe(room),
    thermometers: withIds(thermometer(altitude)),
    appliances: withIds(appliance),
    containers: withIds(container),
    cultures: fc.uniqueArray(culture, { maxLength: 4, selector: ({ id }) => id }),
  }),
);

/** Any valid kitchen, every part of it possibly empty. */
export const anyKitchen: fc.Arbitrary<Kitchen> = parts.chain((one) => {
  const bare = one.appliances.length === 0 || one.containers.length === 0;
  const nothing = fc.constant([]);
  return fc
    .record({
      tests: bare ? nothing : withIds(waterTest(one)),
      batches: bare || one.cultures.length === 0 ? nothing : fc.array(batch(one), { maxLength: 3 }),
    })
    .map((rest) => Object.assign({}, one, rest));
});

/** Any valid kitchen with at least one water test. */
export const anyTestedKitchen = anyKitchen.filter(({ tests }) => tests.length > 0);
