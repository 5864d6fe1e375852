/** A new test as kitchen.yaml will list it. */
import type { Kitchen, Setting, TestFile, WaterTest } from "../../kitchen/kitchen.ts";
import { celsiusToFahrenheit } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { NewTest, NewTestFile } from "./new-test.ts";
import type { ReadSource } from "./read-source.ts";
import { testId } from "./test-id.ts";
import { testProbes } from "./test-probes.ts";

const testFileOf = (file: NewTestFile<unknown>, read: ReadSource): TestFile => {
  const { unit, dateOrder, decimal, intervalSeconds, columns } = file.readingOptions;
  return {
    path: `readings/${file.name}`,
    sha256: read.sha256,
    startsAt: file.starts,
    unit: unit ?? null,
    dateOrder: dateOrder ?? null,
    decimal: decimal ?? null,
    intervalSeconds: intervalSeconds ?? null,
    columns: columns ?? [],
    probes: testProbes(file, read),
  };
};

const stepWord = (celsius: number, unit: TemperatureUnit): string => {
  const shown = unit === "degF" ? celsiusToFahrenheit(celsius) : celsius;
  return `${Math.round(shown * 100) / 100}${unit === "degF" ? "f" : ""}`;
};

const settingWord = (setting: Setting, unit: TemperatureUnit): string | null => {
  if (setting.kind === "step") return stepWord(setting.celsius, unit);
  if (setting.kind === "fixed") return null;
  return setting.kind === "program" ? setting.program : setting.mark;
};

const startOf = (
  files: readonly NewTestFile<unknown>[],
  read: readonly ReadSource[],
): number | null => {
  const starts = files
    .map(({ starts: said }, at) => said ?? read[at]?.readings.startWallClock ?? null)
    .filter((start) => start !== null);
  return starts.length === 0 ? null : Math.min(...starts);
};

/** Where each file will be stored is not known yet; it stands there under its own name. */
export const waterTestOf = (
  test: NewTest<unknown>,
  setting: Setting,
  read: readonly ReadSource[],
  { tests, shownUnit }: Kitchen,
): WaterTest => {
  const taken = new Set(tests.map(({ id }) => id));
  const word = settingWord(setting, shownUnit);
  const { appliance, container, fill, room, notes, files } = test;
  const startedAt = startOf(files, read);
  return {
    id: test.name ?? testId({ appliance, setting: word, container, startedAt }, taken),
    appliance,
    setting,
    container,
    fill,
    room,
    notes,
    files: files.flatMap((file, at) => {
      const found = read[at];
      return found === undefined ? [] : [testFileOf(file, found)];
    }),
  };
};
