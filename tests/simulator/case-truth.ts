/** The truth of one case, in minutes from its first reading and degC. */
import type { TestPlan } from "./events.ts";
import type { SimulatedRequirement } from "./requirement.ts";
import type { Trace } from "./run.ts";
import { quantile, type HoldTimes, type TruePhase } from "./truth.ts";

export interface CaseTruth {
  readonly phases: readonly TruePhase[];
  /** Hold times, minutes from the first reading (see truth.ts for the definitions); null where there is none. */
  readonly startMinute: number | null;
  readonly startFirstEntryMinute: number | null;
  readonly startWithinHalfDegreeMinute: number | null;
  readonly startOwnRangeMinute: number | null;
  readonly endMinute: number;
  /** When the food left what was held: later than `endMinute` after a switch-off, the same otherwise. */
  readonly endLeftRangeMinute: number;
  /** Central 95 % of the food's noise-free temperature over the tested hold, disturbances left out; null without a hold. */
  readonly band: { readonly low: number; readonly high: number } | null;
  readonly verdict: {
    readonly holds: boolean;
    readonly insideShare: number;
    readonly highest: number;
  };
  /** Where the culture's hours begin: the hold start, found after the test's end if need be; seconds from switch-on. */
  readonly verdictFromSeconds: number;
}

export interface Tested {
  readonly run: Trace;
  readonly seen: Trace;
  readonly plan: TestPlan;
  readonly hold: HoldTimes;
  readonly phases: readonly TruePhase[];
  /** When the food left what was held, seconds from switch-on. */
  readonly leftRange: number;
}

/** The middle of what was held, and a judge that adds the verdict's truth once the requirement is known. */
export function holdTruth(tested: Tested): {
  readonly middle: number;
  readonly judge: (requirement: SimulatedRequirement) => CaseTruth;
} {
  const { hold, run, plan } = tested;
  const held = heldTemperatures(tested);
  const from = hold.start ?? hold.startFirstEntry ?? hold.end;
  const around = held.length > 0 ? held : slice(run, hold.end - 3600, hold.end);
  const minute = (seconds: number | null): number | null =>
    seconds === null ? null : Math.max(0, (seconds - plan.logFrom) / 60);
  const facts = {
    phases: tested.phases,
    startMinute: minute(hold.start),
    startFirstEntryMinute: minute(hold.startFirstEntry),
    startWithinHalfDegreeMinute: minute(hold.startWithinHalfDegree),
    startOwnRangeMinute: minute(hold.startOwnRange),
    endMinute: (hold.end - plan.logFrom) / 60,
    endLeftRangeMinute: (Math.min(tested.leftRange, plan.logTo) - plan.logFrom) / 60,
    band: held.length === 0 ? null : { low: quantile(held, 0.025), high: quantile(held, 0.975) },
    verdictFromSeconds: from,
  };
  return {
    middle: around.reduce((sum, value) => sum + value, 0) / around.length,
    judge: (requirement) => ({ ...facts, verdict: verdictTruth(run, from, requirement) }),
  };
}

/** The food over the culture's hours against what is asked. */
export function verdictTruth(
  run: Trace,
  from: number,
  requirement: Pick<SimulatedRequirement, "low" | "high" | "ceiling" | "hours" | "share">,
): CaseTruth["verdict"] {
  const course = slice(run, from, from + requirement.hours * 3600);
  let [inside, highest] = [0, -Infinity];
  for (const value of course) {
    if (value >= requirement.low && value <= requirement.high) inside += 1;
    highest = Math.max(highest, value);
  }
  const insideShare = inside / course.length;
  const passes = requirement.ceiling !== null && highest > requirement.ceiling;
  return { holds: insideShare >= requirement.share && !passes, insideShare, highest };
}

function slice(run: Trace, from: number, to: number): Float64Array {
  const index = (seconds: number): number =>
    Math.max(0, Math.round((seconds - run.fromSeconds) / run.stepSeconds));
  return run.food.slice(index(from), Math.max(index(from) + 1, index(to)));
}

function heldTemperatures({ seen, phases }: Tested): Float64Array {
  const parts = phases
    .filter(({ kind }) => kind === "hold")
    .map(({ fromSeconds, toSeconds }) => slice(seen, fromSeconds, toSeconds));
  const all = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
