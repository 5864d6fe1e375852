/** The judges: records of many cases in, plain figures out. */
import type { AnswerRecord, CandidateRecord, CaseRecord, LevelRecord } from "./study-record.ts";

export interface Count {
  readonly met: number;
  readonly of: number;
}

export const count = <Item>(items: readonly Item[], met: (item: Item) => boolean): Count => ({
  met: items.filter(met).length,
  of: items.length,
});

export interface Coverage {
  /** Within low..high as said. */
  readonly said: Count;
  readonly at50: Count;
  readonly at80: Count;
  readonly at95: Count;
  /** Median standard uncertainty, degC: how sharp it is. */
  readonly width: number;
  /** Mean of fresh run minus mean said, degC. */
  readonly bias: number;
}

/** How often fresh runs lie within the middle 50, 80 and 95 % of what was expected. */
export function coverage(levels: readonly LevelRecord[]): Coverage {
  const within = (share: number): Count =>
    count(levels, ({ place }) => Math.abs(place - 0.5) <= share / 2);
  return {
    said: count(levels, ({ inside }) => inside),
    at50: within(0.5),
    at80: within(0.8),
    at95: within(0.95),
    width: median(levels.map(({ standardUncertainty }) => standardUncertainty)),
    bias: mean(levels.map(({ fresh, mean: expected }) => fresh - expected)),
  };
}

/** Answers with what is known of their case. */
export interface JudgedAnswer extends AnswerRecord {
  readonly of: Omit<CaseRecord, "answers" | "levels">;
}

export const judgedAnswers = (records: readonly CaseRecord[]): readonly JudgedAnswer[] =>
  records.flatMap((of) => of.answers.map((answer) => ({ ...answer, of })));

export const gapAllowed = 0.05;

/** True share inside the window lost against the best the appliance offers. */
export const gapOf = ({ bestShare, trueShare }: AnswerRecord): number => bestShare - trueShare;

/** The part that knowing the response, but not the thermometer's error, would lose as well. */
export const thermometerGapOf = ({ bestShare, shareByThermometer }: AnswerRecord): number =>
  bestShare - shareByThermometer;

export interface Recommendation {
  /** Within 0.05 of the best. */
  readonly close: Count;
  /** The same of those where something really serves, half of the time at least. */
  readonly closeWhereServed: Count;
  /** The same knowing all but the thermometer's error. */
  readonly closeByThermometer: Count;
  readonly meanGap: number;
}

export const recommendation = (answers: readonly AnswerRecord[]): Recommendation => {
  const isClose = (answer: AnswerRecord): boolean => gapOf(answer) <= gapAllowed;
  return {
    close: count(answers, isClose),
    closeWhereServed: count(
      answers.filter(({ bestShare }) => bestShare >= 0.5),
      isClose,
    ),
    closeByThermometer: count(answers, (answer) => thermometerGapOf(answer) <= gapAllowed),
    meanGap: mean(answers.map(gapOf)),
  };
};

export interface AnswerShares {
  readonly can: number;
  readonly may: number;
  readonly cannot: number;
  readonly unknown: number;
  /** Of `can`: the set-up advised meets the requirement in fewer than half of its future runs. */
  readonly wrongCan: Count;
  /** Of `can`: mean of 1 - true probability. */
  readonly canFails: number;
  /** Of `cannot`: some set-up meets it in 9 of 10 future runs at least. */
  readonly wrongCannot: Count;
  /** Where some set-up meets it in 9 of 10 future runs: answered `can`, or `may` at least. */
  readonly foundCan: Count;
  readonly foundMay: Count;
}

export const isWrongCan = ({ answer, trueProbability }: AnswerRecord): boolean =>
  answer === "can" && trueProbability < 0.5;
export const isWrongCannot = ({ answer, bestProbability }: AnswerRecord): boolean =>
  answer === "cannot" && bestProbability >= 0.9;

export function answerShares(all: readonly AnswerRecord[]): AnswerShares {
  const said = (word: string): readonly AnswerRecord[] =>
    all.filter(({ answer }) => answer === word);
  const served = all.filter(({ bestProbability }) => bestProbability >= 0.9);
  return {
    can: said("can").length,
    may: said("may").length,
    cannot: said("cannot").length,
    unknown: said("unknown").length,
    wrongCan: count(said("can"), isWrongCan),
    canFails: mean(said("can").map(({ trueProbability }) => 1 - trueProbability)),
    wrongCannot: count(said("cannot"), isWrongCannot),
    foundCan: count(served, ({ answer }) => answer === "can"),
    foundMay: count(served, ({ answer }) => answer === "can" || answer === "may"),
  };
}

export interface SaidAndTrue {
  readonly said: number;
  readonly trueProbability: number;
}

/** Of the set-ups advised, for the culture they are advised for. */
export const chosenChances = (all: readonly AnswerRecord[]): readonly SaidAndTrue[] =>
  all.flatMap(({ said, trueProbability }) => (said === null ? [] : [{ said, trueProbability }]));

/** Of candidates nobody chose. */
export const candidateChances = (all: readonly AnswerRecord[]): readonly CandidateRecord[] =>
  all.flatMap(({ candidates }) => candidates);

export interface Decile {
  readonly from: number;
  readonly count: number;
  readonly said: number;
  readonly true: number;
}

export const calibration = (chances: readonly SaidAndTrue[]): readonly Decile[] =>
  Array.from({ length: 10 }, (_, decile) => {
    const within = chances.filter(({ said }) => Math.min(9, Math.floor(said * 10)) === decile);
    return {
      from: decile / 10,
      count: within.length,
      said: mean(within.map(({ said }) => said)),
      true: mean(within.map(({ trueProbability }) => trueProbability)),
    };
  });

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
