/** How a thermometer's correction is known, in words. */
import type { ThermometerAnalysis } from "../../kitchen-analysis-types.ts";
import type { ThermometerCheck } from "../../thermometer/thermometer.ts";
import type { BoilingPoint } from "../../thermometer/boiling-point.ts";
import type { Correction, CorrectionSource } from "../../thermometer/correction-model.ts";
import type { WindowFitness } from "../../thermometer/window-fitness.ts";
import { fixed, percent } from "../number-format.ts";
import type { LabelledLine } from "../hold-lines.ts";
import {
  askedRange,
  askedTemperature,
  correctionWithUncertainty,
  expandedUncertainty,
  temperatureWithUncertainty,
  tolerance,
  uncertainty,
} from "../temperature-text.ts";
import type { Writing } from "../writing.ts";
import { checkText } from "./check-questions.ts";
import { provenanceNames } from "./names.ts";

/** Checks the correction rests on: all that no question left out. */
export const usedChecks = ({
  thermometer,
  questions,
}: Pick<ThermometerAnalysis, "thermometer" | "questions">): readonly ThermometerCheck[] => {
  const out = new Set(questions.filter(({ leftOut }) => leftOut).map(({ check }) => check));
  return thermometer.checks.filter((_, at) => !out.has(at));
};

/** "in melting ice and in boiling water on 2026-02-14": a date shared by neighbours is said once. */
const checksText = (checks: readonly ThermometerCheck[]): string => {
  const texts = checks.map((check, at) =>
    checkText({ ...check, date: checks[at + 1]?.date === check.date ? null : check.date }),
  );
  const unique = texts.filter((text, at) => texts.indexOf(text) === at);
  return unique.length < 2
    ? unique.join("")
    : `${unique.slice(0, -1).join(", ")} and ${unique.at(-1)}`;
};

type Age = Pick<NonNullable<ThermometerAnalysis["checked"]>, "daysAgo" | "monthsAgo">;

/** Days as people say them: "today", "34 days ago", "14 months ago". */
export const ageText = ({ daysAgo: days, monthsAgo }: Age): string => {
  if (days < 0) return "dated in days to come";
  if (days < 2) return days < 1 ? "today" : "yesterday";
  return days < 90 ? `${days} days ago` : `${monthsAgo} months ago`;
};

/** A year: no standard sets it for kitchens; common practice, no source. */
const oldCheckDays = 366;

export const checkedText = ({ checked }: Pick<ThermometerAnalysis, "checked">): string | null => {
  if (checked === null) return null;
  const again = checked.daysAgo >= oldCheckDays ? "; thermometers drift, so check it again" : "";
  return `last check ${ageText(checked)}${again}`;
};

/** What its correction rests on, as a sentence. */
export const knownText = (analysis: ThermometerAnalysis, writing: Writing): string => {
  const { model, thermometer } = analysis;
  const used = usedChecks(analysis);
  if (used.length > 0) {
    const age = checkedText(analysis);
    return `Checked ${checksText(used)}${age === null ? "" : `; ${age}`}.`;
  }
  const undone = thermometer.checks.length === 0 ? "Not checked yet" : "No check of it counts yet";
  if (model.from === "assumed") {
    const size = model.accuracy === null ? "" : ` to ${tolerance(writing, model.accuracy)}`;
    return `${undone}, and nothing is said about it: assumed good${size}.`;
  }
  return model.accuracy === null
    ? `${undone}.`
    : `${undone}: known only by its specification, ${tolerance(writing, model.accuracy)}.`;
};

/** One correction with its expanded uncertainty, and the reading it is for; null where it is the same for all. */
interface CorrectionRow {
  readonly at: string | null;
  readonly text: string;
}

const sameFor = ([first, ...others]: readonly Correction[]): boolean =>
  others.every(
    ({ correction, expanded }) => correction === first?.correction && expanded === first.expanded,
  );

/** What to add at each reading told, or one line where that is the same everywhere. */
export const correctionRows = (
  { corrections }: Pick<ThermometerAnalysis, "corrections">,
  writing: Writing,
): readonly CorrectionRow[] => {
  const same = sameFor(corrections);
  return (same ? corrections.slice(0, 1) : corrections).map(
    ({ reading, correction, expanded }) => ({
      at: same ? null : askedTemperature(writing, reading),
      text: correctionWithUncertainty(writing, correction, expanded),
    }),
  );
};

const correctionSourceNames: Readonly<Record<CorrectionSource, string>> = {
  specification: "its specification",
  statement: "the correction as given",
  "ice bath": "how near an ice bath comes to the melting point",
  "boiling point": "the air’s pressure, and with it the boiling point",
  "boiling water": "water in a pot, a little hotter than its boiling point",
  "reference thermometer": "the reference thermometer",
  "scatter of readings": "readings of a check that differ",
  "display step": "the steps of its display",
  "scatter of checks": "checks that do not agree",
  "unchecked scale": "its scale where no check reaches",
  linearity: "its scale between the checks",
};

/** Each source of doubt with its standard uncertainty at the reading told. */
export const doubtRows = (
  { doubts }: Pick<ThermometerAnalysis, "doubts">,
  writing: Writing,
): readonly LabelledLine[] =>
  doubts.parts
    .filter(({ standardUncertainty }) => standardUncertainty > 0)
    .map(({ source, standardUncertainty, from }) => ({
      label: correctionSourceNames[source],
      text: `${uncertainty(writing, standardUncertainty)}, ${provenanceNames[from]}`,
    }));

const pressureSources: Readonly<Record<BoilingPoint["how"], string>> = {
  "station pressure": "as read on the spot",
  "sea-level pressure": "from the pressure at sea level",
  altitude: "from the altitude, in the standard atmosphere",
};

/** "water boils there at 95.2 ± 0.2 °C (...): air pressure 851 hPa, from the altitude". */
export const boilingText = (point: BoilingPoint, writing: Writing): string =>
  `water boils there at ${temperatureWithUncertainty(writing, point.celsius, point.standardUncertainty)}: ` +
  `air pressure ${fixed(point.pressure, 0)}${writing.space}hPa, ${pressureSources[point.how]}`;

const fitnessWords: Readonly<Record<WindowFitness["word"], string>> = {
  good: "yes",
  usable: "just",
  "too coarse": "no",
};

interface Judged {
  readonly name: string | null;
  readonly low: number;
  readonly high: number;
  readonly fitness: WindowFitness;
}

/** "36.5 to 39.5 °C (...), Yoghurt: yes, because its doubt of ±0.14 °C takes up 9 % of the window". */
export const fitnessText = ({ name, low, high, fitness }: Judged, writing: Writing): string => {
  const whose = name === null ? "" : `, ${name}`;
  const share = Number.isFinite(fitness.shareTaken)
    ? `takes up ${percent(fitness.shareTaken, writing.space)} of the window`
    : "cannot fit a window without width";
  return `${askedRange(writing, low, high)}${whose}: ${fitnessWords[fitness.word]}, because its doubt of ${expandedUncertainty(writing, fitness.expanded)} ${share}`;
};
