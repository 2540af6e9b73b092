import { describe, expect, test } from "vitest";
import { driveSide } from "../../../electron/analysis/zones/drive-side.ts";
import { findMoves } from "../../../electron/analysis/zones/find-moves.ts";
import { moveRules } from "../../../electron/analysis/zones/moves/move-rules.ts";
import { spokenLine } from "../../../electron/analysis/zones/spoken-line.ts";
import { speechOf } from "../../support/speech-of.ts";

/** The moves heard in a few words, as a recogniser with or without punctuation writes them. */
function moves(words: string, punctuated = true) {
  const text = punctuated
    ? `It is clean. ${words.charAt(0).toUpperCase()}${words.slice(1)}. It is fine. It is good.`
    : `it is clean ${words.toLowerCase().replace(/[.,?!]/g, "")} it is fine`;
  const speech = { ...speechOf(text), punctuated };
  return findMoves(spokenLine(speech), driveSide(speech), punctuated);
}
const destinations = (words: string, punctuated = true) =>
  moves(words, punctuated)
    .map((move) => move.zone)
    .filter((zone) => zone !== null);

describe("every rule moves at its own example and not at words much like it", () => {
  test.for(moveRules)("$name", (rule) => {
    expect(moves(rule.example).map((move) => move.rule)).toContain(rule.name);
    expect(moves(rule.quiet).map((move) => move.rule)).not.toContain(rule.name);
  });
});

/** Written apart from the rules, in the ways narrators speak (common practice). */
const walks = [
  { said: "alright come on around to the passenger side", to: ["passenger-side"] },
  { said: "let's head on down this driver's side here", to: ["driver-side"] },
  { said: "walking around to the back of the truck now", to: ["rear"] },
  { said: "hop in with me", to: ["cabin"] },
  { said: "so let's get in it", to: ["cabin"] },
  { said: "let's jump inside the car", to: ["cabin"] },
  { said: "go ahead and pop the hood", to: ["engine-bay"] },
  { said: "let's have the bonnet up", to: ["engine-bay"] },
  { said: "I'll get the bonnet open", to: ["engine-bay"] },
  { said: "we've got her up on the lift", to: ["underside"] },
  { said: "she's on the ramp now", to: ["underside"] },
  { said: "we're down in the pit", to: ["underside"] },
  { said: "let's drop the tailgate", to: ["cargo"] },
  { said: "open the boot", to: ["cargo"] },
  { said: "have a look in the boot", to: ["cargo"] },
  { said: "let's take it for a spin", to: ["drive"] },
  { said: "I'll start her up", to: ["drive"] },
  { said: "here's the paperwork", to: ["documents"] },
  { said: "starting at the nose of the car", to: ["front"] },
  { said: "hop out", to: [] },
  // What must stay quiet.
  { said: "the tires on this side match", to: [] },
  { said: "there is a scratch on the passenger side door", to: [] },
  { said: "the driver's side mirror is new", to: [] },
  { said: "the rear end is a nine inch", to: [] },
  { said: "he put the front seat back in", to: [] },
  { said: "don't trip on the lift arm", to: [] },
  { said: "I'll show you that when it's on the lift", to: [] },
  { said: "you could put it up on a lift", to: [] },
  { said: "when we get in it", to: [] },
  { said: "the trunk lid fits well", to: [] },
  { said: "the hood has been repainted", to: [] },
  { said: "the boot lid is straight", to: [] },
  { said: "both seats up front are clean", to: [] },
  { said: "it drives like a new one", to: [] },
  { said: "get in close on that", to: [] },
  { said: "the title was lost once", to: [] },
] as const;

describe("moves as narrators say them", () => {
  test.for(walks)("$said", ({ said, to }) => {
    expect([...new Set(destinations(said))]).toEqual([...to]);
  });
});

/** Left, right, near and off by where the wheel is. The near side is the kerb's, and Britain drives on the left (Highway Code, rule 160). */
const sides = [
  { said: "Down the left side now", usage: "American", to: "driver-side" },
  { said: "Down the right hand side now", usage: "American", to: "passenger-side" },
  { said: "Down the near side now. The bonnet and the windscreen are good", usage: "British", to: "passenger-side" },
  { said: "Down the off side now. The bonnet and the windscreen are good", usage: "British", to: "driver-side" },
  { said: "Down the left side now. The bonnet and the boot are good", usage: "British", to: "passenger-side" },
  {
    said: "It is left-hand drive. Down the near side now. The bonnet and the boot are good",
    usage: "British, imported",
    to: "driver-side",
  },
  { said: "It is right hand drive. Down the left side now", usage: "right-hand drive told", to: "passenger-side" },
  { said: "Nearside. The tyres and the bonnet are good", usage: "British, one word", to: "passenger-side" },
  { said: "Down the driver's side now. The bonnet and the boot are good", usage: "British", to: "driver-side" },
] as const;

describe("which side is meant", () => {
  test.for(sides)("$usage: $said", ({ said, to }) => {
    expect(destinations(said)).toContain(to);
  });
  test("one borrowed word makes no narrator British, and neither do words both say", () => {
    expect(driveSide(speechOf("the windscreen is good and so is the trunk")).british).toBe(false);
    expect(driveSide(speechOf("the shift boot is torn, the sill plate and the tailgate are good and the gearbox is dry")).british).toBe(
      false,
    );
    expect(driveSide(speechOf("Nearside. It is straight")).british).toBe(true);
  });
  test("the wheel of other vehicles says nothing about this one", () => {
    expect(driveSide(speechOf("the left-hand drive ones are cheaper. The bonnet is good and the boot is clean")).wheel).toBe("right");
    expect(driveSide(speechOf("it is left-hand drive. The bonnet is good and the boot is clean")).wheel).toBe("left");
  });
  test("a British hood is the top", () => {
    expect(destinations("Put the hood up for me. The bonnet and the windscreen are good")).toContain("roof");
    expect(destinations("Put the hood up for me")).toContain("engine-bay");
  });
});
