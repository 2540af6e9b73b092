import { describe, expect, test } from "vitest";
import { frameSpeech } from "../../../electron/analysis/claims/framing/index.ts";
import { rangeOf, speechOf } from "./speech-of.ts";

/** What is taken back and what stands, in many narrators' ways. */
const slips = [
  ["It's a 350, er, a 355 now.", "350", "355 now"],
  ["It has fourteen, sorry, fifteen inch wheels.", "fourteen", "fifteen inch wheels"],
  ["It's a four speed, I mean five speed.", "four speed", "five speed"],
  ["it's leather no wait it's vinyl in here", "it's leather", "it's vinyl"],
  ["It has disc brakes, excuse me, drums.", "disc brakes", "drums"],
  ["These are 235s, no 225s.", "235s", "225s"],
  ["It's the 327, scratch that, 350.", "327", "350"],
  ["It's an automatic, well no, it's a manual.", "automatic", "it's a manual"],
  ["Painted in, was it 94, no, 96.", "94", "96"],
  ["Three owners, make that four owners.", "Three", "four owners"],
  ["It came with the four barrel or should I say two barrel carb.", "four barrel", "two barrel carb"],
  ["It's the three oh eight gear, correction, three seventy three.", "three oh eight", "three seventy three"],
  ["Tires are date coded 2019, oh no, 2021.", "2019", "2021"],
  ["It's got two keys, three keys sorry.", "two", "three keys"],
  ["it's got the 302 in it i'm sorry the 289", "302", "the 289"],
  ["it has power windows no crank windows sorry", "power windows", "crank windows"],
  ["It's got the bench, no, the buckets, sorry.", "bench", "the buckets"],
  ["Eighteen thousand, hang on, nineteen thousand miles.", "Eighteen thousand", "nineteen thousand"],
  ["we got it in 2012 no i'm wrong 2013 and it stayed", "2012", "2013"],
  ["She's done 84, wait, let me look, 86 thousand.", "84", "86 thousand"],
] as const;

const plain = [
  "There's no rust, no dents, no scratches.",
  "No no no, that's the compressor.",
  "Does it leak? No, it's dry.",
  "We had 12, no more than 13 of these built.",
  "So I'm sorry about the noise, 350 motor.",
  "Wait till you hear it, 350 motor.",
  "I mean it's a 350, what do you want.",
  "Actually I like it.",
  "Sorry it's raining.",
  "There's no spare and there's no jack.",
  "Hold on, the hood sticks.",
  "There's a spare and no jack, sorry.",
] as const;

describe("slips put right in the same breath", () => {
  test.each(slips)("%s", (says, takenBack, stands) => {
    const speech = speechOf(says);
    const frames = frameSpeech(speech);
    const corrected = (words: string) => {
      const { first, end } = rangeOf(speech, words);
      return speech.tokens.slice(first, end).map((token) => frames.at(token.index).corrected);
    };
    expect(corrected(takenBack)).not.toContain(false);
    expect(corrected(stands)).not.toContain(true);
  });
  test.each(plain.map((says) => [says]))("takes nothing back: %s", (says) => {
    expect(frameSpeech(speechOf(says)).clauses.some((clause) => clause.corrected)).toBe(false);
  });
});

test("words that are also names of an object's own members are words like others", () => {
  const speech = speechOf("The constructor said toString and valueOf, hasOwnProperty it's __proto__ red.");
  expect(frameSpeech(speech).clauses.at(-1)?.end).toBe(speech.tokens.length);
});
