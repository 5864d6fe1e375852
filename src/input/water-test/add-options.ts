/** Loggers' files and what was said of them, as a new water test. */
import * as z from "zod";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { twoRoles } from "../check-options.ts";
import { fileShapes, readingOptionsOf } from "../file-option-shapes.ts";
import { kitchenShapes } from "../kitchen-shapes.ts";
import { thermometerOf } from "../known-ids.ts";
import { notToCome } from "../local-day.ts";
import { ofWaterTest, settledSetUp } from "../set-up.ts";
import type { NewTest, NewTestFile } from "./new-test.ts";
import { testFactsOf, testShapes } from "./test-options.ts";

export const addShape = z.object({ ...kitchenShapes, ...testShapes, ...fileShapes });

export type AddOptions = z.infer<typeof addShape>;

/** Options that may be given again. */
export const addRepeatable = ["probe", "column", "thermometer", "starts"] as const;

/** A file as it was given: its name, and what its bytes come from. */
export interface GivenFile<Source> {
  /** Without a folder. */
  readonly name: string;
  /** As it was given: with its folder, where there is one. */
  readonly path: string;
  readonly source: Source;
}

type Named = Pick<GivenFile<unknown>, "name" | "path">;

/** A start said for a file that was not given: a mistyped name must not pass for one heeded. */
const strangeStart = (files: readonly Named[], { starts }: AddOptions): Outcome<never> | null => {
  const names = new Set(files.flatMap(({ name, path }) => [path, name]));
  const stray = starts.find(({ file }) => file !== null && !names.has(file));
  if (stray === undefined) return null;
  const expected = `one of the files given (${files.map(({ path }) => path).join(", ")})`;
  return failed("option-invalid", { option: "--starts", expected, found: stray.file ?? "" });
};

const startToCome = ({ starts }: AddOptions, today: string): Outcome<never> | null => {
  const days = starts.map(({ at }) => new Date(at).toISOString().slice(0, 10));
  return notToCome("--starts", days.toSorted().at(-1) ?? "", today);
};

/** What cannot be, whatever the kitchen holds; null where all is well. `today`: ISO day. */
export const addClash = (
  files: readonly Named[],
  options: AddOptions,
  today: string,
): Outcome<never> | null =>
  twoRoles(options) ?? strangeStart(files, options) ?? startToCome(options, today);

/** A thermometer that is not in the kitchen; null where all are. */
export const strangeThermometer = (
  kitchen: Kitchen,
  { thermometer }: Pick<AddOptions, "thermometer">,
): Outcome<never> | null => {
  for (const { id } of thermometer) {
    const known = thermometerOf(kitchen, id);
    if (!known.ok) return known;
  }
  return null;
};

/** Said for this file by its name, else for all. */
const startOf = ({ name, path }: Named, { starts }: AddOptions): number | null => {
  const own = starts.find(({ file }) => file === path || file === name);
  return (own ?? starts.find(({ file }) => file === null))?.at ?? null;
};

const fileOf = <Source>(given: GivenFile<Source>, options: AddOptions): NewTestFile<Source> => ({
  name: given.name,
  source: given.source,
  readingOptions: readingOptionsOf(options),
  starts: startOf(given, options),
  probes: null,
  thermometers: options.thermometer,
});

/** Fails with "option-missing" where the set-up is not all said, or at what is not in the kitchen. */
export const addedTest = <Source>(
  files: readonly GivenFile<Source>[],
  kitchen: Kitchen,
  options: AddOptions,
): Outcome<NewTest<Source>> => {
  const stranger = strangeThermometer(kitchen, options);
  if (stranger !== null) return stranger;
  const setUp = settledSetUp(kitchen, options, ofWaterTest);
  if (!setUp.ok) return setUp;
  return done({
    ...testFactsOf(setUp.value, options),
    files: files.map((file) => fileOf(file, options)),
  });
};
