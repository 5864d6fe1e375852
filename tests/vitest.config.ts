import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    dir: "tests",
    setupFiles: ["tests/fixed-seed.ts"],
    // Some tests run the whole program, pack it, or open a page.
    testTimeout: 60_000,
  },
});
