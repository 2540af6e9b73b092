import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";
import { readTranscript } from "../../../electron/transcripts/read-transcript.ts";

/** Captions eight seconds apart. */
function analysed(captions: readonly string[]) {
  const clock = (second: number) => `${Math.floor(second / 60)}:${String(second % 60).padStart(2, "0")}`;
  const text = captions.map((caption, at) => `[${clock(at * 8)}] ${caption}`).join("\n");
  const transcript = readTranscript(new TextEncoder().encode(text), "said.txt");
  return analyse(transcript, {
    stockSheet: null,
    recordedOn: null,
  });
}

/** Two readings of one dial, however near together and whatever is spoken between them. */
const readings = [
  { said: ["We are at 86,200 miles.", "Nice van here, 88,600 miles."], quarrels: true },
  { said: ["The odometer says 112,450.", "It drives well.", "So 114,250 on the clock."], quarrels: true },
  { said: ["We are at 86,200 miles.", "Call it 86,000 miles."], quarrels: false },
  { said: ["It has 86,200 miles. No, sorry, 88,600 miles."], quarrels: false },
  { said: ["We are at 86,200 miles.", "That's 86 thousand miles and change."], quarrels: false },
  { said: ["It has 86,200 miles on it.", "The belt was done at 61,400 miles."], quarrels: false },
] as const;

describe("two readings of the odometer", () => {
  test.for(readings)("$said", ({ said, quarrels }) => {
    const { conflicts } = analysed(said);
    expect(conflicts.some(({ topic }) => topic === "mileage")).toBe(quarrels);
  });
});

/** What works, by its own noun, and not the part spoken of before it. */
const working = [
  { said: "The odometer reads 312,000 miles. The air works.", component: "odometer", good: false },
  { said: "The dash is cracked. The winch works.", component: "dash", good: false },
  { said: "The odometer reads 312,000 miles. The hoist works.", component: "odometer", good: false },
  { said: "The odometer reads 312,000 miles. The air works.", component: "air-conditioning", good: true },
  { said: "The odometer reads 312,000 miles and the air still works.", component: "odometer", good: false },
  { said: "The odometer reads 312,000 miles. It works.", component: "odometer", good: true },
  { said: "The odometer still works.", component: "odometer", good: true },
  { said: "The air conditioning really works.", component: "air-conditioning", good: true },
  { said: "The air horn works.", component: "air-conditioning", good: false },
] as const;

describe("what works", () => {
  test.for(working)("$said $component", ({ said, component, good }) => {
    const found = analysed([said]).claims.some(
      (claim) => claim.component === component && claim.attribute === "condition" && claim.value === "good",
    );
    expect(found).toBe(good);
  });
});
