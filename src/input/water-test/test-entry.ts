/** A new water test in the words of kitchen.yaml. */
import type { FileEntry, ProbeEntry, TestEntry } from "../../kitchen/edits/entries.ts";
import type { TemperatureRange, TestFile, TestProbe, WaterTest } from "../../kitchen/kitchen.ts";
import { plainNumber } from "../plain-number.ts";
import type { TestFacts } from "./new-test.ts";

const hundredths = (value: number): number => Math.round(value * 100) / 100;

const rangeText = ({ low, high }: TemperatureRange): string =>
  `${hundredths(low)}..${hundredths(high)}`;

/** "2026-10-03 22:10", with seconds where there are any. */
export const clockText = (milliseconds: number): string => {
  const [day = "", time = ""] = new Date(milliseconds).toISOString().split("T");
  const clock = time.slice(0, 8);
  return `${day} ${clock.endsWith(":00") ? clock.slice(0, 5) : clock}`;
};

const probeEntry = ({ place, thermometer }: TestProbe): ProbeEntry =>
  thermometer === null ? { place } : { place, thermometer };

const fileEntry = (file: TestFile, path: string): FileEntry => {
  const { startsAt, unit, dateOrder, decimal, intervalSeconds, columns, probes } = file;
  return {
    file: path,
    sha256: file.sha256,
    ...(startsAt === null ? {} : { starts: clockText(startsAt) }),
    ...(unit === null ? {} : { unit: unit === "degC" ? "C" : "F" }),
    ...(dateOrder === null ? {} : { "date-order": dateOrder }),
    ...(decimal === null ? {} : { decimal: decimal === "," ? "comma" : "point" }),
    ...(intervalSeconds === null ? {} : { interval: `${intervalSeconds}s` }),
    ...(columns.length === 0 ? {} : { columns }),
    probes: Object.fromEntries(probes.map((probe) => [probe.name, probeEntry(probe)])),
  };
};

/** `paths`: where each file was stored. The setting stays as it was typed. */
export const testEntry = (
  said: TestFacts,
  test: WaterTest,
  paths: readonly string[],
): TestEntry => ({
  appliance: test.appliance,
  ...(test.setting.kind === "fixed" || said.setting === null
    ? {}
    : { setting: plainNumber(said.setting) }),
  container: test.container,
  ...(test.fill === null ? {} : { fill: test.fill }),
  ...(test.room === null ? {} : { room: rangeText(test.room) }),
  ...(test.notes === null ? {} : { notes: test.notes }),
  files: test.files.map((file, at) => fileEntry(file, paths[at] ?? file.path)),
});
