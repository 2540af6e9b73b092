import type { Reporter, TestModule } from "vitest/node";

/** Ends a run with one plain line that any script can read. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(testModules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of testModules) {
      // A file that broke before its tests ran has none to count, and is a failure all the same.
      if (module.state() === "failed" && [...module.children.allTests("failed")].length === 0) count.failed += 1;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state !== "pending") count[state] += 1;
      }
    }
    console.log(`vitest: ${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
  }
}
