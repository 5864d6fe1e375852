/** The appliance in its room before anyone looks: the undisturbed run, and what it settles to. */
import { sampleAppliance } from "./appliance.ts";
import type { ApplianceKind, Structure, Variation } from "./appliance-kinds.ts";
import { sampleTestPlan, type TestPlan } from "./events.ts";
import { createRandom, type Random } from "./random.ts";
import { createRoom, type RoomCourse } from "./room.ts";
import { type Appliance, simulateRun, stepSeconds, type RunPlan, type Trace } from "./run.ts";
import { settledCourse, type Settled } from "./truth.ts";

export interface CaseChoice {
  /** Force one structure instead of drawing it. */
  readonly structure?: Structure;
  readonly variation?: Variation | null;
  /** Another run of the same appliance, thermometer and home; 0, or left out, is the first. */
  readonly night?: number;
  /** How far this run's level lies from the appliance's own, degC. */
  readonly runShift?: number;
}

/** What every night of a case has in common. */
const shared: ReadonlySet<string> = new Set(["world", "appliance", "room", "steps", "logger"]);

const daySeconds = 86_400;

export interface World {
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

export function sampleWorld(seed: number, attempt: number, choice: CaseChoice): World {
  const { night = 0, variation = null, runShift = 0 } = choice;
  const common = (label: string): Random => createRandom(seed, `${label} ${attempt}`);
  const stream = (label: string): Random =>
    night === 0 || shared.has(label)
      ? common(label)
      : createRandom(seed, `${label} ${attempt} night ${night}`);
  const draw = stream("world");
  const layered = draw.chance(0.35);
  const structure = choice.structure ?? (layered ? "layered" : "lumped");
  const firstEvening = draw.chance(0.85) ? draw.uniform(17, 23.5) : draw.uniform(0, 24);
  const evening = night === 0 ? firstEvening : stream("evening").uniform(17, 23.5);
  const day = draw.integer(18_993, 20_453); // 2022-01-01 to 2025-12-31
  const switchOnWallClock = ((day + 2 * night) * 1440 + Math.round(evening * 60)) * 60_000;
  const switchesOff = draw.chance(0.125);
  const canSwitchOff = (kind: ApplianceKind): boolean =>
    switchesOff && kind !== "unthermostatted" && kind !== "circulating bath";
  const roomRandom = stream("room");
  const room = createRoom(roomRandom, {
    fromSeconds: -30 * 3600,
    toSeconds: 90 * 3600,
    hourAtZero: evening,
    setbackChance: structure === "layered" ? 0.6 : 0.15,
    ...(variation === "stepped heating" ? { steps: stream("steps") } : {}),
    ...(night === 0 ? {} : { otherNight: stream("weather") }),
  });
  const own = sampleAppliance(stream("appliance"), structure, room.home, variation);
  const sampled = { ...own, appliance: shifted(own.appliance, runShift, own.target - room.home) };
  const first = sampleTestPlan(common("plan"), canSwitchOff(sampled.kind));
  // A program lasts as long every night.
  const plan =
    night === 0 ? first : { ...sampleTestPlan(stream("plan"), false), switchOff: first.switchOff };
  const fromSeconds = -Math.ceil((Math.max(0, -plan.logFrom) + 600) / stepSeconds) * stepSeconds;
  const runPlan: RunPlan = {
    fromSeconds,
    toSeconds: Math.max(plan.logTo, night === 0 ? 0 : latestStart) + 50 * 3600,
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

/** A later run is followed from hold starts up to here. */
export const latestStart = 20 * 3600;

/** The appliance with its level moved: the thermostat's, or, without one, the power's. */
function shifted(appliance: Appliance, by: number, aboveRoom: number): Appliance {
  if (by === 0) return appliance;
  const { control } = appliance;
  const moved =
    control.kind === "constant"
      ? { ...control, power: control.power * (1 + by / aboveRoom) }
      : { ...control, setpoint: control.setpoint + by };
  return { ...appliance, control: moved };
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
export function isPlausible({ run, settled, plan, room }: World): boolean {
  const at = Math.min(
    run.food.length - 1,
    Math.round((plan.logTo - run.fromSeconds) / stepSeconds),
  );
  const [low, high] = [settled.low[at]!, settled.high[at]!];
  return low > room.at(plan.logTo) + 3 && low > 20 && high < 52 && high - low < 5;
}
