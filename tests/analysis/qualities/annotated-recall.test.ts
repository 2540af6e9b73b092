import { describe, expect, test } from "vitest";
import { frameSpeech } from "../../../electron/analysis/claims/framing/index.ts";
import { findMentions } from "../../../electron/analysis/claims/lexicon/find-mentions.ts";
import { findQualityClaims } from "../../../electron/analysis/claims/qualities/index.ts";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import { findZones } from "../../../electron/analysis/zones/find-zones.ts";
import { type AnnotatedCase, readCases } from "../../corpus/read-cases.ts";

// What a careful person annotated in the development walkarounds (fixtures/corpus/dev, origin beside them).
const cases = readCases(new URL("../../../fixtures/corpus/dev", import.meta.url).pathname);
const qualities = new Set(["type", "material", "color", "presence", "condition", "originality"]);

/** Floors only rise. Shares of annotated claims for which a claim of the same component, attribute and value is made at that caption. */
const recallFloor = 0.9;

function plain(value: string | number): string {
  // British and American spellings are one; a shade is not part of a color's name.
  return String(value)
    .toLowerCase()
    .replace("grey", "gray")
    .replace("colour", "color")
    .replace("aluminium", "aluminum")
    .replace(/^(?:dark|light) /, "")
    .replace(/[\s-]/g, "");
}

function claimsOf({ transcript }: AnnotatedCase) {
  const speech = hearSpeech(transcript);
  return findQualityClaims({ speech, frames: frameSpeech(speech), mentions: findMentions(speech), zones: findZones(speech) });
}

test(`makes at least ${recallFloor * 100} % of the annotated claims without a number`, () => {
  const missed: string[] = [];
  let annotated = 0;
  for (const one of cases) {
    const claims = claimsOf(one);
    for (const gold of one.gold.claims) {
      if (!qualities.has(gold.attribute)) continue;
      annotated++;
      const made = claims.some(
        (claim) =>
          claim.captions.includes(gold.i) &&
          claim.component === gold.component &&
          claim.attribute === gold.attribute &&
          plain(claim.value) === plain(gold.value),
      );
      if (!made) missed.push(`${one.gold.id} caption ${gold.i}: ${gold.component} ${gold.attribute} ${gold.value} ("${gold.quote}")`);
    }
  }
  expect(annotated).toBeGreaterThan(200);
  expect(1 - missed.length / annotated, missed.join("\n")).toBeGreaterThanOrEqual(recallFloor);
});

describe.each(cases.map((one) => [one.gold.id, one] as const))("%s", (_id, one) => {
  const claims = claimsOf(one);
  const conflicts = one.gold.conflicts.filter((conflict) => qualities.has(conflict.kind));
  // Some walkarounds have no such conflict; they are held by the recall above and the comparison's own tests.
  if (conflicts.length > 0)
    test("has both sides of every annotated conflict of these kinds", () => {
      for (const conflict of conflicts) {
        for (const side of conflict.sides) {
          const said = claims.filter(
            (claim) => claim.attribute === conflict.kind && claim.captions.some((caption) => side.at.includes(caption)),
          );
          expect(
            said.map((claim) => plain(claim.value)),
            `${conflict.topic}, side ${side.value}`,
          ).toContain(plain(side.value));
        }
      }
    });

  test("quotes every claim word for word", () => {
    for (const claim of claims) {
      const written = claim.spans.map((span) => one.transcript.captions[span.caption]!.text.slice(span.start, span.end)).join(" ");
      expect(claim.quote).toBe(written);
      expect(claim.quote).not.toBe("");
      expect(claim.end).toBeGreaterThanOrEqual(claim.start);
    }
  });
});
