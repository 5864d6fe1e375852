/**
 * `check --json`, contract version 1. Temperatures in degC, times in minutes
 * from the first reading unless the name says otherwise. Fields may be added,
 * none renamed or dropped. Numbers carry at most six decimals, so the last bits
 * of a machine's arithmetic never show.
 */
import type { AnalysedFile, Analysis, ProbeAnalysis } from "../analysis.ts";
import type { UncertaintyComponent, Verdict } from "../culture/verdict-types.ts";
import type { Hold, Phase, WarmUp } from "../hold/hold.ts";
import type { Notice } from "../notice.ts";
import { growthEntry } from "./growth-contract.ts";
import { plainWriting } from "./writing.ts";
import { noticeSentence } from "./wording/notices.ts";
import { probeContext, reasonTexts } from "./wording/reasons.ts";
import type { ReasonContext } from "./wording/reasons.ts";

export const contractVersion = 1;

/** Sentences too are in degC first, whatever unit is shown. */
export const writing = plainWriting("degC");

export const noticeEntry = (item: Notice) => ({
  code: item.code,
  text: noticeSentence(item, writing),
});

export const fileEntry = ({ readings, sha256 }: AnalysedFile) => ({
  name: readings.name,
  sha256,
  rowsRead: readings.rowsRead,
  rowsUsed: readings.rowsUsed,
  setAside: readings.setAside.map(({ reason, count, firstLine }) => ({ reason, count, firstLine })),
  cellsSetAside: readings.cellsSetAside.map(({ probe, reason, count, firstLine }) => ({
    probe,
    reason,
    count,
    firstLine,
  })),
  encoding: readings.encoding,
  delimiter: readings.delimiter,
  decimal: readings.decimal,
  headerLine: readings.headerLine,
  timeFormat: readings.timeFormat,
  dateOrder: readings.dateOrder,
  unit: readings.unit,
  intervalSeconds: readings.intervalSeconds,
  notices: readings.notices.map(noticeEntry),
});

const phaseEntry = ({ kind, cause, fromMinute, toMinute }: Phase) => ({
  kind,
  cause: cause ?? null,
  fromMinute,
  toMinute,
});

const warmUpEntry = ({ minutesToHold, timeConstantMinutes, timeConstantUncertainty }: WarmUp) => ({
  minutesToHold,
  timeConstantMinutes,
  timeConstantUncertainty,
});

const holdEntry = (hold: Hold, { guardedBand, standardUncertainty }: ProbeAnalysis) => ({
  fromMinute: hold.fromMinute,
  toMinute: hold.toMinute,
  hours: hold.hours,
  mean: hold.mean,
  median: hold.median,
  min: hold.min,
  max: hold.max,
  standardDeviation: hold.standardDeviation,
  band: { low: hold.band.low, high: hold.band.high },
  guardedBand: guardedBand === null ? null : { low: guardedBand.low, high: guardedBand.high },
  standardUncertainty,
  readings: hold.readings,
  effectiveReadings: hold.effectiveReadings,
  drift: {
    perHour: hold.drift.perHour,
    low: hold.drift.low,
    high: hold.drift.high,
    robustPerHour: hold.drift.robustPerHour,
  },
  swing:
    hold.swing === null
      ? null
      : {
          periodMinutes: hold.swing.periodMinutes,
          peakToPeak: hold.swing.peakToPeak,
          cycles: hold.swing.cycles,
        },
});

const componentEntry = ({ source, standardUncertainty, from }: UncertaintyComponent) => ({
  source,
  standardUncertainty,
  from,
});

export const verdictEntry = (verdict: Verdict, context: ReasonContext) => ({
  culture: verdict.requirement.culture,
  name: verdict.requirement.name,
  low: verdict.requirement.low,
  high: verdict.requirement.high,
  ceiling: verdict.requirement.ceiling,
  hours: verdict.requirement.hours,
  share: verdict.requirement.share,
  verdict: verdict.verdict,
  probability: verdict.probability,
  ceilingRisk: verdict.ceilingRisk,
  dwell: verdict.dwell === null ? null : { ...verdict.dwell },
  uncertainty: verdict.uncertainty.map(componentEntry),
  reasons: [...reasonTexts(verdict.reasons, context)],
  reasonCodes: verdict.reasons.map(({ code }) => code),
});

export const probeEntry = (probe: ProbeAnalysis, analysis: Analysis) => ({
  file: probe.file,
  name: probe.series.name,
  role: probe.series.role,
  test: probe.test,
  thermometer: { id: probe.thermometerId, ...probe.thermometer },
  phases: probe.phases.map(phaseEntry),
  warmUp: probe.night.warmUp === null ? null : warmUpEntry(probe.night.warmUp),
  hold: probe.night.hold === null ? null : holdEntry(probe.night.hold, probe),
  peak: probe.night.peak,
  uncertainty: probe.uncertainty.map(componentEntry),
  verdicts: probe.verdicts.map((verdict) =>
    verdictEntry(verdict, probeContext(probe, analysis, writing)),
  ),
  growth: (probe.growth ?? []).map(growthEntry),
});

/** The Analysis as contract version 1; plain data, ready for JSON.stringify. */
export const toContract = (analysis: Analysis) =>
  rounded({
    holdband: analysis.version,
    contract: contractVersion,
    files: analysis.files.map(fileEntry),
    probes: analysis.probes.map((probe) => probeEntry(probe, analysis)),
    notices: analysis.notices.map(noticeEntry),
    thermometer: { ...analysis.thermometer },
    room: analysis.room === null ? null : { ...analysis.room },
    runToRun: { ...analysis.runToRun },
    share: analysis.share,
    confidence: analysis.confidence,
  });

export type Contract = ReturnType<typeof toContract>;

/** JSON knows no infinity: a figure without an end is null there, and its field says so in its type. */
export const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

/** Every number in a plain structure at six decimals; what is not finite has no JSON and becomes null. */
export const rounded = <Plain>(plain: Plain): Plain => {
  if (typeof plain === "number") return roundedNumber(plain) as Plain;
  if (Array.isArray(plain)) return plain.map((item: unknown) => rounded(item)) as Plain;
  if (plain === null || typeof plain !== "object") return plain;
  return Object.fromEntries(
    Object.entries(plain).map(([key, value]: [string, unknown]) => [key, rounded(value)]),
  ) as Plain;
};

const roundedNumber = (value: number): number | null => {
  if (!Number.isFinite(value)) return null;
  const text = Number(value.toFixed(6));
  return text === 0 ? 0 : text;
};
