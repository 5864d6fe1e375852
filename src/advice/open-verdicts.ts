import type { Verdict } from "../culture/verdict-types.ts";
import type { AdviceInput, DecidedSetUp } from "./advice-input.ts";
import type { OpenVerdict } from "./next-types.ts";

/** Every `unproven` verdict with its largest doubt, and what it would be without it. */
export const openVerdicts = ({ setUps }: AdviceInput): readonly OpenVerdict[] =>
  setUps.flatMap((one) =>
    one.verdicts
      .filter(({ verdict }) => verdict === "unproven")
      .map((verdict) => openVerdict(one, verdict)),
  );

const openVerdict = ({ setUp }: DecidedSetUp, verdict: Verdict): OpenVerdict => {
  const ended = verdict.reasons.find((reason) => reason.code === "fell-away") ?? null;
  const doubt =
    ended === null
      ? (verdict.reasons.find((reason) => reason.code === "dominant-doubt") ?? null)
      : null;
  return {
    setUp,
    culture: verdict.requirement.culture,
    probability: verdict.probability,
    heatEnded: ended && { afterHours: ended.afterHours, needed: ended.needed },
    doubt: doubt && {
      source: doubt.source,
      standardUncertainty: doubt.standardUncertainty,
      from: doubt.from,
      share: doubt.share,
    },
    without: doubt?.without ?? null,
  };
};
