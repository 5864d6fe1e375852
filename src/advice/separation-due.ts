/**
 * Which separation calls for a water test. Common practice, no source. A
 * generation nobody said counts as a later one, to be careful.
 */
import type { Batch } from "../kitchen/kitchen.ts";
import type { DueReason } from "./recheck-types.ts";

/** Whey parted from the curd, a little or much. */
const parted = ({ separated }: Pick<Batch, "separated">): boolean =>
  separated === "a little" || separated === "much";

/** In the first generation of a fresh starter it is usual and says nothing of the temperature. */
export const isUsual = (batch: Pick<Batch, "separated" | "generation">): boolean =>
  parted(batch) && batch.generation === 1;

const byDate = (a: Batch, b: Batch): number => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0);

/** Of which somebody said whether it separated, later than the first generation; oldest first. */
const later = (batches: readonly Batch[]): readonly Batch[] =>
  batches
    .filter(({ separated, generation }) => separated !== null && generation !== 1)
    .toSorted(byDate);

/** No test is newer than it: one of the same day may have been done before. */
export const isOpen = ({ date }: Pick<Batch, "date">, lastTested: string | null): boolean =>
  lastTested === null || lastTested <= date;

/** The newest batch that separated from the second generation on, unless a test is newer. */
export const separatedLater = (
  batches: readonly Batch[],
  lastTested: string | null,
): readonly DueReason[] => {
  const newest = later(batches).findLast(parted);
  if (newest === undefined || !isOpen(newest, lastTested)) return [];
  const { generation, date } = newest;
  return [{ code: "separated-later", generation, date }];
};

const lastFew = 3;
const often = 2;

const cultureTwice = (
  batches: readonly Batch[],
  lastTested: string | null,
): readonly DueReason[] => {
  const last = later(batches).slice(-lastFew);
  const separated = last.filter(parted);
  const newest = separated.at(-1);
  if (newest === undefined || separated.length < often || !isOpen(newest, lastTested)) return [];
  return [{ code: "two-in-three", separated: separated.length, of: last.length }];
};

/** Two of the last three batches of one culture, the first generation not counted. */
export const separatedTwice = (
  batches: readonly Batch[],
  lastTested: string | null,
): readonly DueReason[] => {
  const cultures = [...new Set(batches.map(({ culture }) => culture))];
  return cultures.flatMap((culture) =>
    cultureTwice(
      batches.filter((batch) => batch.culture === culture),
      lastTested,
    ),
  );
};
