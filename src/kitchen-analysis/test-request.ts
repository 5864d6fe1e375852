import type { AnalysisRequest, FileRequest, ProbeThermometer } from "../analysis-types.ts";
import type { Culture } from "../culture/culture.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import type { ThermometerAnalysis } from "../kitchen-analysis-types.ts";
import type { Kitchen, TemperatureRange, TestFile, WaterTest } from "../kitchen/kitchen.ts";
import { fraction } from "../quantity.ts";
import type { ReadingOptions } from "../readings/readings-file.ts";
import type { KitchenOptions } from "./kitchen-options.ts";

/** What a culture asks of a set-up. */
export const requirementOf = (
  { id, name, low, high, ceiling, hours, growth }: Culture,
  share: number,
): Requirement => ({
  culture: id,
  name,
  low,
  high,
  ceiling,
  hours,
  share: fraction(share),
  growth,
});

/** A batch may meet the room as the kitchen knows it and as it was during the test. */
const wholeRange = (
  one: TemperatureRange | null,
  other: TemperatureRange | null,
): TemperatureRange | null =>
  one === null || other === null
    ? (one ?? other)
    : { low: Math.min(one.low, other.low), high: Math.max(one.high, other.high) };

/** Everything that kitchen.yaml says of a water test, as the request its files are analysed by. */
export const testRequest = (
  test: WaterTest,
  kitchen: Kitchen,
  { version, share, confidence }: KitchenOptions,
  thermometers: readonly ThermometerAnalysis[],
): AnalysisRequest => ({
  version,
  requirements: kitchen.cultures.map((culture) => requirementOf(culture, share)),
  thermometer: null,
  room: wholeRange(test.room, kitchen.room),
  thermostat: kitchen.appliances.find(({ id }) => id === test.appliance)?.thermostat ?? null,
  runToRun: null,
  share,
  confidence,
  shownUnit: kitchen.shownUnit,
  reading: {},
  files: test.files.map((file) => fileRequest(file, thermometers)),
  together: true,
});

const fileRequest = (
  file: TestFile,
  thermometers: readonly ThermometerAnalysis[],
): FileRequest => ({
  reading: readingOptions(file),
  thermometers: new Map(
    file.probes.flatMap(({ name, thermometer }) => {
      const found = thermometers.find((one) => one.thermometer.id === thermometer);
      return found === undefined ? [] : [[name, asProbeThermometer(found)] as const];
    }),
  ),
  startsAt: file.startsAt,
});

const asProbeThermometer = ({ thermometer, model }: ThermometerAnalysis): ProbeThermometer => ({
  id: thermometer.id,
  model,
});

export const readingOptions = (file: TestFile): ReadingOptions => ({
  ...(file.columns.length === 0 ? {} : { columns: file.columns }),
  ...(file.probes.length === 0
    ? {}
    : { roles: new Map(file.probes.map(({ name, place }) => [name, place] as const)) }),
  ...(file.unit === null ? {} : { unit: file.unit }),
  ...(file.dateOrder === null ? {} : { dateOrder: file.dateOrder }),
  ...(file.decimal === null ? {} : { decimal: file.decimal }),
  ...(file.intervalSeconds === null ? {} : { intervalSeconds: file.intervalSeconds }),
});
