import type { Reading, Speech, SpokenNumber } from "../model.ts";
import { chooseSpans } from "./choose-spans.ts";
import { cutPieces } from "./cut-pieces.ts";
import { foldCardinals } from "./fold-cardinals.ts";
import { matchRules } from "./match-rules.ts";
import { type Line, lineOf } from "./pieces.ts";
import { isPronounOne } from "./pronoun-one.ts";
import { readVins } from "./read-vins.ts";
import { anchorsOf, type WeighedSpan, weighSpans } from "./weigh-spans.ts";

/**
 * Every number in the speech with its plausible readings, likeliest first, in spoken order and without overlap. Reads over caption borders.
 * Context ranks the readings; which one a sentence means is for the claims pass to say, so the others stay.
 */
export function readNumbers(speech: Speech): SpokenNumber[] {
  const line = lineOf(foldCardinals(cutPieces(speech.tokens, speech.captions)), speech.tokens);
  const candidates = matchRules(line);
  const vins = vinSpans(line, speech);
  const firstChoice = chooseSpans(line, [...weighSpans(line, candidates), ...vins]);
  // What is sure by itself tells what its neighbours are about; then all are weighed again.
  const spans = [...weighSpans(line, candidates, anchorsOf(firstChoice)), ...vins];
  const chosen = chooseSpans(line, spans).filter((span) => !isPronounOne(line, span.first, span.end));
  return chosen.map((span, index) => spokenNumber(line, span, index));
}

function spokenNumber(line: Line, span: WeighedSpan, index: number): SpokenNumber {
  const readings: Reading[] = span.drafts.map((draft) => ({
    kind: draft.kind,
    value: draft.value,
    unit: draft.unit ?? null,
    parts: draft.parts ? [...draft.parts] : null,
    rule: draft.rule,
    likelihood: Math.round(draft.weight * 1000) / 1000,
    repaired: draft.repaired ?? false,
  }));
  return {
    index,
    first: line.pieces[span.first]!.first,
    end: Math.max(...line.pieces.slice(span.first, span.end).map((piece) => piece.end)),
    readings,
    broken: readings[0]!.repaired,
  };
}

/** Identification numbers are found on tokens; here their range is put in pieces. */
function vinSpans(line: Line, speech: Speech): WeighedSpan[] {
  const codes = readVins(speech.tokens);
  if (codes.length === 0) return [];
  const firstPiece = new Map<number, number>();
  const lastPiece = new Map<number, number>();
  for (const [at, piece] of line.pieces.entries()) {
    if (piece.end === piece.first) continue;
    for (let token = piece.first; token < piece.end; token += 1) {
      if (!firstPiece.has(token)) firstPiece.set(token, at);
      lastPiece.set(token, at + 1);
    }
  }
  return weighSpans(
    line,
    codes.map(({ first, end, drafts }) => ({
      first: firstPiece.get(first)!,
      end: lastPiece.get(end - 1)!,
      drafts: drafts.map((draft) => ({ ...draft, rule: "spelled-identification-number" })),
    })),
  );
}
