/** One simulated water test as the person has it, with its truth. */
import type { ApplianceKind, Structure } from "./appliance-kinds.ts";
import type { CaseTruth } from "./case-truth.ts";
import type { SimulatedRequirement } from "./requirement.ts";

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
