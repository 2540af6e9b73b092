import type { Stance } from "../../../../shared-types/index.ts";
import type { Speech, SpokenNumber } from "../../model.ts";
import type { Clause } from "../framing/index.ts";
import { phraseOf } from "./surroundings.ts";

/** Words right before a number that leave it open by a little ("about", "call it"). */
const roundsBefore =
  /\b(?:(?<!\b(?:argue|talk|ask|asked|know|think|say|tell me|forget|sure|worry|concerned) )about|(?<!\b(?:all|way) )around|(?:was|it's|is|at|say|think|been) round|round about|roughly|approximately|maybe|nearly|almost|close to|(?<!\b(?:you'd|they'd|they|people|folks|we'd) )call it|(?:just|little|bit|shade|touch|hair|tad|whisker|fraction|tick) (?:under|over|above|below|shy of|short of|north of)|somewhere near|somewhere around|something like|in the region of|getting on for|upwards of|(?:for|with|had|got|at|maybe|was|is|it's|of) like)(?: a| an| the| maybe)?$/;
/** The same right after it ("thirty or so", "nineteen thousand near enough"). */
const roundsAfter =
  /^(?:(?:miles|inches|feet|foot|pounds|dollars|grand|quid|volts|horsepower) )?(?:or so|or thereabouts|or somewhere (?:around|about|near|in)|or something|and change|and a (?:bit|hair|touch|smidge|half or so)|ish\b|give or take|near enough|as near as|(?:i (?:think|guess|believe|reckon|suppose|fancy|gather|want to say|wanna say|would say)|i'd (?:say|guess|reckon|think))(?! (?:it|it's|that|that's|they|they're|he|he's|she|she's|you|the|this|these|there|there's|we|i|i'd|a|an|about|around|my|your|somebody|so)\b)|more or less|if i remember|if memory|i make (?:it|that)|as best i can tell)\b/;

/** Doubt that governs all that follows it in its clause. */
const leadsIn =
  /\b(?:i (?:believe|think|guess|reckon|suppose|fancy|gather|imagine|assume|suspect|expect|figure|presume|make it|make that|want to say|wanna say|would say|would guess)|i'd (?:say|guess|reckon|think|imagine)|i'm (?:going to|gonna) say|looks like|look like|appears|seems|should be|supposed to|apparently|supposedly|allegedly|presumably|probably|possibly|perhaps|might|could be|must be|as far as|from what i|if i (?:remember|recall)|not sure|don't know|i'm told)\b/;
/** Doubt about the one number beside it. */
const rounds =
  /\b(?:about|around|roughly|approximately|maybe|nearly|almost|call it|or so|or thereabouts|give or take|near enough|like|ish|i (?:think|guess|believe|reckon|suppose))\b/;

/**
 * How firmly a number is said. A clause may hold several, and a word of doubt beside one says nothing of the others: "it's a 1964, two point six,
 * and it's nineteen thousand near enough" doubts the price alone.
 */
export function stanceOf(
  speech: Speech,
  frame: Clause,
  number: SpokenNumber,
  before: SpokenNumber | undefined,
  after: SpokenNumber | undefined,
): Stance {
  if (frame.stance === "reported") return "reported";
  const { tokens } = speech;
  const parted = /[.?!;]/.test(tokens[number.first - 1]?.after ?? "");
  const said = (first: number, end: number): string => phraseOf(tokens, Math.max(first, 0), Math.min(end, tokens.length));
  const closed = /[.?!,;]/.test(tokens[number.end - 1]!.after) && !/^near enough|^or /.test(said(number.end, number.end + 2));
  if (
    (!parted && roundsBefore.test(said(number.first - 4, number.first))) ||
    (!closed && roundsAfter.test(said(number.end, number.end + 5)))
  )
    return "hedged";
  if (frame.stance !== "hedged") return frame.stance;
  const sharedBefore = before !== undefined && before.first >= frame.first ? before : undefined;
  const sharedAfter = after !== undefined && after.first < frame.end ? after : undefined;
  const own = said(frame.first, frame.end);
  const doubtedHere = rounds.test(own) || leadsIn.test(own) || leadsIn.test(said(frame.first - 6, frame.first));
  if (!doubtedHere && after && roundsAfter.test(said(after.end, after.end + 4))) return "stated";
  if (!sharedBefore && !sharedAfter) return "hedged";
  const ownBefore = said(sharedBefore ? sharedBefore.end : frame.first, number.first);
  const ownAfter = said(number.end, sharedAfter ? sharedAfter.first : frame.end);
  const leading = leadsIn.test(said(frame.first, number.first));
  if (leading || rounds.test(ownBefore) || (!sharedAfter && (rounds.test(ownAfter) || leadsIn.test(ownAfter)))) return "hedged";
  // "31,600 miles on it, two owners | I believe": handed back to the last number of the clause alone.
  if (sharedAfter && roundsAfter.test(said(frame.end, frame.end + 3)) && !leadsIn.test(said(frame.first - 6, frame.first))) return "stated";
  // Doubt that this table does not know was heard by the framing of the clause.
  return rounds.test(own) || leadsIn.test(own) ? "stated" : "hedged";
}
