/** Entry of the `holdband` program: the only place that prints and sets the exit code. */
import { parseCommandLine } from "./command-line.ts";
import type { ParsedLine } from "./command-line.ts";
import { failure } from "./command-result.ts";
import type { CommandResult, Shell } from "./command-result.ts";
import { commandTable } from "./command-table.ts";
import { systemReason } from "../folder/system-reason.ts";
import { wrapText } from "../report/wrap-text.ts";

/** Put in by the bundler from package.json. */
declare const HOLDBAND_VERSION: string;

const speaksUtf8 = ({ LC_ALL, LC_CTYPE, LANG }: NodeJS.ProcessEnv): boolean =>
  process.platform === "win32" || /utf-?8/i.test(LC_ALL || LC_CTYPE || LANG || "");

const wipe = "\r\u001B[2K";

const shell: Shell = {
  version: HOLDBAND_VERSION,
  packageRoot: new URL("../", import.meta.url),
  colour: process.stdout.isTTY === true && (process.env["NO_COLOR"] ?? "") === "",
  ascii: !speaksUtf8(process.env),
  width: Math.max(40, Math.min(process.stdout.columns ?? 80, 100)),
  progress: process.stderr.isTTY === true ? (line) => process.stderr.write(wipe + line) : null,
  asks: process.stdin.isTTY === true && process.stdout.isTTY === true,
  now: () => new Date(),
};

const run = async (parsed: ParsedLine, json: boolean): Promise<CommandResult> => {
  switch (parsed.kind) {
    case "text":
      return { out: parsed.text, err: "", exitCode: 0 };
    case "problem":
      return failure(parsed.problem, shell.version, json);
    case "command":
      return (await parsed.entry.load())(parsed.words, parsed.options, shell);
  }
};

const unexpected = (error: unknown, json: boolean): CommandResult => {
  const what = (error instanceof Error ? error.message : String(error)).split("\n")[0] ?? "";
  return failure({ code: "internal", facts: { what } }, shell.version, json);
};

/** A reader that stops early (`| head`) is no failure of ours. */
const answerLost = (error: NodeJS.ErrnoException): void => {
  if (error.code === "EPIPE") return;
  const why = systemReason(error);
  print(failure({ code: "answer-unwritable", facts: { why } }, shell.version, false));
};

const errorsLost = ({ code }: NodeJS.ErrnoException): void => {
  if (code !== "EPIPE") process.exitCode = 2;
};

/** Broken between words at the edge of a screen; in a file or a pipe each sentence stays whole. */
const forScreen = (err: string): string =>
  process.stderr.isTTY === true
    ? err
        .split("\n")
        .flatMap((line) => wrapText(line, shell.width, "", line.startsWith("- ") ? "  " : ""))
        .join("\n")
    : err;

const print = ({ out, err, exitCode }: CommandResult): void => {
  if (out !== "") process.stdout.write(`${out}\n`);
  if (err !== "") process.stderr.write(`${forScreen(err)}\n`);
  process.exitCode = exitCode;
};

const main = async (line: readonly string[]): Promise<void> => {
  process.stdout.on("error", answerLost);
  process.stderr.on("error", errorsLost);
  const json = line.includes("--json");
  process.on("uncaughtException", (error) => {
    print(unexpected(error, json));
    process.exit();
  });
  const result = await Promise.resolve()
    .then(() => run(parseCommandLine(line, shell.version, commandTable), json))
    .catch((error: unknown) => unexpected(error, json));
  print(result);
};

await main(process.argv.slice(2));
