import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";

// Sentences as dealers say them (invented; what contradicts what is common practice of the trade, no published source).
const between = ["We had a lot of rain this week.", "My brother took the pictures.", "Anyway.", "Give me a second here."];
const secondsOfCaption = 8;

function conflictsOf(...said: readonly string[]): string[] {
  const texts = said.flatMap((text) => [text, ...between]);
  const captions = texts.map((text, index) => ({ index, start: index * secondsOfCaption, end: (index + 1) * secondsOfCaption, text }));
  const { conflicts } = analyse(
    { format: "plain", captions, duration: texts.length * secondsOfCaption },
    { stockSheet: null, recordedOn: null },
  );
  return conflicts.map(({ kind, topic }) => `${kind} ${topic}`);
}

describe("plainly denied", () => {
  test.for([
    ["condition headliner condition", "Let's get in it. Headlining's clean.", "There's a mark on the headlining."],
    ["condition battery tray condition", "It's up on the lift. Battery tray, no scrapes.", "The battery tray's got a dent in it."],
    ["material trim material", "Let's get in it. That wood is wood, it's walnut.", "The dash trim is fake wood."],
    ["type engine oil", "Let's pop the hood. Oil's been changed, it takes the 0W20.", "It takes 5W-30 oil."],
    ["measure model year", "So this is a 2015 Solace.", "The title says it's a twenty seventeen."],
    ["measure asking price", "We're asking eleven thousand nine hundred dollars.", "You can have it for thirteen nine ninety five."],
  ] as const)("%s", ([conflict, first, second]) => {
    expect(conflictsOf(first, second)).toContain(conflict);
  });
});

describe("no denial", () => {
  test.for([
    ["Let's get in it. That wood is wood, it's walnut.", "The dash trim is walnut."],
    ["Let's get in it. Headlining's clean.", "There's a paint mark on the bolts."],
    ["So this is a 2015 Solace.", "The title says it's a twenty fifteen."],
    ["Let's pop the hood. Oil's been changed, it takes the 0W20.", "It takes 0W-20 oil."],
    ["Come round to the driver's side. Sticker says run 33 pounds and that's for the sixteens.", "It rides on 17 inch wheels."],
  ] as const)("%s %s", ([first, second]) => {
    expect(conflictsOf(first, second)).toEqual([]);
  });
});
