import { readTimeHeading } from "./time-heading.ts";
import { numberFormat } from "./number-format.ts";
import { createNumericAccumulator, timeNumber } from "./numeric.ts";
import { kindOf, type StampKind } from "./stamp-kind.ts";
import { createStampReader } from "./stamp.ts";
import { createDatedAccumulator } from "./dated.ts";
import { createUndatedAccumulator } from "./undated.ts";
import type { TimeOptions, TimeRecogniser } from "./time-types.ts";

/** Share of the samples that must be times: some may be blank or broken. */
const leastShare = 0.5;

const isBlank = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === "");

/** The kind that most samples share, or null where too few are stamps with a time. */
const stampKind = (samples: readonly (readonly string[])[]): StampKind | null => {
  const reader = createStampReader();
  const counts = new Map<string, { kind: StampKind; count: number }>();
  for (const cells of samples) {
    if (!reader.read(cells) || !reader.stamp.timed) continue;
    const kind = kindOf(reader.stamp);
    const known = counts.get(JSON.stringify(kind)) ?? { kind, count: 0 };
    known.count++;
    counts.set(JSON.stringify(kind), known);
  }
  const most = [...counts.values()].toSorted((a, b) => b.count - a.count)[0];
  return most !== undefined && most.count >= leastShare * samples.length ? most.kind : null;
};

const recogniseNumbers = (
  samples: readonly (readonly string[])[],
  options: TimeOptions,
): TimeRecogniser | null => {
  if (samples.some((cells) => cells.length !== 1)) return null;
  const cells = samples.map((sample) => sample[0]!);
  const numbers = cells.filter((cell) => Number.isFinite(timeNumber(cell)));
  if (numbers.length < leastShare * samples.length) return null;
  const how = numberFormat(numbers, options.headings ?? []);
  if (how === null) return null;
  return { format: how.format, createAccumulator: () => createNumericAccumulator(how, options) };
};

/** Clock or elapsed, as far as the samples show; the whole column may tell otherwise. */
const undated = (
  samples: readonly (readonly string[])[],
  kind: StampKind,
  options: TimeOptions,
): TimeRecogniser => {
  const heading = readTimeHeading(options.headings ?? []);
  const createAccumulator = () => createUndatedAccumulator(kind, heading, options);
  const trial = createAccumulator();
  for (const [index, cells] of samples.entries()) trial.add(cells, index + 1);
  const found = trial.finish();
  return { format: found.ok ? found.value.format : "clock", createAccumulator };
};

/**
 * What the time cells of some rows are, or null where they are no times.
 *
 * `samples` holds, for each row, the cell(s) of the candidate column(s): one,
 * or date and time, or date, time and AM/PM; `options.headings` their
 * headings. Blank samples are passed over. Stamps are read by their shape
 * alone, without time zone data or locale; plain numbers need a heading or a
 * size that tells what they count. The accumulator then takes every row, and
 * decides at the end what only the whole column can tell (day or month first,
 * clock or elapsed, summer time).
 */
export const recogniseTimes = (
  samples: readonly (readonly string[])[],
  options: TimeOptions,
): TimeRecogniser | null => {
  const filled = samples.filter((cells) => !isBlank(cells));
  if (filled.length === 0) return null;
  const kind = stampKind(filled);
  if (kind === null) return recogniseNumbers(filled, options);
  if (!kind.dated) return undated(filled, kind, options);
  const format = filled[0]!.length > 1 ? "date-and-time-columns" : "date-time";
  return { format, createAccumulator: () => createDatedAccumulator(kind, format, options) };
};
