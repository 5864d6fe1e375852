/**
 * What to do next, said cautiously: what the verdict and its reasons allow and
 * no more. How far to turn a dial is not known from one test.
 */
import type { Reason, UncertaintySource, Verdict } from "../../culture/verdict-types.ts";

const settles: Readonly<Record<UncertaintySource, string>> = {
  thermometer:
    "Check the thermometer in melting ice and in boiling water, then give its correction: the same readings may then settle it.",
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

const missAdvice = (verdict: Verdict): string => {
  if (has(verdict, "fell-away")) {
    return "Find out whether the appliance switches itself off, and whether it can be set to run on. Test that with water first.";
  }
  const side = missSide(verdict);
  if (side === "warm") {
    return "It runs too warm for this. If it has a lower setting, test that with water; or choose a culture that likes it warmer.";
  }
  if (side === "cold") {
    return "It stays too cold for this. If it has a higher setting, test that with water; or choose a culture that likes it cooler.";
  }
  return "Do not rely on it for this culture as it is. Change one thing (setting, container, place) and test that with water.";
};

/** The doubt whose end would settle it; else the largest. */
export const doubtToSettle = (verdict: Verdict): UncertaintySource | null => {
  for (const reason of verdict.reasons) if (reason.code === "would-settle") return reason.source;
  for (const reason of verdict.reasons) if (reason.code === "dominant-doubt") return reason.source;
  return null;
};

const unprovenAdvice = (verdict: Verdict): string => {
  if (has(verdict, "no-hold")) {
    return "Look at the curve: was the appliance on, and was the probe in the water? Then test again overnight.";
  }
  if (has(verdict, "too-little-hold")) {
    return "Test again and leave it overnight, so that there are hours of hold to judge.";
  }
  if (has(verdict, "fell-away")) {
    return "If you ended this test yourself, test again and leave it on for the culture’s whole time. If not, find out whether the appliance can be set to run on.";
  }
  const source = doubtToSettle(verdict);
  return source === null ? "Repeat the test, for longer if you can." : settles[source];
};

export const nextStep = (verdict: Verdict): string => {
  if (verdict.verdict === "misses") return missAdvice(verdict);
  if (verdict.verdict === "unproven") return unprovenAdvice(verdict);
  return "Use it just as it was tested: same setting, container, amount and place. Test again when the season changes or when batches begin to separate.";
};
