import type { Slot } from "../slot.ts";

/** Numbers on plates, and what is counted or paid in the papers. */
export const papersCountSlots = [
  {
    name: "last figures of the vehicle's number",
    component: "vin",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer", "year", "date-code"], units: [null], min: 100, max: 99999999 },
    unless: /\bmiles\b|\bdollars\b|\bpounds\b|\bphone\b|\bcall\b|\bengine number\b|\bblock number\b|\bstock number\b/,
    value: (reading) => Number(reading.value),
    cues: [
      {
        before:
          /\b(?:last (?:four|five|six|three|#)|(?:vin|number|plate|chassis|serial|tag)\b[^.#]{0,20}\b(?:ends|ending|finishes)(?: in| on)?)(?: figures| digits| numbers)?(?: of(?: the| its)?(?: number| vin| chassis number| serial number)?)?(?: is| are|'s)?$/,
        score: 1.35,
      },
      {
        before:
          /\b(?:body|chassis|serial|frame|car|commission|unit)(?: number| no| plate| tag)?(?: is| says| reads|'s)?(?: body| number)?$/,
        said: /^(?:(?:\d|oh|zero|one|two|three|four|five|six|seven|eight|nine) ?){3,8}$/,
        unless: /\bbought\b|\bwhole\b/,
        score: 1.3,
      },
    ],
    example: { heard: "the plate's there, last four of the number seven two one six", value: 7216 },
  },
  {
    name: "figures of a number that match",
    component: "vin",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 3, max: 17 },
    cues: [
      {
        before: /\b(?:vin|serial|stamping|stamped|stamp|chassis number|number|numbers)\b[^#]{0,40}$/,
        after: /^(?:digits?|figures|characters)\b/,
        unless: /\bodometer|\bclock\b|\bspeedo|\bmiles/,
        score: 1.5,
      },
    ],
    example: { heard: "the stamping matches the vin, last six digits", value: 6 },
  },
  {
    name: "rivets of the plate",
    component: "vin",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 8 },
    cues: [{ before: /\b(?:plate|tag|vin)\b[^#]{0,30}$/, after: /^(?:\w+ )?(?:rivets|screws)\b/, score: 1.3 }],
    example: { heard: "it's got the body plate, two rivets", value: 2 },
  },
  {
    name: "pieces of the tool kit",
    component: "vehicle",
    part: "tool",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 60 },
    cues: [
      {
        before: /\b(?:tool|tools|toolkit|kit|roll|jack)\b.{0,90}$/,
        after: /^(?:pieces|bits|spanners|wrenches)\b(?! (?:of|on the ring))/,
        score: 1.15,
      },
    ],
    example: { heard: "and the tool roll, it's got seven pieces", value: 7 },
  },
  {
    name: "things that open it",
    component: "vehicle",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 8 },
    cues: [
      {
        before: /\b(?:keys?|fobs?|cards?|spares?)\b.{0,70}\b(?:so|that's|makes|so that's)$/,
        after: /^(?:things (?:on|in)|ways (?:in|to get in)|bits of metal|pieces of metal)\b/,
        score: 1.4,
      },
    ],
    example: { heard: "two keys and there's a fob so three things on the ring", value: 3 },
  },
  {
    name: "road tax",
    component: "title",
    part: "road tax",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "measure"], units: ["USD", "GBP", "EUR", null], min: 10, max: 900 },
    cues: [
      {
        before: /\b(?:road tax|car tax|tax|ved|registration fee|tags)(?:'s| is| was| are| costs?| runs?)(?: about| around| only| just)?$/,
        after: /^(?:pounds |quid |dollars |bucks )?(?:a|per) year\b/,
        score: 1.4,
      },
      { before: /\b(?:road tax|car tax|ved)(?:'s| is| was| are| costs?)(?: about| around| only| just)?$/, score: 1.3 },
    ],
    circumstance: "a year",
    example: { heard: "tax is a hundred and ninety five a year", value: 195 },
  },
  {
    name: "months of test",
    component: "title",
    part: "test",
    attribute: "count",
    unit: null,
    need: { kinds: ["duration", "integer"], units: [null], min: 1, max: 24 },
    cues: [{ said: /months?$/, after: /^(?:of |worth of )?(?:mot|test|ticket|tax and test)\b/, score: 1.3 }],
    example: { heard: "twelve months MOT", value: 12 },
  },
  {
    name: "months of warranty from the dealer",
    component: "vehicle",
    part: "warranty",
    attribute: "count",
    unit: null,
    need: { kinds: ["duration"], units: [null], min: 1, max: 60 },
    cues: [
      { said: /months?$/, before: /\b(?:warranty|guarantee|cover)\b.{0,50}\b(?:for|is|of|with)$/, score: 1.1 },
      { said: /months?$/, after: /^(?:warranty|guarantee|cover|parts and labou?r)\b/, score: 1.2 },
      {
        said: /months?$/,
        before:
          /\b(?:rest of it|everything else|all the rest|rest of the (?:car|van|truck))\b[^#]{0,24}\b(?:me|us|we|i cover it|we cover it) for$/,
        zones: ["documents", "closing"],
        score: 1.2,
      },
    ],
    circumstance: "warranty",
    example: { heard: "on the rest of the warranty it's me, for six months", value: 6 },
  },
  {
    name: "end of the warranty",
    component: "vehicle",
    part: "warranty",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    cues: [
      {
        before:
          /\b(?:warranty|warrantied|warranted|guarantee)\b[^.#]{0,40}\b(?:ends|end|till|until|to|through|out|runs out|expires|good till|is up|up)(?: in| on)?$/,
        score: 1.35,
      },
    ],
    circumstance: "warranty",
    example: { heard: "and the warranty ends in two thousand twenty five", value: 2025 },
  },
] satisfies readonly Slot[];
