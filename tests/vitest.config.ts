import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

/** Two workers on two cores; tests of one file that run side by side start at most two kernels at a time. */
export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    dir: "tests",
    exclude: ["tests/bench/**"],
    maxWorkers: 2,
    maxConcurrency: 2,
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    globalSetup: "tests/built/setup.ts",
  },
});
