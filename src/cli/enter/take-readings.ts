/** From the prompt or the pipe to the target. */
import { relative } from "node:path";
import { done, problemText } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import type { Choice } from "../kitchen/ask.ts";
import { chooseDraft, damagedDrafts } from "./choose-draft.ts";
import { findDrafts } from "./draft-files.ts";
import { draftKeeper, newTyping } from "./draft-keeper.ts";
import type { Typing } from "./draft-keeper.ts";
import type { EnterOptions } from "./enter-shape.ts";
import type { Answer, EnterTarget } from "./enter-target.ts";
import { keptText, listText, shortHelp, titleText } from "./enter-text.ts";
import { pipedLog } from "./piped-log.ts";
import type { Prompter } from "./prompter.ts";
import { runSession } from "./session.ts";
import { startLog } from "../../input/water-test/start-log.ts";
import { wallNow } from "../../input/wall-now.ts";

const fromPipe = async (target: EnterTarget, options: EnterOptions, shell: Shell): Answer => {
  const said = await target.said();
  if (!said.ok) return said;
  const log = await pipedLog(said.value, options, target, shell);
  return log.ok ? target.keep(said.value, log.value) : log;
};

const chooseOne = async (message: string, choices: readonly Choice[]): Promise<string | null> =>
  (await import("../kitchen/ask.ts")).chooseOne(message, choices);

/** An unfinished test, or a new one with everything asked. */
const beginTyping = async (
  target: EnterTarget,
  options: EnterOptions,
  shell: Shell,
): Promise<Outcome<Typing>> => {
  const folder = target.draftFolder;
  const found = await findDrafts(folder);
  const damaged = damagedDrafts(found).join(", ");
  if (damaged !== "") shell.progress?.(`Left alone, not readable as a draft: ${damaged}\n`);
  const own = found.filter(({ draft }) => draft !== null && target.isOwn(draft));
  const chosen = await chooseDraft(own, chooseOne);
  if (!chosen.ok) return chosen;
  if (chosen.value !== null) return done({ folder, ...chosen.value });
  const said = await target.said();
  if (!said.ok) return said;
  const log = startLog(said.value, options, target.usualUnit);
  return done(await newTyping(folder, said.value, log));
};

const failedButKept = (failure: Outcome<unknown>, kept: string): Outcome<CommandResult> => {
  const why = failure.ok ? "" : problemText(failure.problem);
  return done({ out: "", err: `${why}\n${kept}`, exitCode: 2 });
};

/** Takes readings at a prompt and keeps them; the draft goes once they are safe elsewhere. */
export const typeReadings = async (
  typing: Typing,
  target: EnterTarget,
  prompter: Prompter,
  shell: Shell,
): Answer => {
  const { test, log } = typing.draft;
  const keeper = draftKeeper(typing, prompter.warn);
  prompter.say(`\n${titleText(test)}\n${shortHelp}\n`);
  if (log.readings.length > 0) prompter.echo(listText(log, shell));
  const now = (): number => wallNow(shell.now());
  const plan = { prompter, looks: shell, width: shell.width, now, save: keeper.save };
  const end = await runSession(log, plan).finally(prompter.close);
  prompter.say("");
  const path = keeper.path();
  const kept = keptText(end.log, path === null ? null : relative(".", path));
  if (end.how === "later") return done({ out: kept, err: "", exitCode: 0 });
  const stored = await target.keep(test, end.log);
  // Known already: stored before a power cut took the draft away.
  const isSafe = stored.ok || stored.problem.code === "file-known";
  if (!isSafe) return failedButKept(stored, kept);
  await keeper.forget();
  return stored;
};

/** Where somebody can be asked, at the prompt; else from standard input. */
export const takeReadings = async (
  target: EnterTarget,
  options: EnterOptions,
  shell: Shell,
): Answer => {
  if (!shell.asks) return fromPipe(target, options, shell);
  const typing = await beginTyping(target, options, shell);
  if (!typing.ok) return typing;
  const { linePrompter } = await import("./line-prompter.ts");
  const { stdin: input, stdout: output } = process;
  const prompter = linePrompter({ input, output, colour: shell.colour });
  return typeReadings(typing.value, target, prompter, shell);
};
