/** `add`: logger files of one water test into the kitchen. */
import { basename, resolve } from "node:path";
import { twoRoles } from "../../input/check-options.ts";
import { localDay } from "../../input/local-day.ts";
import {
  addClash,
  addRepeatable,
  addShape,
  addedTest,
  strangeThermometer,
} from "../../input/water-test/add-options.ts";
import type { AddOptions, GivenFile } from "../../input/water-test/add-options.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { Shell } from "../command-result.ts";
import { answered, commandRun } from "../command-run.ts";
import type { FolderSource } from "./folder-store.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";
import { askSetUp } from "./set-up-asked.ts";
import { storeInFolder } from "./store-in-folder.ts";
import { storedTestContract, storedTestText } from "./stored-test-text.ts";
import { askThermometer } from "./thermometer-asked.ts";

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

const given = (path: string): GivenFile<FolderSource> => ({
  name: basename(path),
  path,
  source: { path },
});

/** As said; at a terminal asked, one for all probes. */
const thermometersOf = async (
  kitchen: Kitchen,
  { thermometer }: AddOptions,
  { asks }: Shell,
): Promise<Outcome<AddOptions["thermometer"]>> => {
  if (!asks || thermometer.length > 0) return done(thermometer);
  const asked = await askThermometer(kitchen, "Which thermometer measured?");
  if (!asked.ok) return asked;
  return done(asked.value === null ? [] : [{ probe: null, id: asked.value }]);
};

/** The options with what was asked. */
const askTest = async (
  kitchen: Kitchen,
  options: AddOptions,
  shell: Shell,
): Promise<Outcome<AddOptions>> => {
  const stranger = strangeThermometer(kitchen, options);
  if (stranger !== null) return stranger;
  const setUp = await askSetUp(kitchen, options, shell);
  if (!setUp.ok) return setUp;
  const { appliance, setting, container } = setUp.value;
  const thermometer = await thermometersOf(kitchen, options, shell);
  if (!thermometer.ok) return thermometer;
  const said = { ...options, appliance, container, thermometer: thermometer.value };
  return done(setting === null ? said : { ...said, setting });
};

export const add = commandRun(addShape, addRepeatable, async (paths, options, shell) => {
  const files = paths.map(given);
  const today = localDay(shell.now());
  const clash = twoRoles(options) ?? sameFileTwice(paths) ?? addClash(files, options, today);
  if (clash !== null) return clash;
  const opened = await openKitchen(folderOf(options));
  if (!opened.ok) return opened;
  const { folder, kitchen } = opened.value;
  const asked = await askTest(kitchen, options, shell);
  if (!asked.ok) return asked;
  const test = addedTest(files, kitchen, asked.value);
  if (!test.ok) return test;
  const stored = await storeInFolder(folder, test.value, shell);
  if (!stored.ok) return stored;
  const { value } = stored;
  return answered(options, shell, storedTestText(value, shell), storedTestContract(value));
});
