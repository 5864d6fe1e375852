/** The project's own answer to a case: by itself, or through a kitchen. */
import { analyse, type Analysis, type ProbeAnalysis } from "../../src/analysis.ts";
import type { Requirement, Verdict } from "../../src/culture/verdict-types.ts";
import { analyseKitchen } from "../../src/kitchen-analysis.ts";
import type { Outcome } from "../../src/problem.ts";
import { done } from "../../src/problem.ts";
import { celsius, celsiusDifference, fraction, hours } from "../../src/quantity.ts";
import { sourceOf } from "../kitchen-analysis/small-kitchen.ts";
import { studyKitchen } from "./kitchen.ts";
import { logText } from "./log-text.ts";
import type { StudyNights } from "./nights.ts";

export interface StudyAnswer {
  readonly verdict: Verdict;
  /** The food's probe of each test, in the order of the nights; null where a test could not be read. */
  readonly probes: readonly (ProbeAnalysis | null)[];
}

const share = 0.95;

export async function studyAnswer(nights: StudyNights): Promise<StudyAnswer | string> {
  try {
    return await (nights.plan.promise === "this run" ? byItself(nights) : inKitchen(nights));
  } catch (error) {
    return `crash: ${String(error)}`;
  }
}

const foodOf = ({ probes }: Analysis): ProbeAnalysis | undefined =>
  probes.find(({ series }) => series.role === "food");

async function byItself(study: StudyNights): Promise<StudyAnswer | string> {
  const { thermometer: known, statedRoom } = study;
  const night = study.nights[0]!;
  const source = sourceOf("night.csv", logText(night.log, night.startWallClock));
  const outcome: Outcome<Analysis> = await analyse(
    {
      version: "0",
      requirements: [requirementOf(study)],
      thermometer: {
        correction: celsiusDifference(known.correction),
        standardUncertainty: celsiusDifference(known.uncertainty ?? known.accuracy! / Math.sqrt(3)),
        from: "stated",
        accuracy: known.accuracy === null ? null : celsiusDifference(known.accuracy),
      },
      room: rangeOf(statedRoom),
      thermostat: saidThermostat(study),
      runToRun: 0,
      share,
      confidence: 0.95,
      shownUnit: "degC",
      reading: { roles: new Map(rolesOf(study)) },
    },
    [source],
  );
  if (!outcome.ok) return outcome.problem.code;
  const probe = foodOf(outcome.value);
  const verdict = probe?.verdicts[0];
  return verdict === undefined ? "no verdict" : { verdict, probes: [probe!] };
}

async function inKitchen(study: StudyNights): Promise<StudyAnswer | string> {
  const kitchen = studyKitchen(study, rangeOf(study.statedRoom), saidThermostat(study));
  const options = { version: "0", today: "2026-06-01", share, confidence: 0.95, appliance: null };
  const outcome = await analyseKitchen(kitchen, options, ({ path }) => {
    const night = study.nights[Number(path)]!;
    return Promise.resolve(done(sourceOf(path, logText(night.log, night.startWallClock))));
  });
  if (!outcome.ok) return outcome.problem.code;
  const verdict = outcome.value.setUps[0]?.verdicts[0];
  const probes = study.nights.map((_, at) => {
    const analysis = outcome.value.tests.find(({ test }) => test.id === String(at))?.analysis;
    return (analysis == null ? null : foodOf(analysis)) ?? null;
  });
  if (verdict !== undefined) return { verdict, probes };
  return outcome.value.tests.find(({ problem }) => problem !== null)?.problem?.code ?? "no verdict";
}

const saidThermostat = ({ plan, worlds }: StudyNights): boolean | null =>
  plan.saysThermostat ? worlds[0]!.sampled.kind !== "unthermostatted" : null;

const rangeOf = (text: string | null): { readonly low: number; readonly high: number } | null => {
  const ends = text?.split("..").map(Number);
  return ends === undefined ? null : { low: ends[0]!, high: ends[1]! };
};

const rolesOf = ({ plan }: StudyNights): readonly (readonly [string, "food" | "room"])[] =>
  plan.room === "recorded"
    ? [
        ["Jar", "food"],
        ["Air", "room"],
      ]
    : [["Jar", "food"]];

const requirementOf = ({ requirement }: StudyNights): Requirement => ({
  culture: "window",
  name: "",
  low: celsius(requirement.low),
  high: celsius(requirement.high),
  ceiling: requirement.ceiling === null ? null : celsius(requirement.ceiling),
  hours: hours(requirement.hours),
  share: fraction(share),
});
