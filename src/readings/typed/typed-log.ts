/** The list of typed readings: adding, correcting, dropping. Nothing is changed in place. */
import type { TemperatureUnit } from "../../quantity.ts";
import { momentNear, momentOf } from "./typed-moment.ts";
import type { Moment, MomentDoubt } from "./typed-moment.ts";
import type { Doubt, LogReading, Placed, TypedLine, TypedLog } from "./typed-types.ts";
import { celsiusOf, digitsIn } from "./typed-value.ts";
import { unread } from "./unread.ts";
import { valueDoubt } from "./value-doubt.ts";
import type { Before } from "./value-doubt.ts";
import { clockText } from "./wall-clock.ts";

const day = 86_400;

/**
 * A log without readings; `firstDay` in days from 1970-01-01 where the person
 * said the date; `unitAssumed` where they said no unit.
 */
export const emptyLog = (
  probes: readonly string[],
  unit: TemperatureUnit,
  firstDay: number | null,
  unitAssumed: boolean,
): TypedLog => ({
  unit,
  unitAssumed,
  probes,
  firstDay,
  dayAssumed: firstDay === null,
  readings: [],
});

/** The log in the unit of the first reading's letter, where nobody said another. */
const settledUnit = (log: TypedLog, { values }: TypedLine): TypedLog => {
  if (!log.unitAssumed || log.readings.length > 0) return log;
  const letter = values.find((value) => value?.unit != null)?.unit;
  return letter == null ? log : { ...log, unit: letter };
};

const doubtful = (
  kind: Doubt["kind"],
  line: number | null,
  facts: { readonly found: string; readonly why: string; readonly advice: string },
): Doubt => ({ kind, problem: { code: "reading-doubtful", facts: { line, ...facts } } });

/** One probe's reading before a time; the one after it where there is none. */
const neighbour = (log: TypedLog, probe: number, seconds: number): Before | null => {
  const taken = (reading: LogReading): boolean => reading.values[probe] !== null;
  const before = log.readings.findLast((one) => one.seconds < seconds && taken(one));
  const near = before ?? log.readings.find(taken);
  const digits = near?.values[probe] ?? null;
  if (near === undefined || digits === null) return null;
  return { celsius: celsiusOf(digits, log.unit), minutes: (seconds - near.seconds) / 60 };
};

const valueDoubts = (
  log: TypedLog,
  reading: LogReading,
  typed: TypedLine["values"],
  line: number | null,
): readonly Doubt[] =>
  reading.values.flatMap((digits, probe) => {
    if (digits === null) return [];
    const before = neighbour(log, probe, reading.seconds);
    const hasLetter = typed[probe]?.unit != null;
    const doubt = valueDoubt(digits, log.unit, before, hasLetter);
    return doubt === null ? [] : [doubtful("value", line, { found: digits, ...doubt })];
  });

const shifted = (log: TypedLog, by: number): TypedLog => ({
  ...log,
  readings: log.readings.map((reading) => ({ ...reading, seconds: reading.seconds + by })),
});

const inserted = (log: TypedLog, reading: LogReading): { log: TypedLog; number: number } => {
  const later = log.readings.findLastIndex(({ seconds }) => seconds < reading.seconds) + 1;
  const readings = log.readings.toSpliced(later, 0, reading);
  return { log: { ...log, readings }, number: later + 1 };
};

const twice = (log: TypedLog, seconds: number, line: number | null) => {
  const at = log.readings.findIndex((reading) => reading.seconds === seconds);
  if (at === -1) return null;
  const clock = clockText(seconds);
  const advice =
    line === null
      ? `To correct it, type: fix ${at + 1} ${clock} and the temperature.`
      : "Leave one of the two out.";
  return unread(line, "a time that has no reading yet", `${clock} again`, advice);
};

/** Sets a reading at its moment, with everything that should be asked first. */
const placedAt = (
  log: TypedLog,
  typed: TypedLine,
  when: { readonly seconds: number; readonly doubt: MomentDoubt | null },
  line: number | null,
): Placed => {
  const back = when.doubt?.kind === "a-day-back";
  const base = back ? shifted(log, -day) : log;
  const seconds = back ? when.seconds - day : when.seconds;
  const taken = twice(base, seconds, line);
  if (taken !== null) return { kind: "refused", problem: taken.problem };
  const values = typed.values.map((value) => (value === null ? null : digitsIn(value, log.unit)));
  const reading = { seconds, values, comment: typed.comment };
  const said =
    typed.time.kind === "now" || (typed.time.kind === "clock" && typed.time.day !== null);
  const known = { ...base, dayAssumed: log.dayAssumed && !said };
  const doubts = valueDoubts(base, reading, typed.values, line);
  const asked = when.doubt === null ? [] : [doubtful(when.doubt.kind, line, when.doubt)];
  return { kind: "placed", ...inserted(known, reading), doubts: [...asked, ...doubts] };
};

const placed = (log: TypedLog, typed: TypedLine, when: Moment, line: number | null): Placed => {
  if (when.ok) return placedAt(log, typed, when, line);
  const problem = unread(line, when.expected, when.found.replaceAll('"', ""), when.advice).problem;
  return { kind: "refused", problem };
};

/**
 * Adds a reading. `now`: wall clock, seconds from 1970 as if in UTC; `line` is
 * null at a prompt. Refused (`reading-unread`) where a reading stands at that
 * time already, or for a time after the last reading where there is none.
 */
export const addReading = (
  log: TypedLog,
  typed: TypedLine,
  now: number,
  line: number | null = null,
): Placed => placed(settledUnit(log, typed), typed, momentOf(log, typed.time, now), line);

const noSuch = (log: TypedLog, number: number): Placed => {
  const expected =
    log.readings.length === 0 ? "a reading to change" : `a number from 1 to ${log.readings.length}`;
  const { problem } = unread(null, expected, String(number), "Type list to see the numbers.");
  return { kind: "refused", problem };
};

const without = (log: TypedLog, number: number): TypedLog => ({
  ...log,
  readings: log.readings.toSpliced(number - 1, 1),
});

/** Takes reading `number` (from 1) out. */
export const dropReading = (log: TypedLog, number: number): Placed =>
  log.readings[number - 1] === undefined
    ? noSuch(log, number)
    : { kind: "placed", log: without(log, number), number, doubts: [] };

/**
 * Puts another reading in the place of reading `number`: null for what stays.
 * A clock's time is taken on the day nearest to the old one.
 */
export const fixReading = (
  log: TypedLog,
  number: number,
  change: Pick<TypedLine, "comment"> & {
    readonly time: TypedLine["time"] | null;
    readonly values: TypedLine["values"] | null;
  },
  now: number,
): Placed => {
  const old = log.readings[number - 1];
  if (old === undefined) return noSuch(log, number);
  const rest = without(log, number);
  const kept = old.values.map((digits) => (digits === null ? null : { digits, unit: null }));
  const line = {
    time: change.time ?? { kind: "clock" as const, day: null, seconds: 0 },
    values: change.values ?? kept,
    comment: change.comment ?? old.comment,
    confirmed: false,
  };
  if (change.time === null)
    return placedAt(rest, line, { seconds: old.seconds, doubt: null }, null);
  if (change.time.kind === "clock" && change.time.day === null) {
    const seconds = momentNear(old.seconds, change.time.seconds);
    return placedAt(rest, line, { seconds, doubt: null }, null);
  }
  const before = { ...rest, readings: rest.readings.slice(0, number - 1) };
  const log0 = change.time.kind === "later" ? before : rest;
  return placed(rest, line, momentOf(log0, change.time, now), null);
};
