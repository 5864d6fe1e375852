/** When a logger ran, by its own clock as if in UTC, ms since 1970. */
export interface ClockSpan {
  readonly start: number;
  readonly end: number;
  /** What of the date is known; what is not, stands at 1970. */
  readonly known: "date" | "day and month" | "clock";
}

const dayMs = 86_400_000;

/**
 * Gives spans whose date, or year, is not known the one on which they overlap
 * the spans already placed the longest; where several do alike, the one whose
 * start is nearest to theirs.
 *
 * Spans with a date stand first, then those without a year, then bare clocks;
 * where nobody knows a date, the first span's stands for all. Of each kind the
 * one that overlaps the longest is placed next, so that a logger that links two
 * others is placed before the second of them, in whatever order they are given.
 */
export const placeByOverlap = (spans: readonly ClockSpan[]): readonly ClockSpan[] => {
  const placed = new Map<number, ClockSpan>();
  for (const known of ["date", "day and month", "clock"] as const) {
    const left = new Set([...spans.keys()].filter((at) => spans[at]!.known === known));
    while (left.size > 0) {
      const others = [...placed.values()];
      const next = [...left]
        .map((at) => ({ at, place: bestPlace(spans[at]!, others) }))
        .reduce((a, b) => (isBetter(b.place, a.place) ? b : a));
      placed.set(next.at, placedAt(spans[next.at]!, next.place.start, others));
      left.delete(next.at);
    }
  }
  return spans.map((_, at) => placed.get(at)!);
};

/** A span with a date, and the first of all, stays where it is. */
const bestPlace = (span: ClockSpan, others: readonly ClockSpan[]): Scored =>
  span.known === "date" || others.length === 0
    ? scoredAt(span, span.start, [])
    : others
        .flatMap((other) => startsNear(span, other))
        .map((start) => scoredAt(span, start, others))
        .reduce((a, b) => (isBetter(b, a) ? b : a));

/** Once placed a span tells its date as well as those it was placed by. */
const placedAt = (span: ClockSpan, start: number, others: readonly ClockSpan[]): ClockSpan => ({
  start,
  end: span.end + start - span.start,
  known: span.known === "date" ? span.known : (others[0]?.known ?? span.known),
});

/** Starts of `span` on every day, or in every year, that can touch `other`. */
const startsNear = (span: ClockSpan, other: ClockSpan): number[] => {
  if (span.known === "day and month") {
    const year = new Date(other.start).getUTCFullYear();
    return [year - 1, year, year + 1].map((one) => inYear(span.start, one));
  }
  const length = span.end - span.start;
  const first = Math.ceil((other.start - length - span.start) / dayMs) - 1;
  const last = Math.floor((other.end - span.start) / dayMs) + 1;
  return Array.from(
    { length: last - first + 1 },
    (_, index) => span.start + (first + index) * dayMs,
  );
};

const inYear = (time: number, year: number): number => {
  const date = new Date(time);
  const days = Date.UTC(year, date.getUTCMonth(), date.getUTCDate());
  return days + (((time % dayMs) + dayMs) % dayMs);
};

interface Scored {
  readonly start: number;
  readonly overlap: number;
  readonly apart: number;
}

const scoredAt = (span: ClockSpan, start: number, others: readonly ClockSpan[]): Scored => {
  const end = start + span.end - span.start;
  let overlap = 0;
  let apart = Infinity;
  for (const other of others) {
    overlap += Math.max(0, Math.min(end, other.end) - Math.max(start, other.start));
    apart = Math.min(apart, Math.abs(start - other.start));
  }
  return { start, overlap, apart };
};

const isBetter = (a: Scored, b: Scored): boolean =>
  a.overlap > b.overlap || (a.overlap === b.overlap && a.apart < b.apart);
