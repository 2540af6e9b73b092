import { lastingComponents } from "../../lexicon/lasting-components.ts";
import type { About, Slot } from "../slot.ts";

/** Words of a paper that says what was done, and what it cost. */
const paper =
  "receipts?|bills?(?! of)|invoices?|work orders?|job sheets?|estimates?|statements?|dockets?|tickets?|quotes?|machinist|machine shop|garage|body ?works?|body shop|paint shop|trimmer|upholsterer|exhaust shop|axle shop|diesel shop|engine builder|specialists?";

/** Parts that work is done on: a sum or a date in the papers is about the nearest of them. */
const workedOn: readonly About[] = [...lastingComponents, "tire"];

/** What a sum is no cost of work beside. */
const otherSum =
  /\basking\b|\bsticker\b|\bnew for\b|\bwhen new\b|\bbrand new\b|\bwebsite\b|\bworth\b|\btaxe?s?\b|\bdeposit\b|\bfee\b|\byours for\b/;
/** Figures in papers that are no money. */
const noSum =
  /\b(?:an?|the|little|big|old) #|# (?:\w+ )?(?:teeth|tooth|splines?|miles?|kilometers?|pages?|owners?|keys?|stamps?|volts?|psi|percent|microns?|mils?|inch|inches|foot|feet|liters?|quarts?|gallons?|thousand|horse|speed|cylinders?|injectors?|lines?|bolts?|of (?:them|those|these))\b|\b(?:at|stock|number|serial|plate|section|page|mot|till|until|since|in) #/;

/** What receipts, bills and invoices say: sums and dates of the part that was worked on. */
export const paperSlots = [
  {
    name: "cost of work in the papers",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { units: ["USD", "GBP", "EUR"], min: 5, max: 60000 },
    unless: otherSum,
    cues: [
      { zones: ["documents"], about: workedOn, reach: "sentence", score: 1.0 },
      { zones: ["documents"], about: workedOn, score: 0.92 },
      { before: new RegExp(`\\b(?:${paper})\\b[^.]{0,80}$`), about: workedOn, reach: "sentence", score: 1.0 },
      { before: /\b(?:an? (?:extra|option|upgrade)|option|optional)(?: that was)? at$/, about: workedOn, score: 1.1 },
    ],
    circumstance: "cost of a part or of work",
    example: { heard: "new bearings set up with a new gasket in the rear end $1,800", value: 1800, zone: "documents" },
  },
  {
    name: "cost of work in the papers, unit left out",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money"], units: [null], min: 40, max: 60000 },
    unless: new RegExp(`${otherSum.source}|${noSum.source}`),
    value: (reading, said) =>
      typeof reading.value === "number" && (reading.value < 1900 || reading.value > 2035 || /hundred$/.test(said))
        ? reading.value
        : undefined,
    cues: [
      { said: /hundred$/, zones: ["documents"], about: workedOn, reach: "sentence", score: 1.05 },
      { said: /hundred$/, zones: ["documents"], about: workedOn, score: 0.95 },
      {
        after: /^(?:plus (?:the )?(?:vat|tax)|in (?:parts|labor|labour)|all in|fitted|with the)\b/,
        zones: ["documents"],
        about: workedOn,
        score: 1.05,
      },
      { after: /^(?:pounds|dollars|bucks|quid)\b/, zones: ["documents"], about: workedOn, score: 1.15 },
      {
        before:
          /\b(?:receipts?|bills?(?! of)|invoices?|charged|cost|costs)(?: me| him| us| her)?(?: was| is| of| for)?(?: (?!#)[^.\s]+){0,7}$/,
        about: workedOn,
        zones: ["documents"],
        reach: "sentence",
        score: 0.9,
      },
      { before: /\b(?:he|they|she|shop|fella|guy) charged(?: me| him| us| her)?$/, about: workedOn, score: 1.1 },
    ],
    circumstance: "cost of a part or of work",
    example: { heard: "bill for the brakes, one eighty, and that's the lot", value: 180, zone: "documents" },
  },
  {
    name: "date of work in the papers",
    component: "topic",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    unless: /\bdollars?\b|\bbucks\b|\btitled?\b|\bregist|\bbought\b|\bsold\b|\bmots?\b|\bwarranty\b|\bstamps?\b/,
    value: (reading, said) => (/\d/.test(String(reading.value)) && !/hundred/.test(said) ? reading.value : undefined),
    cues: [
      { before: new RegExp(`\\b(?:${paper})\\b[^.]{0,70}$`), about: workedOn, reach: "sentence", score: 1.3 },
      { after: new RegExp(`^(?:\\. )?(?:\\w+ ){0,2}(?:${paper})\\b`), about: workedOn, reach: "sentence", score: 1.4 },
      { before: /\bcost (?:was|is)\b[^.]{0,30}\bin$/, about: workedOn, zones: ["documents"], score: 1.25 },
    ],
    circumstance: "work",
    example: { heard: "receipt for the clutch 2016", value: 2016, zone: "documents" },
  },
] satisfies readonly Slot[];
