import type { Slot } from "../slot.ts";

/** Words that ask a sum for this vehicle; what follows is thousands. */
const asks =
  "we're at|i'm at|we are at|asking|we're asking|want|wants|we want|wanting|looking for|looking at|hoping for|need|needs|take|take about|priced at|it's up at|it's on at|on at|up at|up for|in at|yours for|have it at|the (?:price|number|ask|money)(?:'s| is)";
const asked =
  "had it at|had it up at|had it on at|had her at|had him at|started it at|started her at|started out at|began at|had it in the ad at|come down from|came down from|down from|was up at|was on at|told (?:my|his) (?:brother|brother in law|wife|neighbor|neighbour|buddy|cousin)";
const softly =
  "(?: (?:something|somewhere))?(?: (?:like|about|around|near|nearer|just|only|maybe|say|round|over|under|north of|in the region of|to get|to see|a nice|an even|a|the))*";

/** Where figures are no thousands of money. */
const noMoney =
  /\bpsi\b|\bhook(?:s|ed)? (?:it|her|him|that|them)?(?: \w+)? ?up\b|\bbatter(?:y|ies)\b|\bpercent\b|\bdegrees\b|\brpm\b|\bvolts?\b|# (?:miles?|mpg|inch|inches|foot|feet|gallons?|years?|weeks?|days?|minutes?|hours?|months?|bucks|dollars|quid|pounds|people|cars|owners?|keys?|\w+ an hour|mile)\b|\bmiles\b|\bgauge\b|\boff #|\b(?:brother|neighbou?r|buddy|cousin|friend|fella|wife|mother)(?:'s)?(?: been| is| was)? asking\b|\bfor an? (?!car|truck|nice|good)\w+ since\b|\bstock\b|\boffer(?:ed|s)\b|# [^#]*\b(?:bypass|motorway|highway|interstate|freeway|expressway|flat out|mph|indicated|all day)\b/;

/** A bare "twenty four" or "thirty two and a half" beside words that ask: thousands. */
const thousands = (reading: { readonly value: number | string }, said: string): number | undefined => {
  if (typeof reading.value !== "number" || /hundred|thousand|grand|\d{3}/.test(said)) return undefined;
  return reading.value >= 1000 ? reading.value : reading.value * 1000;
};

