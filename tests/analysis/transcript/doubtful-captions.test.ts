import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { stockPhrases } from "../../../electron/analysis/transcript/doubt-vocabulary.ts";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import { noiseExplained } from "../../../electron/analysis/transcript/noise-vocabulary.ts";
import { readTranscript } from "../../../electron/transcripts/read-transcript.ts";
import type { Caption, Transcript } from "../../../shared-types/index.ts";
import { markedWalk, recogniserStyles, shortZoneWalkNames, walkNames, walkText } from "../zones/marked-walks.ts";

const before = "The quarter panel on this side is original and the wheel opening is clean, tires are nearly new.";
const after = "Okay so the seats are leather, the dash has no cracks and the odometer says forty one thousand.";

/** A doubtful stretch between two that are plain; captions at the seconds given, else back to back at three words a second. */
function around(texts: readonly string[], gapSeconds = 0, secondsEach?: number): Transcript {
  const captions: Caption[] = [];
  let at = 0;
  for (const [index, text] of [before, ...texts, after].entries()) {
    const inside = index > 0 && index <= texts.length;
    if (index === 1) at += gapSeconds;
    const seconds = inside && secondsEach !== undefined ? secondsEach : Math.max(1, text.split(" ").length / 3);
    captions.push({ index, start: at, end: at + seconds, text });
    at += seconds;
  }
  return { format: "srt", captions, duration: at };
}
const doubted = (transcript: Transcript) => hearSpeech(transcript).doubtful.map((reason) => reason.caption);

