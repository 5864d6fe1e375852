import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    dir: "tests",
    setupFiles: ["tests/fixed-seed.ts"],
    // Some tests run the whole program, pack it, or open a page.
    testTimeout: 60_000,
    // Files share their modules, which hold no state of their own; and every processor is used.
    isolate: false,
    maxWorkers: "100%",
  },
});
