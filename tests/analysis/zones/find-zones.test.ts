import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import { findZones } from "../../../electron/analysis/zones/find-zones.ts";
import { partRows } from "../../../electron/analysis/zones/parts/part-tree.ts";
import { readTranscript } from "../../../electron/transcripts/read-transcript.ts";
import { type Transcript, type ZoneName, ZoneProposal } from "../../../shared-types/index.ts";
import { speechOf } from "../../support/speech-of.ts";
import { markedWalk, type RecogniserStyle, recogniserStyles, scoreZones, shortZoneWalkNames, walkNames, walkText } from "./marked-walks.ts";

const zonesOf = (transcript: Transcript) => findZones(hearSpeech(transcript));

interface Gold {
  readonly duration: number;
  readonly zones: readonly { readonly zone: ZoneName; readonly i: number; readonly from: string }[];
}

describe("development cases", () => {
  const folder = new URL("../../../fixtures/corpus/dev/", import.meta.url);
  function caseOf(id: string): { gold: Gold; transcript: Transcript } {
    const gold = JSON.parse(readFileSync(new URL(`${id}.gold.json`, folder), "utf8")) as Gold;
    const file = readdirSync(folder).find((name) => name.startsWith(`${id}.`) && !name.endsWith(".gold.json")) ?? "";
    return { gold, transcript: readTranscript(readFileSync(new URL(file, folder)), file) };
  }
  const intoCaption = (text: string, from: string) => Math.max(0, text.toLowerCase().indexOf(from.toLowerCase()));

  /** Share of seconds in the right zone that must not be lost again. */
  const floors: Readonly<Record<string, number>> = { dev01: 0.99, dev02: 0.985, dev03: 0.99, dev04: 0.99, dev05: 0.99 };
  test.for(Object.entries(floors))("%s", ([id, floor]) => {
    const { gold, transcript } = caseOf(id);
    const zones = gold.zones.map(({ zone, i, from }, index) => {
      const caption = transcript.captions[i];
      if (!caption) throw new Error(`${id} has no caption ${i}`);
      const into = intoCaption(caption.text, from) / Math.max(1, caption.text.length);
      return { zone, start: index === 0 ? 0 : caption.start + (caption.end - caption.start) * into };
    });
    const { rightSeconds, seconds } = scoreZones({ zones }, zonesOf(transcript), gold.duration);
    expect(rightSeconds / seconds).toBeGreaterThanOrEqual(floor);
  });

  /** The case's words with its zones marked, to be captioned anew. */
  function markedText(id: string): string {
    const { gold, transcript } = caseOf(id);
    return transcript.captions
      .map(({ index, text }) =>
        gold.zones
          .filter((zone) => zone.i === index)
          .toReversed()
          .reduce((marked, { zone, from }) => {
            const at = intoCaption(marked, from);
            return `${marked.slice(0, at)} {${zone}} ${marked.slice(at)}`;
          }, text),
      )
      .join(" ");
  }
  test.for(recogniserStyles)("captioned as another recogniser would: %s", (style) => {
    let right = 0;
    let all = 0;
    for (const id of Object.keys(floors)) {
      const walk = markedWalk(markedText(id), style);
      const { rightSeconds, seconds } = scoreZones(walk, zonesOf(walk.transcript), walk.transcript.duration);
      right += rightSeconds;
      all += seconds;
    }
    expect(right / all).toBeGreaterThanOrEqual(0.98);
  });
});

describe("annotated cases in further styles", () => {
  const folder = new URL("../../../fixtures/corpus/own/", import.meta.url);
  const golds = readdirSync(folder).filter((name) => name.endsWith(".gold.json"));
  test("over all of them together", () => {
    let right = 0;
    let all = 0;
    for (const goldName of golds) {
      const gold = JSON.parse(readFileSync(new URL(goldName, folder), "utf8")) as Gold;
      const id = goldName.replace(".gold.json", "");
      const file = readdirSync(folder).find((name) => name.startsWith(`${id}.`) && name !== goldName) ?? "";
      const transcript = readTranscript(readFileSync(new URL(file, folder)), file);
      const zones = gold.zones.map(({ zone, i, from }, position) => {
        const caption = transcript.captions[i];
        if (!caption || position === 0) return { zone, start: 0 };
        const share = Math.max(0, caption.text.toLowerCase().indexOf(from.toLowerCase())) / Math.max(1, caption.text.length);
        return { zone, start: caption.start + (caption.end - caption.start) * share };
      });
      const { rightSeconds, seconds } = scoreZones({ zones }, zonesOf(transcript), gold.duration);
      right += rightSeconds;
      all += seconds;
    }
    expect(right / all).toBeGreaterThanOrEqual(0.97);
  }, 60_000);
});

