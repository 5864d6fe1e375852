/** With HOLDBAND_SEED every property test draws the same cases, so that a run can be repeated. */
const seed = Number(process.env["HOLDBAND_SEED"] ?? "");
if (Number.isInteger(seed) && seed > 0) {
  // Only then: loading it for every test file would cost more than most of them.
  await import("fast-check").then(({ configureGlobal }) => configureGlobal({ seed }));
}
