/** One simulated kitchen the whole way: logger texts, analysis, advice, and all of it against the truth. */
import type { ApplianceAdvice } from "../../src/advice/advice-types.ts";
import { analyseKitchen, type KitchenOptions } from "../../src/kitchen-analysis.ts";
import type { KitchenAnalysis } from "../../src/kitchen-analysis-types.ts";
import { createRandom } from "../simulator/random.ts";
import { sampleRespondingCase, type RespondingCase } from "../simulator/responding-case.ts";
import { leastShare } from "../simulator/responding-truth.ts";
import { answerRecords } from "./study-answers.ts";
import { levelRecords } from "./study-levels.ts";
import type { CaseRecord } from "./study-record.ts";

const options: KitchenOptions = {
  version: "0.0.0",
  today: "2026-06-01",
  share: leastShare,
  confidence: 0.95,
  appliance: null,
};

export async function analyseCase(responding: RespondingCase): Promise<KitchenAnalysis> {
  const outcome = await analyseKitchen(responding.kitchen, options, responding.open);
  if (!outcome.ok) throw new Error(outcome.problem.code);
  return outcome.value;
}

export async function studyCase(seed: number): Promise<CaseRecord> {
  const responding = sampleRespondingCase(seed);
  const begun = performance.now();
  const analysis = await analyseCase(responding);
  const milliseconds = performance.now() - begun;
  const advice = adviceOf(analysis);
  const { appliance, kitchen, thermometer } = responding;
  return {
    seed,
    kind: appliance.kind,
    control: appliance.response.control.kind,
    thermostatted: appliance.thermostatted,
    checked: thermometer.thermometer.checks.length > 0,
    roomStated: kitchen.room !== null,
    tests: kitchen.tests.length,
    usedTests: advice.tests.length,
    levels: levelRecords(createRandom(seed, "study levels"), responding, advice),
    answers: answerRecords(responding, analysis, advice),
    milliseconds,
  };
}

function adviceOf({ advice }: KitchenAnalysis): ApplianceAdvice {
  const [only] = advice.appliances;
  if (only === undefined) throw new Error("no advice on the only appliance");
  return only;
}
