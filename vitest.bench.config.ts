import { defineConfig } from "vitest/config";

export default defineConfig({
  test: { include: ["tests/bench/**/*.bench.ts"], testTimeout: 900_000 },
});
