import { describe, expect, test } from "vitest";
import { driveSide } from "../../../electron/analysis/zones/drive-side.ts";
import { findLonePlaces } from "../../../electron/analysis/zones/find-lone-places.ts";
import { lonePlaces } from "../../../electron/analysis/zones/moves/lone-places.ts";
import type { ZoneName } from "../../../shared-types/index.ts";
import { speechOf } from "../../support/speech-of.ts";

/** The places heard by a narrator who is in one zone or, without one, anywhere. */
function placesIn(words: string, from: ZoneName | null = null) {
  const speech = speechOf(`It is clean. ${words} It is fine. It is good.`);
  return findLonePlaces(speech, driveSide(speech))
    .filter((move) => from === null || ((move.onlyFrom === null || move.onlyFrom.includes(from)) && !move.neverFrom.includes(from)))
    .map((move) => move.zone);
}

describe("every lone place is heard in its own example and not in words much like it", () => {
  test.for(lonePlaces)("$zone: $example", ({ zone, example, quiet }) => {
    const heard = placesIn(example);
    if (zone === "side") expect(heard.some((name) => name?.endsWith("-side"))).toBe(true);
    else expect(heard).toContain(zone);
    expect(placesIn(quiet)).toEqual([]);
  });
});

/** Written apart from the table, in the ways terse narrators speak (common practice). */
const rows = [
  { said: "Back.", to: ["rear"] },
  { said: "Okay. Now the front.", to: ["front"] },
  { said: "Passenger side.", to: ["passenger-side"] },
  { said: "And up the offside. The bonnet and the tyres are good.", to: ["driver-side"] },
  { said: "Position two, left side.", to: ["driver-side"] },
  { said: "Other side.", to: ["other-side"] },
  { said: "Boot.", to: ["cargo"] },
  { said: "Inside.", to: ["cabin"] },
  { said: "Now, inside, the seats are leather.", to: ["cabin"] },
  { said: "Right. Bonnet.", to: ["engine-bay"] },
  { said: "Underneath.", to: ["underside"] },
  { said: "Up on the ramp.", to: ["underside"] },
  { said: "Papers.", to: ["documents"] },
  { said: "Road test.", to: ["drive"] },
  { said: "So that's that.", to: ["closing"] },
  { said: "So, back. She is warm now.", from: "drive", to: ["closing"] },
  { said: "In we go.", from: "passenger-side", to: ["cabin"] },
  { said: "In we go.", from: "cargo", to: ["cargo"] },
  { said: "Let's go.", from: "documents", to: ["drive"] },
  { said: "Let's go.", to: [] },
  // What must stay quiet.
  { said: "Right.", to: [] },
  { said: "Inside?", to: [] },
  { said: "The back seat.", to: [] },
  { said: "Front tires, new.", to: [] },
  { said: "Hood, flat.", to: [] },
  { said: "Trunk lid fits.", to: [] },
  { said: "Driver.", to: [] },
  { said: "Left.", to: [] },
] as const satisfies readonly { said: string; from?: ZoneName; to: readonly string[] }[];

describe("places that stand alone", () => {
  test.for<{ said: string; from?: ZoneName; to: readonly string[] }>(rows)("$said", ({ said, from, to }) => {
    expect(placesIn(said, from ?? "driver-side")).toEqual([...to]);
  });
  test("without punctuation nothing stands alone", () => {
    const speech = speechOf("it is clean back bumper is straight inside seats are leather and so on for a good while");
    expect(findLonePlaces(speech, driveSide(speech))).toEqual([]);
  });
});