/** Asking prices whose thousands, unit or verb go without saying. */
export const priceShorthandSlots = [
  {
    name: "asking price in thousands",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "fraction"], units: [null], min: 3, max: 150000 },
    unless: noMoney,
    value: thousands,
    cues: [
      {
        before: new RegExp(`\\b(?:${asks})${softly}$`),
        zones: ["opening", "closing"],
        after: /^(?!\w+ (?:test|drive)|more\b|of\b|to\b|more\b)/,
        score: 1.15,
      },
    ],
    example: { heard: "we're at thirty two and a half", value: 32500, zone: "closing" },
  },
  {
    name: "price asked before, in thousands",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "fraction"], units: [null], min: 3, max: 150000 },
    unless: noMoney,
    value: (reading, said) => thousands(reading, said),
    cues: [{ before: new RegExp(`\\b(?:${asked})${softly}$`), zones: ["opening", "closing"], score: 1.2 }],
    circumstance: "asked before",
    example: { heard: "i had it at twenty four and nobody called", value: 24000, zone: "opening" },
  },
  {
    name: "asking price, said alone",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "decimal"], units: [null], min: 1000, max: 250000 },
    unless: /\bcall\b|\bphone\b|\btext\b|\bstock\b|\bnumber\b|\bserial\b|\bchassis\b|\bcode\b/,
    value: (reading, said) =>
      typeof reading.value === "number" && reading.value >= 1000 && !/^(?:19|20)\d\d$|s$/.test(said) ? reading.value : undefined,
    cues: [
      {
        // "Twenty two five. Had it at twenty four."
        before: /(?:^|\.)$/,
        after: /^\. (?:had it|i had|we had|it was|was|down from|firm|or best|obo|ono|no trades?|plus|cash|no vat)\b/,
        zones: ["opening", "closing"],
        score: 1.25,
      },
      {
        // "You can have it for thirteen nine ninety five", wherever it is said.
        before:
          /\b(?:(?:you can|you could|you'll|i'd let you|we'd let you|let you) (?:have|take|get) (?:it|her|him|this one|the (?:car|truck|van))(?: away| home| today)?|(?:take|drive) (?:it|her|him) (?:home|away)(?: today)?|(?:it|she|he|this one)(?:'s| is) yours(?: today)?) (?:for|at)(?: only| just)?$/,
        score: 1.3,
      },
      {
        // "… one owner, and 14995": a sum as it stands on the windscreen.
        said: /^\d{1,2},?\d?(?:[49]95|[0-9]50|[0-9]00|990|999)$|nine nine five$|four nine five$|nine fifty$|nine ninety five$/,
        before: /\b(?:and|at|for|it's|so)$/,
        zones: ["opening", "closing"],
        unless: /\bjust done\b|\bdone\b|\bshowing\b|\bcovered\b/,
        score: 0.85,
      },
      {
        // "Ninety one thousand miles, and it's sixteen thousand nine hundred."
        before:
          /# (?:(?:actual|original|genuine|true) )?(?:miles |kilometers )?(?:on (?:it|her|him|the clock|the odometer) )?(?:and |so |and so )?(?:it's|it is|she's|he's|we're|i'm)(?: on| up)?(?: at| for)?$/,
        said: /thousand|grand|hundred|five|nine|fifty|\d{4,5}|oh$/,
        zones: ["opening", "closing"],
        score: 1.3,
      },
    ],
    example: { heard: "three owners. twenty two five. had it at thirty.", value: 22500, zone: "opening" },
  },
  {
    name: "price asked before, as told",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["money", "integer", "measure", "decimal"], units: ["USD", "GBP", "EUR", null], min: 500, max: 2000000 },
    unless: /\bmiles?\b|\bclock\b|\bodometer\b/,
    value: (reading) =>
      typeof reading.value === "number" && reading.value >= 500 && !(reading.value >= 1900 && reading.value <= 2035)
        ? reading.value
        : undefined,
    cues: [
      {
        before: /\b(?:it|she|he|that|we|i) (?:was|were)(?: up| on)?(?: at| for)?$/,
        after:
          /^(?:when (?:it|she|he) (?:first )?(?:came in|went up|went on|got here|arrived|landed)|(?:the )?(?:week|month|year) before|till|until|in the (?:old )?(?:ad|advert|listing))\b/,
        zones: ["opening", "closing"],
        score: 1.45,
      },
    ],
    circumstance: "asked before",
    example: { heard: "It was fifteen four nine five when it came in the week before Easter", value: 15495, zone: "opening" },
  },
  {
    name: "price when new, as told",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["money", "integer", "measure"], units: ["USD", "GBP", "EUR", null], min: 500, max: 500000 },
    unless: /\bmiles?\b/,
    cues: [
      {
        before: /\bnew (?:it|she|he|this|they) (?:was|were|cost|ran|listed at|stickered at|sold for)(?: about| around| over)?$/,
        score: 1.45,
      },
      {
        before: /\b(?:it|she|he|this) (?:was|cost|listed at|stickered at|sold for)(?: about| around)?$/,
        after: /^(?:dollars |pounds |bucks |quid )?(?:brand )?new\b/,
        score: 1.45,
      },
    ],
    circumstance: "when new",
    example: { heard: "it cost fifty eight thousand brand new", value: 58000 },
  },
  {
    name: "insured or appraised value",
    component: "price",
    part: "appraisal",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "measure"], units: ["USD", "GBP", "EUR", null], min: 3, max: 2000000 },
    unless: /\bpercent\b|\bmiles\b/,
    value: (reading, said) => {
      if (typeof reading.value !== "number" || (reading.value >= 1900 && reading.value <= 2035)) return undefined;
      return reading.value >= 1000 ? reading.value : /hundred/.test(said) || reading.value > 400 ? undefined : reading.value * 1000;
    },
    cues: [
      {
        before:
          /\b(?:appraisal|appraised|appraiser|valuation|valued|agreed value|insured|insurance)\b[^#]{0,40}\b(?:said|says|at|for|is|was|put it at)$/,
        score: 1.4,
      },
    ],
    circumstance: "appraised",
    example: { heard: "insurance appraisal, they said twenty six", value: 26000 },
  },
] satisfies readonly Slot[];
