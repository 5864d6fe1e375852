/** Draws one appliance with what stands in it, from physical sizes. */
import type { ApplianceKind, Structure, Variation } from "./appliance-kinds.ts";
import { sampleControl, type Body } from "./control-sample.ts";
import type { Random } from "./random.ts";
import type { Appliance } from "./run.ts";
import { waterCapacityPerLitre, type Link, type Network } from "./thermal.ts";

export interface SampledAppliance {
  readonly kind: ApplianceKind;
  readonly structure: Structure;
  readonly container: "basin" | "jar";
  /** What the dial aims at, degC; the dial's error is already in the control. */
  readonly target: number;
  readonly appliance: Appliance;
}

export function sampleAppliance(
  random: Random,
  structure: Structure,
  room: number,
  variation: Variation | null = null,
): SampledAppliance {
  const drawn = random.weighted<ApplianceKind>([
    ["cooker", 25],
    ["plain bath", 22],
    ["circulating bath", 16],
    ["warming box", 22],
    ["unthermostatted", 15],
  ]);
  const kind = kindFor(drawn, variation);
  const target = random.chance(0.12) ? random.uniform(26, 30) : random.uniform(30, 45);
  const container = kind === "warming box" || random.chance(0.6) ? "jar" : "basin";
  const plan = { kind, structure, container, target, room, variation } as const;
  const { network, body } = sampleNetwork(random, plan);
  const isOnJacket = kind === "cooker" && structure === "lumped";
  const sensorNode = isOnJacket === (variation !== "sensor moved") ? body.heated : body.bath;
  const appliance: Appliance = {
    network,
    control: sampleControl(random, kind, body, sensorNode === body.heated),
    sensor: { node: sensorNode, lagSeconds: random.logUniform(5, 60) },
    foodNode: network.capacities.length - 1,
    bathNode: body.bath,
  };
  return { kind, structure, container, target, appliance };
}

/** Only boxes have jars in air, and only what has water has a sensor to move into or out of it. */
function kindFor(drawn: ApplianceKind, variation: Variation | null): ApplianceKind {
  if (variation === "slow jars") return "warming box";
  const isDry = drawn === "warming box" || drawn === "unthermostatted";
  return variation === "sensor moved" && isDry ? "plain bath" : drawn;
}

interface NetworkPlan {
  readonly kind: ApplianceKind;
  readonly structure: Structure;
  readonly container: "basin" | "jar";
  readonly target: number;
  readonly room: number;
  readonly variation: Variation | null;
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
  const [slowest, fastest] = plan.variation === "slow jars" ? [240, 90] : [75, 25];
  const followMinutes = isBox ? random.uniform(fastest, slowest) : random.logUniform(6, 35);
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
