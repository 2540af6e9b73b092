import type { Claim } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import { phraseOf } from "../measures/surroundings.ts";

/** What a claim is given for a circumstance when the next words set this vehicle against it. */
export const setAgainst = "set against this one";

/** Tokens between the two halves of a contrast, at most. */
const longestContrast = 25;
/** Tokens from the head of a clause to the value it states, at most. */
const longestLead = 9;

/** "This one has …", "these are …", "ours is …": said so after something else. */
const turnsToThisOne =
  /^(?:(?:and|but|so|now|whereas|while|okay|well) )?(?:this one|this (?:car|truck|van|wagon|one's|coupe|sedan|saloon|estate|pickup)|this (?:still |just |only |actually )?(?:has|is|has got|gets)|this's|these (?:still |just |only )?(?:are|have)|ours)\b/;
/** "It's … now", "in there today is …". */
const saysToday = /\b(?:now|today|nowadays|these days)\b/;
const itIs =
  /^(?:(?:and|but|so|now|okay|well) )?(?:it's|it is|it has|it's got|they're|it runs|it wears|in there|on the car|on it|what you've got here)\b/;
/** Somebody is the subject of the earlier clause: what he had, wanted or could do is not yet what the vehicle has. */
const someonesDoing =
  /^(?:(?:and|but|so|well|yeah) )?(?:a (?:man|fella|fellow|guy|lady|kid|person)|some(?:body|one)?|every(?:body|one)|people|folks|most|the (?:guy|man|fella|chap|previous|last|old|first) ?\w*|a \w+ would|you (?:might|may|could|can)|the (?:previous|last) owner|(?:he|she|they|we|i) (?:swapped|traded|changed|pulled|took|sold|had|ran|wanted|saw|drove|looked)|my|his|her|dad|mum|mom|i'd|i would|you'd|you could|they'd|they all|had it|would|could)\b/;
/** Kinds and sizes that a contrast is about; counts and miles are told in one breath for other reasons. */
const contrasted: ReadonlySet<string> = new Set(["type", "material", "displacement", "diameter", "width", "size", "color", "power"]);

/** A clause that is about the vehicle in hand by its own opening. */
const speaksOfThisOne =
  /^(?:(?:and|but|so|now|okay|well|right|yeah) )?(?:this|these|here|it's|it (?:has|is|still)|it's|you've|we've got|ours|i've got)\b/;

/** Words that make an earlier reading another vehicle's or another day's. */
const toldOfThen = /\b(?:others?|another|that|had|was|were|used|before|when|then|last|first|most|those)\b/;

interface Placed {
  readonly claim: Claim;
  readonly index: number;
  readonly first: number;
  readonly end: number;
}

/**
 * Claims as they are, but that a value which the very next words set this vehicle against ("the cheap ones had cloth, this one has leather")
 * carries a circumstance: whatever it was said of, it is not what this vehicle has. Claims that open with this vehicle are left alone.
 */
export function markSetAgainst(claims: readonly Claim[], speech: Speech): Claim[] {
  const placed = placedClaims(claims, speech);
  const marked = new Set<number>();
  placed.forEach((later, at) => {
    const lead = leadOf(speech, later, 4);
    const turns = turnsToThisOne.test(lead);
    const isToday = itIs.test(lead) && saysToday.test(phraseOf(speech.tokens, later.first, Math.min(later.end + 4, speech.tokens.length)));
    if (!turns && !itIs.test(lead)) return;
    for (let before = at - 1; before >= 0 && later.first - placed[before]!.end <= longestContrast; before--) {
      const earlier = placed[before]!;
      if (earlier.end > later.first || !isContrast(earlier.claim, later.claim)) continue;
      const earlierLead = leadOf(speech, earlier, 1);
      // The figures of a dial told twice are two readings of it, however the second is put ("it's at 88,600 now").
      if (isToday && !turns && earlier.claim.attribute === "mileage" && !toldOfThen.test(earlierLead)) continue;
      if (turns || isToday ? !speaksOfThisOne.test(earlierLead) : isSomeonesDoing(earlier.claim, earlierLead)) marked.add(earlier.index);
    }
  });
  return claims.map((claim, index) => (marked.has(index) && claim.circumstance === null ? { ...claim, circumstance: setAgainst } : claim));
}

function isSomeonesDoing({ attribute, component, stance }: Claim, lead: string): boolean {
  return (
    stance === "stated" &&
    (contrasted.has(attribute) || (attribute === "count" && component === "transmission")) &&
    someonesDoing.test(lead)
  );
}

function isContrast(earlier: Claim, later: Claim): boolean {
  if (earlier.component !== later.component || earlier.attribute !== later.attribute || earlier.part !== later.part) return false;
  if (earlier.position !== null && later.position !== null && earlier.position !== later.position) return false;
  return earlier.value !== later.value && earlier.time === "today" && later.time === "today";
}

/** Words from the head of the claim's clause into its quote. */
function leadOf(speech: Speech, { first }: Placed, wordsOfQuote: number): string {
  let head = first;
  const lowest = Math.max(0, first - longestLead);
  while (head > lowest && speech.tokens[head - 1]!.after === "") head--;
  const words = phraseOf(speech.tokens, head, Math.min(first + wordsOfQuote, speech.tokens.length));
  if (speech.punctuated) return words;
  // Where nothing is written the clause may begin within: the last words that turn to this one count.
  const turn = [...words.matchAll(/\b(?:this one|this has|this is|this still|these are|these have|ours|it's|it has|they're)\b/g)].at(-1);
  return turn ? words.slice(turn.index) : words;
}

/** Claims in spoken order, by tokens. */
function placedClaims(claims: readonly Claim[], speech: Speech): Placed[] {
  const tokensOf = new Map<number, number>();
  speech.tokens.forEach((token, index) => {
    if (!tokensOf.has(token.caption)) tokensOf.set(token.caption, index);
  });
  const tokenAt = (caption: number, offset: number): number => {
    let at = tokensOf.get(caption) ?? 0;
    while (at + 1 < speech.tokens.length && speech.tokens[at]!.caption === caption && speech.tokens[at]!.end <= offset) at++;
    return at;
  };
  return claims
    .flatMap((claim, index) => {
      const opening = claim.spans[0];
      const closing = claim.spans.at(-1);
      if (!opening || !closing) return [];
      return [{ claim, index, first: tokenAt(opening.caption, opening.start), end: tokenAt(closing.caption, closing.end - 1) + 1 }];
    })
    .sort((a, b) => a.first - b.first);
}
