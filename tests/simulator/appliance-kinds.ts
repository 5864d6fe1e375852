/** What kinds of appliance there are, and how they are built inside. */
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

/**
 * What one case may have that the drawn population has not: a room heated in
 * steps (setback by night, boost in the morning), the lid lifted in the hours
 * nobody saw, the thermostat's sensor moved from jacket to water or from water
 * to jacket, jars that follow a box's air in hours.
 */
export const variations = ["stepped heating", "lid later", "sensor moved", "slow jars"] as const;
export type Variation = (typeof variations)[number];
