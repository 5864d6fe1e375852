/** Figures over many scored cases. Every share comes with its count, so that its own uncertainty can be seen. */
import { startDefinitions, type CaseScore, type StartDefinition } from "./score-types.ts";

export interface Share {
  readonly met: number;
  readonly of: number;
}

export interface Decile {
  readonly from: number;
  readonly count: number;
  readonly meanProbability: number;
  readonly trueShare: number;
}

export interface Verdicts {
  readonly falseHolds: Share;
  readonly falseMisses: Share;
  readonly unproven: Share;
}

/** Middle and 90th percentile of absolute errors. */
export interface Spread {
  readonly count: number;
  readonly median: number;
  readonly ninetieth: number;
}

export interface Summary {
  readonly cases: number;
  /** Of the files that leave nothing open. */
  readonly readWithoutOptions: Share;
  readonly readWithTheirOptions: Share;
  /** Hold start within 15 min, logged tests with a true hold, per definition. */
  readonly start: { readonly [Name in StartDefinition]: Share };
  readonly startByHand: Share;
  readonly end: Share;
  /** The same, but after a switch-off the hold may last until the food has left it. */
  readonly endOrLeftRange: Share;
  readonly noHoldSeen: Share;
  /** Band edges, thermometer's error taken out, degC. */
  readonly bandError: Spread;
  readonly verdicts: Verdicts;
  readonly reliability: readonly Decile[];
  /** Mean squared difference of probability and truth (Brier 1950). */
  readonly brierScore: number;
  readonly splits: readonly {
    readonly by: string;
    readonly value: string;
    readonly cases: number;
    readonly start: Share;
    readonly end: Share;
    readonly verdicts: Verdicts;
  }[];
}

const closeMinutes = 15;

export function summarise(scores: readonly CaseScore[]): Summary {
  const answered = scores.filter(({ answer }) => answer !== null);
  const closed = scores.filter(({ dialectOptions }) => dialectOptions.length === 0);
  const open = scores.filter(({ dialectOptions }) => dialectOptions.length > 0);
  const unheld = answered.filter(({ truth }) => truth.starts.start === null);
  return {
    cases: scores.length,
    readWithoutOptions: share(closed, ({ fault }) => fault === null),
    readWithTheirOptions: share(open, ({ fault }) => fault === null),
    start: Object.fromEntries(
      startDefinitions.map((name) => [name, startShare(logged(answered), name)]),
    ) as Summary["start"],
    startByHand: startShare(
      answered.filter(({ byHand }) => byHand),
      "start",
    ),
    end: endShare(logged(answered)),
    endOrLeftRange: share(held(logged(answered)), endsByLeavingRange),
    noHoldSeen: share(unheld, ({ answer }) => answer!.startMinute === null),
    bandError: spread(answered.flatMap(bandErrors)),
    verdicts: verdictShares(answered),
    reliability: reliability(answered),
    brierScore: brier(answered),
    splits: splits(answered),
  };
}

const logged = (scores: readonly CaseScore[]): readonly CaseScore[] =>
  scores.filter(({ byHand }) => !byHand);

const share = (scores: readonly CaseScore[], met: (score: CaseScore) => boolean): Share => ({
  met: scores.filter(met).length,
  of: scores.length,
});

/** A hold not found where there is one counts as missed. */
export function startShare(scores: readonly CaseScore[], name: StartDefinition): Share {
  const begun = scores.filter(({ truth }) => truth.starts[name] !== null);
  return share(begun, ({ truth, answer }) => isClose(answer!.startMinute, truth.starts[name]!));
}

const held = (scores: readonly CaseScore[]): readonly CaseScore[] =>
  scores.filter(({ truth }) => truth.starts.start !== null);

const endShare = (scores: readonly CaseScore[]): Share =>
  share(held(scores), ({ truth, answer }) => isClose(answer!.endMinute, truth.endMinute));

function endsByLeavingRange({ truth, answer }: CaseScore): boolean {
  const found = answer!.endMinute;
  if (found === null) return false;
  return (
    found >= truth.endMinute - closeMinutes && found <= truth.endLeftRangeMinute + closeMinutes
  );
}

const isClose = (found: number | null, wanted: number): boolean =>
  found !== null && Math.abs(found - wanted) <= closeMinutes;

function bandErrors({ answer, truth, errorLeft }: CaseScore): readonly number[] {
  const found = answer!.band;
  if (found === null || truth.band === null) return [];
  return [
    Math.abs(found.low - errorLeft - truth.band.low),
    Math.abs(found.high - errorLeft - truth.band.high),
  ];
}

function spread(errors: readonly number[]): Spread {
  const sorted = errors.toSorted((a, b) => a - b);
  const at = (part: number): number => sorted[Math.floor(part * (sorted.length - 1))] ?? NaN;
  return { count: sorted.length, median: at(0.5), ninetieth: at(0.9) };
}

export function verdictShares(scores: readonly CaseScore[]): Verdicts {
  const said = (word: string): readonly CaseScore[] =>
    scores.filter(({ answer }) => answer!.verdict === word);
  return {
    falseHolds: share(said("holds"), ({ truth }) => !truth.holds),
    falseMisses: share(said("misses"), ({ truth }) => truth.holds),
    unproven: { met: said("unproven").length, of: scores.length },
  };
}

function reliability(scores: readonly CaseScore[]): readonly Decile[] {
  return Array.from({ length: 10 }, (_, decile) => {
    const within = scores.filter(
      ({ answer }) => Math.min(9, Math.floor(answer!.probability * 10)) === decile,
    );
    const mean = (value: (score: CaseScore) => number): number =>
      within.reduce((sum, score) => sum + value(score), 0) / within.length;
    return {
      from: decile / 10,
      count: within.length,
      meanProbability: mean(({ answer }) => answer!.probability),
      trueShare: mean(({ truth }) => Number(truth.holds)),
    };
  });
}

const brier = (scores: readonly CaseScore[]): number =>
  scores.reduce(
    (sum, { answer, truth }) => sum + (answer!.probability - Number(truth.holds)) ** 2,
    0,
  ) / scores.length;

const dimensions: readonly (readonly [string, (score: CaseScore) => readonly string[]])[] = [
  ["appliance", ({ kind }) => [kind]],
  ["structure", ({ structure }) => [structure]],
  [
    "test length",
    ({ testHours }) => [testHours < 7 ? "3..7 h" : testHours <= 14 ? "7..14 h" : "14..30 h"],
  ],
  ["room", ({ roomStated }) => [roomStated ? "stated" : "not stated"]],
  ["readings", ({ byHand }) => [byHand ? "by hand" : "logged"]],
  ["event", ({ events }) => (events.length === 0 ? ["none"] : [...new Set(events)])],
];

function splits(scores: readonly CaseScore[]): Summary["splits"] {
  return dimensions.flatMap(([by, valuesOf]) =>
    [...new Set(scores.flatMap(valuesOf))].toSorted().map((value) => {
      const part = scores.filter((score) => valuesOf(score).includes(value));
      const start = startShare(part, "start");
      const verdicts = verdictShares(part);
      return { by, value, cases: part.length, start, end: endShare(part), verdicts };
    }),
  );
}
