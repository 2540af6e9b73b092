import { describe, expect, test } from "vitest";
import { countingRules, findCountsOff } from "../../../electron/analysis/claims/counted-off/index.ts";
import { frameSpeech } from "../../../electron/analysis/claims/framing/index.ts";
import { findMentions } from "../../../electron/analysis/claims/lexicon/find-mentions.ts";
import type { ZoneName } from "../../../shared-types/index.ts";
import { speechOf } from "../../support/speech-of.ts";

function countsIn(says: string, zone: ZoneName) {
  const speech = speechOf(says);
  return findCountsOff({
    speech,
    frames: frameSpeech(speech),
    mentions: findMentions(speech),
    zones: [{ zone, start: 0, end: speech.duration }],
  });
}

describe.for([...countingRules])("$name", (rule) => {
  test.for([...rule.examples])("$says", ({ says, zone, gives }) => {
    const counts = countsIn(says, zone).map(({ component, part, value, circumstance, rule: by }) => ({
      component,
      part,
      value,
      circumstance,
      rule: by,
    }));
    expect(counts).toEqual([{ ...gives, rule: rule.name }]);
  });

  test.for([...rule.quiet])("not: $says", ({ says, zone }) => {
    expect(countsIn(says, zone)).toEqual([]);
  });
});
