import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foundTimes } from "./time-rows.ts";

const two = (value: number): string => String(value).padStart(2, "0");
const english = [
  "Jan",
  "Feb",
  "Mar",
  "Apr",
  "May",
  "Jun",
  "Jul",
  "Aug",
  "Sep",
  "Oct",
  "Nov",
  "Dec",
];

interface Fields {
  readonly y: number;
  readonly m: number;
  readonly d: number;
  readonly H: number;
  readonly M: number;
  readonly S: number;
}

/** The fields of an instant by the language's own UTC calendar: the reference. */
const fieldsOf = (seconds: number): Fields => {
  const date = new Date(seconds * 1000);
  return {
    y: date.getUTCFullYear(),
    m: date.getUTCMonth() + 1,
    d: date.getUTCDate(),
    H: date.getUTCHours(),
    M: date.getUTCMinutes(),
    S: date.getUTCSeconds(),
  };
};

const clock = ({ H, M, S }: Fields): string => `${two(H)}:${two(M)}:${two(S)}`;
const halves = ({ H, M, S }: Fields): string =>
  `${H % 12 === 0 ? 12 : H % 12}:${two(M)}:${two(S)} ${H < 12 ? "AM" : "PM"}`;

const layouts: Record<string, (fields: Fields) => string[]> = {
  iso: (f) => [`${f.y}-${two(f.m)}-${two(f.d)}T${clock(f)}Z`],
  yearFirst: (f) => [`${f.y}/${f.m}/${f.d} ${clock(f)}`],
  dayFirstDots: (f) => [`${two(f.d)}.${two(f.m)}.${f.y} ${clock(f)}`],
  dayFirst: (f) => [`${f.d}/${f.m}/${f.y} ${halves(f)}`],
  monthFirst: (f) => [`${f.m}/${f.d}/${f.y} ${halves(f)}`],
  shortMonthFirst: (f) => [`${two(f.m)}/${two(f.d)}/${two(f.y % 100)} ${clock(f)}`],
  named: (f) => [`${f.d}-${english[f.m - 1]}-${f.y} ${clock(f)}`],
  columns: (f) => [`${two(f.d)}-${two(f.m)}-${f.y}`, clock(f)],
  timeFirst: (f) => [`${halves(f)} ${f.y}-${two(f.m)}-${two(f.d)}`],
  oneNumber: (f) => [`${f.y}${two(f.m)}${two(f.d)}${two(f.H)}${two(f.M)}${two(f.S)}`],
};

const said = {
  dayFirst: "day-first",
  dayFirstDots: "day-first",
  columns: "day-first",
  monthFirst: "month-first",
  shortMonthFirst: "month-first",
} as const;

const from = Date.UTC(2000, 0, 1) / 1000;
const to = Date.UTC(2068, 0, 1) / 1000;
// Any order, any leap, and every shape of month, day and hour. Steps stay clear of one hour,
// which at night and in even steps is taken for summer time.
const instants = fc.array(fc.integer({ min: from, max: to }), { minLength: 1, maxLength: 30 });

describe("any list of instants written in any layout reads back exactly", () => {
  it.each(Object.keys(layouts))("%s", (name) => {
    const order = said[name as keyof typeof said];
    const options = order === undefined ? {} : { dateOrder: order };
    fc.assert(
      fc.property(instants, (list) => {
        const found = foundTimes(
          list.map((instant) => layouts[name]!(fieldsOf(instant))),
          options,
        );
        const jumps = found.notices.filter(({ code }) => code === "clock-jump-mended");
        fc.pre(jumps.length === 0);
        const back = Array.from(found.seconds, (value) => value - found.seconds[0]!);
        expect(back).toEqual(list.map((instant) => instant - list[0]!));
        expect(found.startWallClock).toBe(list[0]! * 1000);
      }),
      { numRuns: 300, seed: 7 },
    );
  });
});

describe("fractions read back to the millisecond", () => {
  it.each([".", ","])("after %s", (mark) => {
    const steps = fc.array(fc.integer({ min: 0, max: 1e8 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(steps, (milliseconds) => {
        const rows = milliseconds.map((ms) => {
          const text = new Date(Date.UTC(2026, 2, 1) + ms).toISOString();
          return [text.replace(".", mark)];
        });
        const found = foundTimes(rows);
        expect(
          Array.from(found.seconds, (value) => Math.round((value - found.seconds[0]!) * 1e6)),
        ).toEqual(milliseconds.map((ms) => (ms - milliseconds[0]!) * 1000));
      }),
      { numRuns: 200, seed: 8 },
    );
  });
});

describe("a clock without dates runs on, whatever the steps below a day", () => {
  it("with AM and PM", () => {
    // Steps of up to 22 h: one of 23 h or more would be a row an hour out of order.
    const steps = fc.array(fc.integer({ min: 1, max: 79_200 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 86_399 }), steps, (first, list) => {
        const times = [first];
        for (const step of list) times.push(times.at(-1)! + step);
        const found = foundTimes(times.map((time) => [halves(fieldsOf(time))]));
        fc.pre(found.notices.length === 0);
        expect(Array.from(found.seconds)).toEqual(times);
      }),
      { numRuns: 300, seed: 9 },
    );
  });
});
