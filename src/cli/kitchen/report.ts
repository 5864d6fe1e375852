/** `report`: all water tests of the kitchen, or of one appliance, in one page. */
import { mkdir } from "node:fs/promises";
import { dirname, join, relative } from "node:path";
import * as z from "zod";
import { reportsName } from "../../folder/create-kitchen.ts";
import { systemReason } from "../../folder/system-reason.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { toKitchenContract } from "../../report/kitchen-contract.ts";
import { toKitchenTerminal } from "../../report/kitchen-terminal.ts";
import { answered, commandRun } from "../command-run.ts";
import { flag, words } from "../../input/option-readers.ts";
import { reportFile } from "../../input/option-shapes.ts";
import { checkReportPath, writeReport } from "../report-file.ts";
import { analyseFolder } from "./analyse-folder.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";
import { kitchenShapes } from "../../input/kitchen-shapes.ts";
import { applianceOf } from "../../input/known-ids.ts";
import { slug } from "../../input/water-test/test-id.ts";

const shape = z.object({
  ...kitchenShapes,
  appliance: words("an appliance's name"),
  report: reportFile,
  strict: flag,
});
type ReportOptions = z.infer<typeof shape>;

const usualFile = (folder: string, appliance: string | undefined): string => {
  const name = appliance === undefined ? "kitchen" : `kitchen-${slug(appliance)}`;
  return join(folder, reportsName, `${name}.html`);
};

/** The folder for reports is ours to make; another one must be there. */
const readyPath = async (options: ReportOptions, folder: string): Promise<Outcome<string>> => {
  const path = options.report ?? usualFile(folder, options.appliance);
  try {
    if (options.report === undefined) await mkdir(dirname(path), { recursive: true });
  } catch (error) {
    return failed("report-unwritable", { file: path, why: systemReason(error) });
  }
  const free = await checkReportPath(path);
  return free.ok ? done(path) : free;
};

/** Every test was read, and each culture is held by some set-up. */
const inOrder = ({ tests, requirements, setUps }: KitchenAnalysis): boolean => {
  const held = new Set(
    setUps.flatMap(({ verdicts }) =>
      verdicts.filter(({ verdict }) => verdict === "holds").map((one) => one.requirement.culture),
    ),
  );
  return (
    tests.every(({ problem }) => problem === null) &&
    requirements.every(({ culture }) => held.has(culture))
  );
};

/** From here where it lies below, else in full. */
const shortPath = (path: string): string => {
  const below = relative(".", path);
  return below.startsWith("..") ? path : below;
};

export const report = commandRun(shape, [], async (_, options, shell) => {
  const opened = await openKitchen(folderOf(options));
  if (!opened.ok) return opened;
  const { folder, kitchen } = opened.value;
  const appliance = options.appliance ?? null;
  const known = appliance === null ? done(null) : applianceOf(kitchen, appliance);
  if (!known.ok) return known;
  const path = await readyPath(options, folder);
  if (!path.ok) return path;
  const analysis = await analyseFolder(opened.value, appliance, shell);
  if (!analysis.ok) return analysis;
  const { toKitchenHtml } = await import("../../report/kitchen-html.ts");
  const html = await toKitchenHtml(analysis.value, { renderedOn: shell.now().toISOString() });
  const saved = await writeReport(path.value, html);
  if (!saved.ok) return saved;
  const { colour, ascii, width } = shell;
  const shownPath = shortPath(path.value);
  const text = toKitchenTerminal(analysis.value, { colour, ascii, width, report: shownPath });
  const answer = answered(options, shell, text, {
    ...toKitchenContract(analysis.value),
    report: path.value,
  });
  const exitCode = options.strict && !inOrder(analysis.value) ? 1 : 0;
  return answer.ok ? done({ ...answer.value, exitCode }) : answer;
});
