/** Growth over one of the invented nights, reckoned as the core does, for the report's tests. */
import type { Analysis } from "../../src/analysis.ts";
import { growthOfCultures } from "../../src/culture/culture-growth.ts";
import type { CultureGrowth } from "../../src/culture/culture-growth.ts";
import type { GrowthLimits } from "../../src/culture/culture.ts";
import * as organisms from "../../src/culture/organisms.ts";
import type { Requirement, Verdict } from "../../src/culture/verdict-types.ts";
import { unprovenNight } from "./sample-analysis.ts";

const { thermophilus, bulgaricus, reuteri, coagulans } = organisms;

/** A night of `unprovenNight` with growth for cultures of these organisms. */
export const grownNight = (
  cultures: Readonly<Record<string, readonly GrowthLimits[]>> = {
    yoghurt: [thermophilus, bulgaricus],
    "warm-blend": [reuteri, coagulans],
  },
): Analysis => {
  const night = unprovenNight();
  const [probe] = night.probes;
  const [verdict] = probe!.verdicts;
  const verdicts = Object.entries(cultures).map(([culture, growth]) =>
    askedBy(verdict!, { culture, name: culture, growth }),
  );
  const { minutes, celsius } = probe!.series;
  const growth: readonly CultureGrowth[] = growthOfCultures(
    verdicts.map(({ requirement }) => requirement),
    { minutes, celsius, phases: probe!.phases },
  );
  return { ...night, probes: [{ ...probe!, verdicts, growth }] };
};

const askedBy = (verdict: Verdict, more: Partial<Requirement>): Verdict => ({
  ...verdict,
  requirement: { ...verdict.requirement, ...more },
});
