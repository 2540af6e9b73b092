import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";

/** What is said of a state where the camera is, and the components that are flawed by it. */
const rows = [
  // What is in view is meant.
  { from: "Okay it's up on the lift now.", said: "There's a hole you could put a thumb through.", flawed: ["frame"] },
  { from: "Come round to the driver's side.", said: "There's a dent down low.", flawed: ["body"] },
  { from: "Come round to the driver's side.", said: "There's rust on this side.", flawed: ["body"] },
  // The words name what has it, though no part is known by the name.
  { from: "Let's get in it.", said: "There's a hole in the lunch box.", flawed: [] },
  { from: "Let's get in it.", said: "The picnic set's got a crack in it.", flawed: [] },
  { from: "Come round to the driver's side.", said: "There's a dent in the mailbox.", flawed: [] },
  { from: "Come round to the driver's side.", said: "The trailer has some rust.", flawed: [] },
  { from: "Okay it's up on the lift now.", said: "There's a hole in my glove.", flawed: [] },
] as const;

describe("a state belongs to the noun that has it", () => {
  test.for(rows)("$from $said", ({ from, said, flawed }) => {
    const captions = ["Hey folks, welcome, let's have a look round it.", from, said].map((text, index) => ({
      index,
      start: index * 8,
      end: index * 8 + 8,
      text,
    }));
    const { claims } = analyse({ format: "plain", captions, duration: 24 }, { stockSheet: null, recordedOn: null });
    const found = claims
      .filter(({ attribute, value }) => attribute === "condition" && value === "flawed")
      .map(({ component }) => component);
    expect([...new Set(found)]).toEqual(flawed);
  });
});
