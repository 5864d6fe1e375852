/** Nights for the page's tests: the demo's files, and constructed ones with a clock that was put back, or in degF. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../../cli/run-holdband.ts";
import { nightText } from "../../kitchen-analysis/small-kitchen.ts";
import { chosen } from "./page-room.ts";

const demo = (name: string): string =>
  readFileSync(join(root, "fixtures", "kitchen", "readings", name), "utf8");

/** 14 h at 38 degC, constructed. */
export const quietNight = nightText({ level: 38, startsAt: Date.UTC(2026, 9, 18, 20, 0) });

/** The same, read by a person in degF. */
export const fahrenheitNight = quietNight
  .replace("degC", "degF")
  .replaceAll(
    /,(\d+\.\d+)$/gm,
    (_, celsius: string) => `,${(Number(celsius) * 1.8 + 32).toFixed(1)}`,
  );

/**
 * In the night of 2026-10-25 clocks in Central Europe went from 03:00 back to
 * 02:00 (Directive 2000/84/EC): a logger on the wall's time has that hour twice.
 */
const wallHours = (minute: number): string => {
  const start = Date.UTC(2026, 9, 24, 20, 0);
  const back = minute >= 7 * 60 ? 60 : 0;
  return new Date(start + (minute - back) * 60_000).toISOString().slice(0, 16).replace("T", " ");
};
const clockPutBack = [
  "Time,Jar (degC)",
  ...Array.from({ length: 157 }, (_, at) => {
    const minute = at * 5;
    const celsius = minute < 60 ? 20 + (18 * minute) / 60 : 38 + 0.2 * Math.sin(minute / 12);
    return `${wallHours(minute)},${celsius.toFixed(2)}`;
  }),
].join("\n");

export interface NamedNight {
  readonly what: string;
  /** Names and contents. */
  readonly files: readonly (readonly [name: string, text: string])[];
  readonly options: Readonly<Record<string, readonly string[]>>;
}

export const nights: readonly NamedNight[] = [
  {
    what: "the demo's cooker, for two cultures",
    files: [["adjustable-cooker.csv", demo("adjustable-cooker.csv")]],
    options: { culture: ["reuteri", "yoghurt"], thermometerAccuracy: ["0.5"], room: ["18..23"] },
  },
  {
    what: "two loggers, a window of one's own",
    files: [
      ["bath-jar.csv", demo("bath-jar.csv")],
      ["bath-water.tsv", demo("bath-water.tsv")],
    ],
    options: { low: ["40C"], high: ["42.5C"], hours: ["8h"], runToRun: ["0.2"] },
  },
  {
    what: "degF, with a correction",
    files: [["fahrenheit.csv", fahrenheitNight]],
    options: {
      low: ["97F"],
      high: ["103F"],
      ceiling: ["110F"],
      hours: ["12"],
      correction: ["-0.4F"],
      correctionUncertainty: ["0.2F"],
    },
  },
  {
    what: "a clock that was put back in the night",
    files: [["wall.csv", clockPutBack]],
    options: { culture: ["reuteri"], probe: ["Jar=bath"], share: ["90%"] },
  },
];

export const filesOf = ({ files }: NamedNight) => files.map(([name, text]) => chosen(name, text));

const flagOf = (key: string): string =>
  `--${key.replaceAll(/[A-Z]/g, (one) => `-${one.toLowerCase()}`)}`;

/** The same options as words of the command line. */
export const wordsOf = (options: NamedNight["options"]): readonly string[] =>
  Object.entries(options).flatMap(([key, values]) =>
    values.map((value) => `${flagOf(key)}=${value}`),
  );
