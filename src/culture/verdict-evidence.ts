import type { ProbeNight } from "../hold/hold.ts";
import type { CelsiusDifference } from "../quantity.ts";
import type { ThermometerStatement } from "../thermometer/budget.ts";

/** What is known of one probe's night beside the requirement itself. */
export interface VerdictEvidence {
  readonly night: ProbeNight;
  /** Smallest step of the readings, degC. */
  readonly resolution: number;
  readonly thermometer: ThermometerStatement;
  readonly runToRun: {
    readonly value: CelsiusDifference;
    readonly from: "measured" | "stated" | "assumed";
  };
  /** Room temperatures the batch may meet, degC. */
  readonly room: { readonly low: number; readonly high: number } | null;
  /** Whether the appliance has a thermostat; null, or left out, where nobody knows. */
  readonly thermostat?: boolean | null;
  /** Probability from which a verdict is `holds`; `misses` at one minus it. */
  readonly confidence: number;
}
