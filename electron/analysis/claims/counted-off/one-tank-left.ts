import { type CountedSpeech, type CountFound, type CountingRule, namedBefore, wordsOf } from "./count-found.ts";

/** How far back a tank may have been named. */
const namedWithin = 60;

/** What shows that a second tank is not there: its place, with nothing in it. */
const emptyPlace =
  /^(?:an? empty (?:pair of )?(?:tank )?(?:straps?|bracket|cradle)|just (?:a )?bare (?:rail|frame)|no straps?,? no bracket|never was another (?:one|tank)|an? (?:pair of )?(?:straps?|bracket) (?:with )?(?:and )?nothing in|just the (?:straps|bracket) (?:and|with) no tank)\b/;

/** Places where a second tank hangs. */
const hangsThere: ReadonlySet<string> = new Set(["underside", "driver-side", "passenger-side", "rear", "cargo"]);

function find(counted: CountedSpeech): CountFound[] {
  const { speech } = counted;
  const found: CountFound[] = [];
  for (let at = 0; at < speech.tokens.length; at++) {
    const match = emptyPlace.exec(wordsOf(speech, at, at + 9));
    if (!match || !hangsThere.has(counted.zoneAt(at))) continue;
    if (!namedBefore(counted, at, namedWithin, ({ component }) => component === "fuel-tank")) continue;
    const end = at + match[0].split(" ").length;
    found.push({ component: "fuel-tank", part: "tank", value: 1, circumstance: null, first: at, end, at: end - 1 });
    at = end;
  }
  return found;
}

export const oneTankLeft: CountingRule = {
  name: "one tank where two would hang",
  find,
  examples: [
    {
      says: "Tank's nineteen gallons, and you look over on the other side and there's an empty pair of straps hanging.",
      zone: "underside",
      gives: { component: "fuel-tank", part: "tank", value: 1, circumstance: null },
    },
    {
      says: "and there's your gas tank it's the left side over there across from it's just bare rail",
      zone: "underside",
      gives: { component: "fuel-tank", part: "tank", value: 1, circumstance: null },
    },
  ],
  quiet: [
    { says: "There's an empty bracket where the fog light was.", zone: "front" },
    { says: "The fuel tank's strapped up and the straps are new.", zone: "underside" },
  ],
};
