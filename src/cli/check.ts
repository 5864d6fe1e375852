/** `check`: logger files in, verdicts and a report out. */
import { basename } from "node:path";
import { analyse } from "../analysis.ts";
import type { Analysis, AnalysisRequest } from "../analysis.ts";
import { done } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { toContract } from "../report/contract.ts";
import { toTerminal } from "../report/terminal.ts";
import { readCheckOptions } from "../input/check-options.ts";
import { checkRequest } from "../input/check-request.ts";
import type { TypedOptions } from "../input/typed-options.ts";
import { failure, jsonText } from "./command-result.ts";
import type { CommandResult, Shell } from "./command-result.ts";
import { openLoggerFile } from "../folder/logger-file.ts";
import type { LoggerFile } from "../folder/logger-file.ts";
import type { CheckOptions } from "../input/option-shapes.ts";
import { startProgress } from "./progress.ts";
import { checkReportPath, writeReport } from "./report-file.ts";

/** Files are named without their folder, unless two would then have one name. */
const shownNames = (paths: readonly string[]): readonly string[] => {
  const names = paths.map((path) => basename(path));
  return new Set(names).size === names.length ? names : paths;
};

const openAll = async (
  paths: readonly string[],
  onBytes: (count: number) => void,
): Promise<Outcome<readonly LoggerFile[]>> => {
  const names = shownNames(paths);
  const opened = await Promise.all(
    paths.map((path, at) => openLoggerFile(path, onBytes, names[at])),
  );
  const files: LoggerFile[] = [];
  for (const file of opened) {
    if (!file.ok) return file;
    files.push(file.value);
  }
  return done(files);
};

/** The core lets a broken read throw; the file knows why it broke. */
const analyseFiles = async (
  request: AnalysisRequest,
  files: readonly LoggerFile[],
): Promise<Outcome<Analysis>> => {
  try {
    return await analyse(request, files);
  } catch (error) {
    const problem = files.map((file) => file.broken()).find((found) => found !== null);
    if (problem === undefined) throw error;
    return { ok: false, problem };
  }
};

const readAndAnalyse = async (
  paths: readonly string[],
  request: AnalysisRequest,
  shell: Shell,
): Promise<Outcome<Analysis>> => {
  let total = 0;
  const progress = startProgress(shell.progress, () => total, Date.now);
  const files = await openAll(paths, progress.add);
  if (!files.ok) return files;
  for (const file of files.value) total += file.bytes;
  return analyseFiles(request, files.value).finally(progress.end);
};

const saveReport = async (
  analysis: Analysis,
  file: string | undefined,
  shell: Shell,
): Promise<Outcome<void>> => {
  if (file === undefined) return done(undefined);
  const { toHtml } = await import("../report/html.ts");
  return writeReport(file, await toHtml(analysis, { renderedOn: shell.now().toISOString() }));
};

const everythingHolds = ({ probes }: Analysis): boolean => {
  const verdicts = probes.flatMap((probe) => probe.verdicts);
  return verdicts.length > 0 && verdicts.every(({ verdict }) => verdict === "holds");
};

const answer = (analysis: Analysis, options: CheckOptions, shell: Shell): string => {
  if (options.json) return jsonText(toContract(analysis));
  const { colour, ascii, width } = shell;
  const report = options.report === undefined ? {} : { report: options.report };
  return toTerminal(analysis, { colour, ascii, width, ...report }).trimEnd();
};

const run = async (
  paths: readonly string[],
  options: CheckOptions,
  shell: Shell,
): Promise<Outcome<CommandResult>> => {
  const request = checkRequest(options, shell.version);
  if (!request.ok) return request;
  const free =
    options.report === undefined ? done(undefined) : await checkReportPath(options.report);
  if (!free.ok) return free;
  const analysis = await readAndAnalyse(paths, request.value, shell);
  if (!analysis.ok) return analysis;
  const saved = await saveReport(analysis.value, options.report, shell);
  if (!saved.ok) return saved;
  const exitCode = options.strict && !everythingHolds(analysis.value) ? 1 : 0;
  return done({ out: answer(analysis.value, options, shell), err: "", exitCode });
};

/** Runs `check`. Whatever fails, nothing is left written. */
export const check = async (
  paths: readonly string[],
  typed: TypedOptions,
  shell: Shell,
): Promise<CommandResult> => {
  const options = readCheckOptions(typed);
  const result = options.ok ? await run(paths, options.value, shell) : options;
  return result.ok ? result.value : failure(result.problem, shell.version, typed["json"] === true);
};
