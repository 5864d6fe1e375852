/**
 * The population of simulated overnight water tests.
 *
 * Appliances: cookers with the thermostat on the jacket (25 %), plain baths
 * with it in the water (22 %), circulating baths under proportional-integral
 * control (16 %), warming boxes with it in the air (22 %), unthermostatted
 * warmers (15 %). Dial error: standard deviation 1 degC. Targets 26..45 degC.
 * Water 1..12 L in baths, jars of 0.2..1.5 L in 60 % of the baths and in every
 * box. Bath thermostats are drawn to cycle in 5..90 min and 0.1..2.5 degC
 * either way; measured over 73 plain baths: periods 11..98 min, peak to peak
 * 0.3..8.5 degC in the bath and 0.02..7 in the food, of which tests over
 * 5 degC in the food are drawn again. One test in eight with a thermostat has a program that switches
 * itself off.
 *
 * Structure: "lumped" (65 %) has jars of one body; "layered" (35 %) has jars
 * of two bodies, cookers with the sensor in the water, and a night setback of
 * the heating in 60 % of the rooms (15 % in lumped ones).
 *
 * Rooms: base 17..25 degC, falling 0.5..4 degC by night, slow wander. Switched
 * on between 17:00 and 23:30 in 85 % of tests, at any hour otherwise. Tests
 * last 7..14 h (70 %), 3..7 h (12 %) or 14..30 h (18 %). Logger started
 * 5..90 min before switch-on (15 %) or 10..50 min after it (4 %). Lid lifted
 * (13 %; half of these with the probe out), power cut (12 %), probe pulled out
 * before the end (13 %).
 *
 * Loggers: error within their stated accuracy of 0.1..1 degC (75 %), or a
 * correction with its standard uncertainty (25 %); lag 5..300 s, noise
 * 0..0.15 degC, resolution 0.01..0.5 degC, intervals 1 s..10 min; 8 % are six
 * to twelve looks by hand. Lost rows (12 %), a gap (5 %), one to five glitches
 * of 3..20 degC (12 %, at most one and a fiftieth of the readings), one to six
 * fault codes (10 %). A second probe in the bath (10 %) or the room (10 %).
 *
 * Requirements: window 2..6 degC wide, its middle normal about the tested
 * hold's mean with half the width as standard deviation, edges to 0.5 degC;
 * 8..48 h; a ceiling 0..3 degC above the window in 35 %. The room's range over
 * the culture's hours is stated, rounded outwards, in half of the cases.
 *
 * Verdict truth: the same run, continued undisturbed for the culture's hours
 * from the true hold start, in the same room going on through day and night; a
 * program that switches itself off does so and the food cools.
 */
import { sampleAppliance, type ApplianceKind, type Structure } from "./appliance.ts";
import type { Disturbances, TestPlan } from "./events.ts";
import { sampleDisturbances, sampleTestPlan } from "./events.ts";
import { probeCourse, readings, readingTimes, sampleLogger, type Logger } from "./logger.ts";
import { createRandom, type Random } from "./random.ts";
import { sampleRequirement, type SimulatedRequirement } from "./requirement.ts";
import { createRoom, type RoomCourse } from "./room.ts";
import { simulateRun, stepSeconds, type RunPlan, type Spell, type Trace } from "./run.ts";
import {
  holdTimes,
  leavesRange,
  recoveredBy,
  settledCourse,
  truePhases,
  type Settled,
} from "./truth.ts";
import { holdTruth, type CaseTruth } from "./case-truth.ts";

export interface SimulatedLog {
  /** From the first reading, strictly increasing. */
  readonly seconds: Float64Array;
  /** The food probe as read, degC; NaN where the cell holds a word. */
  readonly celsius: Float64Array;
  readonly second: { readonly role: "bath" | "room"; readonly celsius: Float64Array } | null;
  readonly resolution: number;
  /** Null for readings by hand. */
  readonly intervalSeconds: number | null;
}

