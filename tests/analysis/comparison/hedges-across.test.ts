import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";
import { readTranscript } from "../../../electron/transcripts/read-transcript.ts";

/** Captions twenty seconds apart, so that nothing is one breath. */
function hedgesIn(captions: readonly string[]): string[] {
  const text = captions
    .map((words, at) => `[${Math.floor((at * 20) / 60)}:${String((at * 20) % 60).padStart(2, "0")}]\n${words}\n`)
    .join("\n");
  return analyse(readTranscript(Buffer.from(text), "walk.txt"), { stockSheet: null, recordedOn: null })
    .conflicts.filter(({ kind }) => kind === "hedge")
    .map(({ topic }) => topic);
}

const between = ["The doors shut well.", "Look at the sky.", "Here are the papers, on the bench, the log book."];

// What a buyer relies on is common practice of the trade.
const doubted: readonly { readonly why: string; readonly says: readonly string[]; readonly topic: string }[] = [
  {
    why: "the year, and the year it was registered in",
    says: ["Good morning. This is a 2020 hatchback.", ...between, "First registered, I'd have to look, I want to say twenty twenty."],
    topic: "year of registration",
  },
  {
    why: "the mileage vouched for and left open",
    says: [
      "Hello there. It has 58,412 on it and those are the real miles.",
      ...between,
      "Sit inside. The odometer says 58,412. I'd like to think it's right, the pedals are worn.",
    ],
    topic: "mileage being actual",
  },
  {
    why: "when the belt was done",
    says: [
      "Under the bonnet now, the engine. The timing belt was done at eighty thousand.",
      ...between,
      "Belt, where's belt, there's no bill, I think it was round eighty he told me.",
    ],
    topic: "mileage at which work was done",
  },
];

const gearbox = {
  why: "the gearbox, told by its number",
  says: [
    "The bonnet, the firewall. The gearbox in it is the very one it was delivered with.",
    ...between,
    "Gearbox is dry. Bell housing's got a drip. Now the number on the box, I can't find it. I'd think it's the same one the car's always had.",
  ],
};

const firm: readonly { readonly why: string; readonly says: readonly string[] }[] = [
  {
    why: "the paper settles it",
    says: ["Good morning. This is I believe a sixty six roadster.", ...between, "The title says 1966, so I was right."],
  },
  {
    why: "vouched for twice",
    says: ["It has 58,412 on it and those are the real miles.", ...between, "The odometer says 58,412, genuine miles."],
  },
  {
    why: "another job's mileage",
    says: [
      "Under the bonnet now, the engine. The timing belt was done at eighty thousand.",
      ...between,
      "The clutch, I think that was done at ninety thousand.",
    ],
  },
];

describe("a fact stated flatly here and doubted there", () => {
  test.for(doubted)("$why", ({ says, topic }) => {
    expect(hedgesIn(says)).toContain(topic);
  });
});

test(gearbox.why, () => {
  expect(hedgesIn(gearbox.says)).toEqual(["transmission being the original one"]);
});

describe("no doubt left", () => {
  test.for(firm)("$why", ({ says }) => {
    expect(hedgesIn(says)).toEqual([]);
  });
});
