/** Constructed batches: nothing said but what is given. */
import type { Batch } from "../../src/kitchen/kitchen.ts";
import { step } from "./constructed.ts";

export const batch = (more: Partial<Batch> = {}): Batch => ({
  appliance: "cooker",
  setting: step(38),
  container: "jars",
  date: "2026-05-01",
  culture: "window",
  milk: null,
  heated: null,
  generation: 2,
  starter: null,
  hours: null,
  separated: "none",
  sourness: null,
  trouble: [],
  moved: null,
  notes: null,
  ...more,
});
