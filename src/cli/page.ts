/** `page`: the offline page, built with the program, into a file of one's own. */
import { readFile } from "node:fs/promises";
import * as z from "zod";
import { systemReason } from "../folder/system-reason.ts";
import { done, failed } from "../problem.ts";
import type { Outcome, Problem } from "../problem.ts";
import { answered, commandRun } from "./command-run.ts";
import type { Shell } from "./command-result.ts";
import type { CommandRun } from "./entries/command-entry.ts";
import { checkReportPath, writeReport } from "./report-file.ts";

const shape = z.object({ json: z.boolean().default(false) });

const builtPage = async ({ packageRoot }: Shell): Promise<Outcome<string>> => {
  try {
    return done(await readFile(new URL("dist/page.html", packageRoot), "utf8"));
  } catch (error) {
    return failed("internal", { what: `its own page could not be read: ${systemReason(error)}` });
  }
};

/** The rule of where it may stand is the report's; what is said is not. */
const ofPage = (problem: Problem): Problem =>
  problem.code === "report-unwritable" ? failed("file-unwritable", problem.facts).problem : problem;

const said = (file: string): string =>
  `The page is written: ${file}
Open it in a browser. It needs no network and no other file, and what you enter
stays in that browser until you erase it there.`;

const written = async (file: string, html: string): Promise<Outcome<void>> => {
  const saved = await writeReport(file, html);
  return saved.ok ? saved : { ok: false, problem: ofPage(saved.problem) };
};

/** Whole or not at all, and never over something that is no page or report of ours. */
export const page = (file: string): CommandRun =>
  commandRun(shape, [], async (_, options, shell) => {
    const free = await checkReportPath(file);
    if (!free.ok) return { ok: false, problem: ofPage(free.problem) };
    const html = await builtPage(shell);
    if (!html.ok) return html;
    const saved = await written(file, html.value);
    return saved.ok ? answered(options, shell, said(file), { page: file }) : saved;
  });
