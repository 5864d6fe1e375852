/** The test as the person sees it: disturbed, read by a logger, with what they can say about it. */
import type { SimulatedCase, SimulatedLog } from "./case-types.ts";
import { holdTruth, type CaseTruth, type Tested } from "./case-truth.ts";
import { sampleDisturbances, type Disturbances, type TestPlan } from "./events.ts";
import { probeCourse, readings, readingTimes, sampleLogger, type Logger } from "./logger.ts";
import type { Random } from "./random.ts";
import { sampleRequirement } from "./requirement.ts";
import type { RoomCourse } from "./room.ts";
import { simulateRun, type Spell, type Trace } from "./run.ts";
import { holdTimes, leavesRange, recoveredBy, truePhases } from "./truth.ts";
import type { World } from "./world.ts";

/** One night as it went and as it was logged; what is asked of it comes later. */
export interface ObservedNight {
  readonly tested: Tested;
  readonly truthOf: ReturnType<typeof holdTruth>;
  readonly log: SimulatedLog;
  /** Wall clock of the first reading, ms since 1970 as if in UTC. */
  readonly startWallClock: number;
}

/** @param role what a second probe measures; left out, it is drawn */
export function observedNight(
  world: World,
  logger: Logger,
  role?: "bath" | "room" | null,
): ObservedNight {
  const { stream, plan, run, settled } = world;
  const programEnd = Math.min(plan.switchOff, plan.logTo);
  const begun = holdTimes(run, settled, programEnd).start ?? programEnd;
  const happened = sampleDisturbances(stream("events"), {
    from: Math.max(begun, plan.logFrom),
    to: programEnd,
    logTo: plan.logTo,
  });
  const disturbances = asNoted(happened, logger);
  const hold = holdTimes(run, settled, disturbances.pulledAt ?? programEnd);
  const seen = disturbedRun(world, disturbances);
  const recovered = new Map(
    [...disturbances.lidOpen, ...disturbances.powerCuts].map((spell) => [
      spell[0],
      recoveredBy(seen, settled, spell, nextEvent(disturbances, spell, hold.end)),
    ]),
  );
  const phases = truePhases(plan, hold, disturbances, recovered);
  const leftRange = hold.end === plan.switchOff ? leavesRange(run, settled, hold.end) : hold.end;
  const tested = { run, seen, plan, hold, phases, leftRange };
  return {
    tested,
    truthOf: holdTruth(tested),
    log: logged(world, logger, seen, disturbances, role),
    startWallClock: world.switchOnWallClock + firstReading(plan, logger) * 1000,
  };
}

/** The test as the person sees it, and the truth behind it. */
export function observed(seed: number, world: World): SimulatedCase {
  const { stream, sampled, plan } = world;
  const logger = sampleLogger(stream("logger"));
  const { truthOf, log, startWallClock } = observedNight(world, logger);
  const draw = stream("requirement");
  const requirement = sampleRequirement(draw, truthOf.middle);
  const truth = truthOf.judge(requirement);
  const stated = draw.chance(0.5);
  const from = truth.verdictFromSeconds;
  const roomOption = stated ? ["--room", roomRange(draw, world.room, from, requirement.hours)] : [];
  return {
    seed,
    description: described(world, logger, truth),
    kind: sampled.kind,
    structure: sampled.structure,
    container: sampled.container,
    testHours: (plan.logTo - Math.max(0, plan.logFrom)) / 3600,
    roomStated: stated,
    errorLeft: logger.error + statedCorrection(logger),
    log,
    startWallClock,
    requirement,
    commandOptions: [
      ...requirement.options,
      ...logger.statement,
      "--run-to-run",
      "0",
      ...roomOption,
    ],
    truth,
  };
}

/** Who reads by hand reads with the probe in its place. */
const asNoted = (happened: Disturbances, { intervalSeconds }: Logger): Disturbances =>
  intervalSeconds === null ? { ...happened, probeOut: [], pulledAt: null } : happened;

