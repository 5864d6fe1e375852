/**
 * Invented analyses for the report's tests: plausible shapes and figures, made
 * by plain formulas, not by the program under test. They check how things are
 * shown, never whether they are right.
 */
import type { Analysis, ProbeAnalysis } from "../../src/analysis.ts";
import type { Reason, Requirement, Verdict, VerdictWord } from "../../src/culture/verdict-types.ts";
import type { Hold, HoldReadings, Phase, ProbeNight } from "../../src/hold/hold.ts";
import { notice } from "../../src/notice.ts";
import {
  celsius,
  celsiusDifference,
  fraction,
  hours,
  minutes as minutesOf,
} from "../../src/quantity.ts";
import type { ReadingsFile } from "../../src/readings/readings-file.ts";
import type { ProbeRole, Series } from "../../src/readings/series.ts";
import type { ThermometerStatement } from "../../src/thermometer/budget.ts";

export const startWallClock = Date.UTC(2026, 2, 14, 21, 37);

const cultureNames: Readonly<Record<string, string>> = {
  "yoghurt-thermophilic": "Yoghurt, warm set (Streptococcus thermophilus)",
  mesophilic: "Mesophilic culture (Lactococcus)",
  kefir: "Kefir (grains)",
};

export const requirement = (
  culture: string,
  low: number,
  high: number,
  ceiling: number | null,
  needed: number,
): Requirement => ({
  culture,
  name: cultureNames[culture] ?? "",
  low: celsius(low),
  high: celsius(high),
  ceiling: ceiling === null ? null : celsius(ceiling),
  hours: hours(needed),
  share: fraction(0.95),
});

/** A repeatable wobble between -1 and 1 that looks like noise. */
const wobble = (index: number): number => Math.sin(index * 12.9898) * Math.cos(index * 78.233);

export interface NightShape {
  readonly level: number;
  readonly swing: number;
  readonly periodMinutes: number;
  readonly perHour: number;
  readonly stepSeconds: number;
  readonly hours: number;
  readonly lidAtMinute?: number;
  readonly probeOutAtMinute?: number;
  readonly gapAtMinute?: number;
}

const idleMinutes = 12;
const warmUpMinutes = 85;

const temperatureAt = (shape: NightShape, minute: number, index: number): number => {
  const room = 20.5 + wobble(index) * 0.05;
  if (minute < idleMinutes) return room;
  const hoursIn = Math.max(minute - warmUpMinutes, 0) / 60;
  const approach = 1 - Math.exp(-(minute - idleMinutes) / 17);
  const swing = (shape.swing / 2) * Math.sin((2 * Math.PI * minute) / shape.periodMinutes);
  const base = 20.5 + (shape.level - 20.5) * approach + swing * approach + shape.perHour * hoursIn;
  const lid = shape.lidAtMinute;
  const dip = lid !== undefined && minute >= lid ? -6 * Math.exp(-(minute - lid) / 7) : 0;
  const out = shape.probeOutAtMinute;
  if (out !== undefined && minute > out) return 22 + (base - 22) * Math.exp(-(minute - out) / 4);
  return base + dip + wobble(index) * 0.06;
};

export const nightSeries = (shape: NightShape, name: string, role: ProbeRole): Series => {
  const count = Math.round((shape.hours * 3600) / shape.stepSeconds);
  const kept: number[] = [];
  for (let index = 0; index < count; index += 1) {
    const minute = (index * shape.stepSeconds) / 60;
    const gap = shape.gapAtMinute;
    if (gap === undefined || minute < gap || minute > gap + 35) kept.push(minute);
  }
  const minutes = Float64Array.from(kept);
  const readings = minutes.map((minute, index) =>
    Number(temperatureAt(shape, minute, index).toFixed(1)),
  );
  return { name, role, minutes, celsius: readings, resolution: 0.1 };
};

const phasesOf = (shape: NightShape): readonly Phase[] => {
  const end = shape.hours * 60;
  const out = shape.probeOutAtMinute;
  const holdEnd = out ?? end;
  const lid = shape.lidAtMinute;
  const middle: Phase[] =
    lid === undefined
      ? [{ kind: "hold", fromMinute: warmUpMinutes, toMinute: holdEnd }]
      : [
          { kind: "hold", fromMinute: warmUpMinutes, toMinute: lid },
          { kind: "disturbance", cause: "lid-lifted", fromMinute: lid, toMinute: lid + 26 },
          { kind: "hold", fromMinute: lid + 26, toMinute: holdEnd },
        ];
  return [
    { kind: "idle", fromMinute: 0, toMinute: idleMinutes },
    { kind: "warm-up", fromMinute: idleMinutes, toMinute: warmUpMinutes },
    ...middle,
    ...(out === undefined
      ? []
      : [{ kind: "cool-down", cause: "probe-out", fromMinute: out, toMinute: end } as const]),
  ];
};

