/** `heating`: a log of heated milk in, what it shows of the heating and the cool-down out. */
import { openLoggerFile } from "../folder/logger-file.ts";
import type { LoggerFile } from "../folder/logger-file.ts";
import { analyseHeating } from "../heating-analysis.ts";
import type { HeatingAnalysis, HeatingRequest } from "../heating-analysis.ts";
import type { Kitchen } from "../kitchen/kitchen.ts";
import { done } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { toHeatingContract } from "../report/heating-contract.ts";
import { toHeatingTerminal } from "../report/heating-terminal.ts";
import { answered, commandRun } from "./command-run.ts";
import { heatingContradiction, heatingShape } from "./heating-options.ts";
import type { HeatingOptions } from "./heating-options.ts";
import { heatingRequest } from "./heating-request.ts";
import { folderOf, openKitchen } from "./kitchen/kitchen-folder.ts";
import { localDay } from "../input/local-day.ts";
import { startProgress } from "./progress.ts";

/** The kitchen said, or the one in this folder; none is no fault where none was said. */
const kitchenHere = async (options: HeatingOptions): Promise<Outcome<Kitchen | null>> => {
  const opened = await openKitchen(folderOf(options));
  if (opened.ok) return done(opened.value.kitchen);
  const absent = opened.problem.code === "kitchen-missing" && options.kitchen === undefined;
  return absent ? done(null) : opened;
};

/** The core lets a broken read throw; the file knows why it broke. */
const analyseFile = async (
  request: HeatingRequest,
  file: LoggerFile,
): Promise<Outcome<HeatingAnalysis>> => {
  try {
    return await analyseHeating(request, file);
  } catch (error) {
    const problem = file.broken();
    if (problem === null) throw error;
    return { ok: false, problem };
  }
};

export const heating = commandRun(heatingShape, ["column"], async ([path = ""], options, shell) => {
  const clash = heatingContradiction(options);
  if (clash !== null) return clash;
  const kitchen = await kitchenHere(options);
  if (!kitchen.ok) return kitchen;
  const today = localDay(shell.now());
  const context = { kitchen: kitchen.value, version: shell.version, today };
  const request = heatingRequest(options, context);
  if (!request.ok) return request;
  let total = 0;
  const progress = startProgress(shell.progress, () => total, Date.now);
  const file = await openLoggerFile(path, progress.add);
  if (!file.ok) return file;
  total = file.value.bytes;
  const analysis = await analyseFile(request.value, file.value).finally(progress.end);
  if (!analysis.ok) return analysis;
  const { colour, ascii, width } = shell;
  const text = toHeatingTerminal(analysis.value, { colour, ascii, width });
  const answer = answered(options, shell, text, toHeatingContract(analysis.value));
  const exitCode = options.strict && analysis.value.step.verdict !== "holds" ? 1 : 0;
  return answer.ok ? done({ ...answer.value, exitCode }) : answer;
});
