import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

/** Files with tests that are shortened but in `npm run test:long`, which runs these files alone. */
function filesWithLong(): string[] {
  const names = readdirSync(new URL(".", import.meta.url), { encoding: "utf8", recursive: true });
  const usesLong = (name: string) =>
    /from "(?:\.\.\/)+long\.js"/u.test(readFileSync(new URL(name, import.meta.url), "utf8"));
  return names.filter((name) => name.endsWith(".test.ts") && usesLong(name));
}

/** Two workers on two cores; tests of one file that run side by side start at most two kernels at a time. */
export default defineConfig(({ mode }) => ({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    dir: "tests",
    exclude: ["tests/bench/**"],
    ...(mode === "long" && { include: filesWithLong(), env: { HAULBOOK_LONG: "1" } }),
    maxWorkers: 2,
    maxConcurrency: 2,
    isolate: false,
    // Tests wait for what happens; these limits end one that waits for ever, on a busy machine as well.
    testTimeout: 300_000,
    hookTimeout: 600_000,
    expect: { poll: { timeout: 60_000 } },
    globalSetup: "tests/built/setup.ts",
  },
}));
