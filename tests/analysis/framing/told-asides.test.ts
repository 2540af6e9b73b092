import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";
import type { Claim, Transcript } from "../../../shared-types/index.ts";
import { toldAsides } from "./told-asides.ts";

function claimsOf(text: string): readonly Claim[] {
  const transcript: Transcript = { format: "plain", captions: [{ index: 0, start: 0, end: 20, text }], duration: 20 };
  return analyse(transcript, { stockSheet: null, recordedOn: null }).claims;
}

/** As a hurried recogniser writes it: no capitals, no punctuation but within a number. */
function unwritten(text: string): string {
  return text.toLowerCase().replace(/[.,;:?!](?=\s|$)/g, "");
}

const named = ({ component, attribute, value }: Claim) => `${component} ${attribute} ${value}`;
const plainToday = (claim: Claim) => claim.time === "today" && claim.circumstance === null;

describe.each([
  ["written", (text: string) => text],
  ["unwritten", unwritten],
])("asides, %s", (_form, asHeard) => {
  test.each(toldAsides.map((told) => [told.says, told] as const))("%s", (says, { aside, kept }) => {
    const claims = claimsOf(asHeard(says));
    const plain = claims.filter(plainToday).map(named);
    expect(plain.filter((claim) => aside.includes(claim))).toEqual([]);
    expect(claims.filter((claim) => claim.time === "today").map(named)).toEqual(expect.arrayContaining([...kept]));
  });
});
