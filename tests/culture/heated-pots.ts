/**
 * Constructed pots of milk with a known truth, for the heating step's tests:
 * invented, no evidence of how any real pot behaves. Cooling is integrated with
 * physics the program does not fit: convection, steam, baths that warm, and
 * rates that change.
 */
import type { Thermometer } from "../../src/thermometer/thermometer.ts";
import { createRandom, type Random } from "../simulator/random.ts";

export interface PotLog {
  readonly minutes: Float64Array;
  /** As read by a perfect thermometer, with noise and display steps. */
  readonly celsius: Float64Array;
  readonly resolution: number;
}

export interface CoolingPot {
  readonly log: PotLog;
  /** Minute at which the pot truly came down to the level, however long after the log. */
  readonly truth: number;
  readonly level: number;
  readonly changeAt: number;
  /** Of the surroundings, as a person might say them. */
  readonly room: { readonly low: number; readonly high: number };
}

/** Saturation pressure over water, hPa (Magnus form, from memory). */
const steam = (celsius: number): number => 6.112 * Math.exp((17.62 * celsius) / (243.12 + celsius));

interface Course {
  /** The rate last changed then; what is still to come nobody can know. */
  readonly changeAt: number;
  /** degC a minute at a temperature and a minute. */
  readonly fall: (celsius: number, minute: number) => number;
}

const courseOf = (draw: Random, kind: PotKind, room: number): Course => {
  const constant = draw.logUniform(25, 150);
  const exponent = kind === "newton" ? 0 : draw.uniform(0.2, 0.33);
  const scale = 60 ** -exponent / constant;
  const open = kind === "open" ? draw.uniform(0.1, 0.6) / constant : 0;
  const changeAt = kind === "moved" ? draw.uniform(5, 40) : 0;
  const faster = draw.uniform(1.5, 5);
  const bath = draw.uniform(10, 22);
  return {
    changeAt,
    fall: (celsius, minute) => {
      const moved = kind === "moved" && minute >= changeAt;
      const around = moved ? bath + 0.02 * (minute - changeAt) : room;
      const above = celsius - around;
      const dry =
        (moved ? faster : 1) * scale * Math.sign(above) * Math.abs(above) ** (1 + exponent);
      return dry + 0.12 * open * Math.max(0, steam(celsius) - 12);
    },
  };
};

/** Newton's law; still air; still air with steam off an open pot; put into a bath after a while. */
export const potKinds = ["newton", "air", "open", "moved"] as const;
export type PotKind = (typeof potKinds)[number];

const stepMinutes = 0.05;

/** A pot that cools from about 90 degC; its log ends somewhere before it is down to the level. */
export const coolingPot = (seed: number, kind: PotKind): CoolingPot => {
  const draw = createRandom(seed, `cooling ${kind}`);
  const room = draw.uniform(15, 27);
  const course = courseOf(draw, kind, room);
  const level = draw.choice([43, 43, 39.5, 46]);
  const truth: number[] = [draw.uniform(86, 95)];
  while (truth.length < 60_000 && truth[truth.length - 1]! > level - 1) {
    const here = truth[truth.length - 1]!;
    truth.push(here - stepMinutes * course.fall(here, truth.length * stepMinutes));
  }
  const cross = truth.findIndex((value) => value < level) * stepMinutes;
  const seen = cross - course.changeAt;
  const interval = draw.choice([1 / 6, 0.5, 1, 2]);
  const shortest = Math.min(0.95 * seen, Math.max(4, 8 * interval));
  const until = course.changeAt + draw.uniform(shortest, 0.95 * seen);
  const log = logged(draw, truth, interval, until);
  return {
    log,
    truth: cross,
    changeAt: course.changeAt,
    level,
    room: { low: room - 2, high: room + 2 },
  };
};

const logged = (
  draw: Random,
  truth: readonly number[],
  interval: number,
  until: number,
): PotLog => {
  const resolution = draw.choice([0.01, 0.1, 0.1, 0.5]);
  const noise = draw.logUniform(0.01, 0.15);
  const count = Math.floor(until / interval) + 1;
  const minutes = Float64Array.from({ length: count }, (_, index) => index * interval);
  const celsius = minutes.map((minute) => {
    const value = truth[Math.round(minute / stepMinutes)]! + draw.normal(0, noise);
    return Math.round(value / resolution) * resolution;
  });
  return { minutes, celsius, resolution };
};

export interface HeatedPot {
  /** As its thermometer shows it. */
  readonly log: PotLog;
  /** Its thermometer is good to so much: a rectangle, or a standard uncertainty of 1 / 1.7 of it. */
  readonly accuracy: number;
  readonly specified: boolean;
  /** Minutes it truly stood at or above 90 degC without a break. */
  readonly truth: number;
}

/** Heated to about 90 degC, held for 7 to 18 min with a slow swing, then cooled; by a thermometer that is off. */
export const heatedPot = (seed: number): HeatedPot => {
  const draw = createRandom(seed, "heated");
  const rate = draw.logUniform(0.8, 6);
  const plateau = 90 + draw.normal(0.3, 0.6);
  const reached = (plateau - 20) / rate;
  const held = draw.uniform(7, 18);
  const swing = {
    size: draw.uniform(0, 0.6),
    period: draw.uniform(4, 15),
    phase: draw.uniform(0, 6),
  };
  const at = (minute: number): number => {
    const into = Math.min(1, Math.max(0, (minute - reached + 3) / 3));
    const wave = swing.size * into * Math.sin((2 * Math.PI * minute) / swing.period + swing.phase);
    const cooled = 1.2 * Math.max(0, minute - reached - held);
    return Math.min(20 + rate * minute, plateau) + wave - cooled;
  };
  const end = reached + held + 25;
  const truth = Array.from({ length: Math.ceil(end / stepMinutes) + 2 }, (_, index) =>
    at(index * stepMinutes),
  );
  const accuracy = draw.choice([0.3, 0.5, 1]);
  const specified = draw.chance(0.5);
  const offset = specified ? draw.uniform(-accuracy, accuracy) : draw.normal(0, accuracy / 1.7);
  const shown = truth.map((value) => value - offset);
  const log = logged(draw, shown, draw.choice([1 / 6, 0.5, 1]), end);
  return { log, accuracy, specified, truth: longestRun(truth, 90) * stepMinutes };
};

const longestRun = (values: readonly number[], level: number): number => {
  let [best, run] = [0, 0];
  for (const value of values) {
    run = value >= level ? run + 1 : 0;
    best = Math.max(best, run);
  }
  return best;
};

/** A constructed thermometer checked in melting ice alone, in steps of 0.1 degC. */
export const iceChecked: Thermometer = {
  resolution: 0.1,
  accuracy: null,
  checks: [{ kind: "ice", readings: [0.2, 0.3, 0.2], date: null, confirmed: false }],
};
