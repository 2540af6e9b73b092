import type { Slot } from "../slot.ts";
import { partsWithoutBareFigures, partsWorkedOn } from "./parts-worked-on.ts";

/** Sums that are asked, bid or owed for the vehicle, and no cost of a part. */
const ofTheVehicle =
  /\basking\b|\boffer\w*|\bdeposit\b|\ba month\b|\bper month\b|\btax\b|\bbid\b|\bapprais\w*|\binsur\w*|\breward\b|\bphone\b|\bfine\b|\bestimate\b|\breserve\b|\byours for\b|\bwindow sticker\b|\bon the (?:windscreen|windshield|glass)\b|\bsell(?:s|ing)?\b|\bsold\b|\btake it home\b|\bdrive away\b|\bdrives it away\b|\bthe ask\b|\bworth (?!of\b)/;
/** A list or a wish: nobody paid it for what is on the vehicle. */
const notPaid =
  /\b(?:on|off) the (?:options? )?list\b|\bkits?\b|\bthey make\b|\bon these\b|\bthat one's #|# ones?\b|\bwas an extra #|\bcould (?:get|buy|have)\b|\btach\b|\brev counter\b|\bgauge says\b|\bmicrons?\b|\bdidn't (?:tick|order|want|have)\b|\bwould (?:cost|be|set|run)\b|\bif you (?:wanted|want|need)\b|\b(?:they|he) wanted\b/;
