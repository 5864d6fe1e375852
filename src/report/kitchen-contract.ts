/**
 * `report --json`, contract version 1 of kind "kitchen": thermometers, set-ups
 * with their verdicts, and each test with the probes of `check --json`.
 * Temperatures in degC, times in minutes from the first reading. Fields may be
 * added, none renamed or dropped.
 */
import type {
  KitchenAnalysis,
  ProbeResponse,
  SetUpAnalysis,
  TestAnalysis,
  ThermometerAnalysis,
} from "../kitchen-analysis-types.ts";
import type { SetUp } from "../kitchen/kitchen.ts";
import { problemText } from "../problem.ts";
import { adviceEntry } from "./advice-contract.ts";
import {
  contractVersion,
  fileEntry,
  finite,
  noticeEntry,
  probeEntry,
  rounded,
  verdictEntry,
  writing,
} from "./contract.ts";
import { reasonContext } from "./kitchen-page.ts";
import { dateAndClock } from "./time-text.ts";
import { checkQuestionText } from "./wording/check-questions.ts";

export const thermometerEntry = ({
  thermometer,
  model,
  corrections,
  doubts,
  questions,
  checked,
}: ThermometerAnalysis) => ({
  id: thermometer.id,
  name: thermometer.name,
  resolution: thermometer.resolution,
  accuracy: thermometer.accuracy,
  checks: thermometer.checks.length,
  checked: checked === null ? null : { ...checked },
  from: model.from,
  line: { centre: model.centre, correction: model.correction, slope: model.slope },
  doubts: doubts.parts.map((part) => ({ ...part })),
  doubtsAt: doubts.reading,
  corrections: corrections.map((one) => ({
    ...one,
    // null: as many as one likes, for the doubt's size is taken as known (JCGM 100:2008, G.4.3).
    degreesOfFreedom: finite(one.degreesOfFreedom),
  })),
  questions: questions.map((question) => ({
    ...question,
    text: checkQuestionText(question, writing),
  })),
});

const setUpEntry = ({ appliance, setting, container }: SetUp) => ({
  appliance,
  setting: { ...setting },
  container,
});

const judgedEntry = (analysis: KitchenAnalysis, one: SetUpAnalysis) => ({
  ...setUpEntry(one.setUp),
  tests: [...one.testIds],
  mean: one.mean,
  runToRun: { ...one.runToRun },
  verdicts: one.verdicts.map((verdict) =>
    verdictEntry(verdict, reasonContext({ analysis, writing }, one)),
  ),
});

const responseEntry = ({ food, bath, response }: ProbeResponse) => ({ food, bath, ...response });

const testEntry = ({ test, startedAt, analysis, problem, responses }: TestAnalysis) => ({
  id: test.id,
  ...setUpEntry(test),
  startedAt: dateAndClock(startedAt, 0),
  problem: problem === null ? null : { code: problem.code, text: problemText(problem) },
  paths: test.files.map(({ path }) => path),
  files: analysis === null ? [] : analysis.files.map(fileEntry),
  probes: analysis === null ? [] : analysis.probes.map((probe) => probeEntry(probe, analysis)),
  responses: responses.map(responseEntry),
  notices: analysis === null ? [] : analysis.notices.map(noticeEntry),
});

/** Plain data, ready for JSON.stringify. */
export const toKitchenContract = (analysis: KitchenAnalysis) =>
  rounded({
    holdband: analysis.version,
    contract: contractVersion,
    kind: "kitchen" as const,
    thermometers: analysis.thermometers.map(thermometerEntry),
    appliances: analysis.kitchen.appliances.map(({ id, name, kind }) => ({
      id,
      name,
      kind,
      tests: analysis.kitchen.tests.filter(({ appliance }) => appliance === id).length,
    })),
    containers: analysis.kitchen.containers.map(({ id, name, stands }) => ({ id, name, stands })),
    setUps: analysis.setUps.map((one) => judgedEntry(analysis, one)),
    tests: analysis.tests.map(testEntry),
    advice: adviceEntry(analysis),
    notices: analysis.notices.map(noticeEntry),
    share: analysis.share,
    confidence: analysis.confidence,
  });

export type KitchenContract = ReturnType<typeof toKitchenContract>;
