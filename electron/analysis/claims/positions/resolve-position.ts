import type { ComponentName, PositionName, ZoneName } from "../../../../shared-types/index.ts";
import type { Speech, Token } from "../../model.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { phraseOf } from "../measures/surroundings.ts";
import {
  type EndOfVehicle,
  endPhrases,
  everyCorner,
  handPhrases,
  hereSide,
  joinPlace,
  middleParts,
  otherSide,
  panelsBySide,
  placedComponents,
  pointingPhrases,
  type SideOfVehicle,
  sidePhrases,
  usualEnds,
} from "./position-words.ts";
import type { WheelSide } from "./wheel-side.ts";

/** The near side is the kerb's: with the wheel on the right, traffic keeps left and the kerb is on the passenger's left. */
function sideOfHand(hand: "near" | "off" | "left" | "right", wheel: WheelSide): SideOfVehicle {
  if (hand === "near") return "passenger";
  if (hand === "off") return "driver";
  return hand === wheel ? "driver" : "passenger";
}

interface Found<Meaning> {
  readonly meaning: Meaning;
  /** True where the phrase is the subject of what follows ("… the fronts are half worn"). */
  readonly opensNext: boolean;
  /** Characters between the phrase and the number. */
  readonly gap: number;
}

/** The phrase nearest before (its last occurrence) or after (its first) the number. */
function nearest<Meaning>(
  phrases: readonly { readonly words: RegExp; readonly meaning: Meaning }[],
  text: string,
  side: "before" | "after",
): Found<Meaning> | null {
  let best: (Found<Meaning> & { length: number }) | null = null;
  for (const { words, meaning } of phrases) {
    for (const match of text.matchAll(new RegExp(words.source, "g"))) {
      const gap = side === "before" ? text.length - (match.index + match[0].length) : match.index;
      if (best === null || gap < best.gap || (gap === best.gap && match[0].length > best.length))
        best = {
          meaning,
          gap,
          length: match[0].length,
          opensNext: /^(?:'s|'re| is| are| was| were| has| have| been| got| look| had)\b/.test(text.slice(match.index + match[0].length)),
        };
    }
  }
  return best;
}

export interface PlaceOfClaim {
  readonly component: ComponentName;
  readonly mention: PartMention | null;
  readonly part: string | null;
  /** True for what is the same on both sides of an axle (a tire's size). */
  readonly pairedBySide: boolean;
  /** True for what is read off one tire with a gauge or off its own sidewall (its tread, its date). */
  readonly readAtOneCorner?: boolean;
  /** Position the slot itself fixes. */
  readonly fixed: PositionName | null;
  /** Token ranges, end exclusive. */
  readonly number: { readonly first: number; readonly end: number };
  readonly clause: { readonly first: number; readonly end: number };
  readonly sentence: { readonly first: number; readonly end: number };
  /** Start of the words that cannot belong to this number, because another number was said in between. */
  readonly notBefore: number;
  /** End of the words that belong to this number, because another number follows. */
  readonly notAfter: number;
  readonly zone: ZoneName;
  /** The side the camera was last at, where it has left it ("the rear tire this side …", said from below). */
  readonly sideLast?: SideOfVehicle | null;
  readonly wheel: WheelSide;
  /** Position of the part that the talk was about, when this number only continues it. */
  readonly carried: PositionName | null;
}

function endOfPosition(position: PositionName | null): EndOfVehicle | null {
  if (position === "all") return "both";
  return position?.endsWith("front") ? "front" : position?.endsWith("rear") ? "rear" : null;
}

function sideOfPosition(position: PositionName | null): SideOfVehicle | null {
  return position?.startsWith("driver") ? "driver" : position?.startsWith("passenger") ? "passenger" : null;
}

/** A clause that a pause cut after "on" or "the" goes on to its noun. */
function finishedPhrase(tokens: readonly Token[], end: number): number {
  const last = tokens[end - 1];
  return last && last.after === "" && /^(?:on|in|at|the|to|and|with|of|for|up|out)$/.test(last.word)
    ? Math.min(tokens.length, end + 3)
    : end;
}

/** Words before a sentence that may still place it where the recogniser wrote no punctuation ("… back there | it's about five"). */
const leadInWords = 5;

/** The same where a caption's end parts a figure from the words that lead to it. */
const leadInCutOff = 9;