const holdReadingsOf = (series: Series, phases: readonly Phase[]): HoldReadings => {
  const spans = phases.filter(({ kind }) => kind === "hold");
  const chosen: number[] = [];
  series.minutes.forEach((minute, index) => {
    if (spans.some(({ fromMinute, toMinute }) => minute >= fromMinute && minute <= toMinute)) {
      chosen.push(index);
    }
  });
  const step = series.minutes.length > 1 ? series.minutes[1]! - series.minutes[0]! : 0;
  return {
    minutes: Float64Array.from(chosen, (index) => series.minutes[index]!),
    celsius: Float64Array.from(chosen, (index) => series.celsius[index]!),
    weights: new Float64Array(chosen.length).fill(step),
  };
};

const holdOf = (shape: NightShape, readings: HoldReadings, phases: readonly Phase[]): Hold => {
  const sorted = readings.celsius.toSorted();
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))]!;
  const mean = readings.celsius.reduce((sum, value) => sum + value, 0) / sorted.length;
  const squares = readings.celsius.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const spans = phases.filter(({ kind }) => kind === "hold");
  const length = spans.reduce((sum, { fromMinute, toMinute }) => sum + toMinute - fromMinute, 0);
  return {
    fromMinute: warmUpMinutes,
    toMinute: spans.at(-1)!.toMinute,
    hours: length / 60,
    mean,
    median: at(0.5),
    min: sorted[0]!,
    max: sorted.at(-1)!,
    standardDeviation: Math.sqrt(squares / (sorted.length - 1)),
    band: { low: at(0.025), high: at(0.975) },
    effectiveReadings: 38,
    readings: sorted.length,
    meanUncertainty: 0.042,
    drift: {
      perHour: shape.perHour,
      low: shape.perHour - 0.021,
      high: shape.perHour + 0.021,
      standardUncertainty: 0.0105,
      robustPerHour: shape.perHour,
    },
    swing:
      shape.swing === 0
        ? null
        : { periodMinutes: shape.periodMinutes, peakToPeak: shape.swing, cycles: 17 },
    noise: 0.043,
    hourMeans: { low: mean - 0.11, high: mean + 0.14 },
  };
};

export interface ProbeParts {
  readonly shape: NightShape;
  readonly name?: string;
  readonly role?: ProbeRole;
  readonly file?: string;
  readonly fileIndex?: number;
  readonly verdicts?: readonly Verdict[];
  readonly hold?: boolean;
}

export const probe = (parts: ProbeParts): ProbeAnalysis => {
  const { shape, role = "food" } = parts;
  const series = nightSeries(shape, parts.name ?? "food", role);
  const held = parts.hold ?? role !== "room";
  const phases: readonly Phase[] = held
    ? phasesOf(shape)
    : [{ kind: "idle", fromMinute: 0, toMinute: shape.hours * 60 }];
  const readings = held ? holdReadingsOf(series, phases) : null;
  const hold = readings === null ? null : holdOf(shape, readings, phases);
  const night: ProbeNight = {
    phases,
    warmUp: held
      ? {
          minutesToHold: warmUpMinutes - idleMinutes,
          timeConstantMinutes: 17.2,
          timeConstantUncertainty: 0.4,
        }
      : null,
    hold,
    holdReadings: readings,
    peak: hold === null ? null : hold.max,
  };
  return {
    fileIndex: parts.fileIndex ?? 0,
    test: parts.fileIndex ?? 0,
    thermometer: sampleThermometer,
    thermometerId: null,
    file: parts.file ?? "night.csv",
    series,
    phases,
    night,
    standardUncertainty: hold === null ? null : 0.36,
    guardedBand: hold === null ? null : { low: hold.band.low - 0.7, high: hold.band.high + 0.7 },
    uncertainty:
      hold === null
        ? []
        : [
            {
              source: "thermometer",
              standardUncertainty: celsiusDifference(0.19),
              from: "measured",
            },
            {
              source: "resolution",
              standardUncertainty: celsiusDifference(0.029),
              from: "measured",
            },
            {
              source: "mean of the hold",
              standardUncertainty: celsiusDifference(0.042),
              from: "measured",
            },
            { source: "run to run", standardUncertainty: celsiusDifference(0.3), from: "assumed" },
            {
              source: "hours not tested",
              standardUncertainty: celsiusDifference(0.22),
              from: "stated",
            },
          ],
    verdicts: parts.verdicts ?? [],
  };
};

