import type { FullResult, Reporter, Suite } from "@playwright/test/reporter";

/** Ends a run with one plain line that any script can read. */
export default class ClosingLine implements Reporter {
  #suite: Suite | undefined;

  onBegin(_config: unknown, suite: Suite): void {
    this.#suite = suite;
  }

  onEnd(result: FullResult): void {
    const tests = this.#suite?.allTests() ?? [];
    const skipped = tests.filter((test) => test.outcome() === "skipped").length;
    const failed = tests.filter((test) => test.outcome() === "unexpected").length || (result.status === "passed" ? 0 : 1);
    console.log(`playwright: ${tests.length - skipped - failed} passed, ${failed} failed, ${skipped} skipped`);
  }

  printsToStdio(): boolean {
    return true;
  }
}
