import { defineConfig } from "vitest/config";
import { plainReporter } from "./vitest.reporter.ts";

export default defineConfig({
  test: {
    include: ["tests/browser/**/*.test.ts"],
    env: { TZ: "UTC" },
    testTimeout: 120_000,
    hookTimeout: 300_000,
    fileParallelism: false,
    reporters: ["default", plainReporter],
  },
});
