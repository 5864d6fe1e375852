import type { DwellTimes } from "../hold/dwell.ts";
import type { Hold, ProbeNight } from "../hold/hold.ts";
import { testedHours } from "./scenarios.ts";
import type {
  Reason,
  Requirement,
  UncertaintyComponent,
  UncertaintySource,
  VerdictWord,
} from "./verdict-types.ts";

/** What the verdict would be if one source of doubt were gone. */
export interface WithoutSource {
  readonly source: UncertaintySource;
  readonly verdict: VerdictWord;
  readonly probability: number;
}

export interface ReasonEvidence {
  readonly requirement: Requirement;
  readonly night: ProbeNight;
  readonly hold: Hold;
  readonly dwell: DwellTimes;
  readonly verdict: VerdictWord;
  /** Probability that the ceiling is passed; null without a ceiling. */
  readonly ceilingPassed: number | null;
  readonly uncertainty: readonly UncertaintyComponent[];
  readonly fellAway: boolean;
  readonly tooLittle: boolean;
  readonly without: (source: UncertaintySource) => WithoutSource;
}

/** Shares and risks below this are not worth a sentence. */
const worthSaying = 0.01;

/** Why the verdict is what it is, most telling first. */
export const verdictReasons = (evidence: ReasonEvidence): readonly Reason[] => [
  ...placeReasons(evidence),
  ...ceilingReasons(evidence),
  ...shapeReasons(evidence),
  ...limitReasons(evidence),
  ...doubtReasons(evidence),
];

/** Where the readings lie against the window. */
const placeReasons = ({ requirement, hold, dwell }: ReasonEvidence): Reason[] => {
  const { low, high } = requirement;
  const reasons: Reason[] = [];
  if (hold.mean > high) {
    reasons.push({ code: "mean-outside", mean: hold.mean, side: "above", by: hold.mean - high });
  } else if (hold.mean < low) {
    reasons.push({ code: "mean-outside", mean: hold.mean, side: "below", by: low - hold.mean });
  }
  const total = hold.hours * 60;
  const above = dwell.aboveMinutes / total;
  const below = dwell.belowMinutes / total;
  if (above > worthSaying) reasons.push({ code: "above-window", high, share: above });
  if (below > worthSaying) reasons.push({ code: "below-window", low, share: below });
  if (reasons.length === 0) {
    reasons.push({
      code: "all-inside",
      marginLow: hold.band.low - low,
      marginHigh: high - hold.band.high,
    });
  }
  return reasons;
};

const ceilingReasons = ({ requirement, night, hold, ceilingPassed }: ReasonEvidence): Reason[] => {
  const { ceiling } = requirement;
  if (ceiling === null || ceilingPassed === null) return [];
  const reasons: Reason[] = [];
  if (ceilingPassed > worthSaying) {
    const code = ceilingPassed > 0.5 ? "passes-ceiling" : "near-ceiling";
    reasons.push({ code, ceiling, peak: hold.max, probability: ceilingPassed });
  }
  if (night.peak !== null && night.peak > ceiling && hold.max <= ceiling) {
    reasons.push({ code: "overshoot-before-hold", ceiling, peak: night.peak });
  }
  return reasons;
};

/** A swing or a drift that by itself is too much for the window. */
const shapeReasons = ({ requirement, hold, verdict }: ReasonEvidence): Reason[] => {
  if (verdict === "holds") return [];
  const reasons: Reason[] = [];
  const windowWidth = requirement.high - requirement.low;
  if (hold.swing !== null && hold.swing.peakToPeak > windowWidth) {
    reasons.push({ code: "swing-too-wide", peakToPeak: hold.swing.peakToPeak, windowWidth });
  }
  const { perHour, low, high } = hold.drift;
  const proven = low > 0 || high < 0;
  const side = perHour > 0 ? "above" : "below";
  const room = perHour > 0 ? requirement.high - hold.band.high : hold.band.low - requirement.low;
  if (proven && Math.abs(perHour) * hold.hours > Math.max(0.3, room)) {
    reasons.push({ code: "drifts-out", perHour, side });
  }
  return reasons;
};

const limitReasons = (evidence: ReasonEvidence): Reason[] => {
  const { requirement, hold, tooLittle, fellAway } = evidence;
  const reasons: Reason[] = [];
  if (tooLittle) {
    reasons.push({ code: "too-little-hold", hours: hold.hours, readings: hold.readings });
  }
  if (fellAway) {
    reasons.push({
      code: "fell-away",
      afterHours: testedHours(hold),
      needed: requirement.hours,
    });
  }
  return reasons;
};

/** For an unproven verdict: how near the edge, what most of the doubt is, what would settle it. */
const doubtReasons = (evidence: ReasonEvidence): Reason[] => {
  if (evidence.verdict !== "unproven") return [];
  const reasons: Reason[] = [nearEdge(evidence)];
  const total = evidence.uncertainty.reduce((sum, part) => sum + part.standardUncertainty ** 2, 0);
  const largest = evidence.uncertainty.reduce((a, b) =>
    b.standardUncertainty > a.standardUncertainty ? b : a,
  );
  const settling = evidence.without(largest.source);
  if (total > 0) {
    const share = largest.standardUncertainty ** 2 / total;
    const { verdict, probability } = settling;
    reasons.push({ code: "dominant-doubt", ...largest, share, without: { verdict, probability } });
  }
  const { requirement, hold } = evidence;
  if (largest.source === "hours not tested") {
    reasons.push({ code: "tested-too-short", tested: hold.hours, needed: requirement.hours });
  }
  if (settling.verdict !== "unproven" && !evidence.fellAway) {
    reasons.push({ code: "would-settle", ...settling });
  }
  return reasons;
};

const nearEdge = ({ requirement, hold, uncertainty }: ReasonEvidence): Reason => {
  const above = requirement.high - hold.band.high;
  const below = hold.band.low - requirement.low;
  const side = above < below ? "above" : "below";
  return {
    code: "near-edge",
    edge: side === "above" ? requirement.high : requirement.low,
    side,
    margin: Math.min(above, below),
    uncertainty: Math.sqrt(
      uncertainty.reduce((sum, part) => sum + part.standardUncertainty ** 2, 0),
    ),
  };
};