describe("walks in other styles", () => {
  /** Over all walks together; a walk of three minutes with a border every fifteen seconds is harder than a recording of fifteen minutes. */
  const floors: Readonly<Record<RecogniserStyle, number>> = {
    paragraphs: 0.97,
    unpunctuated: 0.94,
    "three-seconds": 0.97,
    "three-seconds-unpunctuated": 0.94,
    rolling: 0.94,
    words: 0.97,
  };
  const shortZoneFloors: Readonly<Record<RecogniserStyle, number>> = {
    paragraphs: 0.95,
    unpunctuated: 0.88,
    "three-seconds": 0.95,
    "three-seconds-unpunctuated": 0.88,
    rolling: 0.88,
    words: 0.95,
  };
  const sets = [
    { why: "usual zones", names: walkNames, floors },
    { why: "short zones", names: shortZoneWalkNames, floors: shortZoneFloors },
  ];
  test.for(sets.flatMap((set) => recogniserStyles.map((style) => ({ ...set, style }))))(
    "$why, $style",
    ({ names, floors: least, style }) => {
      let right = 0;
      let all = 0;
      for (const name of names) {
        const walk = markedWalk(walkText(name), style);
        const { rightSeconds, seconds } = scoreZones(walk, zonesOf(walk.transcript), walk.transcript.duration);
        right += rightSeconds;
        all += seconds;
      }
      expect(right / all).toBeGreaterThanOrEqual(least[style]);
    },
  );
});

/** The zones in order, and words that must stand in the last one's evidence. */
const orders: readonly { why: string; said: string[]; zones: ZoneName[] }[] = [
  {
    why: "tires named while standing at the driver's side stay driver-side",
    said: [
      "Good morning everybody, welcome.",
      "Okay, come on down the driver's side. The fender is straight and the door shuts well.",
      "The tires are the same on the rear as they are on the front, and the trunk has the spare.",
      "The rocker is solid and the quarter panel is original.",
    ],
    zones: ["opening", "driver-side"],
  },
  {
    why: "a remark about the engine from the cabin",
    said: [
      "Hello and welcome, today we have a good one.",
      "Let's get in it. The seats are leather and the dash has no cracks.",
      "It has the big block engine like I said and it sounds good from in here.",
      "The headliner is tight and the carpet is new.",
    ],
    zones: ["opening", "cabin"],
  },
  {
    why: "what will be shown later",
    said: [
      "Hello everybody.",
      "So up front here the grille is straight and the headlights are clear.",
      "The frame is clean, I'll show you that when it's on the lift.",
      "The front bumper has one chip in it.",
    ],
    zones: ["opening", "front"],
  },
  {
    why: "any order of walk",
    said: [
      "Hi, welcome.",
      "We've got it up on the lift. The floor pans are solid and the crossmember is straight.",
      "Okay let her down. Let's pop the hood. The radiator and the valve covers are clean.",
      "Now let's look at the front end of the car. The grille is new.",
      "Let's hop inside. The dash and the seats are good.",
    ],
    zones: ["opening", "underside", "engine-bay", "front", "cabin"],
  },
  {
    why: "back to a zone already seen",
    said: [
      "Hi, welcome.",
      "Let's get in. The seats are leather and the dash is good and the headliner is tight.",
      "Okay, pop the hood. The radiator and the valve covers are clean, and the hoses are new.",
      "Let me hop back in. The console opens and the steering wheel is wood, and the gauges all work.",
    ],
    zones: ["opening", "cabin", "engine-bay", "cabin"],
  },
  { why: "nothing but a greeting", said: ["Hello everybody."], zones: ["opening"] },
  {
    why: "parts alone",
    said: [
      "Hey guys.",
      "Grille good. Headlights clear. Front bumper straight.",
      "Seats clean. Dash good. Steering wheel good. Headliner good. Odometer forty one thousand.",
    ],
    zones: ["opening", "front", "cabin"],
  },
];

