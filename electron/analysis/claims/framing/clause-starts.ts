import type { Speech, Token } from "../../model.ts";
import type { SpokenUnit } from "./spoken-units.ts";

/** Words that begin a clause wherever they stand. */
const clauseOpeners = new Set(["but", "because", "although", "though", "whereas", "unless", "while", "which"]);
/** Words after "and" or "so" that show a new clause and not a second noun. */
const clauseSubjects = new Set([
  "it",
  "somebody",
  "someone",
  "nobody",
  "everything",
  "that",
  "there",
  "he",
  "she",
  "they",
  "we",
  "i",
  "you",
  "then",
  "this",
  "these",
  "those",
  "now",
  "on",
  "of",
  "here",
  "what",
  "today",
  "its",
]);

/** Subject and verb written as one word: where no punctuation is written, they begin a clause. */
const spokenSubjects = new Set([
  "it's",
  "that's",
  "there's",
  "they're",
  "here's",
  "he's",
  "she's",
  "i'm",
  "we're",
  "you're",
  "we've",
  "i've",
  "they've",
  "thats",
  "theres",
  "heres",
]);
const subjectPronouns = new Set(["it", "they", "he", "she", "i", "you", "we", "that", "this", "there", "these", "those"]);
const verbsAfterPronoun = new Set([
  "had",
  "was",
  "were",
  "is",
  "are",
  "has",
  "have",
  "used",
  "came",
  "come",
  "got",
  "went",
  "looks",
  "shows",
  "reads",
  "needs",
  "wants",
  "starts",
  "does",
  "gets",
  "runs",
  "drives",
  "took",
  "did",
  "put",
  "said",
  "says",
  "told",
  "believe",
  "think",
  "guess",
  "reckon",
  "can",
  "will",
  "don't",
  "doesn't",
  "didn't",
  "ain't",
  "isn't",
  "wasn't",
  "never",
]);
/** After these a subject goes on with the clause: "what it had", "because it's", "i think it's". */
const leadsOn = new Set([
  "what",
  "that",
  "which",
  "where",
  "when",
  "if",
  "how",
  "who",
  "and",
  "but",
  "so",
  "because",
  "cause",
  "think",
  "believe",
  "say",
  "guess",
  "know",
  "than",
  "like",
  "as",
  "while",
  "until",
  "since",
  "or",
  "then",
  "way",
  "one",
  "ones",
  "all",
  "i",
  "you",
  "he",
  "they",
  "we",
  "the",
]);

/** Captions of this many words end where a sentence does; shorter ones may cut a size in two. */
const wholeSentenceCaption = 25;

const presentVerb = /^(?:is|are|has|have|shows|says|reads|runs|works|isn't|aren't|ain't|hasn't)$/;
/** After these "the tires are" goes on with what was begun. */
const governs =
  /^(?:of|in|on|at|to|with|for|from|by|off|out|under|behind|over|see|like|about|into|inside|through|round|around|is|are|was|were|be|got|has|have|had|where|what|how|that|if|when|which|than|all|both|put|get|take|took|me|you|told|says|said|say|think|know|believe|guess|hope|sure|because|cause|as|but|so|the|a|or|then)$/;

/** "… when it came in | the tires are …": an article, a noun and a verb of today. */
function headsClause(tokens: readonly Token[], at: number): boolean {
  if (tokens[at]!.word !== "the" || governs.test(tokens[at - 1]!.word)) return false;
  if (tokens[at - 1]!.word === "and" && governs.test(tokens[at - 2]?.word ?? "")) return false;
  return [2, 3].some((ahead) => presentVerb.test(tokens[at + ahead]?.word ?? ""));
}

/** For every token, 1 where a clause begins: at punctuation, at joining words and, where nothing is written, at a new subject. */
export function clauseStarts(speech: Speech, units: readonly SpokenUnit[]): Uint8Array {
  const starts = new Uint8Array(speech.tokens.length + 1);
  for (const sentence of speech.sentences) starts[sentence.first] = 1;
  for (let at = 0; at < units.length; at++) {
    const unit = units[at]!;
    if (unit.endsPhrase && unit.token + 1 <= speech.tokens.length) starts[unit.token + 1] = 1;
    if (clauseOpeners.has(unit.word)) starts[unit.token] = 1;
    const next = units[at + 1];
    if ((unit.word === "and" || unit.word === "so") && next && clauseSubjects.has(next.word)) starts[unit.token] = 1;
  }
  const { tokens } = speech;
  let captionFirst = 0;
  for (let at = 1; at < tokens.length; at++) {
    const before = tokens[at - 1]!;
    const token = tokens[at]!;
    if (token.caption !== before.caption) {
      if (at - captionFirst >= wholeSentenceCaption) starts[at] = 1;
      captionFirst = at;
    }
    if (token.word === "not" && (tokens[at + 1]?.word === "the" || tokens[at + 1]?.word === "a")) starts[at] = 1;
    if (speech.punctuated || leadsOn.has(before.word)) continue;
    const next = tokens[at + 1]?.word ?? "";
    if (headsClause(tokens, at)) starts[before.word === "and" ? at - 1 : at] = 1;
    if (spokenSubjects.has(token.word) || (subjectPronouns.has(token.word) && verbsAfterPronoun.has(next))) starts[at] = 1;
  }
  starts[0] = 1;
  return starts;
}
