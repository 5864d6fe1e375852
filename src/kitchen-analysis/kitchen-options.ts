import type { HashedSource } from "../analysis-types.ts";
import type { TestFile, WaterTest } from "../kitchen/kitchen.ts";
import type { Outcome } from "../problem.ts";

/** What a person asks of a kitchen, beside what the kitchen says itself. */
export interface KitchenOptions {
  readonly version: string;
  /** ISO date, for the age of checks. */
  readonly today: string;
  /** Share of a culture's hours that must lie inside its window. */
  readonly share: number;
  readonly confidence: number;
  /** Id of the only appliance to look at; null for all. */
  readonly appliance: string | null;
}

/** Opens one raw file of a water test. */
export type OpenTestFile = (file: TestFile, test: WaterTest) => Promise<Outcome<HashedSource>>;
