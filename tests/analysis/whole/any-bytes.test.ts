import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { readTranscript } from "../../../electron/transcripts/read-transcript.ts";
import { TranscriptError } from "../../../electron/transcripts/transcript-error.ts";
import { Analysis } from "../../../shared-types/index.ts";
import { analysed } from "./dev-walks.ts";

const folder = new URL("../../../fixtures/corpus/dev/", import.meta.url);
const files = readdirSync(folder)
  .filter((name) => /\.(?:txt|srt|vtt|json)$/.test(name) && !name.endsWith(".gold.json"))
  .map((name) => ({ name, bytes: new Uint8Array(readFileSync(new URL(name, folder))) }));

/** From the file's bytes to the whole analysis: a valid one, or a refusal that names its reason. True where it was analysed. */
function goesThrough(bytes: Uint8Array, name: string): boolean {
  try {
    Analysis.parse(analysed(readTranscript(bytes, name)));
    return true;
  } catch (error) {
    expect(error).toBeInstanceOf(TranscriptError);
    return false;
  }
}

test("any bytes are analysed or refused with a reason", { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 600 }), fc.constantFrom("any.txt", "any.srt", "any.vtt", "any.json"), (bytes, name) => {
      goesThrough(bytes, name);
    }),
    { numRuns: 400, seed: 11 },
  );
});

test("a walk with bytes overwritten, cut out or doubled is analysed or refused with a reason", { timeout: 120_000 }, () => {
  let analyses = 0;
  const damage = fc.record({ at: fc.nat(), length: fc.integer({ min: 0, max: 400 }), put: fc.uint8Array({ maxLength: 40 }) });
  fc.assert(
    fc.property(fc.constantFrom(...files), fc.nat(), fc.array(damage, { minLength: 1, maxLength: 6 }), ({ name, bytes }, from, damages) => {
      // A fifth of the file is enough of every form, and keeps the runs short.
      const start = from % Math.floor(bytes.length * 0.8);
      let broken = [...bytes.slice(name.endsWith(".txt") ? start : 0, start + Math.floor(bytes.length / 5))];
      for (const { at, length, put } of damages) {
        const place = at % broken.length;
        broken = [...broken.slice(0, place), ...put, ...broken.slice(place + length)];
        if (broken.length === 0) return;
      }
      if (goesThrough(Uint8Array.from(broken), name)) analyses += 1;
    }),
    { numRuns: 60, seed: 12 },
  );
  // The damage must leave something to analyse, or nothing was tried.
  expect(analyses).toBeGreaterThan(20);
});