/** Words that hang a place on what came just before ("…on the fronts", "… up front", "… ahead"). */
const hangsOn =
  /^(?:(?:psi|pounds?|inch|inches|mm|millimeters?|thirty seconds|wide|left|of tread|tread|all|is what|there|easy|or so|on them|in them|in it) )*(?:and |but )?(?:on|in|at|to|for|up|out|down|ahead|behind|front|all|back|rear|fore|aft|around|round)\b/;

/**
 * Where on the vehicle a claim's part is, from the sentence: a place hung on right after the number, else one named before it, else the part's
 * own place, else the place the talk was at. Null where nothing says.
 */
export function resolvePosition(speech: Speech, claim: PlaceOfClaim): PositionName | null {
  if (claim.fixed) return claim.fixed;
  if (!placedComponents.has(claim.component)) return claim.mention?.component === claim.component ? claim.mention.position : null;
  const { tokens } = speech;
  const leadIn = tokens[claim.number.first - 1];
  // A caption may end between "the date on the fronts is" and its figure.
  const cutOff =
    claim.clause.first === claim.number.first &&
    leadIn?.after === "" &&
    /^(?:is|are|was|says|reads|it's|they're|that's)$/.test(leadIn.word);
  const beforeFrom = Math.max(cutOff ? claim.number.first - leadInCutOff : claim.clause.first, claim.notBefore);
  const fromMeasure = phraseOf(tokens, beforeFrom, claim.number.first);
  // What hangs on the measure before is its own place: "a three inch drop up front and a five inch flip kit in the back".
  const before = claim.notBefore > claim.clause.first ? fromMeasure.split(/\b(?:and|then|with|but)\b/).at(-1)! : fromMeasure;
  if (/\bother (?:one|ones|two|three|pair)\b|\b(?:one|two|three) of (?:the|them|those|these)\b/.test(before)) return null;
  // "Eleven inch drums in the back": the place follows the part.
  const named =
    claim.mention && claim.mention.first >= claim.number.end && claim.mention.first - claim.number.end <= 2
      ? claim.mention.end
      : claim.number.end;
  // "Seventeens at all four corners": the four is a place and no next figure.
  const notAfter =
    tokens[claim.notAfter - 1]?.word === "all" && /^(?:four|4)$/.test(tokens[claim.notAfter]?.word ?? "")
      ? claim.notAfter + 2
      : claim.notAfter;
  const after = phraseOf(tokens, named, Math.min(finishedPhrase(tokens, claim.clause.end), notAfter));
  const widerFrom = Math.max(claim.sentence.first - (speech.punctuated ? 0 : leadInWords), claim.notBefore, claim.number.first - 25);
  const wider = phraseOf(tokens, widerFrom, claim.number.first);

  const ownEnd = named > claim.number.end && fixedEnds.has(claim.mention?.part ?? "") ? endOfPosition(claim.mention!.position) : null;
  const endFrom = (phrases: typeof endPhrases | typeof pointingPhrases): EndOfVehicle | null => {
    const later = nearest<EndOfVehicle>(phrases, after, "after");
    if (later && hangsOn.test(after) && later.gap < 28) return later.meaning;
    // "One tab broke on the back, two headlights": a part that its own name places is there, whatever was said before it.
    if (phrases === endPhrases && ownEnd) return ownEnd;
    const earlier = nearest<EndOfVehicle>(phrases, before, "before");
    if (earlier) return earlier.meaning;
    const usual = usualEnds.get(claim.part ?? claim.mention?.part ?? "");
    const led = nearest<EndOfVehicle>(phrases, wider, "before")?.meaning ?? null;
    // "This is the front end, it's a tube axle on two leaf a side": the end in hand is said outright.
    if (
      usual &&
      claim.zone !== "front" &&
      !frontInHand.test(phraseOf(tokens, Math.max(claim.sentence.first, claim.number.first - 25), claim.number.first))
    )
      return usual;
    if (later && later.gap < 40 && !later.opensNext) return later.meaning;
    return led;
  };
  const mentionEnd =
    claim.mention &&
    (claim.mention.component === claim.component ||
      // A wheel stands where its tire does.
      (everyCorner.has(claim.component) && everyCorner.has(claim.mention.component)) ||
      (claim.component === "paint" && claim.mention.component === "body"))
      ? endOfPosition(claim.mention.position)
      : null;
  const pointed = nearest<EndOfVehicle>(pointingPhrases, after, "after");
  const endNamed = nearest<EndOfVehicle>(endPhrases, after, "after");
  // "Three in the back and the two up here": where it is pointed at right behind the number, it is.
  const pointedAt = pointed && pointed.gap <= 4 && (!endNamed || endNamed.gap > pointed.gap) ? pointed.meaning : null;
  const phrase = otherEndOf(claim, before, after, wider) ?? pointedAt ?? endFrom(endPhrases);
  // "The duals … all four have eight": all of those the talk is about, not of the vehicle's.
  const ofThese = phrase === "both" && mentionEnd !== null && !/\b(?:around|round|corners?|all six)\b/.test(`${before} ${after}`);
  // "Sixty five in the front and fifty five in the duals": the part named right after says the end itself.
  const hung =
    named > claim.number.end && /\b(?:in|on|at|for)\b/.test(phraseOf(tokens, claim.number.end, claim.mention!.first)) ? mentionEnd : null;
  const end = (ofThese ? mentionEnd : (hung ?? phrase)) ?? mentionEnd ?? endFrom(pointingPhrases) ?? endOfPosition(claim.carried);

  const later = phraseOf(tokens, claim.number.end, Math.min(claim.sentence.end, claim.notAfter, claim.number.end + 10));
  const side =
    claim.component === "glass" && wholeWidth.has(claim.mention?.part ?? claim.part ?? "") && end !== "both"
      ? null
      : sideOf(claim, wider, later, end);
  const around = `${wider} ${later}`;
  // Both ends of an axle wear the same: a size or a width said from one side holds for the pair.
  const place = claim.pairedBySide && end && !namesSide(wider, later) ? joinPlace(end, null) : joinPlace(end, side);
  if (claim.component === "seats") return seatPlace(place);
  const camera = cameraSide(claim.zone);
  const [fronts, backs] = [claim.carried === "front", claim.carried === "rear"];
  const words = `${wider} ${phraseOf(tokens, claim.number.end, named)} ${after} ${later}`;
  // What began as a figure of the axle goes on as one ("ten on the fronts … the rear one's six").
  if (
    claim.readAtOneCorner &&
    camera &&
    !fronts &&
    !backs &&
    !toldOfBothEnds(tokens, claim) &&
    !pairInHand.test(phraseOf(tokens, Math.max(0, claim.number.first - 30), claim.number.first)) &&
    (place === "front" || place === "rear") &&
    !saidOfSeveral.test(words)
  )
    return joinPlace(place, camera);
  if (
    place === null &&
    everyCorner.has(claim.component) &&
    (/\b(?:they're|they are|tires|wheels|rims|alloys|these|those|radials|set of)\b/.test(around) || wornByVehicle.test(wider))
  )
    return "all";
  // A bumper or a lamp pointed at from the nose is the nose's, and the tail's from behind.
  if (place === null && atEitherEnd.has(claim.component) && (claim.zone === "front" || claim.zone === "rear")) return claim.zone;
  return place;
}

const otherEnd = /\b(?:the |at the |on the )?(?:other|opposite|far) (?:end|axle|pair)\b/;

/** "Discs at the front, and it's ten inch drums at the other end": the end across from the one told of last. */
function otherEndOf({ carried }: PlaceOfClaim, before: string, after: string, wider: string): EndOfVehicle | null {
  const said = otherEnd.test(before) || (otherEnd.test(after.slice(0, 34)) && !/^.{0,30}\b(?:and|but)\b.*\bother\b/.test(after));
  if (!said) return null;
  const told = nearest<EndOfVehicle>(endPhrases, wider, "before")?.meaning ?? endOfPosition(carried);
  return told === "front" ? "rear" : told === "rear" ? "front" : null;
}

/** Parts that sit at one end or the other and nowhere between. */
const atEitherEnd: ReadonlySet<ComponentName> = new Set(["bumper", "lights"]);

/** Parts that are at one end of every vehicle. */
const fixedEnds: ReadonlySet<string> = new Set(["headlight", "tail light", "hood", "grille", "trunk lid", "tailgate"]);
/** Panes that run the width of the vehicle: a crack low on the passenger's side is in the one pane. */
const wholeWidth: ReadonlySet<string> = new Set(["windshield", "rear window"]);

/** "What's on it now is a 225/50R17", "it takes a 220/55R390": the vehicle wears it, so all its wheels do. */
const wornByVehicle = /\b(?:on (?:it|her|him) now is|(?:it|she|he) (?:takes|wears|rides on|sits on|rolls on))(?: an?)?$/;

/** "The rear tires … the code is …": the pair was named, and no single one since. */
const pairInHand =
  /\b(?:front|rear|back) (?:tires|wheels|pair)\b(?!.*\b(?:this|that) (?:one|tire|front|rear|side)\b)(?!.*\b(?:front|rear|back) (?:one|tire)\b)(?!.*\b(?:inner|outer|inside|outside|duals?|dual's)\b)/;

/** "Five millimetres on the front and six on the back": a figure for each axle, wherever the camera stands; "on this front" is one tire's. */
function toldOfBothEnds(tokens: readonly Token[], { number, sentence }: PlaceOfClaim): boolean {
  const words = phraseOf(tokens, Math.max(sentence.first, number.first - 14), Math.min(sentence.end, number.end + 14));
  if (/\bthis (?:front|rear|back|side|one)\b/.test(words)) return false;
  return /\b(?:in|on|at|up|out) (?:the )?fronts?\b/.test(words) && /\b(?:in|on|at|out) (?:the )?(?:backs?|rears?)\b/.test(words);
}

/** The front of the vehicle shown, and not named in passing. */
const frontInHand = /\b(?:this is|here's|that's|at|to|under) (?:the |your |our )?front (?:end|axle|suspension)\b/;

/** True where the side is named for itself, and not by where the camera stands. */
function namesSide(wider: string, later: string): boolean {
  return (
    /\b(?:front|rear|back) (?:tire|wheel|one) on this side\b/.test(`${wider} ${later}`) ||
    sidewallRead.test(wider) ||
    [wider, later].some((text) => [...sidePhrases, ...handPhrases].some(({ words }) => words.test(text)))
  );
}

/** One tire's own sidewall, read off: "front tire, I'll read you the side of it". */
const sidewallRead =
  /\b(?:this (?:front|rear|back) (?:one|tire)|(?:front|rear|back) one) (?:says|reads|it says|here says|is marked)\b|\b(?:read|reading) (?:you )?(?:it )?(?:off )?(?:the |what's on the )?(?:side ?wall|side)\b/;

function sideOf(claim: PlaceOfClaim, wider: string, later: string, end: EndOfVehicle | null): SideOfVehicle | null {
  const around = `${wider} ${later}`;
  const camera = cameraSide(claim.zone);
  const said = nearest(sidePhrases, wider, "before")?.meaning ?? nearest(sidePhrases, later, "after")?.meaning;
  if (said) return said;
  const hand = nearest(handPhrases, wider, "before")?.meaning ?? nearest(handPhrases, later, "after")?.meaning;
  if (hand) return sideOfHand(hand, claim.wheel);
  if (camera && everyCorner.has(claim.component) && sidewallRead.test(wider)) return camera;
  if (camera && otherSide.test(around)) return camera === "driver" ? "passenger" : "driver";
  if (camera && hereSide.test(around)) return camera;
  if (!camera && claim.sideLast && everyCorner.has(claim.component) && thisSideOfEnd.test(around)) return claim.sideLast;
  if (camera && panelsBySide.has(claim.component) && end !== "both" && !middleParts.has(claim.part ?? claim.mention?.part ?? ""))
    return camera;
  return sideOfPosition(claim.carried);
}

/** "The rear tire this side", "this side's front wheel". */
const thisSideOfEnd = /\b(?:(?:front|rear|back) (?:tire|tyre|wheel|one) (?:on )?this side|this side's (?:front|rear|back))\b/;

/** The side the camera looks at, where it stands beside the vehicle. */
function cameraSide(zone: ZoneName): SideOfVehicle | null {
  return zone === "driver-side" ? "driver" : zone === "passenger-side" ? "passenger" : null;
}

/** Words of a figure that holds for a whole axle or set ("nine on the fronts", "they've got six in the back"). */
const saidOfSeveral =
  /\b(?:fronts|rears|backs|ones|pair|both|set|each|all|they|they're|they've|them|these|those|tires|steers|drives|steer tires|drive tires|axle)\b/;

/** Seats with a side and no row are the front ones: there is no driver's seat in the back. */
function seatPlace(position: PositionName | null): PositionName | null {
  return position === "driver" || position === "passenger" ? `${position}-front` : position;
}
