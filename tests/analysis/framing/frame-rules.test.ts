import { describe, expect, test } from "vitest";
import { correctionRules } from "../../../electron/analysis/claims/framing/corrections.ts";
import type { FrameMeaning } from "../../../electron/analysis/claims/framing/frame-rule.ts";
import { frameRules } from "../../../electron/analysis/claims/framing/frame-rules.ts";
import { type Clause, frameSpeech } from "../../../electron/analysis/claims/framing/frame-speech.ts";
import { rangeOf, speechOf } from "./speech-of.ts";

function means(clause: Clause, meaning: FrameMeaning): boolean {
  return Object.entries(meaning).every(([key, value]) => clause[key as keyof Clause] === value);
}

function clausesOver(text: string, words: string): Clause[] {
  const speech = speechOf(text);
  const frames = frameSpeech(speech);
  const { first, end } = rangeOf(speech, words);
  return speech.tokens.slice(first, end).map((token) => frames.at(token.index));
}

describe.each(frameRules.map((rule) => [rule.name, rule] as const))("frame rule: %s", (_name, rule) => {
  test("frames its example and only that", () => {
    expect(clausesOver(rule.example.says, rule.example.framed).every((clause) => means(clause, rule.meaning))).toBe(true);
    if (rule.example.free)
      expect(clausesOver(rule.example.says, rule.example.free).some((clause) => means(clause, rule.meaning))).toBe(false);
  });
  test.each(rule.quiet.map((says) => [says]))("stays quiet: %s", (says) => {
    expect(frameSpeech(speechOf(says)).clauses.some((clause) => means(clause, rule.meaning))).toBe(false);
  });
});

describe.each(correctionRules.map((rule) => [rule.strength, rule] as const))("corrections, %s", (_strength, rule) => {
  test("takes back the slip and keeps the repair", () => {
    expect(clausesOver(rule.example.says, rule.example.takenBack).every((clause) => clause.corrected)).toBe(true);
    expect(clausesOver(rule.example.says, rule.example.stands).some((clause) => clause.corrected)).toBe(false);
  });
  test.each(rule.quiet.map((says) => [says]))("stays quiet: %s", (says) => {
    expect(frameSpeech(speechOf(says)).clauses.some((clause) => clause.corrected)).toBe(false);
  });
});
