import { describe, expect, test } from "vitest";
import { frameSpeech } from "../../../electron/analysis/claims/framing/index.ts";
import { findMentions } from "../../../electron/analysis/claims/lexicon/find-mentions.ts";
import { colorExamples, colorQuiet } from "../../../electron/analysis/claims/qualities/color-words.ts";
import { findQualityClaims, qualityRules } from "../../../electron/analysis/claims/qualities/index.ts";
import type { QualityExample } from "../../../electron/analysis/claims/qualities/quality-rule.ts";
import type { Claim, ZoneName } from "../../../shared-types/index.ts";
import { speechOf } from "../framing/speech-of.ts";

// What the words mean is common practice of the trade (no published source), as each table says.

function claimsOf(says: string, zone: ZoneName = "opening"): Claim[] {
  const speech = speechOf(says);
  return findQualityClaims({
    speech,
    frames: frameSpeech(speech),
    mentions: findMentions(speech),
    zones: [{ zone, start: 0, end: speech.duration }],
  });
}

function given(example: QualityExample, attribute: string): Claim[] {
  return claimsOf(example.says, example.zone).filter(
    (claim) => claim.attribute === attribute && Object.entries(example.gives).every(([key, value]) => claim[key as keyof Claim] === value),
  );
}

const rows = qualityRules.map((rule, index) => [`${index} ${rule.name}`, rule] as const);

describe.each(rows)("%s", (_name, rule) => {
  test("reads its example", () => {
    expect(given(rule.example, rule.attribute), JSON.stringify(claimsOf(rule.example.says, rule.example.zone))).not.toEqual([]);
  });
  if (rule.whenDenied) {
    const denied = rule.whenDenied;
    test("reads its denial", () => {
      expect(given(denied, rule.attribute), JSON.stringify(claimsOf(denied.says, denied.zone))).not.toEqual([]);
    });
  }
  test.each(rule.quiet.map((says) => [says]))("stays quiet: %s", (says) => {
    expect(claimsOf(says, rule.example.zone).filter((claim) => claim.rule === rule.name)).toEqual([]);
  });
});

describe("colors", () => {
  test.each(colorExamples.map((row) => [row.says, row] as const))("%s", (_says, row) => {
    const colors = claimsOf(row.says).filter((claim) => claim.attribute === "color");
    expect(colors.map((claim) => [claim.component, claim.value])).toContainEqual([row.component, row.value]);
  });
  test.each(colorQuiet.map((says) => [says]))("stays quiet: %s", (says) => {
    expect(claimsOf(says).filter((claim) => claim.attribute === "color")).toEqual([]);
  });
});
