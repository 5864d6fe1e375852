/** Draws one appliance with what stands in it, from physical sizes. */
import type { Control } from "./control.ts";
import type { Random } from "./random.ts";
import type { Appliance } from "./run.ts";
import { waterCapacityPerLitre, type Link, type Network } from "./thermal.ts";

export const applianceKinds = [
  "cooker",
  "plain bath",
  "circulating bath",
  "warming box",
  "unthermostatted",
] as const;
export type ApplianceKind = (typeof applianceKinds)[number];

/** "lumped": jars of one body, thermostats of every kind; "layered": jars of two bodies, sensor in the water or air. */
export type Structure = "lumped" | "layered";

export interface SampledAppliance {
  readonly kind: ApplianceKind;
  readonly structure: Structure;
  readonly container: "basin" | "jar";
  /** What the dial aims at, degC; the dial's error is already in the control. */
  readonly target: number;
  readonly appliance: Appliance;
}

/** Everything the control is drawn from: heat lost at the target and how fast things follow. */
interface Body {
  readonly target: number;
  readonly room: number;
  readonly heated: number;
  readonly bath: number;
  /** W/K, all ways out with the lid on. */
  readonly loss: number;
  /** J/K that the thermostat's cycle heats: all of it in water, air and walls only in a box. */
  readonly capacity: number;
  /** J/K of all bodies. */
  readonly wholeCapacity: number;
}

export function sampleAppliance(
  random: Random,
  structure: Structure,
  room: number,
): SampledAppliance {
  const kind = random.weighted<ApplianceKind>([
    ["cooker", 25],
    ["plain bath", 22],
    ["circulating bath", 16],
    ["warming box", 22],
    ["unthermostatted", 15],
  ]);
  const target = random.chance(0.12) ? random.uniform(26, 30) : random.uniform(30, 45);
  const container = kind === "warming box" || random.chance(0.6) ? "jar" : "basin";
  const { network, body } = sampleNetwork(random, { kind, structure, container, target, room });
  const sensorNode = kind === "cooker" && structure === "lumped" ? body.heated : body.bath;
  const appliance: Appliance = {
    network,
    control: sampleControl(random, kind, body, sensorNode === body.heated),
    sensor: { node: sensorNode, lagSeconds: random.logUniform(5, 60) },
    foodNode: network.capacities.length - 1,
    bathNode: body.bath,
  };
  return { kind, structure, container, target, appliance };
}

interface NetworkPlan {
  readonly kind: ApplianceKind;
  readonly structure: Structure;
  readonly container: "basin" | "jar";
  readonly target: number;
  readonly room: number;
}

/** Bodies in order: heater or jacket, bath (or a box's air and walls), then the jar's one or two. */
function sampleNetwork(random: Random, plan: NetworkPlan): { network: Network; body: Body } {
  const isBox = plan.kind === "warming box";
  const litres = isBox ? random.logUniform(0.4, 1.5) : random.logUniform(1, 12);
  const bath = isBox ? random.uniform(1500, 6000) : waterCapacityPerLitre * litres * 1.05;
  const jacket = isBox ? random.uniform(200, 600) : random.uniform(400, 1600);
  const jar = plan.container === "jar" ? sampleJar(random, plan, litres) : null;
  const capacities = [jacket, bath, ...(jar?.capacities ?? [])];
  const capacity = capacities.reduce((sum, item) => sum + item, 0);
  const lossHours =
    plan.kind === "unthermostatted" ? random.uniform(1.2, 4) : random.logUniform(2, 10);
  const loss = isBox ? random.uniform(0.4, 1.6) : capacity / (lossHours * 3600);
  const jacketShare = random.uniform(0.1, 0.5);
  const jacketLink = jacket / random.logUniform(50, 240);
  const network: Network = {
    capacities,
    links: [{ from: 0, to: 1, conductance: jacketLink }, ...(jar?.links ?? [])],
    losses: [loss * jacketShare, loss * (1 - jacketShare), ...(jar?.losses ?? [])],
    openLosses: [
      0,
      isBox ? random.uniform(4, 15) : random.uniform(1, 5),
      ...capacities.slice(2).map(() => 0),
    ],
    surface: isBox
      ? null
      : {
          node: 1,
          area: 0.012 * litres ** (2 / 3),
          coefficient: random.uniform(4, 10),
          leak: random.uniform(0, 0.05),
        },
    heated: 0,
  };
  return {
    network,
    body: {
      target: plan.target,
      room: plan.room,
      heated: 0,
      bath: 1,
      loss: loss + sum(jar?.losses ?? []),
      wholeCapacity: capacity,
      capacity: isBox ? jacket + bath : capacity,
    },
  };
}

