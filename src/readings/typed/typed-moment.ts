/** When a typed reading was taken: its time set among the readings there are. */
import { clockText, dateText, dayOf, lengthText, ofDay } from "./wall-clock.ts";
import type { TypedLog, TypedTime } from "./typed-types.ts";

/** What is odd about a moment, or why there is none. */
export interface MomentDoubt {
  readonly kind: "time" | "a-day-back";
  readonly found: string;
  readonly why: string;
  readonly advice: string;
}
export type Moment =
  | { readonly ok: true; readonly seconds: number; readonly doubt: MomentDoubt | null }
  | {
      readonly ok: false;
      readonly expected: string;
      readonly found: string;
      readonly advice: string;
    };

const day = 86_400;
/** A clock that goes back by up to this is a slip; by more, it has passed midnight. */
const slip = 3 * 3600;
/** The person's clock and the computer's may differ by this. */
const tolerance = 600;
/** Readings of one test lie closer together than this. */
const longestPause = 3 * day;

const lastOf = ({ readings }: TypedLog): number | null => readings.at(-1)?.seconds ?? null;

const at = (seconds: number, doubt: MomentDoubt | null = null): Moment => ({
  ok: true,
  seconds,
  doubt,
});

/** A clock's time with no reading before it: on the day said, else the latest that is past. */
const first = (log: TypedLog, clock: number, now: number): Moment => {
  if (log.firstDay !== null) return at(log.firstDay * day + clock);
  const today = dayOf(now) * day + clock;
  return at(today <= now + tolerance ? today : today - day);
};

/** A clock's time after `last`: the next time it shows this, unless it went back by a little. */
const following = (log: TypedLog, clock: number, last: number, now: number): Moment => {
  const ahead = (((clock - ofDay(last)) % day) + day) % day;
  if (ahead > day - slip)
    return at(last + ahead - day, {
      kind: "time",
      found: clockText(clock),
      why: `${lengthText(day - ahead)} before the last reading (${clockText(last)})`,
      advice: "",
    });
  const seconds = last + ahead;
  if (seconds <= now + tolerance || !log.dayAssumed) return at(seconds);
  return at(seconds, {
    kind: "a-day-back",
    found: clockText(clock),
    why: "still to come if the night began when you said first",
    advice: "Did all of it happen a day earlier?",
  });
};

/** Odd about a moment whatever way it was written. */
const generalDoubt = (log: TypedLog, seconds: number, now: number): MomentDoubt | null => {
  const found = `${dateText(dayOf(seconds))} ${clockText(seconds)}`;
  const last = lastOf(log);
  if (last !== null && Math.abs(seconds - last) > longestPause) {
    const why = `${Math.round(Math.abs(seconds - last) / day)} days from the last reading`;
    return { kind: "time", found, why, advice: "" };
  }
  if (seconds <= now + tolerance) return null;
  return { kind: "time", found, why: "still to come by this computer's clock", advice: "" };
};

const written = (log: TypedLog, time: TypedTime, now: number): Moment => {
  const last = lastOf(log);
  if (time.kind === "now") return at(now);
  if (time.kind === "later") {
    if (last !== null) return at(last + time.seconds);
    return {
      ok: false,
      expected: "a clock's time for the first reading",
      found: `"+${lengthText(time.seconds)}"`,
      advice: "Write it like 22:30 41.2.",
    };
  }
  if (time.day !== null) return at(time.day * day + time.seconds);
  return last === null ? first(log, time.seconds, now) : following(log, time.seconds, last, now);
};

/**
 * Places a time. `now` is the wall clock, seconds from 1970 as if in UTC. A
 * clock's time without a date is the next one after the last reading, so the
 * day changes by itself; one that is up to 3 h before the last reading is
 * taken for an earlier reading and questioned. Doubt "a-day-back": the dates
 * were assumed and this one has not come yet. Clocks are taken as on the wall:
 * where summer time begins or ends, lengths of time over that hour are off by it.
 */
export const momentOf = (log: TypedLog, time: TypedTime, now: number): Moment => {
  const moment = written(log, time, now);
  if (!moment.ok || moment.doubt !== null) return moment;
  return at(moment.seconds, generalDoubt(log, moment.seconds, now));
};

/** For a correction: the day on which a clock's time lies nearest to the old one. */
export const momentNear = (old: number, clock: number): number =>
  clock + Math.round((old - clock) / day) * day;
