/** A verdict in a few words, for the table at the head of the report: what is wrong, or what would settle it. */
import type { Reason, UncertaintySource, Verdict } from "../../culture/verdict-types.ts";
import { difference } from "../temperature-text.ts";
import type { Writing } from "../writing.ts";
import { doubtToSettle, missSide } from "./next-steps.ts";

type Of<Code extends Reason["code"]> = Extract<Reason, { readonly code: Code }>;

const reasonOf = <Code extends Reason["code"]>(verdict: Verdict, code: Code): Of<Code> | null =>
  (verdict.reasons.find((reason) => reason.code === code) as Of<Code> | undefined) ?? null;

/** How it misses; each can be followed by "for" and the culture's name. */
export const missGist = (verdict: Verdict, writing: Writing): string => {
  if (reasonOf(verdict, "never-reached") !== null) return "never warm enough";
  const mean = reasonOf(verdict, "mean-outside");
  const side = missSide(verdict);
  if (mean !== null) {
    return `${difference(writing, Math.abs(mean.by))} too ${mean.side === "above" ? "warm" : "cold"}`;
  }
  if (reasonOf(verdict, "fell-away") !== null) return "heat ends too soon";
  if (reasonOf(verdict, "swing-too-wide") !== null) return "swings too far";
  if (reasonOf(verdict, "passes-ceiling") !== null) return "gets too hot";
  if (reasonOf(verdict, "drifts-out") !== null) return `drifts too ${side ?? "far"}`;
  return side === null ? "too long outside the window" : `too ${side} for too long`;
};

const settling: Readonly<Record<UncertaintySource, string>> = {
  thermometer: "check the thermometer",
  resolution: "test with a finer logger",
  "mean of the hold": "test for longer",
  "run to run": "test once more",
  "hours not tested": "test the whole time",
  drift: "test for longer",
};

/** What would settle an open question. */
export const openGist = (verdict: Verdict): string => {
  if (reasonOf(verdict, "no-hold") !== null) return "no steady hold seen";
  if (reasonOf(verdict, "too-little-hold") !== null) {
    return "test for longer, with more readings";
  }
  if (reasonOf(verdict, "fell-away") !== null) return "does the heat end by itself?";
  const source = doubtToSettle(verdict);
  return source === null ? "test again" : settling[source];
};

/** Null where it holds: then nothing needs to change. */
export const gist = (verdict: Verdict, writing: Writing): string | null => {
  if (verdict.verdict === "holds") return null;
  return verdict.verdict === "misses" ? missGist(verdict, writing) : openGist(verdict);
};