const sum = (items: readonly number[]): number => items.reduce((total, item) => total + item, 0);

interface Jar {
  readonly capacities: readonly number[];
  readonly links: readonly Link[];
  readonly losses: readonly number[];
}

/** A jar in the bath or in the box's air; its lid may stand out into the room, so that it stands off from the bath. */
function sampleJar(random: Random, plan: NetworkPlan, bathLitres: number): Jar {
  const isBox = plan.kind === "warming box";
  const litres = isBox ? bathLitres : Math.min(bathLitres / 2, random.logUniform(0.2, 1.5));
  const heat = waterCapacityPerLitre * litres * 1.05;
  const followMinutes = isBox ? random.uniform(25, 75) : random.logUniform(6, 35);
  const inward = heat / (followMinutes * 60);
  const outward = isBox ? 0 : inward * random.weighted([[0, 1] as const, [0.03, 1], [0.1, 1]]);
  if (plan.structure === "lumped")
    return {
      capacities: [heat],
      links: [{ from: 1, to: 2, conductance: inward }],
      losses: [outward],
    };
  const shell = random.uniform(0.3, 0.6);
  const core = (heat * (1 - shell)) / (60 * random.logUniform(5, 25));
  return {
    capacities: [heat * shell, heat * (1 - shell)],
    links: [
      { from: 1, to: 2, conductance: inward },
      { from: 2, to: 3, conductance: core },
    ],
    losses: [outward, outward * 0.5],
  };
}

/** Control with the error of the dial in its setpoint. */
function sampleControl(
  random: Random,
  kind: ApplianceKind,
  body: Body,
  sensorIsHeated: boolean,
): Control {
  const setpoint = body.target + random.normal(0, 1);
  const lost = body.loss * (body.target - body.room);
  if (kind === "unthermostatted")
    return { kind: "constant", power: lost * random.uniform(0.9, 1.15) };
  const power = Math.max(lost / random.logUniform(0.05, 0.5), (body.wholeCapacity * 4) / 3600);
  const isProportional =
    kind === "circulating bath" || (kind === "warming box" && random.chance(0.25));
  if (isProportional) return proportional(random, setpoint, power);
  return {
    kind: "hysteresis",
    setpoint,
    power,
    width: sensorIsHeated ? random.logUniform(0.6, 8) : bathWidth(random, body, power, lost),
  };
}

const proportional = (random: Random, setpoint: number, power: number): Control => ({
  kind: "proportional-integral",
  setpoint,
  power,
  band: random.uniform(1, 6),
  integralSeconds: random.logUniform(600, 5400),
  integralLimit: random.chance(0.3) ? random.uniform(1, 1.5) : random.uniform(0.6, 1),
  noise: random.uniform(0, 0.05),
});

/** A width whose cycle, C width / lost / (1 - duty), lasts 5 to 90 min and swings the bath by 0.1 to 2.5 degC either way. */
function bathWidth(random: Random, body: Body, power: number, lost: number): number {
  const secondsPerDegree = body.capacity / lost / Math.max(0.1, 1 - lost / power);
  const narrowest = Math.max(0.2, 300 / secondsPerDegree);
  const widest = Math.max(narrowest * 1.01, Math.min(5, 5400 / secondsPerDegree));
  return random.chance(0.5)
    ? random.logUniform(narrowest, widest)
    : random.uniform(narrowest, widest);
}
