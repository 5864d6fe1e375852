/** Whether a file read back is the table that was written. */
import type { ReadingFault } from "./score-types.ts";
import type { Table } from "./dialect-types.ts";

/** Half a place of the coarsest time written (elapsed hours to five places, serial days to seven) is under this. */
const sameMinute = 0.01;
/** Two places in degF are 0.003 degC; four times that. */
const sameCelsius = 0.012;
/** Fault codes, glitches and what looks like one may be set aside: this share, and always this many. */
const setAsideShare = 0.03;
const setAsideCount = 12;

/**
 * Every reading read must be one that was written at that time, and nearly
 * every reading written must be read. Minutes count from the first reading
 * read, which a fault code may have moved: tried from the first dozen rows.
 */
export function readBack(
  table: Table,
  read: { readonly minutes: Float64Array; readonly celsius: Float64Array },
): ReadingFault | null {
  const written = table.columns.find(({ role }) => role === "food")!.celsius;
  const count = Math.min(setAsideCount, written.length);
  let best = 0;
  for (let first = 0; first < count && best < read.minutes.length; first += 1)
    best = Math.max(best, matches(table.seconds, written, read, first));
  if (best < read.minutes.length)
    return { kind: "wrong readings", share: (read.minutes.length - best) / read.minutes.length };
  const wanted = written.filter((value) => !Number.isNaN(value)).length;
  const lost = wanted - best;
  return lost <= setAsideCount || lost <= setAsideShare * wanted
    ? null
    : { kind: "lost readings", share: lost / wanted };
}

/** How many of the readings read were written at their time, where row `first` is the first one read. */
function matches(
  seconds: Float64Array,
  written: Float64Array,
  read: { readonly minutes: Float64Array; readonly celsius: Float64Array },
  first: number,
): number {
  let [at, found] = [first, 0];
  for (let index = 0; index < read.minutes.length; index += 1) {
    const minute = read.minutes[index]!;
    const minuteOf = (row: number): number => (seconds[row]! - seconds[first]!) / 60;
    while (at < seconds.length && minuteOf(at) < minute - sameMinute) at += 1;
    if (at >= seconds.length) break;
    const isThere = Math.abs(minuteOf(at) - minute) <= sameMinute;
    if (isThere && Math.abs(written[at]! - read.celsius[index]!) <= sameCelsius) found += 1;
  }
  return found;
}
