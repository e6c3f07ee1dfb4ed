import type { Reporter, TestModule } from "vitest/node";

/** Closes a run with one plain line, so that any log reader can tell how many tests ran. */
export const plainReporter: Reporter = {
  onTestRunEnd(modules: readonly TestModule[]) {
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of modules) {
      const tests = [...module.children.allTests()];
      for (const test of tests) {
        const { state } = test.result();
        count[state === "pending" ? "skipped" : state] += 1;
      }
      if (module.state() === "failed" && tests.length === 0) count.failed += 1;
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : "";
    process.stdout.write(`\n${count.passed} passed, ${count.failed} failed${skipped}\n`);
  },
};
