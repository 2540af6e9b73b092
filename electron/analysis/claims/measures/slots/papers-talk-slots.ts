import type { Slot } from "../slot.ts";

const yearOr = (reading: { readonly value: number | string }): number | string | undefined => reading.value;
const noMoney = /\bmiles?\b|\bpsi\b|\brpm\b|\bmicrons?\b|\bpercent\b|\bdegrees\b|\bclock\b|\bodometer\b/;

/** Papers, clocks and sums in the words they are told in. */
export const papersTalkSlots = [
  {
    name: "when the test runs out",
    component: "title",
    part: "test",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: yearOr,
    cues: [
      {
        before:
          /\b(?:mot|mot'd|ticket|test|tested|taxed|tax|inspection|inspected|sticker|tags?|registration|roadworthy)\b[^.#]{0,24}\b(?:till|until|through|to|good (?:till|through|to|until)|expires|runs out|runs? (?:till|until|to|out)|due)(?: (?:the )?(?:end of|next|in|this coming|middle of))*$/,
        unless: /\btitle\b|\bback to #|\bhabitation\b/,
        score: 1.4,
      },
    ],
    circumstance: "runs out",
    example: { heard: "the ticket's good till November 2025", value: "2025-11", zone: "documents" },
  },
  {
    name: "date the speedometer was changed",
    component: "odometer",
    part: null,
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: (reading) => (/\d/.test(String(reading.value)) ? reading.value : undefined),
    cues: [
      {
        before:
          /\b(?:speedo|speedometer|odometer|odo|clocks?|instruments?|cluster)\b[^.#]{0,30}\b(?:changed|replaced|swapped|renewed|fitted|new|reset|repaired|rebuilt)\b[^.#]{0,14}\b(?:in|since)$/,
        score: 1.6,
      },
    ],
    circumstance: "work",
    example: { heard: "the speedo head was changed in 2001", value: 2001, zone: "documents" },
  },
  {
    name: "date it came home",
    component: "vehicle",
    part: "home",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: (reading) => (/\d/.test(String(reading.value)) ? reading.value : undefined),
    cues: [
      {
        before:
          /\b(?:came|come|brought|sent|shipped|fetched)(?: it| her| him)? (?:back )?home(?: again)?(?: in| about| around| in about)?$/,
        score: 1.35,
      },
    ],
    circumstance: "history",
    example: { heard: "it came home in 1987", value: 1987, zone: "documents" },
  },
  {
    name: "trip meter",
    component: "odometer",
    part: "trip meter",
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer", "decimal", "measure"], units: ["mi", "km", null], min: 1, max: 9999 },
    cues: [
      {
        before: /\btrip(?: meter| counter| computer| reading)?(?:'s| is| says| shows| showing| reads| has|,| at| on it)*(?: about)?$/,
        zones: ["cabin", "drive", "documents"],
        unless: /\btrip (?:to|from|home)\b|\bround trip\b/,
        score: 1.5,
      },
    ],
    circumstance: "trip",
    example: { heard: "the trip meter's showing two hundred and eleven", value: 211, zone: "cabin" },
  },
  {
    name: "mileage named before or after it",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer", "measure"], units: ["mi", "km", null], min: 1000, max: 999999 },
    unless: /\bdollars\b|\bquid\b|\basking\b|\bprice\b|\brpm\b|\btach\b/,
    cues: [
      { before: /\bmileage(?: wise)?\b[^.#]{0,20}$/, said: /thousand|,\d{3}|\d{5}|\dk$|\bk$/, score: 1.4 },
      {
        before: /\b(?:how many |what's |so )?on the (?:clock|odometer|odo|dial)(?: is| it's| there's| she's got| we've got)?$/,
        said: /thousand|,\d{3}|\d{5}/,
        score: 1.2,
      },
      { after: /^(?:miles )?(?:indicated|warranted|on the dial)\b/, said: /thousand|,\d{3}|\d{5}/, score: 1.2 },
      { said: /\d ?k$|\bk$/, after: /^(?:miles )?on (?:it|her|him|the (?:clock|odometer|odo|dash))\b/, score: 1.25 },
      {
        // "So the hundred and four thousand is my best belief."
        before: /\bthe$/,
        said: /thousand/,
        after: /^(?:is|you see|on (?:there|it|the clock))\b/,
        zones: ["documents", "cabin", "closing", "drive"],
        score: 1.35,
      },
    ],
    value: (reading, said) => (/s$/.test(said.replace(/ miles$/, "")) ? undefined : reading.value),
    example: { heard: "mileage wise it's at fifty four thousand", value: 54000, zone: "opening" },
  },
  {
    name: "reading in a test, the year told first",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "mi",
    need: { kinds: ["integer", "measure"], units: ["mi", "km", null], min: 1000, max: 900000 },
    cues: [
      {
        before:
          /\b(?:mots?|test|tests|inspection|ticket|certificate)\b[^.]{0,50}#[^.#]{0,10}\b(?:says|reads|shows|said|had|was|at|it's)(?: it)?(?: at)?$/,
        said: /thousand|,\d{3}|\d{5}|^\S+ \S+ \S+/,
        unless: /\bdollars|\bpounds\b|\bquid\b/,
        score: 1.4,
      },
    ],
    circumstance: "in a test certificate",
    example: { heard: "the last MOT in 2019 says 41,870", value: 41870, zone: "documents" },
  },
  {
    name: "sum it was sold for before",
    component: "price",
    part: "sale",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "measure"], units: ["USD", "GBP", "EUR", null], min: 200, max: 3000000 },
    unless: noMoney,
    cues: [
      {
        before: /\b(?:sold|went|hammered|knocked down)\b[^.#]{0,60}(?:#[^.#]{0,14})?\bfor$/,
        said: /^(?!.*\b(?:years?|months?)\b)/,
        score: 1.25,
      },
    ],
    value: (reading, said) => (/hundred|thousand|grand|\d{4}|^\S+ \S+/.test(said) ? reading.value : undefined),
    circumstance: "sold before",
    example: { heard: "it was sold on a block out west for forty eight five", value: 48500, zone: "documents" },
  },
  {
    name: "price paid when new",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "measure"], units: ["USD", "GBP", "EUR", null], min: 100, max: 2000000 },
    unless: noMoney,
    cues: [
      {
        before: /\bpaid(?: about| around| over)?$/,
        after:
          /^(?:dollars |pounds |quid )?(?:for (?:it|her|him|this|the (?:car|truck)) )?(?:that's \w+ )?(?:that's |when it was |brand |from )?new\b/,
        score: 1.5,
      },
    ],
    circumstance: "when new",
    example: { heard: "the banker paid three thousand eight hundred and four for it new", value: 3804, zone: "documents" },
  },
  {
    name: "price that takes it",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "measure"], units: ["USD", "GBP", "EUR", null], min: 500, max: 3000000 },
    unless: noMoney,
    cues: [
      {
        after:
          /^(?:dollars |pounds |quid )?(?:drives (?:it|her|him) away|takes (?:it|her|him)(?: home)?|out of (?:it|her|him)|and it's (?:yours|gone)|and (?:she|he)'s yours|has it)\b/,
        zones: ["opening", "closing", "documents"],
        score: 1.35,
      },
      { before: /\bnow$/, after: /^(?:was|down from|from) #/, zones: ["opening", "closing"], score: 1.1 },
    ],
    value: (reading, said) =>
      /hundred|thousand|grand|\d{3}|^\S+ \S+/.test(said) && !/s$/.test(said.replace(/ (?:dollars|bucks|pounds)$/, ""))
        ? reading.value
        : undefined,
    example: { heard: "I need eighteen thousand out of it", value: 18000, zone: "closing" },
  },
  {
    name: "estimate, from so much to so much",
    component: "price",
    part: "estimate",
    attribute: "price",
    unit: "said",
    need: { kinds: ["range"], units: ["USD", "GBP", "EUR", null] },
    unless: new RegExp(`${noMoney.source}|\\blog ?book\\b|\\bservice book\\b|\\bhandbook\\b`),
    value: (reading) => (reading.parts?.every((part) => part < 1900 || part > 2035) ? reading.value : undefined),
    cues: [
      {
        before:
          /\b(?:estimate|estimated|guide|guide price|book|book value|guide's|estimate's|presale|expect|expecting|valued|worth|valuation|price guide|value)\b[^.#]{0,34}$/,
        score: 1.3,
      },
      { after: /^(?:dollars |pounds |quid )?(?:estimate|on the estimate|guide price|in the (?:book|guide))\b/, score: 1.3 },
    ],
    circumstance: "estimate",
    example: { heard: "the estimate on the card is sixty five to seventy five thousand", value: 75000, zone: "opening" },
  },
  {
    name: "model year of the lamps it wears",
    component: "vehicle",
    part: null,
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      {
        before: /\b(?:ones?|type|style|kind|lamps?|lights?|markers?|grille) for(?: an?)?$/,
        after: /^(?:$|\.|(?:they|it|and|only|so|which)\b)/,
        score: 0.95,
      },
    ],
    example: { heard: "the marker lamps are the round ones for 68", value: 1968, zone: "passenger-side" },
  },
  {
    name: "last figures of a number, told after them",
    component: "vin",
    part: "last digits",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 3, max: 8 },
    cues: [{ before: /\blast$/, after: /^(?:digits |numbers |figures )?(?:of|on) the (?:chassis|vin|serial|frame)\b/, score: 1.4 }],
    example: { heard: "the last four of the chassis number are the same", value: 4, zone: "documents" },
  },
] satisfies readonly Slot[];
