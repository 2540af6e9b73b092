import { describe, expect, test } from "vitest";
import { analysed, devWalks, findings, withCaptionAfter } from "./dev-walks.ts";

/** Remarks that say nothing of any vehicle. */
const idle = [
  "Anyway, bear with me here.",
  "Oh well, that's life I suppose.",
  "Thank you all for watching, I mean that.",
  "Let me catch my breath.",
];

describe.for(devWalks)("$id", ({ transcript }) => {
  const untouched = findings(analysed(transcript));
  const last = transcript.captions.length - 1;
  const places = [0.2, 0.4, 0.6, 0.8].map((share) => Math.round(last * share));

  test.for([...places.map((place, turn) => ({ place, text: idle[turn]! })), { place: last, text: idle[2]! }])(
    "after caption $place, “$text” changes no claim and no conflict",
    ({ place, text }) => {
      const { claims, conflicts, zones } = findings(analysed(withCaptionAfter(transcript, place, text)));
      expect(claims).toEqual(untouched.claims);
      expect(conflicts).toEqual(untouched.conflicts);
      expect(zones).toEqual(untouched.zones);
    },
  );
});
