import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isJoint } from "../../../electron/analysis/transcript/cut-sentences.ts";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import { joints } from "../../../electron/analysis/transcript/joints.ts";
import { readTranscript } from "../../../electron/transcripts/read-transcript.ts";
import type { Transcript } from "../../../shared-types/index.ts";

/** Captions of so many seconds each, one after another. */
function transcriptOf(texts: readonly string[], seconds = 4): Transcript {
  const captions = texts.map((text, index) => ({ index, start: index * seconds, end: (index + 1) * seconds, text }));
  return { format: "plain", captions, duration: texts.length * seconds };
}
const hear = (texts: readonly string[], seconds?: number) => hearSpeech(transcriptOf(texts, seconds));
const words = (texts: readonly string[]) => hear(texts).tokens.map((token) => token.text);
const sentences = (texts: readonly string[], seconds?: number) => {
  const speech = hear(texts, seconds);
  return speech.sentences.map((sentence) =>
    speech.tokens
      .slice(sentence.first, sentence.end)
      .map((token) => token.text)
      .join(" "),
  );
};

describe("words", () => {
  const rows = [
    { text: "it's a 4.11, not 3.73.", tokens: ["it's", "a", "4.11", "not", "3.73"], why: "decimals stay whole, sentence ends do not" },
    { text: "P235/60-15s and 31x10.50R15LT", tokens: ["P235/60-15s", "and", "31x10.50R15LT"], why: "tire sizes stay whole" },
    {
      text: "a '69 with 3,390 cc for $18,500",
      tokens: ["a", "'69", "with", "3,390", "cc", "for", "$18,500"],
      why: "years, thousands, money",
    },
    { text: "get 'em, don't you’re", tokens: ["get", "'em", "don't", "you’re"], why: "apostrophes, straight and curly" },
    {
      text: "two-door, eighty-four, re-tempered",
      tokens: ["two", "door", "eighty", "four", "re", "tempered"],
      why: "hyphens between letters part words",
    },
    { text: "3 1/2 inch, 1½, G70-14", tokens: ["3", "1/2", "inch", "1½", "G70-14"], why: "fractions and letter sizes" },
    { text: "[Music] sorry ♪ (applause) about that [horn]", tokens: ["sorry", "about", "that"], why: "sounds are no words" },
    { text: "— … ?!", tokens: [], why: "punctuation alone" },
  ];
  test.for(rows)("$why", ({ text, tokens }) => {
    expect(words([text])).toEqual(tokens);
  });

  test("know their place, their punctuation and their moment", () => {
    const [first, second] = hear(["Okay, it’s"], 10).tokens;
    expect(first).toEqual({ index: 0, caption: 0, start: 0, end: 4, text: "Okay", word: "okay", after: ",", at: 0 });
    expect(second).toEqual({ index: 1, caption: 0, start: 6, end: 10, text: "it’s", word: "it's", after: "", at: 6 });
  });
});

describe("rolling captions", () => {
  const rolling = [
    "the grille is straight and",
    "the grille is straight and the headlights are new",
    "the headlights are new no cracks in",
    "no cracks in the windshield at all",
  ];

  test("say each word once, under the caption that spoke it first", () => {
    const speech = hear(rolling);
    expect(speech.tokens.map((token) => token.text).join(" ")).toBe(
      "the grille is straight and the headlights are new no cracks in the windshield at all",
    );
    expect(speech.tokens.filter((token) => token.word === "headlights").map((token) => token.caption)).toEqual([1]);
    expect(speech.tokens.filter((token) => token.word === "cracks").map((token) => token.caption)).toEqual([2]);
    expect(speech.captions.map((caption) => caption.text)).toEqual(rolling);
  });
  test("that hold their last line before the next one comes", () => {
    const held = [
      "come on up here",
      "come on up here to the nose of it",
      "to the nose of it",
      "to the nose of it and the bumper is",
      "and the bumper is",
      "and the bumper is straight as new",
    ];
    expect(words(held).join(" ")).toBe("come on up here to the nose of it and the bumper is straight as new");
  });
  test("with timed words and held lines, as a file has them", () => {
    const name = "rolling.vtt";
    const transcript = readTranscript(readFileSync(new URL(`../../../fixtures/transcripts/${name}`, import.meta.url)), name);
    expect(transcript.captions).toHaveLength(6);
    const speech = hearSpeech(transcript);
    expect(speech.tokens.map((token) => `${token.caption} ${token.text}`)).toEqual([
      "0 okay",
      "0 so",
      "0 starting",
      "2 at",
      "2 the",
      "2 nose",
      "4 the",
      "4 grille",
      "4 is",
      "4 straight",
    ]);
    expect(speech.doubtful).toEqual([]);
  });
  test("that grow", () => {
    expect(words(["so the", "so the front bumper", "so the front bumper has been rechromed"]).join(" ")).toBe(
      "so the front bumper has been rechromed",
    );
  });

  const quiet = [
    { texts: ["it is what it is", "it is what it was", "and the hood is flat", "no chips on it"], why: "a narrator may say a thing twice" },
    {
      texts: [
        "that is straight",
        "is straight all the way down",
        "the door is good",
        "the glass is good",
        "no rust down low",
        "nice and clean",
      ],
      why: "one overlap makes no rolling file",
    },
    { texts: ["the", "the", "wheel", "wheel", "is", "good"], why: "one word each" },
  ];
  test.for(quiet)("not: $why", ({ texts }) => {
    expect(words(texts)).toEqual(texts.flatMap((text) => text.split(" ")));
  });
});

