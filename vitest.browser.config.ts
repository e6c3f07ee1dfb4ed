import { defineConfig } from "vitest/config";
import { plainReporter } from "./vitest.reporter.ts";

export default defineConfig({
  test: {
    include: ["tests/browser/**/*.test.ts"],
    env: { TZ: "UTC" },
    testTimeout: 120_000,
    hookTimeout: 300_000,
    // What is looked at until it comes is looked at for its coming, not for its speed: that is the benchmarks' work.
    expect: { poll: { timeout: 15_000 } },
    fileParallelism: false,
    reporters: ["default", plainReporter],
  },
});
