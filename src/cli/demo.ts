/** `demo`: the invented example nights into a folder, with their report. */
import { copyFile, mkdir, readFile, readdir } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { check } from "./check.ts";
import type { TypedOptions } from "./command-line.ts";
import { failure } from "./command-result.ts";
import type { CommandResult, Shell } from "./command-result.ts";
import { demoCommand, demoFiles, demoOptions } from "./demo-story.ts";
import { systemReason } from "../folder/system-reason.ts";

const reportName = "report.html";

const sameBytes = async (one: string, other: string): Promise<boolean> =>
  (await readFile(one)).equals(await readFile(other));

const isForeign = async (name: string, folder: string, fixtures: string): Promise<boolean> => {
  if (name === reportName) return false;
  if (!demoFiles.includes(name)) return true;
  return !(await sameBytes(join(folder, name), join(fixtures, name)));
};

/** A second run may write over the first one's files, but over nothing else. */
const foreign = async (folder: string, fixtures: string): Promise<readonly string[]> => {
  const names = await readdir(folder);
  const strange = await Promise.all(names.map((name) => isForeign(name, folder, fixtures)));
  return names.filter((_, at) => strange[at]);
};

const prepareFolder = async (folder: string, fixtures: string): Promise<Outcome<void>> => {
  try {
    await mkdir(folder, { recursive: true });
    const found = await foreign(folder, fixtures);
    if (found.length > 0) return failed("folder-in-use", { folder, found: found.join(", ") });
    await Promise.all(demoFiles.map((name) => copyFile(join(fixtures, name), join(folder, name))));
    return done(undefined);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === "EEXIST") return failed("folder-in-use", { folder, found: "it is a file" });
    return failed("report-unwritable", {
      file: join(folder, reportName),
      why: systemReason(error),
    });
  }
};

const guide = (folder: string): string =>
  [
    "These nights are invented. The same, typed by hand:",
    "",
    `  cd ${folder}`,
    `  holdband check ${demoFiles.join(" ")} \\`,
    ...demoCommand.map((line, at) => `    ${line}${at === demoCommand.length - 1 ? "" : " \\"}`),
    "",
    `Open ${join(folder, reportName)} in a browser to see the report.`,
  ].join("\n");

/** Copies the bundled nights into `folder` and checks them there. */
export const demo = async (
  folder: string,
  typed: TypedOptions,
  shell: Shell,
): Promise<CommandResult> => {
  const json = typed["json"] === true;
  const fixtures = fileURLToPath(new URL("fixtures/kitchen/readings/", shell.packageRoot));
  const ready = await prepareFolder(folder, fixtures);
  if (!ready.ok) return failure(ready.problem, shell.version, json);
  const paths = demoFiles.map((name) => join(folder, name));
  const report = join(folder, reportName);
  const result = await check(paths, { ...demoOptions, json, report: [report] }, shell);
  if (json || result.exitCode === 2) return result;
  return { ...result, out: `${result.out}\n\n${guide(folder)}` };
};
