/** What looks wrong in a thermometer's check: what was found, what was expected, the likely cause, what to do. */
import type { CheckQuestion } from "../../thermometer/check-question.ts";
import type { ThermometerCheck } from "../../thermometer/thermometer.ts";
import { grouped, short } from "../number-format.ts";
import { askedDifference, askedTemperature, difference, temperature } from "../temperature-text.ts";
import { unitSign } from "../writing.ts";
import type { Writing } from "../writing.ts";

type Of<Code extends CheckQuestion["code"]> = Extract<CheckQuestion, { readonly code: Code }>;
type Sentences = {
  readonly [Code in CheckQuestion["code"]]: (question: Of<Code>, writing: Writing) => string;
};

const metres = (altitude: number, { space }: Writing): string =>
  `${grouped(Math.round(altitude / 10) * 10)}${space}m`;

const sentences: Sentences = {
  "ice-too-warm": ({ reading }, writing) =>
    `In melting ice it read ${temperature(writing, reading)}; ${askedTemperature(writing, 0)} was expected. ` +
    "Most likely there was too much water and too little ice, or it was not stirred. Fill a cup with crushed ice, add only enough water to fill the gaps, stir, wait two minutes and read again.",
  "ice-too-cold": ({ reading }, writing) =>
    `In melting ice it read ${temperature(writing, reading)}; ${askedTemperature(writing, 0)} was expected. ` +
    "Most likely the ice came straight from the freezer and was not melting yet, or there was salt in it. Let it stand until it is wet all through, use plain water, and read again.",
  "looks-like-fahrenheit": ({ reading }, writing) =>
    `The reading ${short(reading, 1)} was taken as ${unitSign(writing, "degC")}, but it fits ${unitSign(writing, "degF")}: ` +
    `ice melts at 32 and water boils at 212 there, at sea level. If that is what it showed, write ${short(reading, 1)}F.`,
  "boiling-too-cold": ({ reading, expected, altitude }, writing) =>
    `In boiling water it read ${temperature(writing, reading)}; ${temperature(writing, expected)} was expected for the place and pressure given. ` +
    "Most likely the water was not at a rolling boil, the probe was not deep enough, or the altitude is missing or wrong" +
    (altitude === null || altitude < 0
      ? ". "
      : `: water boils so at about ${metres(altitude, writing)}. `) +
    "Check the altitude, let the water boil hard, hold the probe in the middle of it, and read again.",
  "boiling-too-hot": ({ reading, expected }, writing) =>
    `In boiling water it read ${temperature(writing, reading)}; ${temperature(writing, expected)} was expected for the place and pressure given. ` +
    "Most likely the probe touched the bottom of the pot, or the altitude is wrong. Hold it in the middle of the water, clear of the metal, and read again.",
  "boiling-place-unknown": () =>
    "Water was boiled, but nothing says where. It boils cooler the higher one lives, about one degree for every 300 m (0.6 °F for every 100 m), so without the altitude this reading proves nothing. Give the altitude or the air pressure.",
  "reference-far-off": ({ reading, truth }, writing) =>
    `It read ${temperature(writing, reading)} where the reference showed ${temperature(writing, truth)}. ` +
    "So far apart, the two were most likely not in the same place, or not yet settled, or one number was mistyped. Hold both probes together in stirred water and read again.",
  "not-settled": ({ spread }, writing) =>
    `The readings of this check lie ${difference(writing, spread)} apart; a thermometer that has settled repeats within a few of its own steps. ` +
    "Most likely the first ones were read too early. Wait until it stands still, then take three readings.",
  "scale-off": ({ perHundred }, writing) =>
    `Taken together the checks say that its scale is off by ${difference(writing, Math.abs(perHundred))} over the ${askedDifference(writing, 100)} between melting ice and boiling water at sea level. ` +
    "Thermometers are seldom that far out, so one of the checks is more likely wrong. Repeat both, in melting ice and at a rolling boil.",
};

const checkNames: Readonly<Record<ThermometerCheck["kind"], string>> = {
  ice: "in melting ice",
  boiling: "in boiling water",
  reference: "against a reference thermometer",
};

/** "in melting ice on 2026-02-14". */
export const checkText = ({ kind, date }: Pick<ThermometerCheck, "kind" | "date">): string =>
  date === null ? checkNames[kind] : `${checkNames[kind]} on ${date}`;

/** The question alone, as it is asked before a check is stored. */
export const openQuestionText = (question: CheckQuestion, writing: Writing): string =>
  (sentences[question.code] as (question: CheckQuestion, writing: Writing) => string)(
    question,
    writing,
  );

export const checkQuestionText = (question: CheckQuestion, writing: Writing): string => {
  const consequence = question.leftOut
    ? "Until you confirm it, this check is left out of the correction."
    : "The check is used as it stands.";
  return `${openQuestionText(question, writing)} ${consequence}`;
};
