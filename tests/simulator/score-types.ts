/** How one simulated case fared: plain data, so that it travels between processes and into files. */
import type { ApplianceKind, Structure } from "./appliance-kinds.ts";

export const startDefinitions = [
  "start",
  "startFirstEntry",
  "startWithinHalfDegree",
  "startOwnRange",
] as const;
export type StartDefinition = (typeof startDefinitions)[number];

/** Why the readings did not come back as they were written; null where they did. */
export type ReadingFault =
  | { readonly kind: "problem"; readonly code: string }
  | { readonly kind: "crash"; readonly message: string }
  | { readonly kind: "no food probe" }
  | { readonly kind: "wrong readings"; readonly share: number }
  | { readonly kind: "lost readings"; readonly share: number };

export interface Answer {
  /** Minutes from the first reading; null where no hold was found. */
  readonly startMinute: number | null;
  readonly endMinute: number | null;
  readonly band: { readonly low: number; readonly high: number } | null;
  readonly verdict: "holds" | "misses" | "unproven";
  readonly probability: number;
}

export interface CaseScore {
  readonly seed: number;
  readonly dialectSeed: number;
  readonly dialect: string;
  /** Options that the file leaves open. */
  readonly dialectOptions: readonly string[];
  readonly description: string;
  readonly kind: ApplianceKind;
  readonly structure: Structure;
  readonly testHours: number;
  readonly byHand: boolean;
  readonly roomStated: boolean;
  readonly events: readonly string[];
  readonly errorLeft: number;
  readonly truth: {
    readonly starts: { readonly [Name in StartDefinition]: number | null };
    readonly endMinute: number;
    readonly endLeftRangeMinute: number;
    readonly band: { readonly low: number; readonly high: number } | null;
    readonly holds: boolean;
  };
  readonly fault: ReadingFault | null;
  readonly answer: Answer | null;
  /** The same through the built program; undefined where it was not run. */
  readonly program?: { readonly answer: Answer | null; readonly message: string };
}