describe("what is no speech about the vehicle", () => {
  const rows: { why: string; texts: string[]; gap?: number; each?: number }[] = [
    { why: "song", texts: ["oh the the night and the all of my my way and no no the the line of we go on and on the the"] },
    { why: "song with its mark", texts: ["[Music] and the you and you and when the the sun and on my the way yeah yeah yeah [Music]"] },
    {
      why: "song in three-second captions",
      texts: ["the the night and the of", "my my way and no no the", "the line we go we go", "on the the on my our"],
    },
    {
      why: "an announcer, half heard",
      texts: ["come see the for the big sale on down to", "the any of the spring we play a hundred", "and one and the no no no more"],
    },
    { why: "foreign script", texts: ["Продолжение следует"] },
    { why: "foreign script beside a word", texts: ["谢谢观看 okay"] },
    { why: "one phrase over and over", texts: ["and that's good and that's good and that's good and that's good and that's good"] },
    { why: "the same caption over and over", texts: ["I don't know", "I don't know", "I don't know", "I don't know"] },
    { why: "a word over a long silence", texts: ["you"], each: 30 },
    { why: "thanks over a long silence", texts: ["Thank you."], each: 25 },
    {
      why: "thirty words in two seconds",
      texts: [
        "front bumper and grille and both headlights and the hood and the fenders and every door and all the glass and the mirrors and the wheels and the trunk lid were painted",
      ],
      each: 2,
    },
    {
      why: "fluent words about nothing here after a long silence",
      texts: ["The committee will meet again on Thursday to talk about the school play and everyone was very happy with it"],
      gap: 20,
    },
  ];
  test.for(rows)("$why", ({ texts, gap, each }) => {
    const found = doubted(around(texts, gap, each));
    expect(found).toEqual(texts.map((_, index) => index + 1));
  });
  test.for(stockPhrases)("sign-off learnt elsewhere, after a long silence: $example", ({ example, pattern }) => {
    expect(pattern.test(example.toLowerCase().replace(/[^a-z ']/g, ""))).toBe(true);
    const transcript = around([], 0);
    const captions = [...transcript.captions, { index: 2, start: transcript.duration + 15, end: transcript.duration + 20, text: example }];
    expect(hearSpeech({ ...transcript, captions, duration: transcript.duration + 20 }).doubtful.map((reason) => reason.caption)).toEqual([
      2,
    ]);
  });
});

describe("noise that the narrator explains afterwards", () => {
  const rows: { why: string; texts: string[]; explained: string }[] = [
    {
      why: "a song on the radio",
      texts: ["and I la la the night of the one more and you and you gone"],
      explained: "Sorry, that's the radio in the bay.",
    },
    { why: "a compressor", texts: ["to the a to the so a so and"], explained: "that was the compressor okay cab" },
    {
      why: "church bells in short captions",
      texts: ["And the ding of the and", "then a tower the tower", "of a the dong."],
      explained: "They are practising over there.",
    },
    {
      why: "a train, unpunctuated",
      texts: ["you the you the hum", "hum of the of the town", "a hallowed hum"],
      explained: "pardon the train it don't stop for nobody",
    },
    { why: "a passing motorcycle", texts: ["way oh way the mother of the way and oh"], explained: "Thank you Curtis, that was Curtis" },
    {
      why: "a leaf blower",
      texts: ["the of the or a lower for for the all over a"],
      explained: "sorry that's the neighbor with the leaf blower",
    },
    {
      why: "a helicopter",
      texts: ["the bow on the a wing the wing and of was the two of"],
      explained: "That was the air ambulance, they will come over just here.",
    },
  ];
  test.for(rows)("$why", ({ texts, explained }) => {
    expect(doubted(around([...texts, explained]))).toEqual(texts.map((_, index) => index + 1));
  });
  test.for(noiseExplained)("is explained by: $example", ({ pattern, example }) => {
    expect(pattern.test(example.toLowerCase().replace(/[^a-z ]/g, ""))).toBe(true);
  });
});

describe("what is speech, however it sounds", () => {
  const rows: { why: string; texts: string[]; gap?: number; each?: number }[] = [
    {
      why: "a VIN spelled aloud",
      texts: ["one f t e w one e p four l f b one two three four five", "and it's five six seven seven eight b b on the door"],
    },
    { why: "an asking price of one digit said twice", texts: ["So we're at twenty nine nine.", "Twenty nine nine, and nine nine down."] },
    { why: "a price alone", texts: ["nine nine nine", "nine nine"] },
    { why: "letters and digits called back", texts: ["h as in hotel, h, two two", "two two seven, oh oh one"] },
    { why: "an apology for a slip", texts: ["it's a, it's the, the other one I mean", "Sorry, two twenty five not two fifteen."] },
    {
      why: "an apology with nothing wrong before it",
      texts: ["I had him on the phone all of Thursday and he was lovely about it", "Sorry about the wind out here."],
    },
    { why: "two sentences that begin alike", texts: ["His is better. His is not cheap.", "His is orange. Moving on."] },
    { why: "a short answer twice", texts: ["It is what it is.", "It is what it was, and I said so."] },
    { why: "a list without a verb", texts: ["lift me in, lift me out", "in and out, up and down, on and off"] },
    { why: "an old saying", texts: ["it'll go and go and go", "round and round we go"] },
    { why: "stutter", texts: ["the the spare is, it's it's under here and the the jack is with it"] },
    { why: "meant repeats", texts: ["windows go down, down, down, and up, up, and the horn, beep beep, and knock knock on the dash"] },
    {
      why: "digression without a vehicle word",
      texts: ["I had a lady call me Tuesday wanting to know was it her uncle's and it was not, she was real sweet about it"],
    },
    {
      why: "a run of figures",
      texts: ["two thirty five sixty fifteen two fifty five sixty fifteen three seventy three four eleven three oh eight"],
    },
    { why: "music mark beside speech", texts: ["[Music] sorry, that was the radio coming on, anyway the bumper is straight"] },
    {
      why: "hurried",
      texts: ["door door no dings cab corner clean rocker clean bed side little ding mirror works tire good wheel good"],
      each: 3.5,
    },
    {
      why: "speech after a silence",
      texts: ["Okay, here we are underneath and you can see the frame is dry, no leaks on the pan"],
      gap: 40,
    },
    { why: "listening to the engine", texts: ["Listen to that."], each: 12 },
    { why: "accents and units", texts: ["the façade is naïve, 210 µm on the door, Ångström says the café in München"] },
    { why: "said twice for effect", texts: ["It is clean.", "It is clean."] },
    { why: "slips of the tongue", texts: ["it's got the, the uh, my, the thing with a, an oil cooler on the front of it"] },
  ];
  test.for(rows)("$why", ({ texts, gap, each }) => {
    expect(doubted(around(texts, gap, each))).toEqual([]);
  });

  test("no false alarm on the marked walks, in any recogniser's captions", () => {
    for (const name of [...walkNames, ...shortZoneWalkNames]) {
      for (const style of recogniserStyles)
        expect({ name, style, doubtful: hearSpeech(markedWalk(walkText(name), style).transcript).doubtful }).toEqual({
          name,
          style,
          doubtful: [],
        });
    }
  });
});

describe.each(["dev", "own"])("the annotated cases in %s", (corpus) => {
  const folder = new URL(`../../../fixtures/corpus/${corpus}/`, import.meta.url);
  const names = readdirSync(folder).filter((name) => name.endsWith(".gold.json"));
  test.for(names)("%s: every unreliable caption, and no other", (goldName) => {
    const gold = JSON.parse(readFileSync(new URL(goldName, folder), "utf8")) as { unreliable: { i: number }[] };
    const file = readdirSync(folder).find((name) => name !== goldName && name.startsWith(goldName.replace(".gold.json", ".")));
    const speech = hearSpeech(readTranscript(readFileSync(new URL(file ?? "", folder)), file ?? ""));
    expect(speech.doubtful.map((reason) => reason.caption)).toEqual(gold.unreliable.map((entry) => entry.i));
  });
});
