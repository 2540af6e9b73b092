import { describe, expect, test } from "vitest";
import {
  endPhrases,
  handPhrases,
  joinPlace,
  pointingPhrases,
  sidePhrases,
} from "../../../electron/analysis/claims/positions/position-words.ts";
import { soundsBritish, wheelSideOf } from "../../../electron/analysis/claims/positions/wheel-side.ts";
import { speechOf } from "../../support/speech-of.ts";

describe("every place phrase is found in its own example", () => {
  test.for([...endPhrases, ...pointingPhrases, ...sidePhrases, ...handPhrases].map((phrase) => ({ why: phrase.example, phrase })))(
    "$why",
    ({ phrase }) => {
      expect(phrase.words.test(phrase.example)).toBe(true);
    },
  );
});

test.for([
  { end: "front", side: null, place: "front" },
  { end: "rear", side: "driver", place: "driver-rear" },
  { end: null, side: "passenger", place: "passenger" },
  { end: "both", side: null, place: "all" },
  { end: "both", side: "driver", place: "driver" },
  { end: null, side: null, place: null },
] as const)("$end and $side make $place", ({ end, side, place }) => {
  expect(joinPlace(end, side)).toBe(place);
});

// A vehicle's near side is the kerb's: left where traffic keeps left (common practice).
describe("where the steering wheel is", () => {
  test.for([
    { why: "said to be on the right", heard: "it's a right hand drive import with new tires", wheel: "right", british: false },
    { why: "said to be on the left", heard: "left hand drive, new tyres, MOT till May", wheel: "left", british: true },
    { why: "British words", heard: "tyres are good and the bonnet's straight, boot lid too", wheel: "right", british: true },
    { why: "American words", heard: "tires are good and the hood's straight, trunk too", wheel: "left", british: false },
    { why: "nothing to go by", heard: "it runs and drives", wheel: "left", british: false },
  ] as const)("$why", ({ heard, wheel, british }) => {
    expect(wheelSideOf(speechOf(heard))).toBe(wheel);
    expect(soundsBritish(speechOf(heard))).toBe(british);
  });
});
