/** All that truly happens in one case: its tested nights, and the run that the verdict is about. */
import { verdictTruth } from "../simulator/case-truth.ts";
import { sampleLogger, type Logger } from "../simulator/logger.ts";
import { observedNight, roomRange, type ObservedNight } from "../simulator/observe.ts";
import { createRandom } from "../simulator/random.ts";
import { sampleRequirement, type SimulatedRequirement } from "../simulator/requirement.ts";
import { simulateRun, type Spell, type Trace } from "../simulator/run.ts";
import { holdTimes, type HoldTimes } from "../simulator/truth.ts";
import { isPlausible, latestStart, sampleWorld, type World } from "../simulator/world.ts";
import { studyPlan, type StudyPlan } from "./plan.ts";
import { studyThermometer, type StudyThermometer } from "./thermometer.ts";

/** The run the verdict is about. */
export interface PromisedRun {
  readonly run: Trace;
  /** Hold start, seconds from its switch-on. */
  readonly from: number;
  readonly verdict: ReturnType<typeof verdictTruth>;
}

export interface StudyNights {
  readonly plan: StudyPlan;
  readonly worlds: readonly World[];
  readonly nights: readonly ObservedNight[];
  readonly logger: Logger;
  readonly thermometer: StudyThermometer;
  readonly requirement: SimulatedRequirement;
  readonly promised: PromisedRun;
  /** Range of the room over the promised hours as the person states it; null where they do not. */
  readonly statedRoom: string | null;
}

export function studyNights(seed: number): StudyNights {
  const plan = studyPlan(seed);
  const stream = (label: string) => createRandom(seed, `study ${label}`);
  const shifts = stream("runs");
  const first = firstWorld(seed, plan, shifts.normal(0, plan.runScatter));
  const night = (number: number): World =>
    sampleWorld(seed, first.attempt, {
      variation: plan.variation,
      night: number,
      runShift: shifts.normal(0, plan.runScatter),
    });
  const later = Array.from({ length: plan.tests - 1 }, (_, at) => night(at + 1));
  const worlds = [first.world, ...later];
  const drawn = sampleLogger(first.world.stream("logger"));
  const thermometer = studyThermometer(stream("thermometer"), plan.thermometer, drawn);
  const logger: Logger = { ...drawn, ...thermometer.faults, statement: [] };
  const role = plan.room === "recorded" ? "room" : null;
  const nights = worlds.map((world) => observedNight(world, logger, role));
  const draw = stream("requirement");
  const requirement = sampleRequirement(draw, nights[0]!.truthOf.middle);
  const begun = beginning(plan, first.world, nights[0]!, () => night(plan.tests));
  const run = withLid(plan, begun, requirement.hours, stream("lid"));
  const { from, world } = begun;
  return {
    plan,
    worlds,
    nights,
    logger,
    thermometer,
    requirement,
    promised: { run, from, verdict: verdictTruth(run, from, requirement) },
    statedRoom:
      plan.room === "stated" ? roomRange(draw, world.room, from, requirement.hours) : null,
  };
}

function firstWorld(
  seed: number,
  { variation }: StudyPlan,
  runShift: number,
): { readonly world: World; readonly attempt: number } {
  for (let attempt = 0; ; attempt += 1) {
    const world = sampleWorld(seed, attempt, { variation, runShift });
    if (isPlausible(world)) return { world, attempt };
  }
}

interface Beginning {
  readonly world: World;
  /** Hold start of the promised run, and up to when somebody was watching. */
  readonly from: number;
  readonly seenUntil: number;
}

const startOf = ({ start, startFirstEntry, end }: HoldTimes): number =>
  start ?? startFirstEntry ?? end;

function beginning(
  { promise }: StudyPlan,
  first: World,
  { tested }: ObservedNight,
  next: () => World,
): Beginning {
  if (promise === "this run")
    return { world: first, from: startOf(tested.hold), seenUntil: first.plan.logTo };
  const world = next();
  const end = Math.min(world.plan.switchOff, latestStart);
  const from = startOf(holdTimes(world.run, world.settled, end));
  return { world, from, seenUntil: from };
}

/** One to three times 1 to 6 minutes, somewhere in the hours that nobody saw. */
function withLid(
  { variation }: StudyPlan,
  { world, from, seenUntil }: Beginning,
  hours: number,
  random: ReturnType<typeof createRandom>,
): Trace {
  const to = from + hours * 3600;
  if (variation !== "lid later" || to - seenUntil < 3600) return world.run;
  const lidOpen = Array.from({ length: random.integer(1, 3) }, (): Spell => {
    const at = random.uniform(seenUntil, to - 600);
    return [at, at + random.uniform(60, 360)];
  });
  return simulateRun(
    world.sampled.appliance,
    { ...world.runPlan, lidOpen },
    world.stream("control"),
  );
}
