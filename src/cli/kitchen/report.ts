/** `report`: all water tests of the kitchen, or of one appliance, in one page. */
import { mkdir } from "node:fs/promises";
import { dirname, join, relative } from "node:path";
import * as z from "zod";
import { reportsName } from "../../folder/create-kitchen.ts";
import { openRawFile } from "../../folder/open-raw-file.ts";
import { systemReason } from "../../folder/system-reason.ts";
import { analyseKitchen } from "../../kitchen-analysis.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { done, failed, problemText } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { toKitchenContract } from "../../report/kitchen-contract.ts";
import { toKitchenTerminal } from "../../report/kitchen-terminal.ts";
import { usualConfidence, usualShare } from "../check-request.ts";
import { answered, commandRun } from "../command-run.ts";
import type { Shell } from "../command-result.ts";
import { localDay } from "../local-day.ts";
import { flag, words } from "../option-readers.ts";
import { reportFile } from "../option-shapes.ts";
import { startProgress } from "../progress.ts";
import { checkReportPath, writeReport } from "../report-file.ts";
import { folderOf, kitchenShapes, openKitchen } from "./kitchen-folder.ts";
import type { OpenKitchen } from "./kitchen-folder.ts";
import { applianceOf } from "./known-ids.ts";
import { slug } from "./test-id.ts";

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

const analyse = async (
  { folder, kitchen }: OpenKitchen,
  appliance: string | null,
  shell: Shell,
): Promise<Outcome<KitchenAnalysis>> => {
  let total = 0;
  const progress = startProgress(shell.progress, () => total, Date.now);
  const said = {
    version: shell.version,
    today: localDay(shell.now()),
    share: usualShare,
    confidence: usualConfidence,
    appliance,
  };
  return analyseKitchen(kitchen, said, async (file) => {
    const opened = await openRawFile(folder, file, progress.add);
    if (opened.ok) total += opened.value.bytes;
    return opened;
  }).finally(progress.end);
};

/** null where at least one test could be read, or there is none to read. */
const nothingRead = ({ tests }: KitchenAnalysis): Outcome<never> | null => {
  if (tests.length === 0 || tests.some(({ problem }) => problem === null)) return null;
  const why = tests.flatMap(({ problem }) => (problem === null ? [] : [problemText(problem)]));
  return failed("no-test-readable", { count: tests.length, why: [...new Set(why)].join(" ") });
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
  const analysis = await analyse(opened.value, appliance, shell);
  if (!analysis.ok) return analysis;
  const unread = nothingRead(analysis.value);
  if (unread !== null) return unread;
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
