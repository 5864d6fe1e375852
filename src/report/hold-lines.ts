/** The hold of one probe in a few label-and-text pairs, for terminal and table alike. */
import type { ProbeAnalysis } from "../analysis.ts";
import type { Drift, Hold, Swing } from "../hold/hold.ts";
import { grouped, percent } from "./number-format.ts";
import {
  difference,
  perHour,
  perHourRange,
  temperature,
  temperatureRange,
  temperatureWithUncertainty,
  uncertainty,
} from "./temperature-text.ts";
import { duration } from "./time-text.ts";
import type { Writing } from "./writing.ts";

export interface LabelledLine {
  readonly label: string;
  readonly text: string;
}

/** A drift whose interval holds zero is not told apart from none. */
export const driftText = ({ perHour: rate, low, high }: Drift, writing: Writing): string =>
  low <= 0 && high >= 0
    ? `no clear drift: ${perHour(writing, rate)}`
    : `drifts ${rate > 0 ? "up" : "down"}: ${perHour(writing, rate)}`;

export const swingText = (swing: Swing | null, writing: Writing): string =>
  swing === null
    ? "no regular swing"
    : `${difference(writing, swing.peakToPeak)} from low to high, every ${duration(swing.periodMinutes, writing.space)}`;

const meanText = (probe: ProbeAnalysis, writing: Writing): string => {
  const hold = probe.night.hold;
  if (hold === null) return "";
  return probe.standardUncertainty === null
    ? temperature(writing, hold.mean)
    : temperatureWithUncertainty(writing, hold.mean, probe.standardUncertainty);
};

/** Two or three lines for a terminal; a single one where there is no hold. */
export const holdSummary = (
  probe: ProbeAnalysis,
  share: number,
  writing: Writing,
): readonly LabelledLine[] => {
  const { hold, warmUp } = probe.night;
  if (hold === null) return [{ label: "Hold", text: "none found" }];
  const lines = [
    {
      label: "Hold",
      text:
        `${duration(hold.hours * 60, writing.space)} at ${meanText(probe, writing)}; ` +
        `${percent(share, writing.space)} of the time ${temperatureRange(writing, hold.band.low, hold.band.high)}`,
    },
    {
      label: "Steady?",
      text: `${hold.swing === null ? "no regular swing" : `swings ${swingText(hold.swing, writing)}`}; ${driftText(hold.drift, writing)}`,
    },
  ];
  if (warmUp === null) return lines;
  return [
    ...lines,
    {
      label: "Warm-up",
      text: `${duration(warmUp.minutesToHold, writing.space)} from switch-on to hold`,
    },
  ];
};

export interface HoldTable {
  /** What most readers want: at most six. */
  readonly main: readonly LabelledLine[];
  readonly others: readonly LabelledLine[];
}

/** Every figure of the hold, for the report's tables. */
export const holdTable = (
  probe: ProbeAnalysis,
  share: number,
  confidence: number,
  writing: Writing,
): HoldTable => {
  const { hold, warmUp } = probe.night;
  const { space } = writing;
  const warmed =
    warmUp === null ? [] : [line("Warm-up, switch-on to hold", warmUpText(warmUp, writing))];
  if (hold === null) return { main: warmed, others: [] };
  return {
    main: [
      ...warmed,
      line("Length of the hold, disturbances left out", duration(hold.hours * 60, space)),
      line("Average, with standard uncertainty", meanText(probe, writing)),
      line(
        `Holding band: ${percent(share, space)} of the time`,
        temperatureRange(writing, hold.band.low, hold.band.high),
      ),
      line("Regular swing", swingText(hold.swing, writing)),
      line(
        "Drift, with its 95 % interval",
        `${perHour(writing, hold.drift.perHour)}; ${perHourRange(writing, hold.drift.low, hold.drift.high)}`,
      ),
    ],
    others: otherFigures(probe, hold, confidence, writing),
  };
};

const line = (label: string, text: string): LabelledLine => ({ label, text });

const otherFigures = (
  { guardedBand, night: { peak } }: ProbeAnalysis,
  hold: Hold,
  confidence: number,
  writing: Writing,
): readonly LabelledLine[] => [
  ...(guardedBand === null
    ? []
    : [
        line(
          `Guarded band: the holding band, widened by the doubt (${percent(confidence, writing.space)})`,
          temperatureRange(writing, guardedBand.low, guardedBand.high),
        ),
      ]),
  line("Lowest and highest reading", temperatureRange(writing, hold.min, hold.max)),
  ...(peak === null
    ? []
    : [line("Highest, warm-up included, stray readings left out", temperature(writing, peak))]),
  line(
    "Coolest and warmest hour, on average",
    temperatureRange(writing, hold.hourMeans.low, hold.hourMeans.high),
  ),
  ...(driftsDisagree(hold.drift)
    ? [line("Drift, by the median of slopes", perHour(writing, hold.drift.robustPerHour))]
    : []),
  line("Noise from reading to reading", uncertainty(writing, hold.noise)),
  line(
    "Readings in the hold",
    `${grouped(hold.readings)}, worth ${grouped(hold.effectiveReadings)} independent ones`,
  ),
];

const driftsDisagree = ({ low, high, robustPerHour }: Drift): boolean =>
  robustPerHour < low || robustPerHour > high;

const warmUpText = (
  warmUp: NonNullable<ProbeAnalysis["night"]["warmUp"]>,
  { space }: Writing,
): string => {
  const base = duration(warmUp.minutesToHold, space);
  return warmUp.timeConstantMinutes === null
    ? base
    : `${base}; time constant ${duration(warmUp.timeConstantMinutes, space)}`;
};
