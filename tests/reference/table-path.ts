import { fileURLToPath } from "node:url";

/** The committed table. */
export const tablePath = fileURLToPath(
  new URL("../../reports/reference-values.md", import.meta.url),
);