export const verdict = (
  word: VerdictWord,
  probability: number,
  asked: Requirement,
  reasons: readonly Reason[],
  outside: { readonly below: number; readonly above: number } | null = { below: 0, above: 0 },
): Verdict => ({
  requirement: asked,
  verdict: word,
  probability: fraction(probability),
  ceilingRisk: asked.ceiling === null ? null : fraction(0.012),
  dwell:
    outside === null
      ? null
      : {
          insideFraction: fraction(1 - (outside.below + outside.above) / 600),
          belowMinutes: minutesOf(outside.below),
          aboveMinutes: minutesOf(outside.above),
          longestOutsideMinutes: minutesOf(Math.max(outside.below, outside.above) / 4),
          degreeHoursOutside: (outside.below + outside.above) / 200,
        },
  uncertainty: [],
  reasons,
});

export const readingsFile = (
  name: string,
  probes: readonly Series[],
  more: Partial<ReadingsFile> = {},
): ReadingsFile => {
  const rowsUsed = probes[0]?.minutes.length ?? 0;
  const setAside = [
    { reason: "spike", count: 8, firstLine: 112 },
    { reason: "sensor-fault", count: 3, firstLine: 2041 },
  ] as const;
  return {
    name,
    rowsRead: rowsUsed + 11,
    rowsUsed,
    setAside,
    cellsSetAside: [],
    encoding: "utf-8",
    delimiter: ",",
    decimal: ".",
    headerLine: 1,
    timeFormat: "date-time",
    dateOrder: "year-first",
    unit: "degC",
    intervalSeconds: 30,
    startWallClock,
    notices: [notice("gap", { firstLine: 3120, minutes: 35, count: 1 })],
    probes,
    ...more,
  };
};

const sampleThermometer: ThermometerStatement = {
  correction: celsiusDifference(-0.3),
  standardUncertainty: celsiusDifference(0.19),
  from: "measured",
  accuracy: null,
};

export const analysisOf = (
  probes: readonly ProbeAnalysis[],
  more: Partial<Analysis> = {},
): Analysis => {
  const names = [...new Set(probes.map(({ file }) => file))];
  return {
    version: "0.1.0",
    files: names.map((name, index) => ({
      readings: readingsFile(
        name,
        probes.filter(({ file }) => file === name).map(({ series }) => series),
      ),
      sha256: String(index + 1).repeat(64),
    })),
    probes: probes.map((one) => ({ ...one, thermometer: more.thermometer ?? one.thermometer })),
    notices: [],
    thermometer: sampleThermometer,
    room: null,
    runToRun: { value: celsiusDifference(0.3), from: "assumed" },
    share: 0.95,
    confidence: 0.95,
    shownUnit: "degC",
    ...more,
  };
};

const thermostat: NightShape = {
  level: 40.8,
  swing: 0.9,
  periodMinutes: 24,
  perHour: 0.004,
  stepSeconds: 30,
  hours: 11,
};

const yoghurt = requirement("yoghurt-thermophilic", 38, 43, 45, 24);

export const holdsNight = (): Analysis =>
  analysisOf([
    probe({
      shape: { ...thermostat, gapAtMinute: 400 },
      verdicts: [
        verdict("holds", 0.973, yoghurt, [
          { code: "all-inside", marginLow: 2.3, marginHigh: 1.7 },
          {
            code: "dominant-doubt",
            source: "run to run",
            standardUncertainty: 0.3,
            share: 0.52,
            from: "assumed",
          },
        ]),
      ],
    }),
  ]);

