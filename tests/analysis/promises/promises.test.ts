import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";
import { type PromiseRule, promiseRules } from "../../../electron/analysis/promises/promise-rules.ts";
import type { SpokenPromise } from "../../../shared-types/index.ts";

function promisesIn(text: string): SpokenPromise[] {
  const captions = [{ index: 0, start: 0, end: 10, text }];
  return analyse({ format: "plain", captions, duration: 10 }, { stockSheet: null, recordedOn: null }).promises;
}

const rules: readonly PromiseRule[] = promiseRules;

describe.for(rules.map((rule) => ({ ...rule, title: rule.name })))("$title", ({ kind, examples, quiet }) => {
  test.for(examples.map((text) => ({ text })))("hears “$text”", ({ text }) => {
    expect(promisesIn(text).map((promise) => promise.kind)).toContain(kind);
  });
  test.for(quiet.map((text) => ({ text })))("is quiet on “$text”", ({ text }) => {
    expect(promisesIn(text).filter((promise) => promise.kind === kind)).toEqual([]);
  });
});

describe("wording of claims", () => {
  // UCC 2-313 and the note to it at oranburg.law/K/rules/ucc-2-313: statements of fact are checked, praise is not, hedges need their source.
  test.for([
    { text: "it's a 1969", kinds: [] },
    { text: "these are new tires", kinds: [] },
    { text: "it was rebuilt in 2019", kinds: [] },
    { text: "it's gorgeous", kinds: ["opinion"] },
    { text: "it runs like a dream", kinds: ["opinion"] },
    { text: "it's the best in the state", kinds: ["opinion"] },
    { text: "I believe it's the original engine", kinds: ["hedged-fact"] },
  ])("“$text”", ({ text, kinds }) => {
    expect(promisesIn(text).map(({ kind }) => kind)).toEqual(kinds);
  });

  test("another vehicle's promises are not ours", () => {
    expect(promisesIn("my brother's truck never leaked a drop").filter(({ kind }) => kind === "absolute")).toEqual([]);
  });

  test("each names its words as they stand, its reason and the published rule", () => {
    const [promise] = promisesIn("Well, I guarantee it won't leak on you.");
    expect(promise).toMatchObject({ quote: "I guarantee it won't leak on you", kind: "warranty", rule: { source: "UCC 2-313(1), (2)" } });
    expect(promise?.why).not.toBe("");
  });
});
