/** Figures of the study over many records; every rate with its count. */
import { shareOf, type Share } from "./binomial.ts";
import type { FoundHold, Interval, NightRecord, StudyRecord } from "./record.ts";

export interface VerdictFigures {
  readonly cases: number;
  readonly falseHolds: Share;
  readonly falseMisses: Share;
  readonly unproven: Share;
  /** Probability told on average, and what came true. */
  readonly told: number;
  readonly held: Share;
  /** Mean squared difference of probability and truth (Brier 1950). */
  readonly brier: number;
}

export interface Decile {
  readonly from: number;
  readonly told: number;
  readonly held: Share;
}

export interface Coverage {
  /** The tested run's own mean, and its band's both ends; only where no other run is promised. */
  readonly mean: Share;
  readonly band: Share;
  /** The same over the stretches that were found to be hold, right or wrong. */
  readonly sameMean: Share;
  readonly sameBand: Share;
  /** The next run's mean and band after one test. */
  readonly nextMean: Share;
  readonly nextBand: Share;
  readonly drift: Share;
  readonly start: Share;
  readonly end: Share;
}

type Answered = StudyRecord & { readonly answer: NonNullable<StudyRecord["answer"]> };

export const answered = (records: readonly StudyRecord[]): readonly Answered[] =>
  records.filter((record): record is Answered => record.answer !== null);

export function verdictFigures(records: readonly StudyRecord[]): VerdictFigures {
  const all = answered(records);
  const said = (word: string): readonly Answered[] =>
    all.filter(({ answer }) => answer.verdict === word);
  const mean = (value: (record: Answered) => number): number =>
    all.reduce((sum, record) => sum + value(record), 0) / all.length;
  return {
    cases: records.length,
    falseHolds: shareOf(said("holds"), ({ truth }) => !truth.holds),
    falseMisses: shareOf(said("misses"), ({ truth }) => truth.holds),
    unproven: { met: said("unproven").length, of: all.length },
    told: mean(({ answer }) => answer.probability),
    held: shareOf(all, ({ truth }) => truth.holds),
    brier: mean(({ answer, truth }) => (answer.probability - Number(truth.holds)) ** 2),
  };
}

export const deciles = (records: readonly StudyRecord[]): readonly Decile[] =>
  Array.from({ length: 10 }, (_, decile) => {
    const within = answered(records).filter(
      ({ answer }) => Math.min(9, Math.floor(answer.probability * 10)) === decile,
    );
    return {
      from: decile / 10,
      told: within.reduce((sum, { answer }) => sum + answer.probability, 0) / within.length,
      held: shareOf(within, ({ truth }) => truth.holds),
    };
  });

/** Of a normal distribution, 95 %. */
const coverageFactor = 1.959963984540054;
const closeMinutes = 15;

export function coverage(records: readonly StudyRecord[]): Coverage {
  const nights = records.flatMap(({ promise, byHand, nights: own }) =>
    own.map((night) => ({ ...night, promise, byHand })),
  );
  const own = nights.filter(({ promise }) => promise === "this run").flatMap(foundAndTrue);
  const same = nights.flatMap(({ promise, found, truth: { sameHours } }) =>
    promise === "next run" || found === null || sameHours === null
      ? []
      : [{ found, truth: sameHours }],
  );
  const next = records.filter(({ promise, tests }) => promise === "next run" && tests === 1);
  const promised = next.flatMap(({ nights: [night], truth }) =>
    night?.found == null || night.truth.band === null || truth.asTested === null
      ? []
      : [{ found: night.found, truth: truth.asTested }],
  );
  const begun = nights.filter(({ truth, byHand }) => truth.start !== null && !byHand);
  return {
    mean: shareOf(own, ({ found, truth }) => hasMean(found, truth.mean)),
    band: shareOf(own, ({ found, truth }) => contains(found.guarded, truth.band)),
    sameMean: shareOf(same, ({ found, truth }) => hasMean(found, truth.mean)),
    sameBand: shareOf(same, ({ found, truth }) => contains(found.guarded, truth.band)),
    nextMean: shareOf(promised, ({ found, truth }) => hasMean(found, truth.mean)),
    nextBand: shareOf(promised, ({ found, truth }) => contains(found.guarded, truth.band)),
    drift: shareOf(
      nights.filter(({ found, truth }) => found !== null && truth.drift !== null),
      ({ found, truth }) => truth.drift! >= found!.drift.low && truth.drift! <= found!.drift.high,
    ),
    start: shareOf(begun, startsClose),
    end: shareOf(begun, endsClose),
  };
}

const foundAndTrue = ({ found, truth: { mean, band } }: NightRecord) =>
  found === null || mean === null || band === null ? [] : [{ found, truth: { mean, band } }];

const hasMean = ({ mean, standardUncertainty }: FoundHold, truth: number): boolean =>
  Math.abs(mean - truth) <= coverageFactor * standardUncertainty;

const contains = (outer: Interval, inner: Interval): boolean =>
  outer.low <= inner.low && outer.high >= inner.high;

/** A hold not found where there is one counts as missed. */
const startsClose = ({ found, truth }: NightRecord): boolean =>
  found !== null && Math.abs(found.start - truth.start!) <= closeMinutes;

/** After a switch-off the hold may be said to last until the food has left it. */
const endsClose = ({ found, truth }: NightRecord): boolean =>
  found !== null &&
  found.end >= truth.end - closeMinutes &&
  found.end <= truth.endLeftRange + closeMinutes;
