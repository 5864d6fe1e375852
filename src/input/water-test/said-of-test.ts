/** What is said of a test whose readings are typed by hand. */
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { ofWaterTest, settledSetUp } from "../set-up.ts";
import type { EnteredOptions } from "./entered-options.ts";
import { enteredProbes } from "./entered-probes.ts";
import type { SaidOfTest } from "./entered-test.ts";
import type { NewProbe } from "./new-test.ts";
import { testFactsOf } from "./test-options.ts";

/** Fails with "option-missing" where the set-up is not all said, or at what is not in the kitchen. */
export const saidOfTest = (kitchen: Kitchen, options: EnteredOptions): Outcome<SaidOfTest> => {
  const probes = enteredProbes(options, kitchen);
  if (!probes.ok) return probes;
  const setUp = settledSetUp(kitchen, options, ofWaterTest);
  if (!setUp.ok) return setUp;
  return done({ ...testFactsOf(setUp.value, options), probes: probes.value });
};

/** A test in no kitchen: its readings only become a file. */
export const saidOfFile = (file: string, probes: readonly NewProbe[]): SaidOfTest => ({
  name: file,
  appliance: "",
  setting: null,
  container: "",
  fill: null,
  room: null,
  notes: null,
  probes,
});
