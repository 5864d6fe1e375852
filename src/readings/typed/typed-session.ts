/** A person's session at the prompt, one line at a time: pure, so that it is tested without a terminal. */
import type { Problem } from "../../problem.ts";
import { readTypedLine } from "./typed-line.ts";
import { addReading, dropReading, fixReading } from "./typed-log.ts";
import { readTypedTime } from "./typed-time.ts";
import type { Doubt, Placed, TypedLog } from "./typed-types.ts";
import { unread } from "./unread.ts";

/** The readings so far, and the states before each change, for `undo`. */
export interface TypedSession {
  readonly log: TypedLog;
  readonly past: readonly TypedLog[];
}

export type Change = "added" | "fixed" | "dropped" | "undone";

/** What one line asks for. */
export type SessionStep =
  /** The session as it is once every doubt is answered with yes. */
  | {
      readonly kind: "changed";
      readonly change: Change;
      /** The reading's number; of a dropped one, before it was dropped. */
      readonly number: number;
      readonly session: TypedSession;
      readonly doubts: readonly Doubt[];
    }
  | { readonly kind: "refused"; readonly problem: Problem }
  | { readonly kind: "help" | "list" | "done" | "later" | "nothing" };

/** The other words people try. */
const words: ReadonlyMap<string, "help" | "list" | "done" | "later"> = new Map([
  ["?", "help"],
  ["help", "help"],
  ["list", "list"],
  ["done", "done"],
  ["end", "done"],
  ["finish", "done"],
  ["later", "later"],
  ["quit", "later"],
  ["exit", "later"],
  ["q", "later"],
]);

const refused = (problem: Problem): SessionStep => ({ kind: "refused", problem });

const changed = ({ log, past }: TypedSession, change: Change, placed: Placed): SessionStep =>
  placed.kind === "refused"
    ? placed
    : {
        kind: "changed",
        change,
        number: placed.number,
        doubts: placed.doubts,
        session: { log: placed.log, past: [...past, log] },
      };

const undo = ({ log, past }: TypedSession): SessionStep => {
  const before = past.at(-1);
  if (before === undefined) {
    const advice = "To take a reading out, type: drop and its number.";
    return refused(unread(null, "something to undo", "undo", advice).problem);
  }
  const session = { log: before, past: past.slice(0, -1) };
  return { kind: "changed", change: "undone", number: log.readings.length, session, doubts: [] };
};

/** `fix 3 22:45 41.0`, `fix 3 22:45`, `fix 3 41.0`. */
const fix = (session: TypedSession, number: number, typed: string, now: number): SessionStep => {
  const { log } = session;
  const apply = (change: Parameters<typeof fixReading>[2]): SessionStep =>
    changed(session, "fixed", fixReading(log, number, change, now));
  const time = readTypedTime(typed);
  if (time.ok && time.rest === "") return apply({ time: time.time, values: null, comment: null });
  const whole = readTypedLine(typed, log.probes);
  if (whole.ok) return apply(whole.value);
  const values = readTypedLine(`now ${typed}`, log.probes);
  return !time.ok && values.ok ? apply({ ...values.value, time: null }) : refused(whole.problem);
};

const numbered = /^(fix|change|drop|delete|remove)\b\s*(?:no\.?\s*)?#?(\d+)?\s*(.*)$/iu;

const onNumber = (session: TypedSession, match: RegExpExecArray, now: number): SessionStep => {
  const number = Number(match[2] ?? Number.NaN);
  const [isFix, typed] = [/^[fc]/iu.test(match[1] ?? ""), (match[3] ?? "").trim()];
  if (Number.isNaN(number) || (isFix && typed === "")) {
    const advice = isFix ? "Write it like fix 3 22:45 41.0." : "Write it like drop 3.";
    return refused(unread(null, "the number of a reading", match[0], advice).problem);
  }
  if (isFix) return fix(session, number, typed, now);
  return changed(session, "dropped", dropReading(session.log, number));
};

/** What a typed line does to a session; `now` is the wall clock, seconds from 1970 as if in UTC. */
export const sessionStep = (session: TypedSession, typed: string, now: number): SessionStep => {
  const line = typed.trim();
  if (line === "") return { kind: "nothing" };
  const word = words.get(line.toLowerCase());
  if (word !== undefined) return { kind: word };
  if (/^undo$/iu.test(line)) return undo(session);
  const match = numbered.exec(line);
  if (match !== null) return onNumber(session, match, now);
  const read = readTypedLine(line, session.log.probes);
  if (!read.ok) return refused(read.problem);
  const step = changed(session, "added", addReading(session.log, read.value, now));
  return step.kind === "changed" && read.value.confirmed ? { ...step, doubts: [] } : step;
};
