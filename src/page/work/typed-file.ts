/** Typed readings of no kitchen as the CSV file that `enter --out` would write. */
import { enteredRepeatable, enteredShape } from "../../input/water-test/entered-options.ts";
import { enteredProbes } from "../../input/water-test/entered-probes.ts";
import { readProbesOnly } from "../../input/water-test/entered-test.ts";
import { wholeLog } from "../../input/water-test/start-log.ts";
import { readTyped } from "../../input/read-options.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { typedCsv } from "../../readings/typed/typed-csv.ts";
import { dateText, dayOf } from "../../readings/typed/wall-clock.ts";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import type { FormValues } from "../protocol.ts";
import type { TypedFile } from "./workroom.ts";

/** Only these say something of typed readings by themselves. */
const said = ["probe", "unit", "date"] as const;

const saidOf = (options: FormValues): FormValues =>
  Object.fromEntries(said.flatMap((key) => (key in options ? [[key, options[key]!]] : [])));

const nameOf = ({ readings }: TypedLog): string =>
  `${dateText(dayOf(readings[0]?.seconds ?? 0))}-by-hand.csv`;

export interface TypedNight {
  readonly file: TypedFile;
  /** The probes that were read; the others have no column. */
  readonly probes: readonly string[];
}

/** `usualUnit`: of numbers without a letter; `now`: the wall clock, seconds from 1970 as if in UTC. */
export const typedNight = (
  lines: string,
  options: FormValues,
  usualUnit: TemperatureUnit,
  now: number,
): Outcome<TypedNight> => {
  const read = readTyped(enteredShape, enteredRepeatable, saidOf(options));
  if (!read.ok) return read;
  const probes = enteredProbes(read.value, null);
  if (!probes.ok) return probes;
  const log = wholeLog(lines, { probes: probes.value }, read.value, usualUnit, now);
  if (!log.ok) return log;
  const written = readProbesOnly(log.value);
  return done({
    file: { name: nameOf(written), text: typedCsv(written) },
    probes: written.probes,
  });
};
