/** One case of the study from its seed to its record. */
import type { ProbeAnalysis } from "../../src/analysis.ts";
import type { ObservedNight } from "../simulator/observe.ts";
import type { World } from "../simulator/world.ts";
import { studyAnswer, type StudyAnswer } from "./answer.ts";
import { centralBand, figuresOver, meanOf, rangeOf, stretch, trueDrift } from "./hold-truth.ts";
import { studyNights, type StudyNights } from "./nights.ts";
import type { FoundHold, NightRecord, StudyRecord } from "./record.ts";

export async function studyCase(seed: number): Promise<StudyRecord> {
  const study = studyNights(seed);
  const answer = await studyAnswer(study);
  const { plan, worlds, logger, requirement } = study;
  const { sampled } = worlds[0]!;
  const nights = study.nights.map((night, at) =>
    nightRecord(night, worlds[at]!, typeof answer === "string" ? null : answer.probes[at]!),
  );
  return {
    ...plan,
    seed,
    kind: sampled.kind,
    structure: plan.variation ?? sampled.structure,
    bodies: sampled.structure,
    container: sampled.container,
    control: sampled.appliance.control.kind,
    testHours: nights.reduce((longest, { hours }) => Math.max(longest, hours), 0),
    byHand: logger.intervalSeconds === null,
    switchesOff: worlds[0]!.plan.switchOff < Infinity,
    requirement: {
      low: requirement.low,
      high: requirement.high,
      ceiling: requirement.ceiling,
      hours: requirement.hours,
    },
    nights,
    truth: truthOf(study, nights[0]!.found),
    problem: typeof answer === "string" ? answer : null,
    answer: typeof answer === "string" ? null : answerOf(answer),
  };
}

function nightRecord(
  { tested, truthOf: { middle, judge }, startWallClock }: ObservedNight,
  { plan, switchOnWallClock }: World,
  probe: ProbeAnalysis | null,
): NightRecord {
  const found = probe === null ? null : foundHold(probe);
  const facts = judge({ low: 0, high: 100, ceiling: null, hours: 1, share: 0.95, options: [] });
  const first = (startWallClock - switchOnWallClock) / 1000;
  const { seen, phases } = tested;
  return {
    hours: (plan.logTo - Math.max(0, plan.logFrom)) / 3600,
    found,
    truth: {
      start: facts.startMinute,
      end: facts.endMinute,
      endLeftRange: facts.endLeftRangeMinute,
      mean: facts.band === null ? null : middle,
      band: facts.band,
      sameHours: figuresOver(seen, found === null ? [] : foundSpells(probe!, first)),
      drift:
        found === null
          ? null
          : trueDrift(seen, phases, first + found.start * 60, first + found.end * 60),
    },
    room: rangeOf(stretch(seen, seen.room, plan.logFrom, plan.logTo)),
    events: phases.flatMap(({ cause }) => cause ?? []),
  };
}

/** @param first reading, seconds from switch-on */
const foundSpells = ({ phases }: ProbeAnalysis, first: number) =>
  phases
    .filter(({ kind }) => kind === "hold")
    .map(({ fromMinute, toMinute }) => [first + fromMinute * 60, first + toMinute * 60] as const);

function foundHold({ night: { hold }, ...probe }: ProbeAnalysis): FoundHold | null {
  if (hold === null || probe.guardedBand === null) return null;
  const holds = probe.phases.filter(({ kind }) => kind === "hold");
  return {
    start: holds[0]?.fromMinute ?? hold.fromMinute,
    end: holds.at(-1)?.toMinute ?? hold.toMinute,
    hours: hold.hours,
    mean: hold.mean,
    band: hold.band,
    guarded: probe.guardedBand,
    standardUncertainty: probe.standardUncertainty!,
    drift: { perHour: hold.drift.perHour, low: hold.drift.low, high: hold.drift.high },
    swing: hold.swing?.peakToPeak ?? null,
  };
}

function truthOf(
  { promised: { run, from, verdict }, requirement }: StudyNights,
  found: FoundHold | null,
): StudyRecord["truth"] {
  const to = from + requirement.hours * 3600;
  const food = stretch(run, run.food, from, to);
  const tested = found === null ? null : stretch(run, run.food, from, from + found.hours * 3600);
  return {
    holds: verdict.holds,
    insideShare: verdict.insideShare,
    highest: verdict.highest,
    lowest: rangeOf(food).low,
    mean: meanOf(food),
    room: rangeOf(stretch(run, run.room, from, to)),
    asTested: tested === null ? null : { mean: meanOf(tested), band: centralBand(tested) },
  };
}

const answerOf = ({ verdict }: StudyAnswer): StudyRecord["answer"] => ({
  verdict: verdict.verdict,
  probability: verdict.probability,
  ceilingRisk: verdict.ceilingRisk,
  reasons: verdict.reasons.map(({ code }) => code),
  uncertainty: Object.fromEntries(
    verdict.uncertainty.map(({ source, standardUncertainty }) => [source, standardUncertainty]),
  ),
});
