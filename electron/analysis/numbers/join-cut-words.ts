import { lookUp } from "../vocabulary/number-words.ts";
import { spokenUnits } from "../vocabulary/unit-words.ts";
import type { RawPiece } from "./cut-pieces.ts";

/** First halves of number words that a recogniser cut in two ("for teen" for fourteen, "for tea eight" for forty-eight). */
const halves: Readonly<Record<string, number>> = {
  thir: 3,
  for: 4,
  fore: 4,
  four: 4,
  fif: 5,
  six: 6,
  seven: 7,
  eigh: 8,
  eight: 8,
  nine: 9,
};
const tensEndings: ReadonlySet<string> = new Set(["tea", "tee", "ty"]);
/** A teen that is a person: "six teen drivers". */
const youngPerson = /^(?:agers?|drivers?|boys?|girls?|years?|daughters?|sons?|kids?)$/;
const unitNext = new RegExp(`^(?:${spokenUnits.map(({ said }) => said).join("|")})(?= |$)`);

/**
 * Puts number words together again that were cut into other words. "teen" is hardly ever said otherwise; "tea" is, so "for tea" counts only
 * with a number on either side of it or a unit behind.
 */
export function joinCutWords(pieces: readonly RawPiece[]): RawPiece[] {
  const joined: RawPiece[] = [];
  for (let at = 0; at < pieces.length; at += 1) {
    const piece = pieces[at]!;
    const ending = pieces[at + 1];
    const half = lookUp(halves, wordOf(piece));
    const told = half === undefined || ending === undefined || ending.opensCaption ? undefined : meaningOf(half, pieces, at);
    if (told === undefined) {
      joined.push(piece);
      continue;
    }
    const { first, glued, opensCaption } = piece;
    joined.push({ ...told, text: `${told.value}`, first, end: ending!.end, glued, opensCaption, written: "mixed", mended: true });
    at += 1;
  }
  return joined;
}

/** The word a piece came from, as far as it can be a half: "four" has become a figure already. */
function wordOf(piece: RawPiece): string {
  if (piece.role !== "ones" || piece.written !== "words" || piece.plural) return piece.text;
  return Object.keys(halves).find((word) => halves[word] === piece.value && word.length > 3) ?? piece.text;
}

function meaningOf(half: number, pieces: readonly RawPiece[], at: number): Pick<RawPiece, "role" | "value"> | undefined {
  const ending = pieces[at + 1]!.text;
  const next = pieces[at + 2];
  if (ending === "teen") return youngPerson.test(next?.text ?? "") ? undefined : { role: "teen", value: 10 + half };
  if (!tensEndings.has(ending)) return undefined;
  const following = pieces
    .slice(at + 2, at + 5)
    .map(({ text }) => text)
    .join(" ");
  const besideNumber = next?.role !== undefined || pieces[at - 1]?.role !== undefined || unitNext.test(following);
  return besideNumber ? { role: "tens", value: 10 * half } : undefined;
}
