/** Containers whose food follows the bath in a known way. */
import type { ApplianceKind, Container, ContainerStand } from "../../src/kitchen/kitchen.ts";
import type { Random } from "./random.ts";

export interface RespondingContainer {
  readonly container: Container;
  /** Share of bath minus room by which food stands below the bath. */
  readonly shareLost: number;
  readonly lagMinutes: number;
}

/** Water is poured into a bath, and nobody pours food into a box. */
const sensible: { readonly [Kind in ApplianceKind]: readonly ContainerStand[] } = {
  cooker: ["basin", "jars in water", "jars in air"],
  "water bath": ["basin", "jars in water"],
  "circulating bath": ["basin", "jars in water"],
  "warming box": ["jars in water", "jars in air"],
  other: ["jars in water", "jars in air"],
};

/** One to three that suit the appliance, the one the person thinks of first in front. */
export function sampleRespondingContainers(
  random: Random,
  kind: ApplianceKind,
): readonly RespondingContainer[] {
  const stands = [...sensible[kind]];
  const count = random.integer(1, stands.length);
  return Array.from({ length: count }, () => {
    const [stand] = stands.splice(random.integer(0, stands.length - 1), 1);
    return sampledContainer(random, stand!);
  });
}

/** Ranges are common practice, no source. */
function sampledContainer(random: Random, stands: ContainerStand): RespondingContainer {
  const container: Container = {
    id: stands.replaceAll(" ", "-"),
    name: stands,
    stands,
    volume: stands === "basin" ? 2 : 0.5,
    count: stands === "basin" ? 1 : 4,
    changedOn: null,
  };
  if (stands === "basin")
    return { container, shareLost: random.uniform(0, 0.005), lagMinutes: random.uniform(1, 3) };
  const inWater = stands === "jars in water";
  return {
    container,
    shareLost: inWater ? random.uniform(0, 0.05) : random.uniform(0.02, 0.15),
    lagMinutes: inWater ? random.logUniform(5, 25) : random.logUniform(30, 120),
  };
}
