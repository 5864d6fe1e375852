/** What stands around the readings: lines before and after, and columns that are not temperatures. */
import { createRandom } from "./random.ts";
import type { Dialect, ExtraColumn, Table } from "./dialect-types.ts";

export function preambleLines(dialect: Dialect, table: Table): readonly string[] {
  if (dialect.preamble === "none") return [];
  const started = new Date(table.startWallClock).toISOString().slice(0, 16).replace("T", " ");
  const pairs: (readonly [string, string])[] = [
    ["Device", "temperature logger"],
    ["Serial number", "004217"],
    ["Started", started],
    ["Readings", String(table.seconds.length)],
  ];
  const mark = dialect.preamble === "prose" ? ": " : dialect.delimiter;
  const lines = pairs.map(([name, value]) => name + mark + value);
  return dialect.seed % 2 === 0 ? [...lines, ""] : lines;
}

export function trailerLines(dialect: Dialect, table: Table): readonly string[] {
  if (dialect.trailer === "none") return [];
  if (dialect.trailer === "prose") return ["", "End of data"];
  const first = table.columns[0]!.celsius.filter((value) => !Number.isNaN(value));
  const mean = first.reduce((sum, value) => sum + value, 0) / first.length;
  const shown = (dialect.unit === "degC" ? mean : mean * 1.8 + 32).toFixed(2);
  return [
    `Readings${dialect.delimiter}${table.seconds.length}`,
    `Average${dialect.delimiter}${shown.replace(".", dialect.decimal === dialect.delimiter ? "." : dialect.decimal)}`,
  ];
}

/** Cells of the other columns: slow walks around usual values. */
export function extraCells(
  dialect: Dialect,
  table: Table,
): (column: ExtraColumn, index: number) => string {
  const random = createRandom(dialect.seed, "extras");
  const level = { humidity: 45, battery: 3.02, light: 12, "dew point": 9 };
  const unit = (celsius: number): number =>
    dialect.unit === "degC" ? celsius : celsius * 1.8 + 32;
  const number = (value: number, places: number): string =>
    value.toFixed(places).replace(".", dialect.decimal);
  return (column, index) => {
    if (column === "status") return index === table.seconds.length - 1 ? "STOP" : "OK";
    if (column === "battery") return number(level.battery - index * 1e-6, 2);
    level[column] += random.normal(0, 0.05);
    if (column === "dew point") return number(unit(level[column]), 2);
    return number(Math.max(0, level[column]), column === "light" ? 0 : 1);
  };
}