describe("sentences", () => {
  test("end at punctuation, and not at a title or an initial", () => {
    expect(sentences(["The nose is clean. Mr. Kell had it. Is it fast? No! He has the K. M. marks."])).toEqual([
      "The nose is clean",
      "Mr Kell had it",
      "Is it fast",
      "No",
      "He has the K M marks",
    ]);
  });
  test("run over short captions", () => {
    expect(sentences(["The rears are two", "thirty five sixty fifteen.", "The fronts are", "smaller. Good."], 3)).toEqual([
      "The rears are two thirty five sixty fifteen",
      "The fronts are smaller",
      "Good",
    ]);
  });
  test("end with a paragraph, though nobody wrote a full stop", () => {
    const paragraph = (start: string) =>
      `${start} is clean and straight, no rust in the lower corners. The gaps are even all the way down to the wheel opening here`;
    expect(sentences([paragraph("This fender"), paragraph("That quarter"), paragraph("The door")])).toHaveLength(6);
  });
  test("are cut at spoken joints where nothing is punctuated", () => {
    expect(sentences(["the hood is flat and straight okay we will go down the side now the door has one ding in it"], 12)).toEqual([
      "the hood is flat and straight",
      "okay we will go down the side",
      "now the door has one ding in it",
    ]);
  });
  test("are not cut inside a phrase", () => {
    expect(sentences(["it has been sitting right now for a year and so on"], 12)).toHaveLength(1);
    expect(sentences(["one word per caption", "makes no sentence of", "its own unless he"], 2)).toHaveLength(1);
  });
  test.for(joints)("joint: $example", (joint) => {
    const tokens = hear([joint.example]).tokens;
    expect(tokens.some((token, position) => position > 0 && token.word === joint.word && isJoint(tokens, position))).toBe(true);
  });
  test("a long pause between captions ends one", () => {
    const captions = [
      { index: 0, start: 0, end: 3, text: "the back seat is good" },
      { index: 1, start: 5, end: 8, text: "and clean" },
    ];
    expect(hearSpeech({ format: "srt", captions, duration: 8 }).sentences).toHaveLength(2);
  });
});

test("whether there is punctuation is told by the file, not by a stray mark", () => {
  expect(hear(["The nose is clean. The grille is new. It runs."]).punctuated).toBe(true);
  expect(hear([`${"the nose is clean and the grille is new ".repeat(20)}okay.`]).punctuated).toBe(false);
});

test("any captions give the same speech twice, with every token in exactly one sentence", () => {
  const word = fc.constantFrom(
    "okay",
    "the",
    "4.11",
    "hood",
    "[Music]",
    "no",
    "the the",
    "so",
    "éclair",
    "привет",
    "…",
    ".",
    "'69",
    "\u0301",
    "x-y",
  );
  const texts = fc.array(
    fc.array(word, { maxLength: 30 }).map((list) => list.join(" ")),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(texts, (list) => {
      const speech = hear(list);
      expect(hear(list)).toEqual(speech);
      expect(speech.sentences.flatMap((sentence) => speech.tokens.slice(sentence.first, sentence.end).map((token) => token.index))).toEqual(
        speech.tokens.map((_, index) => index),
      );
      for (const token of speech.tokens) expect(speech.captions[token.caption]?.text.slice(token.start, token.end)).toBe(token.text);
      const doubtful = new Set(speech.doubtful.map((reason) => reason.caption));
      expect(speech.tokens.some((token) => doubtful.has(token.caption))).toBe(false);
    }),
    { numRuns: 500 },
  );
}, 60_000);
