import { cellKind } from "../cells/cell-kind.ts";
import { headingKind } from "../columns/headings.ts";

/** What a row that may be a heading printed again says about the rows below it. */
export type HeadingAgain =
  | { readonly kind: "none" }
  /** For each column of the first heading, where it stands now; -1: gone. */
  | { readonly kind: "moved"; readonly places: readonly number[] }
  /** It names columns that the first heading does not. */
  | { readonly kind: "other" };

const none: HeadingAgain = { kind: "none" };
const same = (heading: string): string => heading.trim().toLowerCase();

/** Words in every cell, a time among them and something that is read. */
const isHeading = (cells: readonly string[]): boolean => {
  const filled = cells.filter((cell) => cell.trim() !== "");
  if (filled.length < 2 || filled.some((cell) => cellKind(cell) === "time")) return false;
  const kinds = new Set(filled.map(headingKind));
  return (
    (kinds.has("time") || kinds.has("date")) && (kinds.has("temperature") || kinds.has("place"))
  );
};

/** Where each heading of `before` stands in `now`, each place taken once. */
const placesOf = (before: readonly string[], now: readonly string[]): number[] => {
  const free = now.map(same);
  return before.map((heading) => {
    const at = heading.trim() === "" ? -1 : free.indexOf(same(heading));
    if (at >= 0) free[at] = "\u0000";
    return at;
  });
};

/**
 * Reads a row as a heading printed again after a power cut, with the columns
 * of the first heading in another order or some of them left out (`needed`,
 * those of the time, must be there).
 */
export const readHeadingAgain = (
  cells: readonly string[],
  headings: readonly string[] | null,
  needed: readonly number[],
): HeadingAgain => {
  if (headings === null || !isHeading(cells)) return none;
  const places = placesOf(headings, cells);
  const found = places.filter((place) => place >= 0).length;
  const filled = cells.filter((cell) => cell.trim() !== "").length;
  if (found < filled || needed.some((column) => (places[column] ?? -1) < 0))
    return { kind: "other" };
  return { kind: "moved", places };
};

/** Follows headings in the middle of a file. */
export interface HeadingFollower {
  /** True for a heading by which the rows below are to be read. */
  follow(cells: readonly string[], line: number): boolean;
  /** The first heading stands again. */
  reset(): void;
  /** The cells of a row under the first heading's columns. */
  inPlace(cells: readonly string[]): readonly string[];
  /** A reading has come: a heading above it that names other columns is in force. */
  reading(): void;
  /** The first heading with other columns that readings stand under. */
  other(): { readonly line: number; readonly found: string } | null;
  /** Line of the first heading that was followed. */
  movedAt(): number | null;
}

export const createHeadingFollower = (
  headings: readonly string[] | null,
  needed: readonly number[],
): HeadingFollower => {
  let places: readonly number[] | null = null;
  let movedAt: number | null = null;
  let suspect: ReturnType<HeadingFollower["other"]> = null;
  let other: ReturnType<HeadingFollower["other"]> = null;
  return {
    follow(cells, line) {
      const again = readHeadingAgain(cells, headings, needed);
      if (again.kind === "other") suspect = { line, found: cells.join(", ") };
      if (again.kind !== "moved") return false;
      places = again.places;
      movedAt ??= line;
      return true;
    },
    reset() {
      places = null;
    },
    inPlace: (cells) =>
      places === null ? cells : places.map((place) => (place < 0 ? "" : (cells[place] ?? ""))),
    reading() {
      other ??= suspect;
    },
    other: () => other,
    movedAt: () => movedAt,
  };
};
