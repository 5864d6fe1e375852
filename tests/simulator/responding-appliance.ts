/** An appliance with a known response: what its bath does for every setting and room. */
import { applianceKinds, type ApplianceKind } from "../../src/kitchen/kitchen.ts";
import type { Random } from "./random.ts";
import { sampleRespondingControl, type RespondingControl } from "./responding-control.ts";

export interface BathSwing {
  readonly peakToPeak: number;
  readonly periodMinutes: number;
  /** Of the period, rising; null for a sine. */
  readonly risingShare: number | null;
}

export interface RespondingAppliance {
  readonly kind: ApplianceKind;
  readonly response: RespondingControl;
  readonly thermostatted: boolean;
  /** Whether the kitchen says so. */
  readonly thermostatKnown: boolean;
  /** degC of the bath per degC of the room. */
  readonly roomShare: number;
  /** Behind which the bath feels the room. */
  readonly roomLagMinutes: number;
  /** Of the bath; null without a thermostat. */
  readonly swing: BathSwing | null;
  /** Standard deviation of one run's bath level about the response, degC. */
  readonly runDeviation: number;
  /** A thermostat's ramp, degC per hour; or the time constant of one without, minutes. */
  readonly warmUp: { readonly ramp: number } | { readonly lagMinutes: number };
}

const unthermostattedChance = { fixed: 0.35, programs: 0.15, marks: 0.25, steps: 0 } as const;

export function sampleRespondingAppliance(random: Random): RespondingAppliance {
  const kind = random.weighted(applianceKinds.map((one) => [one, kindWeights[one]] as const));
  const response = sampleRespondingControl(random, kind);
  const thermostatted = !random.chance(unthermostattedChance[response.control.kind]);
  const lagMinutes = random.logUniform(60, 180);
  return {
    kind,
    response,
    thermostatted,
    thermostatKnown: random.chance(0.7),
    roomShare: thermostatted ? random.uniform(0, 0.1) : random.uniform(0.7, 1),
    roomLagMinutes: thermostatted ? random.logUniform(20, 90) : lagMinutes,
    swing: thermostatted ? sampledSwing(random, kind) : null,
    runDeviation: sampledRunDeviation(random),
    warmUp: thermostatted ? { ramp: random.logUniform(8, 40) } : { lagMinutes },
  };
}

const kindWeights: { readonly [Kind in ApplianceKind]: number } = {
  cooker: 28,
  "water bath": 20,
  "circulating bath": 16,
  "warming box": 22,
  other: 14,
};

/** Peak to peak in the bath, degC (common practice, no source). */
const swingRange: { readonly [Kind in ApplianceKind]: readonly [number, number] } = {
  cooker: [0.3, 2.5],
  "water bath": [0.1, 1.5],
  "circulating bath": [0.05, 0.3],
  "warming box": [0.2, 2.5],
  other: [0.05, 2.5],
};

const sampledSwing = (random: Random, kind: ApplianceKind): BathSwing => ({
  peakToPeak: random.logUniform(...swingRange[kind]),
  periodMinutes: random.logUniform(5, 90),
  risingShare: random.chance(0.5) ? random.uniform(0.2, 0.8) : null,
});

/** Log-normal about 0.15, drawn again outside 0.05 to 0.4. */
function sampledRunDeviation(random: Random): number {
  const drawn = Math.exp(random.normal(Math.log(0.15), 0.5));
  return drawn >= 0.05 && drawn <= 0.4 ? drawn : sampledRunDeviation(random);
}
