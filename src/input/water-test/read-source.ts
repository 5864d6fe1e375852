/** The readings of a test that is being entered, whatever its bytes come from. */
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { readReadings } from "../../readings/read-readings.ts";
import type { ReadingsFile } from "../../readings/readings-file.ts";
import type { KitchenStore } from "./kitchen-store.ts";
import type { NewTestFile } from "./new-test.ts";
import type { WorkWatch } from "./work-watch.ts";

export interface ReadSource {
  readonly readings: ReadingsFile;
  readonly sha256: string;
}

/** Reads the whole file once: what it holds and its hash. A read that breaks off is the file's problem. */
export const readSource = async <Source>(
  store: Pick<KitchenStore<Source>, "openSource">,
  file: NewTestFile<Source>,
  { onBytes, onOpened }: WorkWatch,
): Promise<Outcome<ReadSource>> => {
  const opened = await store.openSource(file, onBytes);
  if (!opened.ok) return opened;
  onOpened(opened.value.bytes);
  try {
    const readings = await readReadings(opened.value, file.readingOptions);
    if (!readings.ok) return readings;
    return done({ readings: readings.value, sha256: opened.value.sha256() });
  } catch (error) {
    const problem = opened.value.broken();
    if (problem === null) throw error;
    return { ok: false, problem };
  }
};
