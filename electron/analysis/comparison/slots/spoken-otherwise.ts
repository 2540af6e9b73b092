import type { AttributeName, Claim, ComponentName } from "../../../../shared-types/index.ts";

/** Attributes whose values are figures. */
export const figureAttributes: ReadonlySet<AttributeName> = new Set([
  "size",
  "diameter",
  "width",
  "displacement",
  "year",
  "ratio",
  "flow",
  "mileage",
  "price",
  "thickness",
  "voltage",
  "power",
  "torque",
  "pressure",
  "depth",
  "date",
]);

const supposed =
  /\b(originally|used to|supposed to|(would|should)('?ve| have) (been|come|had|gone|cost|left|got(ten)?|looked|run|sat|worn|\w+ed)\b)/i;
const supposedFigure = /\b(would'?ve|would have|should'?ve|should have|(was|were) an? .*\b(before|until)|stock (was|were|is|one))\b/i;

/** Tires and wheels that it stood on once: "it was on bias plies", "what it came on". */
const stoodOn = /\b((was|were|had been|'d been) (on|wearing|running)|(came|come|comes|shipped|left the \w+) (on|with))\b/i;
const rolling: ReadonlySet<ComponentName> = new Set(["tire", "wheel"]);

/** "The four cylinder ones", "the white one's a gasser": a kind of vehicle, or one that stands beside. */
const otherVehicles =
  /\b(cylinder|litre|liter|diesel|petrol|gas|door|speed|later|earlier|newer|older|other|base|cheaper|sport) ones\b|\b(white|black|blue|red|green|silver|gr[ae]y|gas|other|next) one('s| is| has| had)\b/i;
/** One that the speaker once had, or that stands elsewhere. */
const oneLikeIt =
  /\b(just like (it|this|her|him)|same as this (one )?but|i had (one|an?) |i once had|my (old|last|other|first|dad's|father's) (one|car|truck|van)|different animal|two (rows|bays|doors) over|in the next (bay|row)|across the (yard|lot)|over yonder|out (front|back) there's)\b/i;

/** What tells vehicles apart; "the gas ones" of a suspension are its shocks. */
const tellsVehiclesApart: ReadonlySet<ComponentName> = new Set(["engine", "vehicle", "transmission", "price", "title", "body"]);

/**
 * Whether the claim's own words put it in another time, in what should be, or on another vehicle, whatever it was taken for. What is
 * "original" is put in the same words and is no such.
 */
export function isSpokenOtherwise({ attribute, component, quote }: Claim): boolean {
  if (attribute === "originality") return false;
  if (supposed.test(quote) || (figureAttributes.has(attribute) && supposedFigure.test(quote))) return true;
  if (rolling.has(component) && stoodOn.test(quote)) return true;
  return tellsVehiclesApart.has(component) && (otherVehicles.test(quote) || oneLikeIt.test(quote));
}
