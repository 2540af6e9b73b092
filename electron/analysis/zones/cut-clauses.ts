import type { Speech, Token } from "../model.ts";
import { isJoint } from "../transcript/cut-sentences.ts";
import type { Move } from "./find-moves.ts";
import type { NamedPart } from "./find-parts.ts";
import { plainWord } from "./spoken-line.ts";

/**
 * A stretch within which the camera does not move: the model decides one zone for each. Finer than sentences, because "nice and solid,
 * alright let's get in it" shows two zones.
 */
export interface Clause {
  readonly first: number;
  readonly end: number;
  /** What stands before it: the surer the break, the cheaper a change of zone. */
  readonly break: "start" | "paragraph" | "sentence" | "lead-in" | "comma" | "move" | "run-on";
  /** Moves that begin here, with the words that lead into them. */
  readonly moves: readonly Move[];
}

/** Words with which a narrator turns to the next thing. */
const leadIns: ReadonlySet<string> = new Set([
  "okay",
  "ok",
  "alright",
  "right",
  "now",
  "so",
  "anyway",
  "anyways",
  "anyhow",
  "well",
  "next",
  "first",
  "lets",
  "then",
  "finally",
  "lastly",
  "oh",
]);
/** Further words that may stand between a lead-in and the move it leads into. */
const shortWords: ReadonlySet<string> = new Set(["and", "uh", "um", "er", "erm", "but", "yeah", "just", "then", "all"]);
/** How far back a move may begin, in words: at the lead-in of its sentence, or at the start of its clause. */
const reachToLeadIn = 14;
const reachToClause = { punctuated: 9, unpunctuated: 5 } as const;
/** A move without a place ("come on around") that ends this close before a place begins is the start of the same move. */
const reachToComeAlong = 12;

/** The speech in clauses. Every token belongs to exactly one; every move begins one. */
export function cutClauses(speech: Speech, moves: readonly Move[], parts: readonly NamedPart[]): Clause[] {
  const { tokens } = speech;
  if (tokens.length === 0) return [];
  const breaks = new Map<number, Clause["break"]>([[0, "start"]]);
  for (const sentence of speech.sentences) if (!breaks.has(sentence.first)) breaks.set(sentence.first, breakBefore(speech, sentence.first));
  for (let position = 1; position < tokens.length; position += 1) {
    if (breaks.has(position)) continue;
    if (isLeadIn(tokens, position)) breaks.set(position, "lead-in");
    else if (/[,;:—–]/u.test(tokens[position - 1]?.after ?? "")) breaks.set(position, "comma");
  }
  const starts = moveStarts(speech, moves, breaks, new Set(speech.sentences.map((sentence) => sentence.first)));
  const movesAt = new Map<number, Move[]>();
  for (const [position, move] of moves.entries()) {
    const start = starts[position] ?? move.first;
    if (!breaks.has(start)) breaks.set(start, "move");
    movesAt.set(start, [...(movesAt.get(start) ?? []), move]);
  }
  cutRunOns(tokens, parts, breaks);
  const firsts = [...breaks.keys()].toSorted((a, b) => a - b);
  return firsts.map((first, position) => ({
    first,
    end: firsts[position + 1] ?? tokens.length,
    break: breaks.get(first) ?? "comma",
    moves: movesAt.get(first) ?? [],
  }));
}

/** Fewest words of a clause that is cut at nothing but the name of a part. */
const shortestRunOn = 4;
const articles: ReadonlySet<string> = new Set([
  "the",
  "a",
  "an",
  "this",
  "that",
  "these",
  "those",
  "your",
  "my",
  "his",
  "her",
  "its",
  "our",
]);

