/** What of a set-up's hold is compared, figure by figure, and in words only what changed or cannot be compared. */
import type { Recheck, RecheckDifference } from "../../advice/recheck-types.ts";
import { signedDifference, signedRange, sizeOfDifference } from "../signed-difference.ts";
import { perHour, temperature } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";

export interface RecheckFigure {
  readonly name: string;
  readonly before: string;
  readonly now: string;
  readonly change: string;
  /** The middle 95 % of it. */
  readonly range: string;
  /** More than chance. */
  readonly changed: boolean;
}

type Part = "level" | "spread" | "swing" | "drift" | "warmUp";

interface Look {
  readonly name: string;
  readonly value: (writing: Writing, value: number, of: RecheckDifference) => string;
  readonly change: (writing: Writing, of: RecheckDifference) => string;
  readonly range: (writing: Writing, of: RecheckDifference) => string;
  /** Of what it grew or shrank; after "the swing is now". */
  readonly words: (writing: Writing, of: RecheckDifference) => string;
}

const inDegrees = (more: string, less: string): Omit<Look, "name" | "value"> => ({
  change: (writing, one) => signedDifference(writing, one.difference, one.standardUncertainty),
  range: (writing, one) => signedRange(writing, one, one.standardUncertainty),
  words: (writing, one) =>
    `${sizeOfDifference(writing, one.difference, one.standardUncertainty)} ${one.difference > 0 ? more : less}`,
});

const signedMinutes = (minutes: number, { space, ascii }: Writing): string => {
  const sign = minutes < 0 ? (ascii ? "-" : "\u2212") : "+";
  return Math.round(Math.abs(minutes)) === 0 ? "0" : sign + duration(Math.abs(minutes), space);
};

const size: Look["value"] = (writing, value, { standardUncertainty }) =>
  sizeOfDifference(writing, value, standardUncertainty);

/** A drift counts over many hours, so it is shown finer than a level. */
const hundredths = 0.01;

const looks: Readonly<Record<Part, Look>> = {
  level: { name: "Average", value: temperature, ...inDegrees("warmer", "colder") },
  spread: { name: "Spread", value: size, ...inDegrees("wider", "narrower") },
  swing: { name: "Swing", value: size, ...inDegrees("wider", "narrower") },
  drift: {
    name: "Drift/h",
    value: (writing, value) => signedDifference(writing, value, hundredths),
    change: (writing, one) => signedDifference(writing, one.difference, hundredths),
    range: (writing, one) => signedRange(writing, one, hundredths),
    words: (writing, one) => `${perHour(writing, one.difference)} from what it was`,
  },
  warmUp: {
    name: "Warm-up",
    value: (writing, minutes) => duration(minutes, writing.space),
    change: (writing, one) => signedMinutes(one.difference, writing),
    range: (writing, one) =>
      `${signedMinutes(one.low, writing)} to ${signedMinutes(one.high, writing)}`,
    words: (writing, one) =>
      `${duration(Math.abs(one.difference), writing.space)} ${one.difference > 0 ? "longer" : "shorter"}`,
  },
};

const parts: readonly Part[] = ["level", "spread", "swing", "drift", "warmUp"];

const isChanged = ({ low, high }: RecheckDifference): boolean => low > 0 || high < 0;

/** Those that could be compared. */
export const recheckFigures = (recheck: Recheck, writing: Writing): readonly RecheckFigure[] =>
  parts.flatMap((part): readonly RecheckFigure[] => {
    const one = recheck[part];
    if (one === null) return [];
    const look = looks[part];
    return [
      {
        name: look.name,
        before: look.value(writing, one.baseline, one),
        now: look.value(writing, one.now, one),
        change: look.change(writing, one),
        range: look.range(writing, one),
        changed: isChanged(one),
      },
    ];
  });

const names: Readonly<Record<Exclude<Part, "level">, string>> = {
  spread: "spread",
  swing: "swing",
  drift: "drift",
  warmUp: "warm-up",
};

/** A sentence for each that changed by more than chance, and one for what could not be compared; the average has its own. */
export const recheckRemarks = (recheck: Recheck, writing: Writing): readonly string[] => {
  const shape = ["spread", "swing", "drift", "warmUp"] as const;
  const changed = shape.flatMap((part) => {
    const one = recheck[part];
    return one !== null && isChanged(one)
      ? [`The ${names[part]} changed by more than chance: ${looks[part].words(writing, one)}.`]
      : [];
  });
  const missing = shape.filter((part) => recheck[part] === null).map((part) => names[part]);
  return missing.length === 0
    ? changed
    : [...changed, `Not compared, for not both tests show it: ${missing.join(", ")}.`];
};
