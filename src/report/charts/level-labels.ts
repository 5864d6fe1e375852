/** Where the names of windows and ceilings stand inside the plot, at its right edge. */
import type { Stretch } from "./scale-range.ts";

export interface Level {
  readonly text: string;
  /** px from the top: a window's two edges; a ceiling's are one. */
  readonly top: number;
  readonly bottom: number;
}

export interface PlacedLevel {
  readonly text: string;
  /** Middle of the letters, px from the top. */
  readonly y: number;
}

interface Surroundings {
  /** Heights, px from the top, that names had better not cover: the readings of the hold. */
  readonly readings: Stretch | null;
  readonly plotHeight: number;
  readonly textSize: number;
}

const overlap = (a: Stretch, b: Stretch): number =>
  Math.max(0, Math.min(a.high, b.high) - Math.max(a.low, b.low));

/** Inside a window just within an edge where there is room, else in its middle; a ceiling's above or below. */
const candidates = ({ top, bottom }: Level, half: number): readonly number[] => {
  const outside = [top - half, bottom + half];
  if (bottom - top >= 2 * half) return [top + half, bottom - half, ...outside];
  // Too low for the letters, yet nowhere else would they clearly belong to it.
  return bottom - top >= half ? [(top + bottom) / 2] : outside;
};

/** How far a name outside its own window would stand in others', px: it would pass for theirs. */
const astray = (own: Level, levels: readonly Level[], span: Stretch): number => {
  const middle = (span.low + span.high) / 2;
  if (middle >= own.top && middle <= own.bottom) return 0;
  const others = levels.filter((level) => level !== own);
  return others.reduce(
    (sum, { top, bottom }) => sum + overlap(span, { low: top, high: bottom }),
    0,
  );
};

/**
 * Each name goes to the place of its own where it covers least: never another
 * name nor the plot's end if that can be helped, then not another's window,
 * then not the readings.
 */
export const placeLevels = (
  levels: readonly Level[],
  { readings, plotHeight, textSize }: Surroundings,
): readonly PlacedLevel[] => {
  const half = textSize / 2 + 2.5;
  const placed: PlacedLevel[] = [];
  const spanAt = (y: number): Stretch => ({ low: y - half + 1, high: y + half - 1 });
  const cost = (y: number, own: Level): number => {
    const span = spanAt(y);
    const beyond = Math.max(0, -span.low) + Math.max(0, span.high - plotHeight);
    const names = placed.reduce((sum, other) => sum + overlap(span, spanAt(other.y)), 0);
    const covered = readings === null ? 0 : overlap(span, readings);
    return 100 * beyond + 10 * names + 3 * astray(own, levels, span) + covered;
  };
  for (const level of levels) {
    const y = candidates(level, half).reduce((best, at) =>
      cost(at, level) < cost(best, level) ? at : best,
    );
    placed.push({ text: level.text, y });
  }
  return placed;
};
