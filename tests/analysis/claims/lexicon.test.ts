import { describe, expect, test } from "vitest";
import { findMentions, partWords } from "../../../electron/analysis/claims/lexicon/find-mentions.ts";
import { recutAtParts } from "../../../electron/analysis/claims/lexicon/recut-sentences.ts";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { speechOf } from "../../support/speech-of.ts";

const mentioned = (words: string) =>
  findMentions(speechOf(words)).map(({ component, part, position }) => [component, part, position].join(" "));

describe("the lexicon", () => {
  test("no words stand in two rows", () => {
    const said = partWords.flatMap((row) => row.say);
    expect(said.filter((words, at) => said.indexOf(words) !== at)).toEqual([]);
  });

  // Some words are names only in some company ("our heads", "the duals"), so each is tried in three.
  test("every row is found by its own words", () => {
    const lost = partWords.flatMap((row) =>
      row.say.filter(
        (words) =>
          !["and", "the", "our"].some((before) =>
            findMentions(speechOf(`${before} ${words} now`)).some(
              (mention) => mention.component === row.component && mention.part === row.part,
            ),
          ),
      ),
    );
    expect(lost).toEqual([]);
  });

  // American and British words for one part (common practice).
  test.for([
    { american: "windshield", british: "windscreen" },
    { american: "hood", british: "bonnet" },
    { american: "trunk", british: "boot" },
    { american: "trunk lid", british: "boot lid" },
    { american: "front fender", british: "front wing" },
    { american: "rocker", british: "sill" },
    { american: "tires", british: "tyres" },
    { american: "muffler", british: "silencer" },
    { american: "sway bar", british: "anti roll bar" },
    { american: "generator", british: "dynamo" },
    { american: "transmission", british: "gearbox" },
    { american: "odometer", british: "mileometer" },
    { american: "carburetor", british: "carburettor" },
    { american: "ring gear", british: "crownwheel" },
  ])("$american is $british", ({ american, british }) => {
    expect(mentioned(`the ${british} is good`)).toEqual(mentioned(`the ${american} is good`));
    expect(mentioned(`the ${british} is good`)).toHaveLength(1);
  });

  test.for([
    { why: "the longest name wins", heard: "the rear quarter panel", found: ["body quarter panel rear", "body null null"].slice(0, 1) },
    { why: "plural and possessive", heard: "the radiator's dry and the shocks are new", found: ["cooling radiator ", "suspension shock "] },
    { why: "a misheard plural", heard: "front breaks are good", found: ["brakes  front"] },
    { why: "the axle by its nickname", heard: "look at that pumpkin", found: ["final-drive  "] },
  ])("$why", ({ heard, found }) => {
    expect(mentioned(heard).slice(0, found.length)).toEqual(found);
  });

  test.for([
    { why: "top of something", heard: "on top of that it's quiet" },
    { why: "heading out", heard: "we'll head over there and head back" },
    { why: "a spring day", heard: "we did it last spring" },
    { why: "stick a magnet on it", heard: "I'll stick a magnet on it" },
    { why: "it drives nice", heard: "it drives real nice" },
    { why: "ring me", heard: "ring me first" },
    { why: "a quarter of an inch", heard: "a quarter of an inch" },
    { why: "low key", heard: "it's pretty low key" },
  ])("$why names no part", ({ heard }) => {
    expect(mentioned(heard)).toEqual([]);
  });
});

describe("sentences cut again at parts", () => {
  const cuts = (words: string) => {
    const speech = speechOf(words);
    const recut = recutAtParts(speech, findMentions(speech), readNumbers(speech));
    return recut.sentences.map((sentence) =>
      recut.tokens
        .slice(sentence.first, sentence.end)
        .map((token) => token.text)
        .join(" "),
    );
  };

  test.for([
    {
      why: "a part takes the floor",
      heard: "they'd sell you air that year but nobody checked that box odometer says fifty eight four",
      last: "odometer says fifty eight four",
    },
    {
      why: "its own words go with it",
      heard: "where the old one was a rivet deal the floors are new eighteen gauge",
      last: "the floors are new eighteen gauge",
    },
    {
      why: "a counted part",
      heard: "that's a card you put in and she never bought it already six speakers in there",
      last: "six speakers in there",
    },
  ])("$why", ({ heard, last }) => {
    expect(cuts(heard).at(-1)).toBe(last);
  });

  test.for([
    { why: "a part that is led up to", heard: "i could not see the axle is what he told me back then" },
    { why: "punctuated speech", heard: "They went over it twice. Nobody checked that box odometer says fifty. It runs. It drives." },
  ])("$why is left alone", ({ heard }) => {
    const speech = speechOf(heard);
    expect(recutAtParts(speech, findMentions(speech), readNumbers(speech)).sentences).toHaveLength(speech.sentences.length);
  });

  test("cutting again loses and doubles no word", () => {
    const speech = speechOf("the hood is flat the grille is good and four headlights work the bumper is straight six lug wheels");
    const recut = recutAtParts(speech, findMentions(speech), readNumbers(speech));
    expect(recut.sentences.flatMap(({ first, end }) => [first, end])).toEqual(
      recut.sentences.flatMap((sentence, at) => [at === 0 ? 0 : recut.sentences[at - 1]!.end, sentence.end]),
    );
    expect(recut.sentences.at(-1)?.end).toBe(speech.tokens.length);
  });
});
