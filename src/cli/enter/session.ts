/** The session at the prompt: lines in, readings understood, every one saved before the next. */
import { problemText } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { wrapText } from "../../report/wrap-text.ts";
import { sessionStep } from "../../readings/typed/typed-session.ts";
import type { SessionStep, TypedSession } from "../../readings/typed/typed-session.ts";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import { changeText, helpText, listText } from "./enter-text.ts";
import type { Looks } from "./enter-text.ts";
import type { Prompter } from "./prompter.ts";

export interface SessionPlan {
  readonly prompter: Prompter;
  readonly looks: Looks;
  /** Columns of the screen. */
  readonly width: number;
  /** Wall clock, seconds from 1970 as if in UTC. */
  readonly now: () => number;
  /** Keeps the log where no power cut takes it. */
  readonly save: (log: TypedLog) => Promise<Outcome<void>>;
}

/** How the session ended; the log is saved either way. */
export interface SessionEnd {
  readonly how: "done" | "later";
  readonly log: TypedLog;
}

type Changed = Extract<SessionStep, { kind: "changed" }>;

/** Below this no file of readings can be read back. */
const fewest = 2;

const margin = "      ";

const warn = (text: string, { prompter, width }: SessionPlan): void =>
  prompter.warn(wrapText(text, width, margin).join("\n"));

/** Asks each doubt in turn: null where all are right, else what was typed instead of yes ("" for no). */
const doubted = async ({ doubts }: Changed, plan: SessionPlan): Promise<string | null> => {
  for (const { problem } of doubts) {
    warn(problemText(problem), plan);
    // oxlint-disable-next-line no-await-in-loop -- one question after the other
    const answer = ((await plan.prompter.line(`${margin}Take it as typed? (y/n) `)) ?? "").trim();
    if (/^n(?:o)?$/iu.test(answer)) return "";
    if (!/^y(?:es)?$/iu.test(answer)) return answer;
  }
  return null;
};

/** The session after a change, or the line that was typed in place of a yes. */
const apply = async (
  session: TypedSession,
  step: Changed,
  plan: SessionPlan,
): Promise<{ readonly session: TypedSession; readonly next: string | null }> => {
  const instead = await doubted(step, plan);
  if (instead !== null) {
    plan.prompter.echo(`${margin}Not taken.`);
    return { session, next: instead === "" ? null : instead };
  }
  const saved = await plan.save(step.session.log);
  if (!saved.ok) warn(`Not saved: ${problemText(saved.problem)}`, plan);
  const { change, number } = step;
  plan.prompter.echo(changeText(change, number, session.log, step.session.log, plan.looks));
  return { session: step.session, next: null };
};

const mayEnd = (log: TypedLog, plan: SessionPlan): boolean => {
  if (log.readings.length >= fewest) return true;
  warn("At least two readings are needed; a hold is judged from six on. later stops here.", plan);
  return false;
};

/**
 * Takes lines until `done` or `later`; the end of the input, Ctrl-C and Ctrl-D
 * are `later`. What cannot be read is refused with what to write; what looks
 * odd is asked about, and a line typed in place of the answer is taken as the
 * correction.
 */
export const runSession = async (start: TypedLog, plan: SessionPlan): Promise<SessionEnd> => {
  let session: TypedSession = { log: start, past: [] };
  let pending: string | null = null;
  for (;;) {
    const { log } = session;
    const prompt = `${String(log.readings.length + 1).padStart(3)} > `;
    // oxlint-disable-next-line no-await-in-loop -- one line after the other
    const typed: string | null = pending ?? (await plan.prompter.line(prompt));
    pending = null;
    if (typed === null) return { how: "later", log };
    const step = sessionStep(session, typed, plan.now());
    if (step.kind === "later") return { how: "later", log };
    if (step.kind === "done" && mayEnd(log, plan)) return { how: "done", log };
    if (step.kind === "help") plan.prompter.say(helpText(log));
    if (step.kind === "list") plan.prompter.say(listText(log, plan.looks));
    if (step.kind === "refused") warn(problemText(step.problem), plan);
    if (step.kind !== "changed") continue;
    // oxlint-disable-next-line no-await-in-loop -- each reading is saved before the next
    const after = await apply(session, step, plan);
    session = after.session;
    pending = after.next;
  }
};
