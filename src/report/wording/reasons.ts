/** One plain sentence for each reason behind a verdict. */
import type { Analysis, ProbeAnalysis } from "../../analysis-types.ts";
import type { Reason } from "../../culture/verdict-types.ts";
import type { ProbeRole } from "../../readings/series.ts";
import { percent, percentInWords } from "../number-format.ts";
import {
  askedTemperature,
  difference,
  perHour,
  temperature,
  tolerance,
  uncertainty,
} from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import type { Circumstances } from "./next-steps.ts";
import { provenanceNames, sourceNames, sourceSubjects } from "./names.ts";
import { probabilityText } from "./probability.ts";

/** What the sentences need to know besides the reason itself. */
export interface ReasonContext extends Circumstances {
  readonly role: ProbeRole;
  /** Half-width of the thermometer's specification, degC, where there is one. */
  readonly thermometerAccuracy: number | null;
  /** Probability from which a verdict is `holds`. */
  readonly confidence: number;
}

type Of<Code extends Reason["code"]> = Extract<Reason, { readonly code: Code }>;
type Sentences = {
  readonly [Code in Reason["code"]]: (reason: Of<Code>, context: ReasonContext) => string;
};

const subjects: Readonly<Record<ProbeRole, string>> = {
  food: "The food",
  bath: "The bath",
  room: "The room",
};

const bandInside = (role: ProbeRole): string =>
  `${subjects[role]}’s holding band lies inside the window`;

const edgeName = (side: "above" | "below"): string => (side === "above" ? "upper" : "lower");
const hoursText = (hours: number, { space }: Writing): string => duration(hours * 60, space);

const sentences: Sentences = {
  "all-inside": ({ marginLow, marginHigh }, { writing, role }) =>
    `${bandInside(role)}, ${difference(writing, marginLow)} clear of its lower edge ` +
    `and ${difference(writing, marginHigh)} clear of its upper.`,
  "above-window": ({ high, share }, { writing, role }) =>
    `${subjects[role]} sat above ${askedTemperature(writing, high)} for ${percentInWords(share, writing.space)} of the hold.`,
  "below-window": ({ low, share }, { writing, role }) =>
    `${subjects[role]} sat below ${askedTemperature(writing, low)} for ${percentInWords(share, writing.space)} of the hold.`,
  "mean-outside": ({ mean, side, by }, { writing }) =>
    `The average of the hold was ${temperature(writing, mean)}: ${difference(writing, Math.abs(by))} ` +
    `${side} the window’s ${edgeName(side)} edge.`,
  "swing-too-wide": ({ peakToPeak, windowWidth }, { writing }) =>
    `The heating goes on and off and swings the temperature by ${difference(writing, peakToPeak)}; ` +
    `the window is ${difference(writing, windowWidth)} wide.`,
  "drifts-out": ({ perHour: rate, side }, { writing }) =>
    `It drifts ${side === "above" ? "up" : "down"} by ${perHour(writing, Math.abs(rate)).replaceAll("+", "")}. ` +
    `If that goes on, it leaves the window at the ${edgeName(side)} edge.`,
  "passes-ceiling": ({ ceiling, peak, probability }, { writing, confidence }) =>
    `This culture must never pass ${askedTemperature(writing, ceiling)}; the hold went up to ` +
    `${temperature(writing, peak)}. Chance that the limit is passed: ${probabilityText(probability, confidence, writing.space)}.`,
  "near-ceiling": ({ ceiling, peak, probability }, { writing, confidence }) =>
    `This culture must never pass ${askedTemperature(writing, ceiling)}; the hold’s highest reading was ` +
    `${temperature(writing, peak)}. Chance that the limit is passed: ${probabilityText(probability, confidence, writing.space)}.`,
  "near-edge": ({ edge, side, margin, uncertainty: doubt }, { writing }) => {
    const place = `the window’s ${edgeName(side)} edge, ${askedTemperature(writing, edge)}`;
    const gap = difference(writing, Math.abs(margin));
    const where = margin < 0 ? `reaches ${gap} beyond` : `comes within ${gap} of`;
    return `The holding band ${where} ${place}; the doubt is ${uncertainty(writing, doubt)}.`;
  },
  "dominant-doubt": ({ source, standardUncertainty, share, from }, context) =>
    `${doubtSubject(source, standardUncertainty, context)} is ${share >= 0.5 ? "most" : "the largest part"} ` +
    `of the doubt (${percent(share, context.writing.space)}; ${provenanceNames[from]}).`,
  "tested-too-short": ({ tested, needed }, { writing }) =>
    `The test shows ${hoursText(tested, writing)} of hold, and the culture needs ${hoursText(needed, writing)}.`,
  "too-little-hold": ({ hours, readings }, { writing }) =>
    `There ${readings === 1 ? "is" : "are"} only ${readings} ${readings === 1 ? "reading" : "readings"} ` +
    `over ${hoursText(hours, writing)} of hold: too little to promise anything.`,
  "fell-away": ({ afterHours, needed }, { writing }) =>
    `The heat ended after ${hoursText(afterHours, writing)} of hold, and the culture needs ${hoursText(needed, writing)}.`,
  "overshoot-before-hold": ({ ceiling, peak }, { writing }) =>
    `Before it settled it went up to ${temperature(writing, peak)}, above ${askedTemperature(writing, ceiling)}, ` +
    "which this culture must never pass.",
  "never-reached": ({ low, peak }, { writing }) =>
    `It never got as warm as ${askedTemperature(writing, low)}; its highest reading was ${temperature(writing, peak)}.`,
  "no-hold": () => "These readings show no stretch where the temperature held steady.",
  "would-settle": ({ source, verdict, probability }, { writing, confidence }) =>
    `Take that doubt away (${sourceNames[source]}) and the answer would be “${verdict}”, ` +
    `${probabilityText(probability, confidence, writing.space)} likely to hold.`,
};

const doubtSubject = (
  source: Of<"dominant-doubt">["source"],
  standardUncertainty: number,
  { writing, thermometerAccuracy }: ReasonContext,
): string => {
  if (source === "thermometer" && thermometerAccuracy !== null) {
    return `The thermometer’s ${tolerance(writing, thermometerAccuracy)}`;
  }
  return `${sourceSubjects[source]}, ${uncertainty(writing, standardUncertainty)},`;
};

export const reasonText = (reason: Reason, context: ReasonContext): string => {
  const sentence = sentences[reason.code] as (reason: Reason, context: ReasonContext) => string;
  return sentence(reason, context);
};

/** All of a verdict's: where the margin at an edge is told anyway, the first need not give it as well. */
export const reasonTexts = (
  reasons: readonly Reason[],
  context: ReasonContext,
): readonly string[] => {
  const told = reasons.some(({ code }) => code === "near-edge");
  return reasons.map((reason) =>
    told && reason.code === "all-inside"
      ? `${bandInside(context.role)}.`
      : reasonText(reason, context),
  );
};

/** Of one probe, read without a kitchen. */
export const probeContext = (
  { series, thermometer }: ProbeAnalysis,
  { confidence }: Pick<Analysis, "confidence">,
  writing: Writing,
): ReasonContext => ({
  writing,
  role: series.role,
  thermometerAccuracy: thermometer.accuracy,
  confidence,
  setUp: null,
});
