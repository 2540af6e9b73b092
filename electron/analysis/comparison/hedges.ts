import type { AttributeName, Claim, ComponentName } from "../../../shared-types/index.ts";
import { type ConflictDraft, conflictOf } from "./conflict-of.ts";
import type { ClassedSlot } from "./slots/disputes.ts";
import { saidApart, sameBreathSeconds } from "./slots/said-apart.ts";
import { isRounded, spokenStep } from "./values/approximation.ts";
import { capitalised, claimWords, moment } from "./wording.ts";

interface BuyerCare {
  readonly topic: string;
  readonly weight: number;
  /** Parts it is about; null is the component as a whole. */
  readonly parts: readonly (string | null)[];
}

/** Where a buyer relies on the flat statement, so that a later doubt about the same value must be shown. Common practice of the trade. */
export const buyerCares = {
  "vehicle.year": { topic: "model year", weight: 80, parts: [null] },
  "vehicle.count": { topic: "number of owners", weight: 75, parts: ["owner"] },
  "engine.year": { topic: "engine year", weight: 80, parts: [null] },
  "engine.originality": { topic: "engine being the original one", weight: 85, parts: [null] },
  "transmission.originality": { topic: "transmission being the original one", weight: 65, parts: [null] },
  "odometer.mileage": { topic: "mileage being actual", weight: 90, parts: [null] },
  "odometer.originality": { topic: "mileage being actual", weight: 90, parts: [null] },
  "electrical.originality": { topic: "battery being the original one", weight: 70, parts: ["traction battery"] },
  "vin.originality": { topic: "matching numbers", weight: 85, parts: [null, "engine number"] },
  "paint.originality": { topic: "paint being original", weight: 55, parts: [null] },
  "cargo-floor.originality": { topic: "bed being the original one", weight: 55, parts: [null, "bed"] },
  "final-drive.originality": { topic: "axle being the original one", weight: 55, parts: [null, "axle"] },
  "top.originality": { topic: "top being the original one", weight: 40, parts: [null] },
  "seats.originality": { topic: "seats being original", weight: 40, parts: [null, "cover"] },
  "frame.originality": { topic: "frame being original", weight: 55, parts: [null] },
  "title.title-brand": { topic: "title", weight: 85, parts: [null] },
  "vehicle.presence": { topic: "accident history", weight: 85, parts: ["accident", "accident damage", "damage"] },
  "title.presence": { topic: "service history", weight: 60, parts: ["service history", "service record", "service book", "history"] },
} as const satisfies Partial<Record<`${ComponentName}.${AttributeName | "title-brand"}`, BuyerCare>>;

/**
 * The same value given flatly and, apart from it, with doubt. A figure that was merely rounded ("about eighty four thousand") is no doubt.
 * Ask only of slots whose values do not already contradict each other: the doubt is then the lesser matter.
 */
export function hedgesIn({ facets, classes }: ClassedSlot): ConflictDraft[] {
  const { subject } = facets[0]!;
  const care = (buyerCares as Partial<Record<string, BuyerCare>>)[`${subject.component}.${subject.property}`];
  if (!care?.parts.includes(subject.part)) return [];
  const byClass = new Map<number, Claim[]>();
  facets.forEach(({ claim }, position) => {
    const here = byClass.get(classes[position]!);
    if (here) here.push(claim);
    else byClass.set(classes[position]!, [claim]);
  });
  return [...byClass.values()].flatMap((claims) => hedgeAmong(claims, care));
}

