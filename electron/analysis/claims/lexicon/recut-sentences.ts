import type { Sentence, Speech, SpokenNumber } from "../../model.ts";
import type { PartMention } from "./find-mentions.ts";

/** Words that open the name of a part: a sentence that starts with a part starts with these. */
const opensName =
  /^(?:the|a|this|that|these|those|your|my|his|her|our|all|both|front|rear|back|left|right|driver|driver's|passenger|passenger's|near|off|other|new|old|original|factory|two|three|four|six|eight)$/;
/** What follows a part that is the subject of its sentence. */
const subjectVerb = /^(?:is|are|was|were|says|say|reads|shows|has|have|had|got|looks|look|works|work|isn't|aren't|ain't|don't|doesn't)$/;
/** Words after which a part is no new subject: it still belongs to what they began. */
const leadsToName =
  /^(?:of|on|in|at|to|with|from|for|by|under|over|behind|below|above|around|into|off|out|than|like|as|if|when|where|while|that|which|who|what|because|cause|and|or|but|so|the|a|an|see|says|said|say|is|are|was|were|be|been|has|have|had|got|get|it's|that's|there's|they're|here's|this|think|believe|know|guess|mean|hope|how|not|no|even|just|then|until|till|about|where's|what's|whether|every|each|some|any|cause|i|you|he|she|we|they|it)$/;
/** A stretch must have this many words before it is cut again. */
const leastWords = 4;

/**
 * The speech with sentences cut again where a recogniser wrote no punctuation and a new part takes the floor ("… nobody checked that box |
 * odometer says …"): what was said of the last thing must not colour the next. Punctuated speech is left as it is.
 */
export function recutAtParts(speech: Speech, mentions: readonly PartMention[], numbers: readonly SpokenNumber[]): Speech {
  if (speech.punctuated) return speech;
  const { tokens } = speech;
  const starts = new Set<number>();
  for (const mention of mentions) {
    const last = tokens[mention.end - 1]!.word;
    const next = tokens[mention.end]?.word ?? "";
    if (!/(?:'s|'re)$/.test(last) && !subjectVerb.test(next)) continue;
    let first = mention.first;
    while (first > 0 && mention.first - first < 3 && opensName.test(tokens[first - 1]!.word)) first--;
    if (first > 0 && !leadsToName.test(tokens[first - 1]!.word)) starts.add(first);
  }
  const partStarts = new Set(mentions.map((mention) => mention.first));
  for (const number of numbers) {
    // "… she never bought the card | six speakers": a counted part opens a sentence of its own.
    const countsPart = partStarts.has(number.first) || partStarts.has(number.end) || partStarts.has(number.end + 1);
    if (
      countsPart &&
      number.first > 0 &&
      !leadsToName.test(tokens[number.first - 1]!.word) &&
      !opensName.test(tokens[number.first - 1]!.word)
    )
      starts.add(number.first);
  }
  if (starts.size === 0) return speech;
  const sentences: Sentence[] = [];
  for (const sentence of speech.sentences) {
    let first = sentence.first;
    for (let at = first + 1; at < sentence.end; at++) {
      if (!starts.has(at) || at - first < leastWords) continue;
      sentences.push({ index: sentences.length, first, end: at, startsAt: tokens[first]!.at, endsAt: tokens[at]!.at });
      first = at;
    }
    sentences.push({ ...sentence, index: sentences.length, first, startsAt: tokens[first]?.at ?? sentence.startsAt });
  }
  return { ...speech, sentences };
}
