/** With HOLDBAND_SEED every property test draws the same cases, so that a run can be repeated. */
const seed = Number(process.env["HOLDBAND_SEED"] ?? "");
if (Number.isInteger(seed) && seed > 0) {
  const { configureGlobal } = await import("fast-check");
  configureGlobal({ seed });
}

export {};
