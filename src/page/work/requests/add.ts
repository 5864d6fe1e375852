/** A water test into the kitchen, from files or typed readings, and what its night says. */
import { localDay } from "../../../input/local-day.ts";
import { wallNow } from "../../../input/wall-now.ts";
import { storedKitchen } from "../../../input/water-test/kitchen-store.ts";
import type { NewTest, StoredTest } from "../../../input/water-test/new-test.ts";
import { storeTest } from "../../../input/water-test/store-test.ts";
import { testOfFiles, testOfLines } from "../../../input/water-test/typed-tests.ts";
import type { Kitchen } from "../../../kitchen/kitchen.ts";
import { done, failed } from "../../../problem.ts";
import type { Outcome } from "../../../problem.ts";
import type { Requests } from "../../protocol.ts";
import { baseName } from "../chosen-names.ts";
import { changedState } from "../kitchen-state.ts";
import type { PageSource } from "../memory-store.ts";
import { watchOf } from "../workroom.ts";
import type { Handler, TypedFile, Workroom } from "../workroom.ts";
import { showNight } from "./check.ts";

const newTest = (
  { readings, options }: Requests["add"]["asked"],
  kitchen: Kitchen,
  now: Date,
): Outcome<NewTest<PageSource>> => {
  if (readings.kind === "typed") return testOfLines(readings.lines, kitchen, options, wallNow(now));
  if (readings.files.length === 0) {
    const why = "a water test is made of readings";
    return failed("option-missing", { option: "a logger's file, or typed readings", why });
  }
  const files = readings.files.map(({ name, content }) => ({
    name: baseName(name),
    path: name,
    source: { content },
  }));
  return testOfFiles<PageSource>(files, kitchen, options, localDay(now));
};

const typedFile = ({ files: [file] }: NewTest<PageSource>): TypedFile | null =>
  file !== undefined && "text" in file.source ? { name: file.name, text: file.source.text } : null;

const noCulture = "No culture is listed in this kitchen, so nothing was judged.";
const together =
  "This judges the night by itself; the kitchen's report weighs it together with the other tests.";

const remarksOf = ({ id, files, reading: { analysis } }: StoredTest): readonly string[] => {
  const judged = analysis?.probes.some(({ verdicts }) => verdicts.length > 0) === true;
  return [`Stored as ${id}: ${files.join(", ")}.`, judged ? together : noCulture];
};

const told = async (
  room: Workroom,
  stored: StoredTest,
  test: NewTest<PageSource>,
): Promise<Outcome<Requests["add"]["answer"]>> => {
  const { analysis } = stored.reading;
  if (analysis === null) return failed("internal", { what: "a test without an analysis" });
  const night = await showNight(room, analysis, typedFile(test));
  const changed = changedState(room, remarksOf(stored));
  return changed.ok ? done({ ...changed.value, id: stored.id, night }) : changed;
};

export const add: Handler<"add"> = async (room, asked) => {
  const { store, now, version } = room;
  const opened = await storedKitchen(store);
  if (!opened.ok) return opened;
  const test = newTest(asked, opened.value.kitchen, now());
  if (!test.ok) return test;
  const judgedBy = { version, today: localDay(now()) };
  const stored = await storeTest(store, test.value, judgedBy, watchOf(room));
  return stored.ok ? told(room, stored.value, test.value) : stored;
};
