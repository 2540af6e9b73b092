import type { ZoneName } from "../../../shared-types/index.ts";
import type { Speech } from "../model.ts";
import { type DriveSide, zoneOfSide } from "./drive-side.ts";
import type { Move } from "./find-moves.ts";
import { type LonePlace, lonePlaces } from "./moves/lone-places.ts";
import { plainWord, spelledAlike } from "./spoken-line.ts";

/** Longest fragment, in words, lead-ins counted. */
const longestFragment = 8;
/** Words that may stand before or after the name of a place without making more of it. */
const before: ReadonlySet<string> = new Set(
  "okay ok alright all right now so and then next well here finally lastly last first thing things stop anyway anyhow yeah oh uh um er erm but just lets see guys folks".split(
    " ",
  ),
);
const after: ReadonlySet<string> = new Set("here now then next first again quick quickly real okay ok folks guys yall please".split(" "));
const commaLoss = 1.5;

const patterns = lonePlaces.map((place) => ({ place, pattern: new RegExp(`^(?:${place.phrase})$`) }));

/** Headings that stand alone: sentences, or their first words before a comma, that hold the name of a place and nothing else. */
export function findLonePlaces(speech: Speech, drive: DriveSide): Move[] {
  if (!speech.punctuated) return [];
  const moves: Move[] = [];
  for (const sentence of speech.sentences) {
    let words: string[] = [];
    let isFirstPart = true;
    for (let position = sentence.first; position < Math.min(sentence.end, sentence.first + longestFragment); position += 1) {
      const token = speech.tokens[position];
      if (!token) break;
      words.push(spelledAlike(plainWord(token.word)));
      if (token.after === "") continue;
      if (token.after.includes("?")) break;
      const ends = /[.!…]/u.test(token.after);
      const found = ends || isFirstPart ? placesNamed(words, ends, drive) : [];
      for (const move of found) moves.push({ ...move, first: sentence.first, end: position + 1 });
      if (found.length > 0 || ends) break;
      // "Position two, left side.": what follows the comma may be the place.
      isFirstPart = words.every((word) => before.has(word));
      words = [];
    }
  }
  return moves;
}

const anywhere: readonly ZoneName[] = [];

/** The place that the words name and, where what they mean hangs on where the walk is, the others. */
function placesNamed(words: readonly string[], ends: boolean, drive: DriveSide): Omit<Move, "first" | "end">[] {
  for (const fragment of bareFragments(words)) {
    const found: Omit<Move, "first" | "end">[] = [];
    for (const { place, pattern } of patterns) {
      if (place.british && !drive.british) continue;
      if (!ends && !place.beforeComma) continue;
      const match = pattern.exec(fragment);
      const zone = match && zoneOf(place, match, drive);
      if (!zone) continue;
      const strength = ends ? place.strength : place.strength - commaLoss;
      const bounds = { onlyFrom: place.onlyFrom ?? null, neverFrom: place.neverFrom ?? anywhere };
      found.push({ rule: "a place by itself", zone, leaves: null, strength, setsOff: false, announces: false, ...bounds });
      if (!place.onlyFrom && !place.neverFrom) break;
    }
    if (found.length > 0) return found;
  }
  return [];
}

/** The fragment as it stands, and without what may stand around a name ("right" leads in, and is a side too). */
function* bareFragments(words: readonly string[]): Generator<string> {
  yield words.join(" ");
  let [start, end] = [0, words.length];
  while (start < end && before.has(words[start] ?? "")) start += 1;
  yield words.slice(start, end).join(" ");
  while (end > start && after.has(words[end - 1] ?? "")) end -= 1;
  yield words.slice(start, end).join(" ");
}

function zoneOf(place: LonePlace, match: RegExpExecArray, drive: DriveSide): Move["zone"] {
  return place.zone === "side" ? zoneOfSide(match.groups?.side ?? "", drive) : place.zone;
}
