import type { Batch } from "../kitchen/kitchen.ts";
import { fisherExact, leastPossible } from "../stats/fisher-exact.ts";
import type { SeparationAssociation } from "./recheck-types.ts";

/** A batch whose outcome was logged, and the margin of its set-up's band to the window, degC. */
export interface LoggedOutcome {
  readonly batch: Batch;
  /** null where the set-up was never tested. */
  readonly margin: number | null;
}

/** Separated of a fresh starter's first generation is usual, so it says nothing of the temperature. */
export const tells = ({ separated, generation }: Batch): boolean =>
  separated !== null && generation !== 1;

export const isSeparated = ({ separated }: Batch): boolean =>
  separated !== null && separated !== "none";

/** A log in which no outcome could reach this says nothing. */
const level = 0.05;

/**
 * Whether separation goes with the band's lying outside the window, over a
 * culture's whole log: Fisher's exact test.
 *
 * @returns null where even the clearest outcome of so many batches could be chance
 */
export const separationAssociation = (
  outcomes: readonly LoggedOutcome[],
): SeparationAssociation | null => {
  const used = outcomes.filter(({ batch, margin }) => margin !== null && tells(batch));
  const count = (inside: boolean, separated: boolean): number =>
    used.filter(({ batch, margin }) => margin! >= 0 === inside && isSeparated(batch) === separated)
      .length;
  const inside = [count(true, true), count(true, false)] as const;
  const outside = [count(false, true), count(false, false)] as const;
  const rows = [inside[0] + inside[1], outside[0] + outside[1]] as const;
  const columns = [inside[0] + outside[0], inside[1] + outside[1]] as const;
  if (used.length === 0 || leastPossible(rows, columns) > level) return null;
  return {
    insideSeparated: inside[0],
    insideSound: inside[1],
    outsideSeparated: outside[0],
    outsideSound: outside[1],
    probability: fisherExact([inside, outside]),
  };
};
