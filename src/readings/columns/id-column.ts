import type { ColumnFacts } from "./column-facts.ts";
import type { SampleRecord } from "../text/dialect.ts";
import { headingWords } from "./headings.ts";
import type { HeadingKind } from "./headings.ts";

/** A column that names the sensor of each row. */
export interface IdColumn {
  readonly column: number;
  readonly heading: string;
}

/** More names than these are no sensors of one test. */
export const mostSensors = 32;

const words =
  /(?:^| )(?:sensor|sensors|probe|channel|chan|ch|mote|id|name|device|node|location|place|position|point|thermometer|logger|serial|address|mac|jar|kanal|canal|canale|voie|fuhler|messfuhler|messstelle|sonde|sonda|anturi|giver|voeler|entity|series)(?: |$)/u;

/** What a sensor does rather than which it is; and "Probe 1", which is itself a sensor. */
const state =
  /(?:^| )(?:status|state|zustand|etat|estado|stato|mode|alarm|error|fault|event|label|flag|type|unit|count)(?: |$)|\d$/u;

/** Numbers up to here, and beyond what a thermometer shows, are names rather than temperatures. */
const mostCounted = 16;
const beyondTemperatures = 230;

const distinctCells = (rows: readonly SampleRecord[], column: number): number =>
  new Set(rows.map(({ cells }) => (cells[column] ?? "").trim()).filter(Boolean)).size;

const mayName = (facts: ColumnFacts): boolean => {
  if (facts.filled === 0 || facts.times > 0) return false;
  if (facts.numbers < 0.5 * facts.filled) return true;
  return facts.whole && (facts.median <= mostCounted || facts.median > beyondTemperatures);
};

/**
 * The column by whose cells rows of different sensors can be told apart ("one
 * row for each sensor"): headed as a sensor's name or number, few different
 * cells, text or small whole numbers, beside a column of temperatures. Of
 * several the one with most names. Whether it parts the rows is decided when
 * all are read (`split-rows.ts`): in most files it is the same in each row.
 */
export const findIdColumn = (
  rows: readonly SampleRecord[],
  facts: readonly ColumnFacts[],
  headings: readonly string[] | null,
  kinds: readonly HeadingKind[],
): IdColumn | null => {
  if (headings === null) return null;
  const holdsReadings = ({ index, numbers, filled }: ColumnFacts): boolean =>
    numbers > 0.5 * filled && !["time", "date", "other", "unit"].includes(kinds[index] ?? "");
  let best: IdColumn | null = null;
  let most = 0;
  for (const own of facts) {
    const heading = headings[own.index] ?? "";
    const kind = kinds[own.index];
    if (kind === "time" || kind === "date" || kind === "temperature" || kind === "unit") continue;
    const said = headingWords(heading);
    if (!words.test(said) || state.test(said) || !mayName(own)) continue;
    if (!facts.some((other) => other !== own && holdsReadings(other))) continue;
    const names = distinctCells(rows, own.index);
    if (names > mostSensors || names <= most) continue;
    best = { column: own.index, heading };
    most = names;
  }
  return best;
};
