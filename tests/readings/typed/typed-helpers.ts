/** Short ways to a log of typed lines, for tests. */
import { problemText } from "../../../src/problem.ts";
import { readTypedLine } from "../../../src/readings/typed/typed-line.ts";
import { addReading, emptyLog } from "../../../src/readings/typed/typed-log.ts";
import type { Placed, TypedLog } from "../../../src/readings/typed/typed-types.ts";
import { clockText, dateText, dayOf } from "../../../src/readings/typed/wall-clock.ts";

/** Wall-clock seconds of "2026-10-04 08:00". */
export const wall = (text: string): number => Date.parse(`${text.replace(" ", "T")}Z`) / 1000;

/** The morning after the night that these tests are about. */
export const morning = wall("2026-10-04 08:00");

export const jarLog = (date: string | null = null): TypedLog =>
  emptyLog(["Jar"], "degC", date === null ? null : wall(`${date} 00:00`) / 86_400, false);

export const placedIn = (log: TypedLog, typed: string, now = morning): Placed => {
  const line = readTypedLine(typed, log.probes);
  if (!line.ok) throw new Error(problemText(line.problem));
  return addReading(log, line.value, now);
};

/** The log with lines added, every doubt answered with yes. */
export const logOf = (lines: readonly string[], log = jarLog(), now = morning): TypedLog =>
  lines.reduce((before, typed) => {
    const placed = placedIn(before, typed, now);
    if (placed.kind === "refused") throw new Error(problemText(placed.problem));
    return placed.log;
  }, log);

/** "2026-10-03 22:30 41.2" for each reading. */
export const shown = (log: TypedLog): readonly string[] =>
  log.readings.map(
    ({ seconds, values }) =>
      `${dateText(dayOf(seconds))} ${clockText(seconds)} ${values.map((one) => one ?? "-").join(" ")}`,
  );

export const sentenceOf = (placed: Placed): string =>
  placed.kind === "refused"
    ? problemText(placed.problem)
    : placed.doubts.map(({ problem }) => problemText(problem)).join(" ");
