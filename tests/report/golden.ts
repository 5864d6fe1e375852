/**
 * Text kept beside the tests, compared byte for byte; `UPDATE_GOLDEN=1` writes it
 * anew. Kept as .txt, which no formatter touches.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";

export const expectGolden = (name: string, text: string): void => {
  const path = fileURLToPath(new URL(`golden/${name}`, import.meta.url));
  if (process.env["UPDATE_GOLDEN"] === "1") {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  expect(text).toBe(readFileSync(path, "utf8"));
};
