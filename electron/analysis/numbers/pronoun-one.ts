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

/** Characters around a "one" in which a key is named, or another one is told from it. */
const reach = 70;

/** "Keys, one for the door and one for the ignition", "here's the key, it's the only one": counted one by one. */
function toldApart(line: Line, first: number, end: number): boolean {
  const behind = line.text.slice(Math.max(0, line.starts[first]! - reach), line.starts[first]);
  if (!/(?<!low )\bkeys?\b/.test(behind)) return false;
  // "Two keys, one for the door and one for the ignition": told how many already.
  if (/(?:^| )(?:[2-9]|both|all) (?:\S+ )?keys\b/.test(behind)) return false;
  const ahead = line.text.slice(line.starts[end], line.starts[end]! + reach);
  return / the only $/.test(behind) || /^(?:for|with|without|works) (?:the |an? )?\S+(?: |$)/.test(ahead);
}

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
  // "It came with one, I added the other", "battery, there's the one.": said of how many there were.
  if (previous === "with" && /^(?:came|comes|come)$/.test(earlier) && /^[.,]$/.test(next)) return false;
  if (previous === "the" && /^(?:there's|theres)$/.test(earlier) && /^[.,]$/.test(next)) return false;
  if (toldApart(line, first, end)) return false;
  if (after.has(next)) return !(/^[.,]$/.test(next) && counting.has(previous));
  return before.has(previous) && next !== "owner";
}