export interface SimulatedCase {
  readonly seed: number;
  readonly description: string;
  readonly kind: ApplianceKind;
  readonly structure: Structure;
  readonly container: "basin" | "jar";
  readonly testHours: number;
  readonly roomStated: boolean;
  /** What the stated correction, if any, leaves of the thermometer's error: reading minus truth, degC. */
  readonly errorLeft: number;
  readonly log: SimulatedLog;
  /** Wall clock of the first reading, ms since 1970 as if in UTC. */
  readonly startWallClock: number;
  readonly requirement: SimulatedRequirement;
  /** Options of `check`, the window's among them. */
  readonly commandOptions: readonly string[];
  readonly truth: CaseTruth;
}

export interface CaseChoice {
  /** Force one structure instead of drawing it. */
  readonly structure?: Structure;
}

const daySeconds = 86_400;

/** One simulated test; the same seed always gives the same case. */
export function sampleCase(seed: number, choice: CaseChoice = {}): SimulatedCase {
  for (let attempt = 0; ; attempt += 1) {
    const world = sampleWorld(seed, attempt, choice);
    if (isPlausible(world)) return observed(seed, world);
  }
}

interface World {
  readonly stream: (label: string) => Random;
  readonly sampled: ReturnType<typeof sampleAppliance>;
  readonly room: RoomCourse;
  readonly plan: TestPlan;
  readonly switchOnWallClock: number;
  readonly runPlan: RunPlan;
  /** Undisturbed, on to the end of the longest culture. */
  readonly run: Trace;
  readonly settled: Settled;
}

function sampleWorld(seed: number, attempt: number, choice: CaseChoice): World {
  const stream = (label: string): Random => createRandom(seed, `${label} ${attempt}`);
  const draw = stream("world");
  const layered = draw.chance(0.35);
  const structure = choice.structure ?? (layered ? "layered" : "lumped");
  const evening = draw.chance(0.85) ? draw.uniform(17, 23.5) : draw.uniform(0, 24);
  const day = draw.integer(18_993, 20_453); // 2022-01-01 to 2025-12-31
  const switchOnWallClock = (day * 1440 + Math.round(evening * 60)) * 60_000;
  const switchesOff = draw.chance(0.125);
  const canSwitchOff = (kind: ApplianceKind): boolean =>
    switchesOff && kind !== "unthermostatted" && kind !== "circulating bath";
  const roomRandom = stream("room");
  const room = createRoom(roomRandom, {
    fromSeconds: -30 * 3600,
    toSeconds: 90 * 3600,
    hourAtZero: evening,
    setbackChance: structure === "layered" ? 0.6 : 0.15,
  });
  const sampled = sampleAppliance(stream("appliance"), structure, room.base);
  const plan = sampleTestPlan(stream("plan"), canSwitchOff(sampled.kind));
  const fromSeconds = -Math.ceil((Math.max(0, -plan.logFrom) + 600) / stepSeconds) * stepSeconds;
  const runPlan: RunPlan = {
    fromSeconds,
    toSeconds: plan.logTo + 50 * 3600,
    switchOn: 0,
    switchOff: plan.switchOff,
    powerCuts: [],
    lidOpen: [],
    initial: initialState(stream("initial"), sampled, room.at(fromSeconds)),
    room: room.at,
  };
  const run = simulateRun(sampled.appliance, runPlan, stream("control"));
  const twin = simulateRun(sampled.appliance, twinPlan(runPlan, sampled), stream("twin control"));
  const settled = settledCourse(run, twin);
  return { stream, sampled, room, plan, switchOnWallClock, runPlan, run, settled };
}

const twinPlan = (plan: RunPlan, { target, appliance }: World["sampled"]): RunPlan => ({
  ...plan,
  fromSeconds: plan.fromSeconds - daySeconds,
  switchOn: -Infinity,
  switchOff: Infinity,
  initial: appliance.network.capacities.map(() => target),
});

