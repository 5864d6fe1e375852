import type { Hold } from "../hold/hold.ts";
import { celsiusDifference } from "../quantity.ts";
import { resolutionUncertainty } from "../thermometer/budget.ts";
import type { VerdictEvidence } from "./verdict-evidence.ts";
import type { UncertaintyComponent } from "./verdict-types.ts";

/**
 * The components of the hold's standard uncertainty, in the order they arise
 * (JCGM 100:2008, 5.1.2: independent inputs, root sum of squares).
 *
 * @param unseen standard uncertainty of the level in hours not tested, degC;
 *   leave out for the tested hours alone
 */
export const uncertaintyBudget = (
  evidence: Pick<VerdictEvidence, "thermometer" | "resolution" | "runToRun">,
  hold: Hold,
  unseen = 0,
): readonly UncertaintyComponent[] => {
  const components: UncertaintyComponent[] = [
    {
      source: "thermometer",
      standardUncertainty: evidence.thermometer.standardUncertainty,
      from: evidence.thermometer.from,
    },
    {
      source: "resolution",
      standardUncertainty: resolutionUncertainty(evidence.resolution),
      from: "measured",
    },
    {
      source: "mean of the hold",
      standardUncertainty: celsiusDifference(hold.meanUncertainty),
      from: "measured",
    },
    {
      source: "run to run",
      standardUncertainty: evidence.runToRun.value,
      from: evidence.runToRun.from,
    },
  ];
  if (unseen > 0) {
    components.push({
      source: "hours not tested",
      standardUncertainty: celsiusDifference(unseen),
      from: "assumed",
    });
  }
  return components;
};

/** Root sum of squares of a budget, degC. */
export const combinedUncertainty = (components: readonly UncertaintyComponent[]): number =>
  Math.sqrt(components.reduce((sum, part) => sum + part.standardUncertainty ** 2, 0));