const statedCorrection = ({ statement }: Logger): number =>
  Number(statement[0]?.split("--correction=")[1] ?? 0);

/** Readings by hand begin on a whole minute. */
const firstReading = (plan: TestPlan, logger: Logger): number =>
  logger.intervalSeconds === null ? Math.ceil(plan.logFrom / 60) * 60 : plan.logFrom;

function disturbedRun(world: World, disturbances: Disturbances): Trace {
  const { lidOpen, powerCuts } = disturbances;
  if (lidOpen.length + powerCuts.length === 0) return world.run;
  const plan = { ...world.runPlan, toSeconds: world.plan.logTo + 600, lidOpen, powerCuts };
  return simulateRun(world.sampled.appliance, plan, world.stream("control"));
}

const nextEvent = (disturbances: Disturbances, spell: Spell, end: number): number =>
  [...disturbances.lidOpen, ...disturbances.powerCuts]
    .map(([from]) => from)
    .filter((from) => from > spell[1])
    .reduce((first, from) => Math.min(first, from), end);

function logged(
  world: World,
  logger: Logger,
  seen: Trace,
  { probeOut, pulledAt }: Disturbances,
  role?: "bath" | "room" | null,
): SimulatedLog {
  const { plan, stream } = world;
  const times = readingTimes(stream("times"), logger, firstReading(plan, logger), plan.logTo);
  const out: Spell[] = [...probeOut, ...(pulledAt === null ? [] : [[pulledAt, Infinity] as const])];
  const shown = probeCourse(seen, seen.food, logger.lagSeconds, out);
  const celsius = readings(stream("readings"), logger, seen, shown, times);
  return {
    seconds: times.map((time) => time - times[0]!),
    celsius,
    second: secondProbe(world, logger, seen, times, role),
    resolution: logger.resolution,
    intervalSeconds: logger.intervalSeconds,
  };
}

function secondProbe(
  world: World,
  logger: Logger,
  seen: Trace,
  times: Float64Array,
  chosen?: "bath" | "room" | null,
): SimulatedLog["second"] {
  const random = world.stream("second probe");
  const drawn = random.weighted<"bath" | "room" | null>([
    ["bath", world.sampled.container === "jar" ? 12 : 0],
    ["room", 10],
    [null, 80],
  ]);
  const role = chosen === undefined ? (logger.intervalSeconds === null ? null : drawn) : chosen;
  if (role === null) return null;
  const own = { ...logger, error: random.uniform(-0.4, 0.4), scale: 0, glitches: 0, faults: [] };
  const shown = probeCourse(seen, seen[role], logger.lagSeconds, []);
  return { role, celsius: readings(random, own, seen, shown, times) };
}

/** What a person would say the room does over the culture's hours: the true range, a little wide, to 0.5 degC. */
export function roomRange(random: Random, room: RoomCourse, from: number, hours: number): string {
  let [low, high] = [Infinity, -Infinity];
  for (let time = from; time <= from + hours * 3600; time += 600) {
    low = Math.min(low, room.at(time));
    high = Math.max(high, room.at(time));
  }
  const wide = random.uniform(0, 1);
  return `${Math.floor((low - wide) * 2) / 2}..${Math.ceil((high + wide) * 2) / 2}`;
}

function described(world: World, logger: Logger, truth: CaseTruth): string {
  const { sampled, plan } = world;
  const rhythm = logger.intervalSeconds === null ? "by hand" : `every ${logger.intervalSeconds} s`;
  const events = truth.phases.flatMap(({ cause }) => (cause === undefined ? [] : [cause]));
  return [
    `${sampled.kind} (${sampled.structure}, ${sampled.container}) aimed at ${sampled.target.toFixed(1)} degC`,
    `${((plan.logTo - plan.logFrom) / 3600).toFixed(1)} h ${rhythm}`,
    `error ${logger.error.toFixed(2)} degC, resolution ${logger.resolution}`,
    ...events,
  ].join("; ");
}
