/** Typed readings, from none to all of a text. */
import type { Outcome } from "../../problem.ts";
import { pipedReadings } from "../../readings/typed/piped-readings.ts";
import { emptyLog } from "../../readings/typed/typed-log.ts";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import type { EnteredOptions } from "./entered-options.ts";
import type { SaidOfTest } from "./entered-test.ts";

type LogOptions = Pick<EnteredOptions, "unit" | "date">;

/** A log without readings, as the options say; in the usual unit where they say none. */
export const startLog = (
  { probes }: Pick<SaidOfTest, "probes">,
  { unit, date }: LogOptions,
  usual: TypedLog["unit"],
): TypedLog => {
  const firstDay = date === undefined ? null : Date.parse(`${date}T00:00Z`) / 86_400_000;
  const names = probes.map(({ name }) => name);
  return emptyLog(names, unit ?? usual, firstDay, unit === undefined);
};

/**
 * A whole text of lines such as `22:30 41.2`: all of them or none. `now`: the
 * wall clock, seconds from 1970 as if in UTC.
 */
export const wholeLog = (
  text: string,
  said: Pick<SaidOfTest, "probes">,
  options: LogOptions,
  usualUnit: TypedLog["unit"],
  now: number,
): Outcome<TypedLog> => {
  const { firstDay, probes } = startLog(said, options, usualUnit);
  return pipedReadings(text, { probes, unit: options.unit ?? null, usualUnit, firstDay, now });
};
