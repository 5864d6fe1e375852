/** The appliance in its room before anyone looks: the undisturbed run, and what it settles to. */
import { sampleAppliance } from "./appliance.ts";
import type { ApplianceKind, Structure } from "./appliance-kinds.ts";
import { sampleTestPlan, type TestPlan } from "./events.ts";
import { createRandom, type Random } from "./random.ts";
import { createRoom, type RoomCourse } from "./room.ts";
import { simulateRun, stepSeconds, type RunPlan, type Trace } from "./run.ts";
import { settledCourse, type Settled } from "./truth.ts";

export interface CaseChoice {
  /** Force one structure instead of drawing it. */
  readonly structure?: Structure;
}

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
export function isPlausible({ run, settled, plan, room }: World): boolean {
  const at = Math.min(
    run.food.length - 1,
    Math.round((plan.logTo - run.fromSeconds) / stepSeconds),
  );
  const [low, high] = [settled.low[at]!, settled.high[at]!];
  return low > room.at(plan.logTo) + 3 && low > 20 && high < 52 && high - low < 5;
}