/** Long stretches without any break are cut before the parts they name, so that they may show two zones. */
function cutRunOns(tokens: readonly Token[], parts: readonly NamedPart[], breaks: Map<number, Clause["break"]>): void {
  const starts = new Set(parts.map((part) => (articles.has(tokens[part.first - 1]?.word ?? "") ? part.first - 1 : part.first)));
  let first = 0;
  for (let position = 1; position < tokens.length; position += 1) {
    if (breaks.has(position)) first = position;
    else if (starts.has(position) && position - first >= shortestRunOn) {
      breaks.set(position, "run-on");
      first = position;
    }
  }
}

/** What a sentence's beginning parts: a new paragraph, where the recogniser wrote paragraphs, is the likeliest place for a new zone. */
function breakBefore(speech: Speech, first: number): Clause["break"] {
  const newCaption = speech.tokens[first]?.caption !== speech.tokens[first - 1]?.caption;
  if (newCaption && speech.paragraphs) return "paragraph";
  return startsWithLeadIn(speech.tokens, first) ? "lead-in" : "sentence";
}

function isLeadIn(tokens: readonly Token[], position: number): boolean {
  const word = plainWord(tokens[position]?.word ?? "");
  if (!leadIns.has(word)) return false;
  if (word === "right" || word === "first" || word === "then" || word === "well" || word === "next")
    return /[.,?!]/.test(tokens[position - 1]?.after ?? "");
  return word === "lets"
    ? !leadIns.has(plainWord(tokens[position - 1]?.word ?? ""))
    : isJoint(tokens, position) || /[.,?!]/.test(tokens[position - 1]?.after ?? "");
}

const startsWithLeadIn = (tokens: readonly Token[], position: number) => leadIns.has(plainWord(tokens[position]?.word ?? ""));

/** For each move, the token at which the turn to it begins. */
function moveStarts(
  { tokens, punctuated }: Pick<Speech, "tokens" | "punctuated">,
  moves: readonly Move[],
  breaks: ReadonlyMap<number, Clause["break"]>,
  sentenceStarts: ReadonlySet<number>,
): number[] {
  const starts: number[] = [];
  // Spoken joints ("but", "it's") are less sure to begin the turn than a sentence's start is.
  const reach = reachToClause[punctuated ? "punctuated" : "unpunctuated"];
  for (const [index, move] of moves.entries()) {
    let start = ledIntoFrom(tokens, move.first, breaks, moves[index - 1]?.end ?? 0, reach);
    const before = moves[index - 1];
    const beforeStart = starts[index - 1];
    const near = before?.zone === null && move.first - before.end <= reachToComeAlong;
    if (
      move.zone !== null &&
      near &&
      beforeStart !== undefined &&
      (before.setsOff || !startsBetween(before.end, move.first, sentenceStarts))
    ) {
      start = Math.min(start, beforeStart);
    }
    starts.push(start);
  }
  return starts;
}

function startsBetween(end: number, first: number, starts: ReadonlySet<number>): boolean {
  for (let position = end; position <= first; position += 1) if (starts.has(position)) return true;
  return false;
}

function ledIntoFrom(
  tokens: readonly Token[],
  first: number,
  breaks: ReadonlyMap<number, Clause["break"]>,
  notBefore: number,
  reach: number,
): number {
  let start = first;
  for (let back = 0; back <= reachToLeadIn && first - back >= notBefore; back += 1) {
    const position = first - back;
    const kind = breaks.get(position);
    if (kind === "lead-in" || ((kind === "sentence" || kind === "paragraph" || kind === "start") && back <= reach)) {
      start = position;
      break;
    }
    if (kind === "comma" && start === first && back <= reach) start = position;
  }
  // "Okay. And then, come on": lead-ins that stand alone before the turn belong to it.
  while (
    start > notBefore &&
    (leadIns.has(plainWord(tokens[start - 1]?.word ?? "")) || shortWords.has(tokens[start - 1]?.word ?? "")) &&
    breaks.get(start) !== undefined
  ) {
    const previous = tokens[start - 1];
    if (!previous || (tokens[start]?.caption !== previous.caption && !leadIns.has(plainWord(previous.word)))) break;
    start -= 1;
  }
  return start;
}