describe("where the camera is", () => {
  test.for(orders)("$why", ({ said, zones }) => {
    expect(findZones(speechOf(said)).map((span) => span.zone)).toEqual(zones);
  });

  test("each span says which words decided it, as the captions have them", () => {
    const speech = speechOf(orders[3]?.said ?? []);
    for (const span of findZones(speech)) {
      if (span.zone !== "opening") expect(span.evidence.length).toBeGreaterThan(0);
      for (const { caption, quote } of span.evidence) expect(speech.captions[caption]?.text).toContain(quote);
    }
    const underside = findZones(speech).find((span) => span.zone === "underside");
    expect(underside?.evidence[0]).toMatchObject({ caption: 1, reason: "move: on-the-lift" });
    expect(underside?.confidence).toBeGreaterThan(0.9);
  });

  test("a border falls on the word with which the turn begins", () => {
    const speech = speechOf(["The dash is good and so are the seats. Alright, hop out and we'll look in the trunk, the spare is new."]);
    const border = findZones(speech).find((span) => span.zone === "cargo");
    expect(border?.start).toBe(speech.tokens.find((token) => token.word === "alright")?.at);
  });
});

describe("for any transcript", () => {
  const piece = fc.constantFrom(
    "okay",
    "let's get in it",
    "pop the hood",
    "driver's side",
    "the tires",
    "on the lift",
    "hop out",
    ".",
    "seats",
    "[Music]",
    "thanks for watching",
    "so",
    "bonnet",
    "near side",
  );
  const captions = fc.array(fc.tuple(fc.array(piece, { maxLength: 12 }), fc.nat(12)), { maxLength: 15 });
  const transcriptOf = (rows: readonly (readonly [readonly string[], number])[]): Transcript => {
    let at = 0;
    const list = rows.map(([words, seconds], index) => {
      const start = at;
      at += seconds;
      return { index, start, end: at, text: words.join(" ") };
    });
    return { format: "plain", captions: list, duration: at };
  };

  test("spans cover it in order, without gap, overlap or empty span, and the same each time", () => {
    fc.assert(
      fc.property(captions, (rows) => {
        const transcript = transcriptOf(rows);
        const spans = zonesOf(transcript);
        expect(zonesOf(transcript)).toEqual(spans);
        if (transcript.duration === 0) return;
        expect(spans[0]?.start).toBe(0);
        expect(spans.at(-1)?.end).toBe(transcript.duration);
        for (const [position, span] of spans.entries()) {
          expect(() => ZoneProposal.parse(span)).not.toThrow();
          expect(span.end).toBeGreaterThan(span.start);
          const next = spans[position + 1];
          if (next) expect([next.start, next.zone === span.zone]).toEqual([span.end, false]);
        }
      }),
      { numRuns: 200 },
    );
  }, 60_000);

  test("names of people, dealers and makes change nothing", () => {
    const text = walkText("pickup-hurried");
    const renamed = text.replaceAll("Travis", "Odalys").replaceAll("Lone Creek", "Quarry Bend").replaceAll("Bannock", "Zerrin");
    const spans = (marked: string) => zonesOf(markedWalk(marked, "words").transcript).map(({ zone, start }) => ({ zone, start }));
    expect(spans(renamed)).toEqual(spans(text));
  });
});

test("the table of parts is well formed: plain words, each phrase claimed once", () => {
  const phrases = partRows.flatMap((row) => row.phrases.split("|"));
  for (const phrase of phrases) expect(phrase).toMatch(/^[a-z0-9]+(?: [a-z0-9]+)*=?$/);
  const twice = phrases.filter((phrase, position) => phrases.indexOf(phrase) !== position);
  expect(twice).toEqual([]);
});