/** Pounds that are a weight or a pressure. */
const pounds =
  /\bpressure\b|\boil\b|\bpsi\b|\bboost\b|\bweigh\w*|\brated\b|\bload\b|\btow(?:s|ing)?\b|\btorque\b|\bkilos?\b|\bcompression\b|\bcap(?:'s| is)\b|\b(?:of|psi of) air\b|\bgauge\b|\bwinch\b|\bpayload\b|\bpounds (?:of|in|all|cold|hot|per|a square)\b/;
const noPounds = new RegExp(`${ofTheVehicle.source}|${notPaid.source}|${pounds.source}`);
/** Figures that are no money. */
const noSum = new RegExp(
  `${ofTheVehicle.source}|${notPaid.source}|# (?:\\w+ )?(?:miles?|kilometers?|psi|percent|degrees|rpm|revs|microns?|mils?|mm|millimeters?|inch|inches|foot|feet|volts?|amps?|watts?|horse|pounds of|cubic|cc|liters?|gallons?|quarts?|cfm|thirty|people|cars|keys|owners|of (?:them|those|these))\\b|\\b(?:at|since|in|from|number|till|until) #`,
);

/** A year is no sum, unless it was said as one. */
const sum = (reading: { readonly value: number | string }, said: string): number | undefined =>
  typeof reading.value === "number" &&
  !/(?:\d|ty|teen|[a-z]e|[xr]|n)s$/.test(said.replace(/ (?:dollars|bucks|pounds|euros)$/, "")) &&
  (reading.value < 1900 || reading.value > 2035 || /hundred|thousand|grand/.test(said))
    ? reading.value
    : undefined;

const everywhereButTheAsking = [
  "front",
  "driver-side",
  "passenger-side",
  "rear",
  "roof",
  "cargo",
  "cabin",
  "engine-bay",
  "underside",
  "documents",
  "drive",
] as const;

const softly = "(?: (?:about|around|like|over|just|only|nearly|close to|the thick end of|a cool|another))*";

/** What a part or the work on it cost, told beside its name: "the exhaust was six hundred quid", "he give fourteen hundred for that". */
export const moneyOfPartsSlots = [
  {
    name: "money told of the part beside it",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { kinds: ["money"], units: ["USD", "GBP", "EUR"], min: 1, max: 60000 },
    unless: noPounds,
    value: sum,
    cues: [
      { about: partsWorkedOn, beside: { before: 7 }, zones: everywhereButTheAsking, score: 0.82 },
      { about: partsWorkedOn, beside: { after: 5 }, after: /^(?:for|on|to|worth|in|of)\b/, score: 1.1 },
      { about: partsWorkedOn, beside: { before: 22 }, zones: everywhereButTheAsking, score: 0.72 },
      {
        // "… out of stainless. Six hundred and fifty quid that was."
        about: partsWorkedOn,
        before: /(?:^|\.)$/,
        after: /^(?:that was|that cost|it cost|it was|the lot|all in|fitted|each|apiece|a side|a corner|the pair|the set)\b/,
        zones: everywhereButTheAsking,
        score: 0.95,
      },
    ],
    circumstance: "cost of a part or of work",
    example: { heard: "the exhaust was six hundred and fifty bucks", value: 650, zone: "underside" },
  },
  {
    name: "price out of a catalogue, its point left out",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer"], units: [null], min: 1000, max: 9999 },
    cues: [
      {
        after: /^(?:out of|from|in) (?:the|a|any) (?:catalog|catalogue|book|club|parts (?:man|place|counter))\b/,
        said: /(?:ninety (?:five|nine)|fifty|ninety|twenty five|seventy five)$/,
        about: partsWorkedOn,
        score: 1.4,
      },
    ],
    value: (reading) => (typeof reading.value === "number" ? reading.value / 100 : undefined),
    circumstance: "cost of a part or of work",
    example: { heard: "the carpet's a repop it's thirty nine ninety five out of the catalog", value: 39.95, zone: "cargo" },
  },
  {
    name: "sum given for a part, unit left out",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "decimal"], units: [null], min: 15, max: 60000 },
    unless: noSum,
    value: sum,
    cues: [
      {
        before: new RegExp(
          `\\b(?:set (?:him|me|us|them|her|you) back|cost|costs|gave|give|given|giving|paid|pays|charged(?: me| him| us| her)?|come to|came to|comes to|ran (?:him|me|us|them)|run (?:him|me|us|them)|runs you|spent|bill (?:was|for (?:\\w+ ){1,4}was)|laid out|stood (?:him|me) in|knock(?:ed)?|took)${softly}$`,
        ),
        about: partsWorkedOn,
        reach: "sentence",
        score: 1.05,
      },
      {
        before: new RegExp(`\\b(?:gave|give|paid|spent|set (?:him|me|us|them|her) back)${softly}$`),
        after: /^(?:for|on|to) (?:it|that|them|those|this|have it|get it)\b/,
        about: partsWorkedOn,
        score: 1.25,
      },
      {
        after:
          /^(?:for (?:the|that|this|those|them|a)|to (?:buy|chrome|rechrome|plate|replace|fix|mend|rebuild|have|do|paint|recover|retrim|fit|redo)|on (?:the|that|those|them|these) \w+ alone|each|apiece|a (?:piece|pair|side|corner|set|pop)|the (?:pair|set|lot)|plus (?:the )?(?:vat|tax)|fitted|installed)\b/,
        said: /hundred|thousand|grand|ninety five$|fifty$|\d{3}|^\d\d$/,
        about: partsWithoutBareFigures,
        reach: "clause",
        score: 1.0,
      },
      {
        before: /\b(?:i've|he's|she's|we've|they've|got|have|has)(?: got)?$/,
        after: /^(?:dollars |pounds |quid )?in (?:those|that|them|these|the) /,
        said: /hundred|thousand|grand/,
        about: partsWithoutBareFigures,
        reach: "clause",
        score: 1.0,
      },
      {
        // "Grille was six hundred and ninety.": what was is what it cost.
        before: /\b(?:was|were|work was|job was|come out at|came out at)$/,
        after: /^(?:$|\.|all in\b|for the\b|with\b|fitted\b|plus\b|and\b)/,
        said: /hundred|thousand|grand/,
        about: partsWithoutBareFigures,
        reach: "clause",
        zones: everywhereButTheAsking,
        score: 0.85,
      },
      {
        // "Tires, seven hundred and forty.", in a folder of bills.
        said: /hundred|thousand|grand/,
        about: partsWorkedOn,
        beside: { before: 7 },
        zones: ["documents"],
        score: 0.95,
      },
      {
        before: /\b(?:it's|they're|that's|is|are)$/,
        after: /^(?:out of the (?:catalog|catalogue|book)|from the (?:dealer|catalog|catalogue|club)|in the (?:catalog|catalogue))\b/,
        about: partsWorkedOn,
        score: 1.2,
      },
    ],
    circumstance: "cost of a part or of work",
    example: { heard: "the bumper set him back four hundred", value: 400, zone: "front" },
  },
] satisfies readonly Slot[];
