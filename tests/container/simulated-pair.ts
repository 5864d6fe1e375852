/** A jar in its bath on a simulated night, both read by loggers of their own, with the truth. */
import type { ResponseInput } from "../../src/container/fit-response.ts";
import { probeCourse, readings } from "../simulator/logger.ts";
import { createRandom, type Random } from "../simulator/random.ts";
import type { Trace } from "../simulator/run.ts";
import { holdTimes } from "../simulator/truth.ts";
import { isPlausible, sampleWorld, type World } from "../simulator/world.ts";
import { seriesOf } from "./courses.ts";

export interface SimulatedPair {
  readonly input: ResponseInput;
  /** Minutes; degC; a share. */
  readonly truth: { readonly lag: number; readonly offset: number; readonly share: number };
}

/**
 * The n-th night that has a jar of one body and a hold of 1.5 h or more. The
 * jar obeys C dF/dt = g (B - F) + l (R - F), so tau = C / (g + l) and
 * phi = l / (g + l); the offset is the mean of B - F over the hold.
 *
 * Loggers: every 5 s to 10 min, steps of 0.01 to 0.5 degC, noise to 0.1 degC;
 * probes that follow the water within 3 to 20 s; errors normal with the stated
 * standard uncertainties of 0.05 to 0.2 degC. Room: measured in half of the
 * nights, else its range over the hold stated to the degree.
 */
export const simulatedPairs = (count: number): readonly SimulatedPair[] => {
  const pairs: SimulatedPair[] = [];
  for (let seed = 1; pairs.length < count; seed += 1) {
    const world = sampleWorld(seed * 7 + 3, 0, { structure: "lumped" });
    if (!isPlausible(world) || world.sampled.container !== "jar") continue;
    const end = Math.min(world.plan.switchOff, world.plan.logTo);
    const { start } = holdTimes(world.run, world.settled, end);
    if (start === null || end - start < 5400) continue;
    pairs.push(pairOf(world, { start, end }, createRandom(seed, "simulated pair")));
  }
  return pairs;
};

interface HeldSeconds {
  readonly start: number;
  readonly end: number;
}

const pairOf = (world: World, hold: HeldSeconds, random: Random): SimulatedPair => {
  const { run, plan } = world;
  const interval = random.choice([5, 10, 30, 60, 120, 300, 600]);
  const resolution = random.choice([0.01, 0.05, 0.0625, 0.1, 0.1, 0.1, 0.25, 0.5]);
  const noise = random.uniform(0, 0.1);
  const times = Float64Array.from(
    { length: Math.floor((plan.logTo - plan.logFrom) / interval) },
    (_, i) => plan.logFrom + i * interval,
  );
  const probe = (role: "bath" | "food" | "room", error: number) => {
    const logger = { error, noise, resolution, ...unfailing };
    const shown = probeCourse(run, run[role], random.logUniform(3, 20), []);
    const celsius = readings(random, logger, run, shown, times);
    return seriesOf(role, { minutes: times.map((time) => time / 60), celsius }, resolution);
  };
  const uncertainties = {
    bath: random.choice([0.05, 0.1, 0.2]),
    food: random.choice([0.05, 0.1, 0.2]),
  };
  const held = heldTruth(run, hold);
  return {
    input: {
      bath: probe("bath", random.normal(0, uncertainties.bath)),
      food: probe("food", random.normal(0, uncertainties.food)),
      from: Math.max(0, plan.logFrom) / 60,
      hold: { fromMinute: hold.start / 60, toMinute: hold.end / 60 },
      room: random.chance(0.5) ? probe("room", random.normal(0, 0.1)) : held.roomRange,
      thermometers: uncertainties,
    },
    truth: { ...jarTruth(world), offset: held.offset },
  };
};

const unfailing = {
  lagSeconds: 0,
  intervalSeconds: null,
  statement: [],
  lostShare: 0,
  gap: false,
  glitches: 0,
  faults: [],
};

const jarTruth = ({ sampled }: World): { readonly lag: number; readonly share: number } => {
  const { capacities, links, losses } = sampled.appliance.network;
  const inward = links[1]!.conductance;
  const outward = losses[2]!;
  return {
    lag: capacities[2]! / (inward + outward) / 60,
    share: outward / (inward + outward),
  };
};

const heldTruth = (run: Trace, { start, end }: HeldSeconds) => {
  const index = (seconds: number) => Math.round((seconds - run.fromSeconds) / run.stepSeconds);
  const [first, last] = [index(start), index(end)];
  const room = run.room.subarray(first, last + 1);
  let sum = 0;
  for (let i = first; i <= last; i += 1) sum += run.bath[i]! - run.food[i]!;
  return {
    offset: sum / (last - first + 1),
    roomRange: {
      low: Math.floor(room.reduce((a, b) => Math.min(a, b))),
      high: Math.ceil(room.reduce((a, b) => Math.max(a, b))),
    },
  };
};
