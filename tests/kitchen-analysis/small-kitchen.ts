/** A constructed kitchen with the texts of its logger files: levels, clocks and corrections are known. */
import type { HashedSource } from "../../src/analysis-types.ts";
import { findCulture } from "../../src/culture/catalogue.ts";
import type { KitchenOptions, OpenTestFile } from "../../src/kitchen-analysis.ts";
import type {
  Kitchen,
  KitchenThermometer,
  TestFile,
  TestProbe,
  WaterTest,
} from "../../src/kitchen/kitchen.ts";
import { done, failed } from "../../src/problem.ts";
import { nightSeries, swinging } from "../culture/nights.ts";

export const options: KitchenOptions = {
  version: "0.0.0",
  today: "2026-06-01",
  share: 0.95,
  confidence: 0.95,
  appliance: null,
};

/** Checked against a reference at 38 degC, which it shows 0.3 degC too high. */
export const checkedPen: KitchenThermometer = {
  id: "pen",
  name: "Pen thermometer",
  resolution: 0.1,
  accuracy: 1,
  checks: [
    {
      kind: "reference",
      truth: 37.7,
      truthUncertainty: 0.02,
      readings: [38, 38, 38],
      date: "2026-02-14",
      confirmed: false,
    },
  ],
};

export const uncheckedPen: KitchenThermometer = { ...checkedPen, id: "spare", checks: [] };

const clock = (startsAt: number, minute: number): string =>
  new Date(startsAt + minute * 60_000).toISOString().slice(0, 16).replace("T", " ");

export interface NightText {
  readonly level: number;
  /** As if in UTC, ms since 1970. */
  readonly startsAt: number;
  readonly hoursHeld?: number;
  readonly column?: string;
}

/** A night as CSV: an hour of warm-up, then a thermostat's swing of 0.2 degC about the level. */
export const nightText = ({
  level,
  startsAt,
  hoursHeld = 14,
  column = "Jar",
}: NightText): string => {
  const { minutes, celsius } = nightSeries({
    hoursHeld,
    hold: swinging(level, 0.2, 25),
    stepMinutes: 2,
  });
  const rows = Array.from(
    minutes,
    (minute, at) => `${clock(startsAt, minute)},${celsius[at]!.toFixed(2)}`,
  );
  return [`Time,${column} (degC)`, ...rows].join("\n");
};

export const testFile = (path: string, probes: readonly TestProbe[]): TestFile => ({
  path,
  sha256: "0".repeat(64),
  startsAt: null,
  unit: null,
  dateOrder: null,
  decimal: null,
  intervalSeconds: null,
  columns: [],
  probes,
});

export const jar: TestProbe = { name: "Jar", place: "food", thermometer: "pen" };

export const waterTest = (id: string, files: readonly TestFile[], at = 38): WaterTest => ({
  id,
  appliance: "cooker",
  setting: { kind: "step", celsius: at },
  container: "jars",
  fill: null,
  room: null,
  notes: null,
  files,
});

const known = findCulture("reuteri");
if (!known.ok) throw new Error("the catalogue has lost a culture");

export const kitchenOf = (tests: readonly WaterTest[], more: Partial<Kitchen> = {}): Kitchen => ({
  shownUnit: "degC",
  altitude: null,
  room: { low: 18, high: 23 },
  thermometers: [checkedPen],
  appliances: [
    {
      id: "cooker",
      name: "Cooker",
      kind: "cooker",
      control: { kind: "steps", low: 30, high: 60, step: 1 },
      thermostat: true,
      movedOn: null,
    },
    {
      id: "box",
      name: "Box",
      kind: "warming box",
      control: { kind: "fixed" },
      thermostat: null,
      movedOn: null,
    },
  ],
  containers: [
    { id: "jars", name: "Jars", stands: "jars in water", volume: 0.5, count: 6, changedOn: null },
  ],
  cultures: [known.value],
  tests,
  batches: [],
  ...more,
});

const encoder = new TextEncoder();
export const sourceOf = (name: string, text: string): HashedSource => ({
  name,
  chunks: (async function* chunks() {
    yield encoder.encode(text);
  })(),
  sha256: () => "0".repeat(64),
});

/** Opens files by path; one that is not there is missing. */
export const opener =
  (texts: Readonly<Record<string, string>>): OpenTestFile =>
  ({ path }) => {
    const text = texts[path];
    return Promise.resolve(
      text === undefined ? failed("raw-file-missing", { file: path }) : done(sourceOf(path, text)),
    );
  };
