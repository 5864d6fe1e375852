import { columnFacts } from "./column-facts.ts";
import type { ColumnFacts } from "./column-facts.ts";
import { findDecimal } from "../text/decimal-sign.ts";
import type { Delimiter } from "../text/dialect.ts";
import type { HeadingKind } from "./headings.ts";
import { findIdColumn } from "./id-column.ts";
import type { IdColumn } from "./id-column.ts";
import type { Layout } from "./layout.ts";
import { columnsNamed } from "./named-columns.ts";
import type { DecimalSign } from "../cells/numbers.ts";
import { probeColumns } from "./probe-columns.ts";
import type { ProbeColumn } from "./probe-columns.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ReadingOptions } from "../readings-file.ts";
import { fullHeading, kindsOf, listed, noTemperature, takeSample } from "./sample.ts";
import type { Sample } from "./sample.ts";
import type { SplitDecimals } from "../text/split-decimals.ts";
import { findTemperatureColumns } from "./temperature-columns.ts";
import { findWhenColumns } from "./when-columns.ts";
import type { ColumnView, WhenColumns } from "./when-columns.ts";

/** How every row of one file is to be read, decided from its first part. */
export interface Plan {
  readonly delimiter: Delimiter;
  readonly decimal: DecimalSign;
  readonly layout: Layout;
  readonly split: SplitDecimals | null;
  /** Null where rows are placed by `intervalSeconds`. */
  readonly when: WhenColumns | null;
  readonly probes: readonly ProbeColumn[];
  readonly ignored: readonly string[];
  /** Names the sensor of each row, perhaps. */
  readonly idColumn: IdColumn | null;
  /** A blank line is a reading that is missing: rows of one cell, placed by their number. */
  readonly blankIsMissing: boolean;
  /** Rows begin with words (a device's name): then words do not tell a summary line. */
  readonly textRowsUsual: boolean;
}

/** The columns named by the person, or those that headings and values show. */
const temperatureColumns = (
  sample: Sample,
  facts: readonly ColumnFacts[],
  kinds: readonly HeadingKind[],
): Outcome<readonly number[]> => {
  const { name, options, names, firstLine } = sample;
  if (options.columns !== undefined && options.columns.length > 0) {
    const chosen = new Set<number>();
    for (const column of options.columns) {
      const named = columnsNamed(column, names);
      if (named.length === 0)
        return failed("column-unknown", { file: name, column, columns: listed(names) });
      for (const index of named) chosen.add(index);
    }
    return done([...chosen].toSorted((a, b) => a - b));
  }
  const finding = findTemperatureColumns(facts, kinds);
  if (finding.kind === "none") return noTemperature(name, firstLine, names);
  if (finding.kind === "undecidable") {
    const candidates = finding.columns.map((index) => names[index] ?? "");
    return failed("temperature-column-undecidable", {
      file: name,
      line: firstLine,
      columns: listed(candidates),
    });
  }
  return done(finding.columns);
};

const noTime = ({ name, firstLine, names }: Sample) =>
  failed("no-time-column", { file: name, line: firstLine, columns: listed(names) });

/** Rows mostly stand in one line after the other; else blank lines are how the file is set. */
const runOn = (rows: Sample["rows"]): boolean =>
  rows.filter(({ line }, at) => line - (rows[at - 1]?.line ?? line - 1) === 1).length >
  0.6 * rows.length;

/** Decides from the first part of a file's text how all of it is read. */
export const makePlan = (name: string, text: string, options: ReadingOptions): Outcome<Plan> => {
  const sampled = takeSample(name, text, options);
  if (!sampled.ok) return sampled;
  const sample = sampled.value;
  const { rows, columnCount, delimiter, layout } = sample;
  const headings = layout.headings?.map((_, at) => fullHeading(layout, at)) ?? null;
  const kinds = kindsOf(sample);
  const indexes = Array.from({ length: columnCount }, (_, at) => at);
  const readings = new Set(indexes.filter((at) => kinds[at] !== "time" && kinds[at] !== "date"));
  const sign = findDecimal(rows, readings, delimiter, options.decimal);
  if (sign.kind === "undecidable")
    return failed("decimal-undecidable", { file: name, line: sign.line, found: sign.found });
  const decimal = sign.decimal;
  const facts = indexes.map((at) => columnFacts(rows, at, decimal));
  const view: ColumnView = { rows, facts, headings, kinds, decimal };
  const chosen = new Set(
    (options.columns ?? []).flatMap((column) => columnsNamed(column, sample.names)),
  );
  const dated = { ...view, facts: facts.filter(({ index }) => !chosen.has(index)) };
  const order = options.dateOrder === undefined ? {} : { dateOrder: options.dateOrder };
  const when = findWhenColumns(dated, { ...order, file: name });
  const untimed = facts.filter(({ index }) => !(when?.columns.includes(index) ?? false));
  const unsaid = untimed.filter(({ index }) => !chosen.has(index));
  const idColumn = findIdColumn(rows, unsaid, headings, kinds);
  const free = untimed.filter(({ index }) => index !== idColumn?.column);
  const columns = temperatureColumns(sample, free, kinds);
  if (!columns.ok) return columns;
  if (when === null && options.intervalSeconds === undefined) return noTime(sample);
  const probes = probeColumns(sample, facts, columns.value);
  const used = new Set([...(when?.columns ?? []), ...probes.map(({ column }) => column)]);
  for (const { unitColumn } of probes) if (unitColumn !== null) used.add(unitColumn);
  const ignored = sample.names.filter((_, at) => !used.has(at) && (facts[at]?.filled ?? 0) > 0);
  const { split, textRowsUsual } = sample;
  const found = { delimiter, decimal, layout, split, when, probes, ignored };
  const blankIsMissing = when === null && columnCount === 1 && runOn(rows);
  return done({ ...found, idColumn, blankIsMissing, textRowsUsual });
};
