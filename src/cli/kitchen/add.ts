/** `add`: logger files of one water test into the kitchen. */
import { basename, resolve } from "node:path";
import * as z from "zod";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { twoRoles } from "../check-options.ts";
import type { Shell } from "../command-result.ts";
import { answered, commandRun } from "../command-run.ts";
import { fileShapes, readingOptionsOf } from "../file-option-shapes.ts";
import { notToCome } from "../local-day.ts";
import { folderOf, kitchenShapes, openKitchen } from "./kitchen-folder.ts";
import { thermometerOf } from "./known-ids.ts";
import type { NewTest, NewTestFile, ProbeThermometerId } from "./new-test.ts";
import { askSetUp } from "./set-up-asked.ts";
import { storeTest } from "./store-test.ts";
import { storedTestContract, storedTestText } from "./stored-test-text.ts";
import { askThermometer } from "./thermometer-asked.ts";
import { testShapes } from "./test-options.ts";

const shape = z.object({ ...kitchenShapes, ...testShapes, ...fileShapes });
type AddOptions = z.infer<typeof shape>;

const sameFileTwice = (paths: readonly string[]): Outcome<never> | null => {
  const seen = new Set<string>();
  for (const path of paths) {
    const full = resolve(path);
    if (seen.has(full)) {
      return failed("options-contradict", { first: path, second: path, why: "it is one file" });
    }
    seen.add(full);
  }
  return null;
};

/** A start said for a file that was not given: a mistyped name must not pass for one heeded. */
const strangeStart = (paths: readonly string[], { starts }: AddOptions): Outcome<never> | null => {
  const names = new Set([...paths, ...paths.map((path) => basename(path))]);
  const stray = starts.find(({ file }) => file !== null && !names.has(file));
  if (stray === undefined) return null;
  const expected = `one of the files given (${paths.join(", ")})`;
  return failed("option-invalid", { option: "--starts", expected, found: stray.file ?? "" });
};

const startToCome = ({ starts }: AddOptions, shell: Shell): Outcome<never> | null => {
  const days = starts.map(({ at }) => new Date(at).toISOString().slice(0, 10));
  return notToCome("--starts", days.toSorted().at(-1) ?? "", shell.now());
};

const strangeThermometer = (kitchen: Kitchen, options: AddOptions): Outcome<never> | null => {
  for (const { id } of options.thermometer) {
    const known = thermometerOf(kitchen, id);
    if (!known.ok) return known;
  }
  return null;
};

/** Said for this file by its name, else for all. */
const startOf = (path: string, { starts }: AddOptions): number | null => {
  const own = starts.find(({ file }) => file === path || file === basename(path));
  return (own ?? starts.find(({ file }) => file === null))?.at ?? null;
};

/** As said; at a terminal asked, one for all probes. */
const thermometersOf = async (
  kitchen: Kitchen,
  { thermometer }: AddOptions,
  { asks }: Shell,
): Promise<Outcome<readonly ProbeThermometerId[]>> => {
  if (!asks || thermometer.length > 0) return done(thermometer);
  const asked = await askThermometer(kitchen, "Which thermometer measured?");
  if (!asked.ok) return asked;
  return done(asked.value === null ? [] : [{ probe: null, id: asked.value }]);
};

const fileOf = (
  path: string,
  options: AddOptions,
  thermometers: readonly ProbeThermometerId[],
): NewTestFile => ({
  source: { path },
  readingOptions: readingOptionsOf(options),
  starts: startOf(path, options),
  probes: null,
  thermometers,
});

const newTest = async (
  paths: readonly string[],
  kitchen: Kitchen,
  options: AddOptions,
  shell: Shell,
): Promise<Outcome<NewTest>> => {
  const setUp = await askSetUp(kitchen, options, shell);
  if (!setUp.ok) return setUp;
  const thermometers = await thermometersOf(kitchen, options, shell);
  if (!thermometers.ok) return thermometers;
  const { room } = options;
  return done({
    ...setUp.value,
    name: options.name ?? null,
    fill: options.fill ?? null,
    room: room === undefined ? null : { low: room.low.celsius, high: room.high.celsius },
    notes: options.notes ?? null,
    files: paths.map((path) => fileOf(path, options, thermometers.value)),
  });
};

export const add = commandRun(
  shape,
  ["probe", "column", "thermometer", "starts"],
  async (paths, options, shell) => {
    const clash =
      twoRoles(options) ??
      sameFileTwice(paths) ??
      strangeStart(paths, options) ??
      startToCome(options, shell);
    if (clash !== null) return clash;
    const opened = await openKitchen(folderOf(options));
    if (!opened.ok) return opened;
    const { folder, kitchen } = opened.value;
    const stranger = strangeThermometer(kitchen, options);
    if (stranger !== null) return stranger;
    const test = await newTest(paths, kitchen, options, shell);
    if (!test.ok) return test;
    const stored = await storeTest(folder, test.value, shell);
    if (!stored.ok) return stored;
    return answered(
      options,
      shell,
      storedTestText(stored.value, shell),
      storedTestContract(stored.value),
    );
  },
);