/** Everything near the room, or the water filled in warm, as most do where warming takes hours. */
function initialState(random: Random, sampled: World["sampled"], room: number): readonly number[] {
  const warm = random.chance(sampled.kind === "unthermostatted" ? 0.7 : 0.2);
  const filled = warm ? sampled.target - random.uniform(1, 8) : room + random.uniform(-4, 3);
  const isBox = sampled.kind === "warming box";
  return sampled.appliance.network.capacities.map((_, node) =>
    node === 0 || (isBox && node === 1) ? room : filled,
  );
}

/** Held warm enough to be a culture's appliance, and swinging no more than such appliances do. */
function isPlausible({ run, settled, plan, room }: World): boolean {
  const at = Math.min(
    run.food.length - 1,
    Math.round((plan.logTo - run.fromSeconds) / stepSeconds),
  );
  const [low, high] = [settled.low[at]!, settled.high[at]!];
  return low > room.at(plan.logTo) + 3 && low > 20 && high < 52 && high - low < 5;
}

/** The test as the person sees it, and the truth behind it. */
function observed(seed: number, world: World): SimulatedCase {
  const { stream, sampled, plan, run, settled } = world;
  const logger = sampleLogger(stream("logger"));
  const programEnd = Math.min(plan.switchOff, plan.logTo);
  const begun = holdTimes(run, settled, programEnd).start ?? programEnd;
  const disturbances = sampleDisturbances(stream("events"), {
    from: Math.max(begun, plan.logFrom),
    to: programEnd,
    logTo: plan.logTo,
  });
  const hold = holdTimes(run, settled, disturbances.pulledAt ?? programEnd);
  const seen = disturbedRun(world, disturbances);
  const recovered = new Map(
    [...disturbances.lidOpen, ...disturbances.powerCuts].map((spell) => [
      spell[0],
      recoveredBy(seen, settled, spell, nextEvent(disturbances, spell, hold.end)),
    ]),
  );
  const phases = truePhases(plan, hold, disturbances, recovered);
  const draw = stream("requirement");
  const leftRange = hold.end === plan.switchOff ? leavesRange(run, settled, hold.end) : hold.end;
  const tested = holdTruth({ run, seen, plan, hold, phases, leftRange });
  const requirement = sampleRequirement(draw, tested.middle);
  const truth = tested.judge(requirement);
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
    log: logged(world, logger, seen, disturbances),
    startWallClock: world.switchOnWallClock + firstReading(plan, logger) * 1000,
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
): SimulatedLog {
  const { plan, stream } = world;
  const times = readingTimes(stream("times"), logger, firstReading(plan, logger), plan.logTo);
  const out: Spell[] = [...probeOut, ...(pulledAt === null ? [] : [[pulledAt, Infinity] as const])];
  const shown = probeCourse(seen, seen.food, logger.lagSeconds, out);
  const celsius = readings(stream("readings"), logger, seen, shown, times);
  return {
    seconds: times.map((time) => time - times[0]!),
    celsius,
    second: secondProbe(world, logger, seen, times),
    resolution: logger.resolution,
    intervalSeconds: logger.intervalSeconds,
  };
}

function secondProbe(
  world: World,
  logger: Logger,
  seen: Trace,
  times: Float64Array,
): SimulatedLog["second"] {
  const random = world.stream("second probe");
  const role = random.weighted<"bath" | "room" | null>([
    ["bath", world.sampled.container === "jar" ? 12 : 0],
    ["room", 10],
    [null, 80],
  ]);
  if (role === null || logger.intervalSeconds === null) return null;
  const own = { ...logger, error: random.uniform(-0.4, 0.4), glitches: 0, faults: [] };
  const shown = probeCourse(seen, seen[role], logger.lagSeconds, []);
  return { role, celsius: readings(random, own, seen, shown, times) };
}

/** What a person would say the room does over the culture's hours: the true range, a little wide, to 0.5 degC. */
function roomRange(random: Random, room: RoomCourse, from: number, hours: number): string {
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
