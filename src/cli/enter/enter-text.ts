/** Words and lines of a session at the prompt. */
import { celsiusOf } from "../../readings/typed/typed-value.ts";
import type { LogReading, TypedLog } from "../../readings/typed/typed-types.ts";
import { clockText, dateText, dayOf, lengthText } from "../../readings/typed/wall-clock.ts";
import type { SaidOfTest } from "../../input/water-test/entered-test.ts";
import type { Change } from "../../readings/typed/typed-session.ts";

/** Margin under the prompt's number. */
const margin = "      ";

export interface Looks {
  readonly ascii: boolean;
}

const when = (seconds: number): string => `${dateText(dayOf(seconds))} ${clockText(seconds)}`;

const unitText = (unit: TypedLog["unit"], { ascii }: Looks): string =>
  ascii ? unit : unit === "degF" ? "°F" : "°C";

const otherUnit = (digits: string, log: TypedLog, looks: Looks): string =>
  log.unit === "degC"
    ? ""
    : ` (${celsiusOf(digits, "degF").toFixed(1)} ${unitText("degC", looks)})`;

const valueText = (reading: LogReading, at: number, log: TypedLog, looks: Looks): string => {
  const digits = reading.values[at] ?? null;
  const shown =
    digits === null
      ? "not read"
      : `${digits} ${unitText(log.unit, looks)}${otherUnit(digits, log, looks)}`;
  return log.probes.length === 1 ? shown : `${log.probes[at]} ${shown}`;
};

/** "2026-10-03 22:30   41.2 °C", with the comment in brackets. */
export const readingText = (reading: LogReading, log: TypedLog, looks: Looks): string => {
  const values = log.probes.map((_, at) => valueText(reading, at, log, looks)).join(",  ");
  const comment = reading.comment === null ? "" : `   (${reading.comment})`;
  return `${when(reading.seconds)}   ${values}${comment}`;
};

const numbered = (number: number, text: string): string =>
  `${String(number).padStart(3)}.  ${text}`;

/** Every reading with its number. */
export const listText = (log: TypedLog, looks: Looks): string =>
  log.readings.length === 0
    ? `${margin}No readings yet.`
    : log.readings.map((one, at) => numbered(at + 1, readingText(one, log, looks))).join("\n");

/** What a line did, as it was understood. */
export const changeText = (
  change: Change,
  number: number,
  before: TypedLog,
  after: TypedLog,
  looks: Looks,
): string => {
  if (change === "dropped") {
    const gone = before.readings[number - 1];
    return `${margin}Taken out: ${gone === undefined ? "" : readingText(gone, before, looks)}`;
  }
  if (change === "undone") return `${margin}Undone.\n${listText(after, looks)}`;
  const reading = after.readings[number - 1];
  const said = reading === undefined ? "" : readingText(reading, after, looks);
  const moved = number < after.readings.length && change === "added";
  return `${numbered(number, said)}${moved ? "   (put in its place by time)" : ""}`;
};

export const shortHelp =
  "One reading on each line: 22:30 41.2 or now 41.2. ? for help, done at the end.";

type Row = readonly [typed: string, does: string];

const columns = (rows: readonly Row[]): string => {
  const width = Math.max(...rows.map(([typed]) => typed.length));
  return rows.map(([typed, does]) => `  ${typed.padEnd(width)}  ${does}`.trimEnd()).join("\n");
};

const commands: readonly Row[] = [
  ["list", "all readings with their numbers"],
  ["fix 3 22:45 41", "reading 3 anew; fix 3 41, fix 3 22:45: one part"],
  ["drop 3", "reading 3 out"],
  ["undo", "the last change back"],
  ["done", "finish and store the test"],
  ["later", "stop here; every reading is saved already"],
];

export const helpText = ({ probes }: TypedLog): string => {
  const values = probes.map((_, at) => (41.2 - at).toFixed(1)).join(" ");
  const one = probes.length === 1;
  return columns([
    [`22:30 ${values}`, one ? "time and temperature" : `time, then ${probes.join(", ")}`],
    [`10:30 pm ${probes.map(() => "106,2F").join(" ")}`, "the same another way"],
    [`now ${values}`, "by this computer's clock"],
    [`+15 ${values}`, "15 minutes after the last reading; +1h an hour"],
    [`2026-10-03 22:30 ${values}`, "with its date, where it is not the next one"],
    ...(one ? [] : [["-", "in place of a probe that was not read"] as const]),
    ["# lid opened", "a comment, after a reading"],
    ["", ""],
    ...commands,
  ]);
};

const countText = (count: number): string => `${count} ${count === 1 ? "reading" : "readings"}`;

/** "8 readings, 2026-10-03 21:30 to 2026-10-04 07:00 (9 h 30 min)". */
export const summaryText = ({ readings }: TypedLog): string => {
  const [first, last] = [readings[0]?.seconds, readings.at(-1)?.seconds];
  const count = countText(readings.length);
  if (first === undefined || last === undefined) return count;
  if (first === last) return `${count}, ${when(first)}`;
  return `${count}, ${when(first)} to ${when(last)} (${lengthText(last - first)})`;
};

/** "3 readings since 2026-10-03 21:30". */
export const sinceText = ({ readings }: TypedLog): string => {
  const first = readings[0]?.seconds;
  return `${countText(readings.length)}${first === undefined ? "" : ` since ${when(first)}`}`;
};

/** What is being typed: the set-up and its probes. */
export const titleText = ({ name, appliance, setting, container, probes }: SaidOfTest): string => {
  const setUp = [appliance, setting, container].filter((part) => part !== null && part !== "");
  const what = setUp.length === 0 ? (name ?? "") : setUp.join(", ");
  return `${what}: ${probes.map((probe) => `${probe.name} (${probe.place})`).join(", ")}`;
};

/** For who stops before the end, or whose test could not be stored. */
export const keptText = (log: TypedLog, path: string | null): string =>
  path === null
    ? "No reading was typed; nothing is stored."
    : `Kept for later: ${summaryText(log)}, in ${path}. The same command goes on with them.`;
