import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";
import type { Claim } from "../../../shared-types/index.ts";

// Sentences as dealers say them, kept in fixtures/tables/said (invented; what they mean is common practice of the trade, no published source).
const folder = new URL("../../../fixtures/tables/said/", import.meta.url);

function rowsOf(file: string): string[][] {
  return readFileSync(new URL(file, folder), "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"))
    .map((line) => line.split("\t"));
}

/** What leads the camera to a place. */
const leads: Readonly<Record<string, string>> = {
  opening: "Good morning folks",
  "engine-bay": "Let's pop the hood",
  underside: "Okay it's up on the lift now",
  documents: "So here's the paperwork",
  "driver-side": "Come round to the driver's side",
  "passenger-side": "Come round to the passenger side",
  cabin: "Let's get in it",
  drive: "Let's take it for a drive",
  rear: "Round at the back now",
  front: "Up here at the front",
  cargo: "Let's open the trunk",
  roof: "Up top",
  closing: "So that's about it",
};
const captionSeconds = 8;

/** The lead and the sentence, each a caption. */
function claimsOf(place: string, words: string, punctuated: boolean): readonly Claim[] {
  const lead = leads[place];
  if (!lead)
    throw new Error(`fixtures/tables/said: unknown place "${place}" beside "${words}"; use one of ${Object.keys(leads).join(", ")}.`);
  const texts = punctuated
    ? [`${lead}.`, `${words[0]!.toUpperCase()}${words.slice(1)}.`]
    : [lead.toLowerCase(), words.toLowerCase().replace(/[.,?!](?=\s|$)/g, "")];
  const captions = texts.map((text, index) => ({ index, start: index * captionSeconds, end: (index + 1) * captionSeconds, text }));
  return analyse({ format: "plain", captions, duration: texts.length * captionSeconds }, { stockSheet: null, recordedOn: null }).claims;
}

const styles = [
  ["punctuated", true],
  ["unpunctuated", false],
] as const;

/** Shares of the sentences that are read; floors only rise. */
const floors = {
  "kinds.tsv": 0.95,
  "told-in-passing.tsv": 0.88,
  "kinds-and-counts.tsv": 0.94,
  "everyday.tsv": 0.91,
  "first.tsv": 0.96,
  "second.tsv": 0.87,
  "third.tsv": 0.91,
  "fourth.tsv": 0.88,
  "fifth.tsv": 0.78,
} as const;

describe.each(styles)("%s", (_style, punctuated) => {
  test.each(Object.entries(floors))("reads of %s at least %d", (file, floor) => {
    const rows = rowsOf(file);
    expect(rows.length).toBeGreaterThan(40);
    const missed = rows.filter(
      ([component, attribute, value, place, words, stance]) =>
        !claimsOf(place!, words!, punctuated).some(
          (claim) =>
            claim.component === component &&
            claim.attribute === attribute &&
            String(claim.value) === value &&
            claim.time === "today" &&
            (stance === undefined || claim.stance === stance),
        ),
    );
    expect(1 - missed.length / rows.length, missed.map((row) => row.join(" | ")).join("\n")).toBeGreaterThanOrEqual(floor);
  });

  test.each([...rowsOf("quiet.tsv"), ...rowsOf("quiet-kinds.tsv")])(
    "says nothing of %s %s: %s, %s",
    (component, attribute, place, words) => {
      const made = claimsOf(place!, words!, punctuated).filter(
        (claim) => claim.component === component && claim.attribute === attribute && claim.captions.includes(1),
      );
      expect(made.map(({ value, quote }) => `${value}: ${quote}`)).toEqual([]);
    },
  );
});
