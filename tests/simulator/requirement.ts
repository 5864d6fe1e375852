/** What a culture asks, placed at random about what the appliance holds. */
import type { Random } from "./random.ts";

export interface SimulatedRequirement {
  readonly low: number;
  readonly high: number;
  readonly ceiling: number | null;
  readonly hours: number;
  readonly share: number;
  readonly options: readonly string[];
}

export function sampleRequirement(random: Random, middle: number): SimulatedRequirement {
  const width = random.uniform(2, 6);
  const centre = middle + random.normal(0, width / 2);
  const low = Math.round((centre - width / 2) * 2) / 2;
  const high = Math.max(low + 2, Math.round((centre + width / 2) * 2) / 2);
  const above = Math.round(random.uniform(0, 3) * 2) / 2;
  const ceiling = random.chance(0.35) ? high + above : null;
  const hours = random.choice([8, 10, 12, 12, 16, 18, 24, 24, 36, 48]);
  const options = ["--low", String(low), "--high", String(high), "--hours", String(hours)];
  const withCeiling = ceiling === null ? options : [...options, "--ceiling", String(ceiling)];
  return { low, high, ceiling, hours, share: 0.95, options: withCeiling };
}
