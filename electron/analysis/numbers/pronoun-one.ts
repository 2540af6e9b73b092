import type { Line } from "./pieces.ts";

/** "that one", "the good one", "one of these days": the word for a thing and no count. */
const before: ReadonlySet<string> = new Set(
  "this that which any every each another no some good nice new old real big small little next last other same right wrong first second red blue plain better best".split(
    " ",
  ),
);
const after: ReadonlySet<string> = new Set(
  ", . that that's who which you i we they he she it is was are were in on at to for from with and but so day time thing way more another here there has had where when what up down out off like we've you've i've they've".split(
    " ",
  ),
);
/** Words after which a lone "one" still counts: "just one, and it works". */
const counting: ReadonlySet<string> = new Set("just only there's got has have had is number minus plus exactly".split(" "));

const storyTimes: ReadonlySet<string> = new Set(["day", "night", "time", "morning", "afternoon", "evening", "summer", "winter"]);

/** Things of which there is one or more: "battery's one and", "the exhaust is one" tell how many. */
const countedAfterNoun =
  /^(?:battery|batteries|exhaust|tailpipe|carb|carburetor|carburettor|tank|key|keys|owner|owners|keeper|keepers)(?:'s)?$/;

export function isPronounOne(line: Line, first: number, end: number): boolean {
  const piece = line.pieces[first]!;
  // "one day", "one night" tell a story and no span.
  if (end === first + 2 && piece.text === "1" && piece.written === "words" && storyTimes.has(line.pieces[first + 1]!.text)) return true;
  if (end !== first + 1) return false;
  if (piece.written !== "words" || (piece.text !== "1" && piece.text !== "1s")) return false;
  if (piece.text === "1s") return true;
  const previous = line.pieces[first - 1]?.text ?? ".";
  const next = line.pieces[end]?.text ?? ".";
  if (
    previous === "this" ||
    previous === "that" ||
    previous === "which" ||
    previous === "every" ||
    previous === "each" ||
    previous === "another"
  )
    return true;
  const earlier = line.pieces[first - 2]?.text ?? ".";
  // "Four on the one behind": which of them, not how many.
  if (previous === "the" && /^(?:behind|ahead|beside|opposite|underneath|alongside)$/.test(next)) return true;
  // "Battery is one and …", "just the one, and …": said of how many there are.
  if (/^(?:is|'s)$/.test(previous) && countedAfterNoun.test(earlier)) return false;
  if (previous === "the" && /^(?:just|only)$/.test(earlier)) return false;
  if (after.has(next)) return !(/^[.,]$/.test(next) && counting.has(previous));
  return before.has(previous) && next !== "owner";
}
