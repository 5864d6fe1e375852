/** What was taken for a new batch, as sentences: the person may have meant something else. */
import type { NewBatch } from "./new-batch.ts";
import type { Taken } from "./batch-taken.ts";

const thing = ({ what, value }: Taken): string => `${what} ${value}`;

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

const source = (from: Taken["from"]): string =>
  from === null ? "the only one here" : `as in the batch of ${from.date}`;

/** "Taken: appliance cooker and setting 38, as in the batch of 2026-11-02; container jars, the only one here." */
export const takenText = ({ taken, today }: Pick<NewBatch, "taken" | "today">) => {
  const sources = [...new Set(taken.map(({ from }) => source(from)))];
  const parts = sources.map((from) => {
    const things = taken.filter((one) => source(one.from) === from).map(thing);
    return `${listed(things)}, ${from}`;
  });
  const date = today === null ? [] : [`the date ${today}, today by this computer's clock`];
  const all = [...parts, ...date];
  return all.length === 0 ? [] : [`Taken: ${all.join("; ")}.`];
};
