/** The advice for each culture against the truth of all the appliance offers. */
import type { ApplianceAdvice, Candidate, CultureAdvice } from "../../src/advice/advice-types.ts";
import type { Culture } from "../../src/culture/culture.ts";
import type { KitchenAnalysis } from "../../src/kitchen-analysis-types.ts";
import type { SetUp } from "../../src/kitchen/kitchen.ts";
import { createRandom } from "../simulator/random.ts";
import type { RespondingCase } from "../simulator/responding-case.ts";
import { settingText } from "../../src/kitchen/setting.ts";
import { setUpName } from "./study-levels.ts";
import type { AnswerRecord, CandidateRecord } from "./study-record.ts";

export const answerRecords = (
  responding: RespondingCase,
  analysis: KitchenAnalysis,
  advice: ApplianceAdvice,
): readonly AnswerRecord[] =>
  responding.cultures.map((culture, at) => {
    const said = advice.cultures[at];
    if (said?.culture !== culture.id) throw new Error("cultures out of order");
    const usedSettings = new Set(advice.tests.map(({ setting }) => settingText(setting)));
    const left = errorLeft(responding, analysis);
    const { candidates } = advice;
    return answerRecord(responding, { said, culture, at, left, usedSettings, candidates });
  });

interface ToJudge {
  readonly said: CultureAdvice;
  readonly culture: Culture;
  /** Its place among the chances. */
  readonly at: number;
  readonly candidates: readonly Candidate[];
  /** Of the thermometer's error, after its correction, degC. */
  readonly left: number;
  /** Of the tests the advice rests on. */
  readonly usedSettings: ReadonlySet<string>;
}

function answerRecord(responding: RespondingCase, judged: ToJudge): AnswerRecord {
  const { said, culture, left, usedSettings } = judged;
  const { truth } = responding;
  const best = bestOffered(responding, culture);
  const byThermometer = bestOffered(responding, shifted(culture, -left));
  const setUp = said.best?.setUp ?? null;
  const own = setUp === null ? null : truth.outlook(setUp, culture);
  return {
    culture: culture.id,
    answer: said.answer,
    change: said.change,
    setUp: nameOf(said),
    basis: said.best?.basis ?? null,
    obstacles: said.obstacles.map(({ code }) => code),
    said: said.chance?.probability ?? null,
    trueProbability: own?.probability ?? 0,
    trueShare: own?.share ?? 0,
    bestShare: best.share,
    bestSetUp: setUpName(best.setUp),
    bestSettingTested: usedSettings.has(settingText(best.setUp.setting)),
    bestProbability: best.probability,
    shareByThermometer: truth.outlook(byThermometer.setUp, culture).share,
    candidates: candidateRecords(responding, judged),
  };
}

/** Reading minus truth at 38 degC with the analysis's own correction applied. */
function errorLeft({ thermometer }: RespondingCase, { thermometers }: KitchenAnalysis): number {
  const at = 38;
  const correction = thermometers[0]?.corrections.find(({ reading }) => reading === at);
  if (correction === undefined) throw new Error("no correction told at 38 degC");
  return thermometer.error(at) + correction.correction;
}

const shifted = (culture: Culture, by: number): Culture => ({
  ...culture,
  low: (culture.low + by) as Culture["low"],
  high: (culture.high + by) as Culture["high"],
  ceiling: (culture.ceiling + by) as Culture["ceiling"],
});

/** Set-ups whose hold mean lies this much further from the window's middle than the nearest are none, degC. */
const outOfReach = 3;

/** Highest share over all set-ups, and the highest probability, which may be another's. */
function bestOffered({ truth }: RespondingCase, culture: Culture) {
  const middle = (culture.low + culture.high) / 2;
  const off = truth.setUps.map((setUp) =>
    Math.abs(truth.expectedHoldMean(setUp, culture.hours) - middle),
  );
  const nearest = off.reduce((a, b) => Math.min(a, b));
  const near = truth.setUps.filter((_, at) => off[at]! <= nearest + outOfReach);
  const found = near.map((setUp): { setUp: SetUp; share: number; probability: number } => {
    const { share, probability } = truth.outlook(setUp, culture);
    return { setUp, share, probability };
  });
  const best = found.reduce((a, b) => (b.share > a.share ? b : a));
  const probability = found.reduce((most, one) => Math.max(most, one.probability), 0);
  return { setUp: best.setUp, share: best.share, probability };
}

const candidatesPerCulture = 6;

/** Chances of some candidates that are not the one advised, each as likely to be looked at as the next. */
function candidateRecords(
  { truth, seed }: RespondingCase,
  { said, culture, candidates, at }: ToJudge,
): readonly CandidateRecord[] {
  const random = createRandom(seed, `study candidates of ${culture.id}`);
  const left = candidates.filter((one) => setUpName(one.setUp) !== nameOf(said));
  const records: CandidateRecord[] = [];
  while (records.length < candidatesPerCulture && left.length > 0) {
    const [one] = left.splice(random.integer(0, left.length - 1), 1);
    const { probability } = truth.outlook(one!.setUp, culture);
    const chance = one!.chances[at]!.probability;
    records.push({ basis: one!.basis, said: chance, trueProbability: probability });
  }
  return records;
}

const nameOf = ({ best }: CultureAdvice): string | null =>
  best === null ? null : setUpName(best.setUp);
