import type { Reporter, TestModule } from "vitest/node";

/** Ends a run with why tests were left out, and with one plain line that any script can read. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(testModules: readonly TestModule[]): void {
    const reasons = new Set<string>();
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of testModules) {
      // A file that broke before its tests ran has none to count, and is a failure all the same.
      if (module.state() === "failed" && [...module.children.allTests("failed")].length === 0) count.failed += 1;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state !== "pending") count[state] += 1;
        // A suite that needs a program which is not there has the reason in its name.
        const reason = state === "skipped" ? /\((?:skipped|left out): (.+)\)/.exec(test.fullName)?.[1] : undefined;
        if (reason !== undefined) reasons.add(reason.replaceAll(/\s+/g, " "));
      }
    }
    for (const reason of reasons) console.log(`vitest, skipped: ${reason}`);
    console.log(`vitest: ${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
  }
}
