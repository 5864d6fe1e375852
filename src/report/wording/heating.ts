/** What a heating step's log shows, in sentences. It tells temperatures and times; it makes no claim of safety. */
import type {
  CoolDownPrediction,
  CoolDownUnknown,
  HeatingCoolDown,
  HeatingReason,
  HeatingSpell,
  HeatingStep,
} from "../../culture/heating-types.ts";
import { fixed, roundTogether, short } from "../number-format.ts";
import {
  askedDifference,
  askedTemperature,
  difference,
  expandedUncertainty,
  temperature,
} from "../temperature-text.ts";
import { clockTime, duration } from "../time-text.ts";
import { plusMinus } from "../writing.ts";
import type { Writing } from "../writing.ts";

/** How the file's minutes are told. */
export interface HeatingWords {
  readonly writing: Writing;
  /** Wall clock of the file's first reading; null where it tells none. */
  readonly startWallClock: number | null;
  readonly confidence: number;
}

/** "15 s", "12.4 min", "1 h 20 min": finer than other lengths of time, for minutes count here. */
export const spellLength = (minutes: number, space: string): string => {
  if (minutes < 1) return `${fixed(minutes * 60, 0)}${space}s`;
  return minutes < 60 ? `${short(minutes, 1)}${space}min` : duration(minutes, space);
};

/** "14:17", or "minute 47" where the file has no clock. */
export const moment = (minute: number, { startWallClock }: HeatingWords): string =>
  clockTime(startWallClock, minute) ?? `minute ${fixed(minute, 0)}`;

/** "90 °C (194 °F) or above for 10 min". */
export const askedText = (
  { target }: Pick<HeatingStep, "target">,
  { writing }: HeatingWords,
): string =>
  `${askedTemperature(writing, target.celsius)} or above for ${spellLength(target.minutes, writing.space)}`;

const spanText = (spell: HeatingSpell, words: HeatingWords): string =>
  `${spellLength(spell.minutes, words.writing.space)}, ${moment(spell.fromMinute, words)} to ${moment(spell.toMinute, words)}`;

/** The longest spell, and what is left of it with the doubt taken off. */
export const spellText = (step: HeatingStep, words: HeatingWords): string => {
  const { longest, guarded, target, expandedUncertainty: expanded } = step;
  const { writing } = words;
  if (longest === null) return `none at ${askedTemperature(writing, target.celsius)} or above`;
  const left = guarded === null ? "none" : spellLength(guarded.minutes, writing.space);
  return `${spanText(longest, words)}; with the doubt of ${expandedUncertainty(writing, expanded)} taken off, ${left}`;
};

const manyTimes = 100;

/** "15.2 ± 1.8 min at 90 °C (...) would do the same, if 10 °C (...) more make heat ten times as effective". */
export const equivalentText = (step: HeatingStep, { writing }: HeatingWords): string => {
  const { value, standardUncertainty } = step.equivalentMinutes;
  const { minutes, celsius, z } = step.target;
  const by = `counting ${askedDifference(writing, z)} more as ten times as effective (z)`;
  const at = `at ${askedTemperature(writing, celsius)}`;
  if (value > manyTimes * minutes)
    return `more than ${manyTimes} times what was asked ${at}, ${by}`;
  const inSeconds = value < 1 && minutes < 1;
  const [scale, name] = inSeconds ? [60, "s"] : [1, "min"];
  const pair = roundTogether(value * scale, standardUncertainty * scale);
  const least = value * scale < 0.05 && pair.decimals > 1 ? `under${writing.space}0.1` : null;
  const size = least ?? [pair.value, plusMinus(writing), pair.uncertainty].join(writing.space);
  return `like ${size}${writing.space}${name} ${at}, ${by}`;
};

type ReasonTexts = {
  readonly [Code in HeatingReason["code"]]: (
    reason: Extract<HeatingReason, { readonly code: Code }>,
    words: HeatingWords,
  ) => string;
};

const reasonTexts: ReasonTexts = {
  "never-reached": ({ peak }, { writing }) =>
    `The highest reading, corrected, was ${temperature(writing, peak)}.`,
  "too-short": ({ missingMinutes }, { writing }) =>
    `The longest spell was ${spellLength(missingMinutes, writing.space)} too short.`,
  "near-target": ({ margin, expanded }, { writing }) =>
    `It was held ${difference(writing, Math.abs(margin))} ${margin < 0 ? "below" : "above"} the target, and the thermometer tells no finer than ${expandedUncertainty(writing, expanded)}.`,
  "log-starts-hot": () => "The log begins with hot milk; what was before is not seen.",
  "log-ends-hot": () => "The log ends while the milk was hot; what came after is not seen.",
  gap: ({ minutes }, { writing }) =>
    `Readings are missing for ${spellLength(minutes, writing.space)} while it was hot; a gap ends a spell.`,
  coarse: ({ intervalMinutes }, { writing }) =>
    `Readings are up to ${spellLength(intervalMinutes, writing.space)} apart: a short dip between two of them would not be seen.`,
  "few-readings": ({ readings }) =>
    `Only ${readings} ${readings === 1 ? "reading lies" : "readings lie"} in that spell; fewer than four prove nothing.`,
};

