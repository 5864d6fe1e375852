import { isFlagLike, isIndex } from "./column-facts.ts";
import type { ColumnFacts } from "./column-facts.ts";
import { runAlike } from "./likeness.ts";
import type { HeadingKind } from "./headings.ts";

/** Which columns are temperatures, or why that cannot be said. */
export type TemperatureFinding =
  | { readonly kind: "found"; readonly columns: readonly number[] }
  | { readonly kind: "none" }
  | { readonly kind: "undecidable"; readonly columns: readonly number[] };

/** What water, ice and rooms show, in either unit. */
const lowest = -40;
const highest = 230;

const hasNumbers = (facts: ColumnFacts): boolean =>
  facts.numbers > 0 && facts.numbers + facts.flags >= 0.5 * facts.filled;

/** Values that a thermometer could show and that are not row numbers, identities or flags. */
const isPlausible = (facts: ColumnFacts): boolean =>
  hasNumbers(facts) &&
  facts.median >= lowest &&
  facts.median <= highest &&
  !isIndex(facts) &&
  !isFlagLike(facts);

const allAlike = (columns: readonly ColumnFacts[]): boolean =>
  columns.every(
    (column, at) => at === 0 || columns.slice(0, at).some((other) => runAlike(column, other)),
  );

const found = (columns: readonly ColumnFacts[]): TemperatureFinding => ({
  kind: "found",
  columns: columns.map(({ index }) => index),
});

/** Columns that nothing is said about: one is the temperature; several only where they run alike. */
const fromValues = (columns: readonly ColumnFacts[]): TemperatureFinding => {
  if (columns.length === 0) return { kind: "none" };
  if (allAlike(columns)) return found(columns);
  return { kind: "undecidable", columns: columns.map(({ index }) => index) };
};

/** A bare "T 3" or "Temp" over whole numbers that only count is no temperature; a written unit settles it. */
const isTemperature = (facts: ColumnFacts, kind: HeadingKind): boolean =>
  kind === "temperature"
    ? facts.numbers > 0 || facts.flags > 0
    : kind !== "other" && facts.unitShare > 0.5;

/**
 * The temperature columns among `facts` (time columns left out), by the words
 * of the headings and by the values. Headed temperatures come first, with
 * places ("jar 2", "CH1") whose values a thermometer could show; without any,
 * places alone; without those, columns without a telling heading.
 */
export const findTemperatureColumns = (
  facts: readonly ColumnFacts[],
  kinds: readonly HeadingKind[],
): TemperatureFinding => {
  const kindOf = ({ index }: ColumnFacts): HeadingKind => kinds[index] ?? "unknown";
  const headed = facts.filter((column) => isTemperature(column, kindOf(column)));
  const places = facts.filter((column) => kindOf(column) === "place" && isPlausible(column));
  if (headed.length > 0)
    return found(facts.filter((column) => headed.includes(column) || places.includes(column)));
  if (places.length > 0) return found(places);
  const unsaid = facts.filter((column) => kindOf(column) === "unknown");
  const plausible = unsaid.filter(isPlausible);
  if (plausible.length > 0) return fromValues(plausible);
  // A few readings by hand in whole degrees may look like flags or row numbers.
  const numeric = unsaid.filter(
    (column) => hasNumbers(column) && column.median >= 10 && column.median <= highest,
  );
  return numeric.length === 1 && !isIndex(numeric[0]!) ? found(numeric) : { kind: "none" };
};
