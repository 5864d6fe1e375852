/** A constructed file of one probe, as reading it would give, and a request about it. */
import type { AnalysedFile, AnalysisRequest } from "../src/analysis-types.ts";
import type { ProbeContext } from "../src/probe-analysis.ts";
import { celsiusDifference } from "../src/quantity.ts";
import type { ReadingsFile } from "../src/readings/readings-file.ts";
import type { ProbeRole } from "../src/readings/series.ts";
import { specifiedThermometer } from "../src/thermometer/budget.ts";
import { asked, nightSeries, swinging } from "./culture/nights.ts";

export const fileOf = (): ReadingsFile => {
  const series = nightSeries({ hoursHeld: 11, hold: swinging(40, 0.3, 25) });
  return {
    name: "night.csv",
    rowsRead: series.minutes.length,
    rowsUsed: series.minutes.length,
    setAside: [],
    cellsSetAside: [],
    encoding: "utf-8",
    delimiter: ",",
    decimal: ".",
    headerLine: 1,
    timeFormat: "elapsed-minutes",
    dateOrder: null,
    unit: "degC",
    intervalSeconds: 60,
    startWallClock: null,
    notices: [],
    probes: [{ name: "Jar", role: "food", ...series }],
  };
};

/** Names and places of the probes of one file. */
export type ProbePlaces = readonly (readonly [name: string, role: ProbeRole])[];

/** Such files with these probes, each in its place, all reading the same. */
export const filesOf = (...files: readonly ProbePlaces[]): readonly AnalysedFile[] =>
  files.map((probes, index) => {
    const file = fileOf();
    return {
      sha256: String(index).repeat(64),
      readings: {
        ...file,
        name: `night-${index + 1}.csv`,
        probes: probes.map(([name, role]) => ({ ...file.probes[0]!, name, role })),
      },
    };
  });

/** The same window asked for each of these numbers of hours. */
export const assumedRequest = (
  hours: readonly number[],
): { readonly request: AnalysisRequest; readonly context: ProbeContext } => {
  const thermometer = specifiedThermometer(celsiusDifference(0.5), "stated");
  const request: AnalysisRequest = {
    version: "0.0.0",
    requirements: hours.map((one) => asked(38, 42, one)),
    thermometer,
    room: null,
    runToRun: null,
    share: 0.95,
    confidence: 0.95,
    shownUnit: "degC",
    reading: {},
  };
  const runToRun = { value: celsiusDifference(0.3), from: "assumed" } as const;
  return { request, context: { request, runToRun } };
};
