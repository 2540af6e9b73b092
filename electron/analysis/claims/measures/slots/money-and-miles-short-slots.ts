import type { Slot } from "../slot.ts";

/** "Thirty four" said of money offered or turned down is thousands; "three hundred" is not. */
const thousands = (reading: { readonly value: number | string }, said: string): number | undefined => {
  if (typeof reading.value !== "number" || (reading.value >= 1990 && reading.value <= 2035)) return undefined;
  if (reading.value >= 1000) return reading.value;
  return /hundred|\d{3}/.test(said) || reading.value < 3 || reading.value > 250 ? undefined : reading.value * 1000;
};

const noMoney = /# (?:miles?|mpg|inch|inches|feet|foot|gallons?|years?|weeks?|days?|bucks off|percent)\b|\bpercent\b|\bmiles?\b/;
/** Who has a sum on a vehicle: "he's got … on it", "they have … on her". */
const holder = "(?:he|she|they|we|i|you|dealer|owner|seller|boss|boy|brother|dad|fella|guy|lady|yard)";

/** Sums and mileages with their verb after them, run together, or named only by where they stand. */
export const moneyAndMilesShortSlots = [
  {
    name: "asking price, its verb after it",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "decimal"], units: [null, "USD", "GBP", "EUR"], min: 3, max: 500000 },
    unless: /\bmiles?\b|\bclock\b|\bodometer\b|\bwas #|\boffer|# (?:foot|feet|inch|pounds of|foot pounds)\b|\bfoot\b[^#]*#/,
    value: thousands,
    cues: [
      {
        after:
          /^(?:dollars |pounds |quid |bucks |grand )?(?:is|it's|that's|and that's) (?:what|all) (?:he|she|they|we|i|the (?:owner|man|seller|lady|estate))(?:'s|'re|'m| is| are| am)? (?:asking|asks|want|wants|wanting|after|looking for|need|needs|looking to get|hoping for)\b/,
        score: 1.65,
      },
      {
        after:
          /^(?:dollars |pounds |quid |bucks |grand )?(?:(?:and )?that's|is|are|would be|'s) (?:the|my|our|his|her|their) (?:ask|asking|price|number|money|figure|sticker)\b(?! (?:was|before|new|when))/,
        score: 1.6,
      },
      { after: /^(?:is|that's) (?:what's|what it says) on the (?:glass|windscreen|windshield|sticker|board|card|tag)\b/, score: 1.6 },
    ],
    example: { heard: "twenty two five that's the ask", value: 22500, zone: "opening" },
  },
  {
    name: "asking price put on it",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "decimal"], units: [null, "USD", "GBP", "EUR"], min: 1000, max: 500000 },
    unless:
      /\bmiles?\b|\bclock\b|\bodometer\b|\bspent\b|\binvested\b|\b(?:tires?|engine|motor|gearbox|paint|truck|car|he|she)(?:'s| has)(?: only)? (?:got|had) #/,
    cues: [
      {
        before: new RegExp(
          `\\b${holder}(?:'s|'ve| has| have)? (?:got|has|have|put|hung|stuck|slapped)(?: like| about| only| just| around)?$`,
        ),
        after:
          /^(?:dollars |pounds |quid |bucks )?on (?:it|her|him|this(?: one)?|the (?:glass|windscreen|windshield))\b(?! (?:since|from|now|when|in))/,
        zones: ["opening", "closing"],
        score: 1.4,
      },
    ],
    example: { heard: "they've got twenty six five on it", value: 26500, zone: "opening" },
  },
  {
    name: "offer made for it",
    component: "price",
    part: "offer",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "decimal", "measure"], units: [null, "USD", "GBP", "EUR"], min: 3, max: 500000 },
    unless: noMoney,
    value: thousands,
    cues: [
      {
        before: /\b(?:offered|offers|offering|bid|waved|tried)(?: to give)? (?:me|us|him|her|them)(?: like| about| only| just| a flat)?$/,
        after: /^(?!(?:for|on) (?:the|a|an|his|my) (?!car|truck|van|whole|lot)|a (?:week|month|year|wheel|tire)\b)/,
        score: 1.4,
      },
      {
        before: /\b(?:turned down|refused|said no to|walked away from|knocked back|passed on)(?: about| an offer of)?$/,
        after: /^(?:dollars |pounds |quid |grand )?(?:for (?:it|her|him|this)|on it|last|from|cash|at the|and|$|\.)/,
        score: 1.35,
      },
    ],
    circumstance: "offered",
    example: { heard: "a fella offered me thirty four in the parking lot", value: 34000, zone: "closing" },
  },
  {
    name: "all the bills, added up",
    component: "price",
    part: "receipts",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "measure"], units: [null, "USD", "GBP", "EUR"], min: 100, max: 500000 },
    unless: noMoney,
    cues: [
      {
        before:
          /\b(?:added|totted|totaled|totalled|tallied) (?:it|them|that) (?:all )?(?:up )?[^.#]{0,30}\b(?:was|is|came to|comes to|at|got)(?: about| around)?$/,
        score: 1.5,
      },
      {
        before: /\b(?:that's|was|it's|is)? ?another$/,
        after: /^(?:dollars |pounds |quid |bucks )?on top(?: of (?:that|it|them))?\b/,
        score: 1.5,
      },
      {
        before: /\b(?:receipts|bills|invoices)(?: here)?(?: are| is| come to| comes to| for| of)(?: about| over)?$/,
        said: /dollars|bucks|pounds|quid|\d{4}/,
        score: 1.35,
      },
    ],
    circumstance: "receipts",
    example: { heard: "i added it up once and it was forty four thousand", value: 44000, zone: "documents" },
  },
  {
    name: "odometer, by where it is read",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "mi",
    need: { kinds: ["integer", "measure"], units: [null, "mi", "km"], min: 100, max: 900000 },
    unless: /\bdollars|\bbucks|\bquid\b/,
    cues: [
      {
        after:
          /^(?:miles |kilometers )?(?:odd |or so |and change |and a bit )?(?:is |showing )?(?:on|by|up on) (?:the|its|her|his|that) (?:speedometer|speedo|odometer|dial|counter)\b/,
        said: /thousand|hundred|\d{3}/,
        score: 1.75,
      },
      {
        // "A hundred and thirty one thousand on it, and we're asking …": the money comes second.
        said: /thousand|hundred|\d{4}/,
        after:
          /^(?:miles |kilometers )?(?:odd |or so |and change |near enough |give or take )?on (?:it|her|him|this one)(?: and| so| but)? (?:we're|we are|i'm|i am|he's|she's|they're|you're|it's|it is|the price|the money|asking|priced)\b(?! (?:worth|never|got|had|still|in|a)\b)/,
        zones: ["opening", "closing"],
        score: 1.75,
      },
      {
        said: /miles$/,
        zones: ["opening", "closing"],
        after: /^and (?:every|each) (?:single )?(?:one|mile)\b/,
        score: 1.6,
      },
      {
        said: /thousand|\d{5}/,
        after: /^(?:miles )?odd on (?:it|her|him)\b/,
        score: 1.75,
      },
    ],
    example: { heard: "a hundred thirty one thousand six hundred and forty on the speedometer", value: 131640, zone: "opening" },
  },
  {
    name: "wheels of an odometer",
    component: "odometer",
    part: "digit",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 4, max: 7 },
    cues: [
      { after: /^(?:number )?(?:wheels|drums|digits|figures) (?:on it )?(?:plus|and|with) (?:the |a )?(?:tenths?|decimal)\b/, score: 1.6 },
    ],
    example: { heard: "it's got six wheels on it plus the tenths", value: 6, zone: "cabin" },
  },
  {
    name: "mileage of a job, in bare thousands",
    component: "topic",
    part: "work",
    attribute: "mileage",
    unit: "mi",
    need: { kinds: ["integer"], units: [null], min: 10, max: 400 },
    unless:
      /# [^#]+ # (?:dollars|bucks|pounds|quid|a|each|apiece|volts?|psi|percent|degrees|inch|on|of|to|in|for)\b|\d{4}|\bquarters?\b|\bhalf\b|\bmicron/,
    value: ({ value }) => (typeof value === "number" ? value * 1000 : undefined),
    cues: [
      {
        zones: ["documents", "underside", "engine-bay", "drive"],
        before: /\b(?:last|latest|second|newest|this|new) one (?:was |went in |fitted |put in )?at(?: about| around)?$/,
        after: /^(?:$|\.|thousand|and|so|by)/,
        score: 1.2,
      },
      {
        // "Shocks at a hundred and twelve", "front axle fluid at one sixty": a service book's lines.
        zones: ["documents"],
        before:
          /\b(?!asking|priced|price|insured|valued|sold|listed|up|look|see|down|back|in|good|is|was|be)[a-z]+ (?:done |changed |replaced |new |serviced |rebuilt )?at$/,
        after: /^(?:$|\.|and|then|#|[a-z]+ (?:oil |fluid |pump |belt )?(?:at|done)\b)/,
        score: 1.3,
      },
    ],
    circumstance: "when the work was done",
    example: { heard: "front axle fluid at one sixty", value: 160000, zone: "documents" },
  },
] satisfies readonly Slot[];
