import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
    exclude: ["tests/e2e/**"],
    reporters: ["default", fileURLToPath(new URL("support/runner/vitest-closing-line.ts", import.meta.url))],
    // Two cores on the smallest machine the project is built on.
    maxWorkers: 2,
    // A busy machine is slow, not wrong: speed is measured by the bench alone.
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
