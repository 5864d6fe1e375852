import type { FileUnit } from "../readings-file.ts";
import type { ColumnFacts } from "./column-facts.ts";
import { withoutUnit } from "./heading-unit.ts";
import { withoutKelvin } from "./kelvin.ts";
import { isSameInFahrenheit } from "./likeness.ts";
import { fullHeading } from "./sample.ts";
import type { Sample } from "./sample.ts";
import { findUnitColumns, preambleUnit, writtenUnit } from "./written-unit.ts";

/** One temperature column and how it is written. */
export interface ProbeColumn {
  readonly column: number;
  /** The heading as written, "" where there is none. */
  readonly heading: string;
  /** The heading without its unit. */
  readonly bareName: string;
  readonly unit: FileUnit | null;
  readonly unitColumn: number | null;
  /** Step of the last decimal written in the sample, in the file's unit. */
  readonly printedStep: number;
}

const lettered = /[\s_-][a-f]$/iu;

/** "Temp A", "Temp B", "Temp C": the letters count probes, C and F are no units there. */
const lettersCount = (headings: readonly string[]): boolean =>
  headings.some((heading) => /[\s_-][abde]$/iu.test(heading));

/** The temperature columns with their units, a reading printed in both units taken once. */
export const probeColumns = (
  sample: Sample,
  facts: readonly ColumnFacts[],
  columns: readonly number[],
): ProbeColumn[] => {
  const { layout, rows, columnCount } = sample;
  const units = findUnitColumns(rows, columnCount);
  const areCounted = lettersCount(columns.map((column) => layout.headings?.[column] ?? ""));
  const probes = columns.map((column) => {
    const own = facts[column]!;
    const heading = layout.headings?.[column] ?? "";
    const isCounted = lettered.test(heading) && areCounted;
    const saying = isCounted ? (layout.units[column] ?? "") : fullHeading(layout, column);
    const written = writtenUnit(own, saying, units, rows);
    const bareName = isCounted
      ? heading
      : written.unit === "K"
        ? withoutKelvin(heading)
        : withoutUnit(heading);
    return { column, heading, bareName, ...written, printedStep: 10 ** -own.decimals };
  });
  return settleUnits(withoutTwins(probes, facts), sample);
};

/** A reading printed in both units is one probe: the degC column is kept. */
const withoutTwins = (
  probes: readonly ProbeColumn[],
  facts: readonly ColumnFacts[],
): ProbeColumn[] => {
  const inCelsius = probes.filter(({ unit }) => unit === "degC");
  return probes.filter(
    (probe) =>
      probe.unit !== "degF" ||
      !inCelsius.some(({ column }) => isSameInFahrenheit(facts[column]!, facts[probe.column]!)),
  );
};

/** Units agree or one is missing: then the preamble's, or the other columns', is taken. */
const settleUnits = (probes: readonly ProbeColumn[], sample: Sample): ProbeColumn[] => {
  const stated = new Set(probes.flatMap(({ unit }) => (unit === null ? [] : [unit])));
  const [only] = stated.size === 1 ? stated : [];
  const fallback = only ?? (stated.size === 0 ? preambleUnit(sample.layout.preamble) : null);
  return probes.map((probe) => ({ ...probe, unit: probe.unit ?? fallback }));
};
