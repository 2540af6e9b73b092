import type { AttributeName, ComponentName } from "../../../../shared-types/index.ts";

/** What must also agree before two values of an attribute may be compared, and the words that tell. */
export interface CircumstanceRule {
  readonly attributes: readonly AttributeName[];
  readonly components?: readonly ComponentName[];
  /** Tested on the claim's clause and the few words around. */
  readonly words: RegExp;
  readonly label: string;
  readonly example: string;
}

/** In order; the first that matches counts. A missing label would make a false conflict, a needless one only hides a true one. */
export const circumstanceRules = [
  {
    attributes: ["diameter"],
    components: ["exhaust"],
    words: /\b(?:into|collectors?|goe?s? out to|necks? down|steps? (?:up|down))\b/,
    label: "another section",
    example: "inch and five eighths into two and a quarter pipes",
  },
  {
    attributes: ["depth", "pressure", "size", "date"],
    components: ["tire"],
    words: /\b(?:insides?|inners?|inner duals?)\b/,
    label: "inner duals",
    example: "and five on the insides",
  },
  {
    attributes: ["depth", "pressure", "size", "date"],
    components: ["tire"],
    words: /\b(?:outsides?|outers?|outer duals?)\b/,
    label: "outer duals",
    example: "seven on the outside",
  },
  {
    attributes: ["size"],
    components: ["fuel-tank"],
    words: /\b(?:transfer|auxiliary|aux|slip|second|saddle|feeds|reserve|in the bed)\b/,
    label: "second tank",
    example: "a hundred gallon transfer tank",
  },
  {
    attributes: ["price"],
    words: /\b(?:i'd|he'd|we'd|they'd|would|might|could) (?:take|come|go|let|accept) \S/,
    label: "would take",
    example: "i'd take twenty six",
  },
  {
    attributes: ["size", "voltage"],
    components: ["fuel-tank", "electrical"],
    words: /\b(?:each|apiece)\b/,
    label: "each",
    example: "nineteen gallons each",
  },
  {
    attributes: ["mileage"],
    words:
      /\b(?:when (?:he|she|we|i|they|it|the) (?:\w+ )?(?:bought|got|came|sold|had|took|went|was)|at the time|back then|that was at|it was at|was at|were at|by then|at that point|used to (?:say|show|read)|last (?:mot|service|sold|year))\b/,
    label: "at an earlier date",
    example: "it said 61,000 when he bought it",
  },
  {
    attributes: ["depth", "pressure", "thickness", "diameter", "width", "size", "date"],
    words: /\bother (?:one|ones|two|three|tires|wheels|pair)\b|\b(?:one|two|three) of (?:the|them|those|these)\b/,
    label: "the others",
    example: "and the other three have six",
  },
  {
    attributes: ["pressure"],
    components: ["engine"],
    words: /\b(?:hot|warm|warmed up|up to temp)\b/,
    label: "hot",
    example: "it'll drop to thirty or so hot",
  },
  { attributes: ["pressure", "voltage"], words: /\b(?:idle|idling|tick ?over)\b/, label: "at idle", example: "twenty five at idle" },
  { attributes: ["pressure"], words: /\bcold\b/, label: "cold", example: "fifty five pounds cold" },
  {
    attributes: ["pressure"],
    components: ["engine"],
    words: /\b(?:at speed|cruising|driving|revs|going down the road|highway)\b/,
    label: "at speed",
    example: "sixty going down the road",
  },
  {
    attributes: ["pressure"],
    components: ["tire"],
    words: /\b(?:jamb|placard|sticker|book|recommended|supposed to|calls for|door plate)\b/,
    label: "placard",
    example: "sticker in the jamb says run 33",
  },
  {
    attributes: ["pressure"],
    components: ["tire"],
    words: /\b(?:told us|said to|says to|should|want(?:s)? them)\b/,
    label: "advised",
    example: "the tire man told us go 35",
  },
  {
    attributes: ["voltage"],
    words: /\b(?:running|started|fired|lit it|charging|alternator|revved|engine on)\b/,
    label: "running",
    example: "fourteen point one with it running",
  },
  {
    attributes: ["voltage"],
    words: /\b(?:in series|one after the other|six volts each)\b/,
    label: "each battery",
    example: "six volts each",
  },
  {
    attributes: ["voltage"],
    words:
      /\b(?:just sitting|(?:key|engine|ignition|motor) off|switched off|turned off|at rest|resting|sitting|tester|meter|overnight|load test)\b/,
    label: "at rest",
    example: "twelve point six just sitting there",
  },
  {
    attributes: ["power"],
    words: /\b(?:at the (?:tires?|wheels?)|rear wheel|wheel horse|dyno|put down)\b/,
    label: "at the wheels",
    example: "three eighteen at the tires",
  },
  {
    attributes: ["power", "torque"],
    words: /\b(?:at the crank|at the flywheel|crank horse)\b/,
    label: "at the crank",
    example: "three seventy five at the crank",
  },
  {
    attributes: ["mileage"],
    components: ["vehicle"],
    words: /\b(?:range|full charge|a charge)\b/,
    label: "range",
    example: "two hundred and ten on a full charge",
  },
  {
    attributes: ["mileage"],
    words: /\b(?:previous|old (?:speedo|cluster|odometer)|speedo was in it before|before the swap)\b/,
    label: "former counter",
    example: "whatever speedo was in it before had sixty one thousand",
  },
  {
    attributes: ["thickness", "depth"],
    words: /\b(?:minimum|discard|legal|throw (?:them|em|it)? ?out|new ones|comes? with|limit)\b/,
    label: "limit or as new",
    example: "they throw em out at eight",
  },
  {
    attributes: ["price"],
    words: /\b(?:shipping|delivery|deposit|per month|a month|finance|trade|tax|fee|doc fee|mot|service)\b/,
    label: "other sum",
    example: "two fifty doc fee",
  },
  {
    attributes: ["size", "diameter", "width"],
    words: /\b(?:(?:the|a) stock|as new|factory option|originally|came with|used to|out of the works)\b/,
    label: "as first supplied",
    example: "the stock one was fourteen",
  },
] as const satisfies readonly CircumstanceRule[];

export function circumstanceOf(attribute: AttributeName, component: ComponentName, words: string): string | null {
  const rule = circumstanceRules.find(
    (candidate: CircumstanceRule) =>
      candidate.attributes.includes(attribute) && (candidate.components?.includes(component) ?? true) && candidate.words.test(words),
  );
  return rule?.label ?? null;
}
