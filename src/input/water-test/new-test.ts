/** A water test that is not in the kitchen yet, as what was said of it and its readings make it. */
import type { TestAnalysis } from "../../kitchen-analysis-types.ts";
import type { TemperatureRange } from "../../kitchen/kitchen.ts";
import type { ReadingOptions } from "../../readings/readings-file.ts";
import type { ProbeRole } from "../../readings/series.ts";

/** What is said of a test, beside its readings. */
export interface TestFacts {
  /** null: a name is made from set-up and date. */
  readonly name: string | null;
  /** Ids in the kitchen. */
  readonly appliance: string;
  /** As one would type it; null for an appliance with nothing to set. */
  readonly setting: string | null;
  readonly container: string;
  readonly fill: string | null;
  /** degC. */
  readonly room: TemperatureRange | null;
  readonly notes: string | null;
}

/** `Source`: where the bytes of its files come from; only a KitchenStore looks into it. */
export interface NewTest<Source> extends TestFacts {
  /** Several: loggers that ran together. */
  readonly files: readonly NewTestFile<Source>[];
}

/** Readings that were typed, as the text of a file; every store takes them. */
export interface TypedText {
  readonly text: string;
}

export interface NewTestFile<Source> {
  /** Its name without a folder. */
  readonly name: string;
  readonly source: Source;
  readonly readingOptions: ReadingOptions;
  /** Wall-clock time of the first reading as if in UTC, ms since 1970, where it was said. */
  readonly starts: number | null;
  /** null: as found in the file. */
  readonly probes: readonly NewProbe[] | null;
  /** Thermometers of probes found in the file; a probe of null stands for all not named. */
  readonly thermometers?: readonly ProbeThermometerId[];
}

export interface NewProbe {
  readonly name: string;
  readonly place: ProbeRole;
  /** Id in the kitchen. */
  readonly thermometer: string | null;
}

export interface ProbeThermometerId {
  readonly probe: string | null;
  readonly id: string;
}

export interface StoredTest {
  readonly id: string;
  /** Paths inside the kitchen, with forward slashes. */
  readonly files: readonly string[];
  /** What the night says, for the kitchen's cultures. */
  readonly reading: TestAnalysis;
}
