/** Typed readings as a plain CSV, which `readReadings` reads back without being told anything. */
import type { TypedLog } from "./typed-types.ts";
import { clockText, dateText, dayOf } from "./wall-clock.ts";

const quoted = (cell: string): string =>
  /[",;\t|]/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

/** The probe's name with its unit, as it stands over the column. */
export const headingOf = (probe: string, unit: TypedLog["unit"]): string =>
  `${probe} (${unit === "degF" ? "°F" : "°C"})`;

/**
 * `Time,Jar (°C)` and one row for each reading: local date and time in ISO
 * 8601 to the minute (to the second where any reading has seconds), and the
 * digits as typed; an empty cell where a probe was not read. Comments are left
 * out: they belong to the test's notes.
 */
export const typedCsv = ({ unit, probes, readings }: TypedLog): string => {
  const withSeconds = readings.some(({ seconds }) => seconds % 60 !== 0);
  const heading = ["Time", ...probes.map((probe) => quoted(headingOf(probe, unit)))].join(",");
  const rows = readings.map(({ seconds, values }) => {
    const when = `${dateText(dayOf(seconds))}T${clockText(seconds, withSeconds)}`;
    return [when, ...values.map((digits) => digits ?? "")].join(",");
  });
  return `${[heading, ...rows].join("\n")}\n`;
};
