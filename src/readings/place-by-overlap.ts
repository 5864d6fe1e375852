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
 * where nobody knows a date, the first span's stands for all.
 */
export const placeByOverlap = (spans: readonly ClockSpan[]): readonly ClockSpan[] => {
  const placed = new Map<number, ClockSpan>();
  for (const known of ["date", "day and month", "clock"] as const) {
    for (const [at, span] of spans.entries()) {
      if (span.known === known) placed.set(at, place(span, [...placed.values()]));
    }
  }
  return spans.map((_, at) => placed.get(at)!);
};

const place = (span: ClockSpan, others: readonly ClockSpan[]): ClockSpan => {
  if (span.known === "date" || others.length === 0) return span;
  const candidates = others.flatMap((other) => startsNear(span, other));
  const scored = candidates.map((start) => scoredAt(span, start, others));
  const best = scored.reduce((a, b) => (isBetter(b, a) ? b : a));
  const by = best.start - span.start;
  // Once placed it tells its date as well as those it was placed by.
  return { start: best.start, end: span.end + by, known: others[0]!.known };
};

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
