/**
 * What to do next, said cautiously: what the verdict and its reasons allow and
 * no more. How far to turn a dial is not known from one test alone; a kitchen's
 * advice knows more, and stands beside this (advice.ts).
 */
import type { Reason, UncertaintySource, Verdict } from "../../culture/verdict-types.ts";
import type { Writing } from "../writing.ts";

/** What a kitchen knows of a tested set-up. */
export interface KnownSetUp {
  /** How many tests its answers rest on. */
  readonly tests: number;
}

export interface Circumstances {
  readonly writing: Writing;
  /** What the kitchen knows of the set-up; null without a kitchen. */
  readonly setUp: KnownSetUp | null;
}

const settles: Readonly<Record<UncertaintySource, string>> = {
  thermometer:
    "Check the thermometer in melting ice and in boiling water, then give what it showed: the same readings may then settle it.",
  resolution: "Test again with a logger that shows tenths of a degree.",
  "mean of the hold": "Test again for longer, with more readings.",
  "run to run":
    "Repeat the same test on another night; two nights that agree say far more than one.",
  "hours not tested":
    "Test again for the culture’s whole time, day and night, with the room as warm and as cold as it gets.",
  drift: "Test again for longer, until the drift either levels off or leaves the window.",
};

const has = (verdict: Verdict, code: Reason["code"]): boolean =>
  verdict.reasons.some((reason) => reason.code === code);

/** Towards which side it misses, where the reasons tell. */
export const missSide = (verdict: Verdict): "warm" | "cold" | null => {
  for (const reason of verdict.reasons) {
    if (reason.code === "above-window" || reason.code === "passes-ceiling") return "warm";
    if (reason.code === "below-window" || reason.code === "never-reached") return "cold";
    if (reason.code === "mean-outside" || reason.code === "drifts-out") {
      return reason.side === "above" ? "warm" : "cold";
    }
  }
  return null;
};

const culturesThat: Readonly<Record<"warm" | "cold", string>> = {
  warm: "a culture that likes it warmer",
  cold: "a culture that likes it cooler",
};

/** How to get to the other side of it: a kitchen's advice says that more precisely. */
const sideAdvice = (side: "warm" | "cold", { setUp }: Circumstances): string => {
  const lead = side === "warm" ? "It runs too warm for this." : "It stays too cold for this.";
  if (setUp !== null) return lead;
  const wanted = side === "warm" ? "lower" : "higher";
  return `${lead} If it has a ${wanted} setting, test that with water; or choose ${culturesThat[side]}.`;
};

const missAdvice = (verdict: Verdict, circumstances: Circumstances): string => {
  const side = missSide(verdict);
  if (has(verdict, "fell-away") && !has(verdict, "mean-outside")) {
    return "Find out whether the appliance switches itself off, and whether it can be set to run on. Test that with water first.";
  }
  if (side !== null) return sideAdvice(side, circumstances);
  const lead = "Do not rely on it for this culture as it is.";
  return circumstances.setUp === null
    ? `${lead} Change one thing (setting, container, place) and test that with water.`
    : lead;
};

/** The doubt whose end would settle it; else the largest. */
export const doubtToSettle = (verdict: Verdict): UncertaintySource | null => {
  for (const reason of verdict.reasons) if (reason.code === "would-settle") return reason.source;
  for (const reason of verdict.reasons) if (reason.code === "dominant-doubt") return reason.source;
  return null;
};

/** Checked already, tested twice already: then the usual advice would be stale. */
const settling = (
  source: UncertaintySource,
  { uncertainty }: Verdict,
  { setUp }: Circumstances,
): string => {
  const from = uncertainty.find((part) => part.source === source)?.from;
  if (source === "thermometer" && from === "measured") {
    return "Check the thermometer again, with several readings each in melting ice, in boiling water, or beside a better one: the same readings may then settle it.";
  }
  if (source === "run to run" && setUp !== null && setUp.tests > 1) {
    return "Test it once more: each further test that agrees takes away some of this doubt.";
  }
  return settles[source];
};

/** No single doubt decides it, and its edge is within the doubt: then moving it is the other way. */
const moveAway = ({ reasons }: Verdict, { setUp }: Circumstances): string =>
  setUp !== null ||
  reasons.some(({ code }) => code === "would-settle") ||
  !reasons.some((reason) => reason.code === "near-edge" && reason.margin < reason.uncertainty)
    ? ""
    : " Or bring it nearer the middle of the window, by another setting or container, and test that.";

const unprovenAdvice = (verdict: Verdict, circumstances: Circumstances): string => {
  if (has(verdict, "no-hold")) {
    return "Look at the curve: was the appliance on, and was the probe in the water? Then test again overnight.";
  }
  if (has(verdict, "too-little-hold")) {
    return "Test again overnight, with six readings or more once it is warm, so that there is enough hold to judge.";
  }
  if (has(verdict, "fell-away")) {
    return "If you ended this test yourself, test again and leave it on for the culture’s whole time. If not, find out whether the appliance can be set to run on.";
  }
  const source = doubtToSettle(verdict);
  const next =
    source === null
      ? "Repeat the test, for longer if you can."
      : settling(source, verdict, circumstances);
  return next + moveAway(verdict, circumstances);
};

export const nextStep = (verdict: Verdict, circumstances: Circumstances): string => {
  if (verdict.verdict === "misses") return missAdvice(verdict, circumstances);
  if (verdict.verdict === "unproven") return unprovenAdvice(verdict, circumstances);
  return "Use it just as it was tested: same setting, container, amount and place. Test again when the season changes or when batches begin to separate.";
};
