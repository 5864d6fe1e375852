/** `demo`: the invented example kitchen into a folder, with its report. */
import { copyFile, mkdir, readFile, readdir, stat } from "node:fs/promises";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { systemReason } from "../folder/system-reason.ts";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import type { TypedOptions } from "../input/typed-options.ts";
import { failure } from "./command-result.ts";
import type { CommandResult, Shell } from "./command-result.ts";
import { report } from "./kitchen/report.ts";

const reportPath = join("reports", "kitchen.html");

/** Files below a folder, by their paths in it. */
const filesIn = async (folder: string): Promise<readonly string[]> => {
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  return found
    .filter((entry) => !entry.isDirectory())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)))
    .toSorted();
};

const sameBytes = async (one: string, other: string): Promise<boolean> =>
  (await readFile(one)).equals(await readFile(other));

/** What stands in the folder and is not an earlier demo's. */
const foreign = async (
  folder: string,
  names: readonly string[],
  example: string,
): Promise<readonly string[]> => {
  const there = await filesIn(folder);
  const strange = await Promise.all(
    there.map(async (name) => {
      if (name === reportPath) return false;
      return !names.includes(name) || !(await sameBytes(join(folder, name), join(example, name)));
    }),
  );
  return there.filter((_, at) => strange[at]);
};

const copyInto = async (
  folder: string,
  names: readonly string[],
  example: string,
): Promise<void> => {
  const folders = new Set(names.map((name) => dirname(join(folder, name))));
  await Promise.all([...folders].map((one) => mkdir(one, { recursive: true })));
  await Promise.all(names.map((name) => copyFile(join(example, name), join(folder, name))));
};

const prepareFolder = async (folder: string, example: string): Promise<Outcome<void>> => {
  try {
    await mkdir(folder, { recursive: true });
    const names = await filesIn(example);
    const found = await foreign(folder, names, example);
    if (found.length > 0) return failed("folder-in-use", { folder, found: found.join(", ") });
    await copyInto(folder, names, example);
    return done(undefined);
  } catch (error) {
    const isFile = (await stat(folder).catch(() => null))?.isFile() === true;
    if (isFile) return failed("folder-in-use", { folder, found: "it is a file" });
    return failed("report-unwritable", {
      file: join(folder, reportPath),
      why: systemReason(error),
    });
  }
};

const guide = (folder: string): string =>
  [
    "This kitchen and its nights are invented. Look around in it:",
    "",
    `  cd ${folder}`,
    "  holdband thermometer",
    "  holdband check readings/adjustable-cooker.csv --culture reuteri",
    "  holdband report --appliance step-cooker",
    "  holdband match",
    "  holdband next",
    "  holdband recheck",
    "",
    `Open ${join(folder, reportPath)} in a browser to see the report.`,
  ].join("\n");

/** Copies the bundled kitchen into `folder` and renders its report there. */
export const demo = async (
  folder: string,
  typed: TypedOptions,
  shell: Shell,
): Promise<CommandResult> => {
  const json = typed["json"] === true;
  const example = fileURLToPath(new URL("fixtures/kitchen/", shell.packageRoot));
  const ready = await prepareFolder(folder, example);
  if (!ready.ok) return failure(ready.problem, shell.version, json);
  const result = await report([], { kitchen: [folder], json }, shell);
  if (json || result.exitCode === 2) return result;
  return { ...result, out: `${result.out}\n\n${guide(folder)}` };
};
