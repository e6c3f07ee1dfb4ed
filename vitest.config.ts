import { defineConfig } from "vitest/config";
import { plainReporter } from "./vitest.reporter.ts";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/browser/**"],
    env: { TZ: "UTC" },
    testTimeout: 60_000,
    reporters: ["default", plainReporter],
  },
});
