/** New water tests from options as they were typed: of loggers' files, and of readings typed by hand. */
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { readTyped } from "../read-options.ts";
import type { TypedOptions } from "../typed-options.ts";
import { addClash, addRepeatable, addShape, addedTest } from "./add-options.ts";
import type { GivenFile } from "./add-options.ts";
import { enteredRepeatable, enteredShape } from "./entered-options.ts";
import { enteredTest } from "./entered-test.ts";
import type { NewTest, TypedText } from "./new-test.ts";
import { saidOfTest } from "./said-of-test.ts";
import { wholeLog } from "./start-log.ts";

/** `today`: ISO day. Nothing is read of the files yet. */
export const testOfFiles = <Source>(
  files: readonly GivenFile<Source>[],
  kitchen: Kitchen,
  typed: TypedOptions,
  today: string,
): Outcome<NewTest<Source>> => {
  const options = readTyped(addShape, addRepeatable, typed);
  if (!options.ok) return options;
  return addClash(files, options.value, today) ?? addedTest(files, kitchen, options.value);
};

/**
 * Lines such as `22:30 41.2`, in the kitchen's unit where nothing says another.
 * `now`: the wall clock, seconds from 1970 as if in UTC. Fails at the first
 * line that cannot be read or is questioned, with its number.
 */
export const testOfLines = (
  lines: string,
  kitchen: Kitchen,
  typed: TypedOptions,
  now: number,
): Outcome<NewTest<TypedText>> => {
  const options = readTyped(enteredShape, enteredRepeatable, typed);
  if (!options.ok) return options;
  const said = saidOfTest(kitchen, options.value);
  if (!said.ok) return said;
  const log = wholeLog(lines, said.value, options.value, kitchen.shownUnit, now);
  return log.ok ? done(enteredTest(said.value, log.value)) : log;
};
