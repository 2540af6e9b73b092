import { describe, expect, test } from "vitest";
import { type Clause, frameSpeech } from "../../../electron/analysis/claims/framing/index.ts";
import { hearSpeech } from "../../../electron/analysis/transcript/hear-speech.ts";
import { rangeOf } from "./speech-of.ts";

type Frame = Partial<Pick<Clause, "stance" | "time" | "subject">>;
/** What is said, then words of it and how they are meant. Plain words are stated, of today, of this vehicle. */
type Passage = readonly [says: string, ...words: readonly (readonly [words: string, frame: Frame])[]];

const plain: Frame = { stance: "stated", time: "today", subject: "this-vehicle" };

const passages: readonly Passage[] = [
  // another vehicle, for as long as the speaker is on it
  [
    "That green one parked next to it is a 1972 with the big block. It's an automatic and it's got air. Okay, back to ours, the dash is good.",
    ["big block", { subject: "other-vehicle" }],
    ["it's got air", { subject: "other-vehicle" }],
    ["dash is good", plain],
  ],
  [
    "We've got another one of these coming in next week, it's a diesel with the manual box. Anyway this one here is the petrol automatic.",
    ["manual box", { subject: "other-vehicle" }],
    ["petrol automatic", plain],
  ],
  [
    "My neighbor's truck has the four barrel and it drinks. This truck has the two barrel.",
    ["four barrel", { subject: "other-vehicle" }],
    ["two barrel", plain],
  ],
  ["The earlier cars had the drums up front. These are discs.", ["drums", { subject: "other-vehicle" }], ["discs", plain]],
  ["On the base model you got vinyl. This one's leather.", ["vinyl", { subject: "other-vehicle" }], ["leather", plain]],
  ["American cars had the bigger bumper, this one has the slim one.", ["bigger bumper", { subject: "other-vehicle" }], ["slim one", plain]],
  ["I used to have one with a sunroof. It leaked. No sunroof here.", ["sunroof", { subject: "other-vehicle" }], ["No sunroof here", plain]],
  [
    "Most of these have cracked dashes by now, this dash is perfect.",
    ["cracked dashes", { subject: "other-vehicle" }],
    ["dash is perfect", plain],
  ],
  ["The one behind the door is the fuse box, it's been redone.", ["redone", plain]],
  ["The red wire there is the one for the radio.", ["radio", plain]],
  // supposed
  [
    "If it had the five speed it would be worth more. It has the four.",
    ["five speed", { subject: "hypothetical" }],
    ["has the four", plain],
  ],
  ["If you ask me it's the best color, dark blue.", ["dark blue", plain]],
  ["You'd want to put tires on it. The wheels are fifteens.", ["put tires on", { subject: "hypothetical" }], ["fifteens", plain]],
  ["You could get these with a bench seat. This has the buckets.", ["bench seat", { subject: "hypothetical" }], ["buckets", plain]],
  [
    "Air conditioning was an option that year, nobody ordered it. There's the heater.",
    ["Air conditioning", { subject: "option-absent" }],
    ["heater", plain],
  ],
  // before
  ["It came with a six cylinder. It's got the V8 in it today.", ["six cylinder", { time: "former" }], ["V8", plain]],
  ["It used to be red. They painted it black.", ["red", { time: "former" }], ["black", plain]],
  [
    "This was originally a three on the tree, and it's been swapped to a four speed.",
    ["three on the tree", { time: "former" }],
    ["four speed", plain],
  ],
  ["It left the factory with drum brakes. Somebody put the discs on.", ["drum brakes", { time: "former" }], ["discs", plain]],
  ["The seats it came with are still in it.", ["seats", plain]],
  ["It's still wearing the wheels it left the factory with.", ["wheels", plain]],
  ["We converted it from points to electronic.", ["points", { time: "former" }]],
  ["It's had new carpet and the seats redone.", ["new carpet", plain], ["seats redone", plain]],
  ["She's had a new clutch.", ["new clutch", plain]],
  // doubt and hearsay
  ["I believe it's the original engine.", ["original engine", { stance: "hedged" }]],
  ["As far as I know, it's never been hit.", ["never been hit", { stance: "hedged" }]],
  ["It's a 1969 motor, I think. The heads are iron.", ["1969 motor", { stance: "hedged" }], ["heads are iron", plain]],
  ["The seats look like they've been redone.", ["seats", {}]],
  ["It should be a posi.", ["posi", { stance: "hedged" }]],
  ["It might be the original paint but I wouldn't swear to it.", ["original paint", { stance: "hedged" }]],
  ["It's about thirty thousand on the rebuild, or so I'm told.", ["thirty thousand", {}]],
  ["The owner tells me the gearbox was rebuilt. It shifts fine.", ["gearbox was rebuilt", { stance: "reported" }], ["shifts fine", plain]],
  ["According to the paperwork it's a two owner. There's the title.", ["two owner", { stance: "reported" }], ["title", plain]],
  ["Apparently it was a police car.", ["police car", { stance: "hedged" }]],
  ["I reckon it's the original paint.", ["original paint", { stance: "hedged" }]],
  ["I guarantee it's the original paint.", ["original paint", plain]],
  ["I know it's the original paint, I've got the photos.", ["original paint", plain]],
];

describe("frames over passages", () => {
  test.each(passages.map((passage) => [passage[0], passage] as const))("%s", (says, [, ...framed]) => {
    const speech = hearSpeech({ format: "plain", captions: [{ index: 0, start: 0, end: 20, text: says }], duration: 20 });
    const frames = frameSpeech(speech);
    for (const [words, frame] of framed) {
      const { first, end } = rangeOf(speech, words);
      for (let token = first; token < end; token++)
        expect([speech.tokens[token]!.text, frames.at(token)]).toMatchObject([expect.anything(), frame]);
    }
  });
});