function hedgeAmong(claimsOfOneValue: readonly Claim[], care: BuyerCare): ConflictDraft[] {
  const claims = [...claimsOfOneValue].sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
  const flat = claims.filter((claim) => claim.stance === "stated" && !isDoubtedReading(claim) && !isRoundFigure(claim));
  const doubted = claims.filter(
    (claim) =>
      (claim.stance === "hedged" || isDoubtedReading(claim)) &&
      !isRoundFigure(claim) &&
      !isDoubtOfAnother(claim) &&
      !isTakenForGranted(claim),
  );
  const firstFlat = flat[0];
  const firstDoubt = doubted[0];
  if (!firstFlat || !firstDoubt || !someApart(flat, doubted)) return [];
  return [
    conflictOf({
      kind: "hedge",
      topic: care.topic,
      why: capitalised(
        `${care.topic}: ${claimWords(firstFlat)} is stated flatly at ${moment(firstFlat.start)} and put in doubt at ${moment(firstDoubt.start)} ("${shortened(firstDoubt)}").`,
      ),
      rule: "flat-and-doubtful",
      weight: care.weight,
      sides: [
        { value: firstFlat.value, unit: firstFlat.unit, claims: flat },
        { value: firstDoubt.value, unit: firstDoubt.unit, claims: doubted },
      ],
    }),
  ];
}

/**
 * Whether the value was stated flatly at one moment and doubted at another. A flat reading beside the doubt ("it says 41,266, and whether
 * that's right…") takes nothing away from that: the doubt is about it too.
 */
function someApart(flat: readonly Claim[], doubted: readonly Claim[]): boolean {
  return flat.some(
    (one) => saidApart([[one], [doubted[0]!]], sameBreathSeconds.hedge) || saidApart([[one], [doubted.at(-1)!]], sameBreathSeconds.hedge),
  );
}

/** Words of doubt about the figure itself, however round it is. */
const doubtWords =
  /\b(whether|who knows|can'?t (say|tell|swear|vouch|put my hand)|could(n'?t| not) (say|tell|swear)|don'?t know|no idea|believe|supposed(ly)?|guess|vouch|swear|if (that's|it's|you believe)|hasn't gone (a)?round|rolled over|your guess|judge|from memory|don'?t quote|think it was|not sure|can'?t be sure|could be wrong|may be wrong|don'?t hold me)\b/i;

/** A reading whose truth is left open in so many words, whatever its own clause says: "says sixty eight thousand, whether you believe it". */
const strongDoubt =
  /\b(could|can|would)(n'?t| ?not) (be (certain|sure|positive)|swear|vouch|say for (certain|sure)|put my (hand|name)|prove|promise)\b|\b(not (certain|sure|positive)|no proof)\b/i;

function isDoubtedReading({ attribute, quote }: Claim): boolean {
  return strongDoubt.test(quote) || (attribute === "mileage" && /\b(whether|who knows|your guess|if you believe)\b/i.test(quote));
}

const anyDoubt =
  /\b(think|thought|reckon|say|maybe|probably|might|may|looks? like|should|could|perhaps|presum\w*|assum\w*|appears?|seems?|far as)\b/i;

/** A farewell sums everything up in one breath: a doubt there is about the figure it stands beside. */
function isDoubtOfAnother(claim: Claim): boolean {
  if (claim.attribute !== "year" && claim.attribute !== "count") return false;
  return (claim.zone === "closing" || claim.zone === "opening") && !anyDoubt.test(claim.quote) && !doubtWords.test(claim.quote);
}

/** "The one owner was a nurse, I think": what she did is doubted, and not how many there were. */
function isTakenForGranted({ attribute, quote }: Claim): boolean {
  return (
    attribute === "count" &&
    /^(?:the|his|her|its|that) (?:only |first |last )?\S+ \S+ (?:was|is|were|are|had|has|used|lived|did|bought|kept)\b/i.test(quote)
  );
}

/** Spoken as a round one, by its words or by its noughts: "eighty four thousand" with a hedge rounds, "fifty eight four" with one doubts. */
function isRoundFigure(claim: Claim): boolean {
  if (typeof claim.value !== "number" || claim.attribute === "year" || doubtWords.test(claim.quote)) return false;
  return isRounded(claim) || (claim.attribute === "mileage" && spokenStep(claim.value) >= 1000);
}

function shortened(claim: Claim): string {
  return claim.quote.length <= 90 ? claim.quote : `${claim.quote.slice(0, 87)}…`;
}
