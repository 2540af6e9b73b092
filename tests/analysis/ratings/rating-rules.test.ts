import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";
import { ratingRules } from "../../../electron/analysis/claims/ratings/index.ts";

function typesIn(says: string) {
  const captions = [{ index: 0, start: 0, end: 8, text: says }];
  return analyse({ format: "plain", captions, duration: 8 }, { stockSheet: null, recordedOn: null }).claims.filter(
    (claim) => claim.attribute === "type",
  );
}

describe.for(ratingRules.map((rule) => ({ name: rule.name, rule })))("$name", ({ rule }) => {
  test.for([...rule.examples])("reads “$says”", ({ says, gives }) => {
    expect(typesIn(says)).toContainEqual(expect.objectContaining({ ...gives, rule: rule.name }));
  });

  test.for([...rule.quiet])("reads nothing in “%s”", (says) => {
    expect(typesIn(says).filter((claim) => claim.rule === rule.name)).toEqual([]);
  });
});