export const unprovenNight = (): Analysis =>
  analysisOf(
    [
      probe({
        shape: {
          level: 38.4,
          swing: 0,
          periodMinutes: 30,
          perHour: 0.16,
          stepSeconds: 60,
          hours: 9.5,
          lidAtMinute: 300,
          probeOutAtMinute: 548,
        },
        verdicts: [
          verdict(
            "unproven",
            0.41,
            requirement("window", 36, 39, null, 36),
            [
              { code: "above-window", high: 39, share: 0.41 },
              { code: "drifts-out", perHour: 0.16, side: "above" },
              { code: "near-edge", edge: 39, side: "above", margin: -0.6, uncertainty: 0.7 },
              {
                code: "dominant-doubt",
                source: "thermometer",
                standardUncertainty: 0.577,
                share: 0.68,
                from: "assumed",
              },
              { code: "tested-too-short", tested: 7.28, needed: 36 },
              { code: "would-settle", source: "thermometer", verdict: "misses", probability: 0.03 },
            ],
            { below: 20, above: 226 },
          ),
        ],
      }),
    ],
    {
      thermometer: {
        correction: 0 as never,
        standardUncertainty: (1 / Math.sqrt(3)) as never,
        from: "assumed",
        accuracy: 1 as never,
      },
      notices: [notice("assumed-thermometer", { accuracy: 1 })],
    },
  );

export const missesNight = (): Analysis =>
  analysisOf(
    [
      probe({
        shape: { ...thermostat, level: 46.2, swing: 3.1, periodMinutes: 41 },
        verdicts: [
          verdict(
            "misses",
            0.0004,
            yoghurt,
            [
              { code: "mean-outside", mean: 46.2, side: "above", by: 3.2 },
              { code: "above-window", high: 43, share: 0.997 },
              { code: "passes-ceiling", ceiling: 45, peak: 48, probability: 0.9996 },
            ],
            { below: 0, above: 574 },
          ),
        ],
      }),
    ],
    { shownUnit: "degF" },
  );

export const noHoldNight = (): Analysis =>
  analysisOf([
    probe({
      shape: { ...thermostat, level: 20.6, swing: 0, hours: 3 },
      hold: false,
      verdicts: [verdict("unproven", 0.5, yoghurt, [{ code: "no-hold" }], null)],
    }),
  ]);

/** Food, bath and room of one file, and a second file with two requirements. */
export const severalProbes = (): Analysis => {
  const food = verdict("holds", 0.968, yoghurt, [
    { code: "all-inside", marginLow: 2.1, marginHigh: 1.6 },
  ]);
  return analysisOf([
    probe({ shape: { ...thermostat, swing: 0.3 }, name: "jar", verdicts: [food] }),
    probe({ shape: { ...thermostat, level: 41.6 }, name: "basin", role: "bath" }),
    probe({
      shape: { ...thermostat, level: 20.5, swing: 1.2, periodMinutes: 600 },
      name: "kitchen",
      role: "room",
    }),
    probe({
      shape: { ...thermostat, level: 29.7, swing: 0 },
      name: "box",
      file: "warming box, second shelf.csv",
      fileIndex: 1,
      verdicts: [
        verdict("misses", 0.002, yoghurt, [{ code: "never-reached", low: 38, peak: 30.4 }], {
          below: 575,
          above: 0,
        }),
        verdict("unproven", 0.949, requirement("mesophilic", 28, 31, null, 18), [
          { code: "all-inside", marginLow: 1.5, marginHigh: 1.1 },
        ]),
      ],
    }),
  ]);
};

export const hostileNames = [
  "<script>alert(1)</script>",
  `"><img src=x onerror=alert(2)>`,
  "night\u001b[31m\u202egnp.csv",
  "a'b&amp;</title></style><svg onload=alert(3)>",
] as const;

export const hostileNight = (): Analysis => {
  const [first, second, third, fourth] = hostileNames;
  const asked = { ...yoghurt, culture: second, name: second };
  const analysis = analysisOf([
    probe({
      shape: { ...thermostat, hours: 4 },
      name: first,
      file: third,
      verdicts: [verdict("holds", 0.96, asked, [])],
    }),
    probe({ shape: thermostat, name: fourth, role: "room", file: third }),
  ]);
  return {
    ...analysis,
    notices: [
      notice("columns-ignored", { columns: `${first}, ${second}` }),
      notice("probes-named", { names: fourth }),
    ],
  };
};

/** Eight readings by hand: the smallest report, for golden files. */
export const smallNight = (): Analysis => {
  const shape = { ...thermostat, stepSeconds: 3600, hours: 9, swing: 0 };
  return analysisOf([
    probe({
      shape,
      verdicts: [
        verdict("unproven", 0.9496, yoghurt, [
          { code: "all-inside", marginLow: 2.7, marginHigh: 2.1 },
          { code: "near-ceiling", ceiling: 45, peak: 41, probability: 0.012 },
          { code: "tested-too-short", tested: 7.6, needed: 24 },
          { code: "would-settle", source: "hours not tested", verdict: "holds", probability: 0.99 },
        ]),
      ],
    }),
  ]);
};
