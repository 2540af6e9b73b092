import { expect } from "vitest";
import type { MethodName, Output } from "../../shared-types/index.ts";
import type { MethodCase } from "./contract.suite.ts";

/** A row for each method of the first minutes and the look for a newer version. */
export const startCases = {
  "start.state": {
    good: () => ({}),
    // The ground's library has a recording of its own, and no demo.
    expectation: (value: Output<"start.state">) => expect(value).toMatchObject({ introduce: false, demoId: null }),
    refused: null,
  },
  "start.told": { good: () => ({ what: "news" }), expectation: (value) => expect(value).toEqual({}), refused: null },
  "update.setting": { good: () => ({}), expectation: (value) => expect(value).toEqual({ address: null }), refused: null },
  "update.set": {
    good: () => ({ address: "https://updates.invalid/roundwalk.json" }),
    expectation: (value) => expect(value).toEqual({ address: "https://updates.invalid/roundwalk.json" }),
    refused: [() => ({ address: "http://updates.invalid/roundwalk.json" }), "address-not-secure"],
  },
  // Nobody is asked where no address was given.
  "update.look": { good: () => ({ now: true }), expectation: (value) => expect(value).toBeNull(), refused: null },
} satisfies Partial<Record<MethodName, MethodCase>>;
