/** What is said of a water test, whether its readings come from a file (`add`) or by hand (`enter`). */
import { readClock } from "../../kitchen/schema/written-values.ts";
import type { TypedRange } from "../../quantity-text.ts";
import { read, room, several, words } from "../option-readers.ts";
import type { SettledSetUp } from "../set-up.ts";
import type { ProbeThermometerId, TestFacts } from "./new-test.ts";

const probeThermometer = (text: string): ProbeThermometerId | null => {
  const at = text.lastIndexOf("=");
  const id = text.slice(at + 1).trim();
  if (id === "" || at === 0) return null;
  return { probe: at < 0 ? null : text.slice(0, at), id };
};

/** Wall-clock time as if in UTC, ms since 1970; of null: of every file not named. */
export interface SaidStart {
  readonly file: string | null;
  readonly at: number;
}

const fileStart = (text: string): SaidStart | null => {
  const mark = text.lastIndexOf("=");
  const at = readClock(text.slice(mark + 1));
  if (at === null || mark === 0) return null;
  return { file: mark < 0 ? null : text.slice(0, mark), at };
};

export const testShapes = {
  appliance: words("an appliance's name"),
  setting: words("what it was set to, such as 38, a program or a mark"),
  container: words("a container's name"),
  fill: words('how much was in it, such as "2 L"'),
  room,
  notes: words("a text"),
  name: words("a name for the test"),
  thermometer: several(
    read("a thermometer's name, or a probe's and its own, such as Jar=pen", probeThermometer),
  ),
  starts: several(
    read('a day and a time, such as "2026-10-03 22:10" or "jar.csv=2026-10-03 22:10"', fileStart),
  ),
};

type FactOptions = {
  readonly [Key in "fill" | "notes" | "name"]?: string | undefined;
} & { readonly room?: TypedRange | undefined };

/** A settled set-up and the rest of what was said. */
export const testFactsOf = (
  { appliance, setting, container }: SettledSetUp,
  { name, fill, room: around, notes }: FactOptions,
): TestFacts => ({
  appliance,
  setting,
  container,
  name: name ?? null,
  fill: fill ?? null,
  room: around === undefined ? null : { low: around.low.celsius, high: around.high.celsius },
  notes: notes ?? null,
});
