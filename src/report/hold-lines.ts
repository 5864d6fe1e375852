/** The hold of one probe in a few label-and-text pairs, for terminal and table alike. */
import type { ProbeAnalysis } from "../analysis.ts";
import type { Drift, Swing } from "../hold/hold.ts";
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

/** Every figure of the hold, for the report's table. */
export const holdTable = (
  probe: ProbeAnalysis,
  share: number,
  confidence: number,
  writing: Writing,
): readonly LabelledLine[] => {
  const { hold, warmUp, peak } = probe.night;
  const { space } = writing;
  const rows: LabelledLine[] = [];
  const row = (label: string, text: string): void => {
    rows.push({ label, text });
  };
  if (warmUp !== null) row("Warm-up, switch-on to hold", warmUpText(warmUp, writing));
  if (hold === null) return rows;
  row("Length of the hold, disturbances left out", duration(hold.hours * 60, space));
  row("Average, with standard uncertainty", meanText(probe, writing));
  row(
    `Holding band: ${percent(share, space)} of the time`,
    temperatureRange(writing, hold.band.low, hold.band.high),
  );
  if (probe.guardedBand !== null) {
    row(
      `Guarded band: the same, widened by the doubt (${percent(confidence, space)})`,
      temperatureRange(writing, probe.guardedBand.low, probe.guardedBand.high),
    );
  }
  row("Lowest and highest reading", temperatureRange(writing, hold.min, hold.max));
  if (peak !== null)
    row("Highest, warm-up included, stray readings left out", temperature(writing, peak));
  row(
    "Coolest and warmest hour, on average",
    temperatureRange(writing, hold.hourMeans.low, hold.hourMeans.high),
  );
  row("Regular swing", swingText(hold.swing, writing));
  row(
    "Drift, with its 95 % interval",
    `${perHour(writing, hold.drift.perHour)}; ${perHourRange(writing, hold.drift.low, hold.drift.high)}`,
  );
  if (driftsDisagree(hold.drift)) {
    row("Drift, by the median of slopes", perHour(writing, hold.drift.robustPerHour));
  }
  row("Noise from reading to reading", uncertainty(writing, hold.noise));
  row(
    "Readings in the hold",
    `${grouped(hold.readings)}, worth ${grouped(hold.effectiveReadings)} independent ones`,
  );
  return rows;
};

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