export const heatingReasonText = (reason: HeatingReason, words: HeatingWords): string =>
  (reasonTexts[reason.code] as (reason: HeatingReason, words: HeatingWords) => string)(
    reason,
    words,
  );

/** What to do differently; null where nothing is to do. */
export const heatingNext = (step: HeatingStep, { writing }: HeatingWords): string | null => {
  const codes = new Set(step.reasons.map(({ code }) => code));
  if (step.verdict === "holds") return null;
  const aim = `keep it where the thermometer shows ${temperature(writing, step.surelyAtReading)} or more`;
  const long = `for ${spellLength(step.target.minutes, writing.space)} without a break`;
  if (codes.has("never-reached") || codes.has("near-target"))
    return `Next time ${aim}, ${long}; or check the thermometer in boiling water, so that less has to be taken off.`;
  if (codes.has("log-ends-hot") || codes.has("log-starts-hot"))
    return "Log the whole of it, from before it is hot until it has cooled.";
  if (codes.has("gap") || codes.has("few-readings"))
    return `Read at least every ${spellLength(step.target.minutes / 5, writing.space)} while it is hot.`;
  return `Next time ${aim}, ${long}.`;
};

const levelNames: Readonly<Record<HeatingCoolDown["of"], string>> = {
  ceiling: ", the culture’s ceiling",
  window: ", the top of its window",
  asked: "",
};

const unknownTexts: Readonly<Record<CoolDownUnknown, string>> = {
  "never-above": "the log never shows it that warm",
  "too-few-readings":
    "too few readings since it began to cool, or since the cooling last changed, to foretell when",
  "not-cooling": "it does not cool at the end of the log, so nothing can be foretold",
  "levels-off": "it seems to level off above that, so no time can be foretold",
  "probe-out":
    "the readings fall faster than milk in a pot can, as if the probe was taken out; what follows is left out",
};

const foretold = ({ minute, low, high }: CoolDownPrediction, words: HeatingWords): string => {
  const span =
    high === null
      ? `${moment(low, words)} at the earliest; no latest time can be told`
      : `95${words.writing.space}%: ${moment(low, words)} to ${moment(high, words)}`;
  return `foretold for ${moment(minute, words)} (${span})`;
};

/** What a forecast rests on; null where there is none. */
export const coolingText = (
  coolDowns: readonly HeatingCoolDown[],
  { writing }: HeatingWords,
): string | null => {
  const predicted = coolDowns.find((cool) => cool.predicted !== null)?.predicted;
  if (predicted === undefined || predicted === null) return null;
  const { surroundings, timeConstantMinutes } = predicted;
  return `towards about ${temperature(writing, surroundings)}, time constant ${duration(timeConstantMinutes, writing.space)}; foretold only if nothing about it changes (lid, stirring, bath)`;
};

/** When the milk is surely below one of the culture's temperatures. */
export const coolDownText = (cool: HeatingCoolDown, words: HeatingWords): string => {
  const { writing } = words;
  const below = `below ${askedTemperature(writing, cool.to)}${levelNames[cool.of]}`;
  if (cool.safeAtMinute !== null) {
    const after = duration(cool.safeAtMinute - cool.fromMinute, writing.space);
    return `${below}: ${after} after the heating, at ${moment(cool.safeAtMinute, words)}, the thermometer’s doubt allowed for`;
  }
  const why = cool.unknown === null ? [] : [unknownTexts[cool.unknown]];
  const when = cool.predicted === null ? [] : [foretold(cool.predicted, words)];
  const still = cool.predicted === null ? [] : ["not yet when the log ends"];
  return `${below}: ${[...still, ...why, ...when].join("; ")}`;
};

/** What can hurt, and what this does not decide. */
export const heatingCautions: readonly string[] = [
  "Hot milk foams over and scalds; lift a lid away from your face, and pour into warmed glass only: cold glass cracks.",
  "This tells what the log shows where the probe stood, not that milk is safe. The local food code and licensed practice decide. Warm milk suits harmful bacteria too: cool it without delay, and work clean.",
];
