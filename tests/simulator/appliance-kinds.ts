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
