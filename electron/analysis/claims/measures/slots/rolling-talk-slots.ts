import type { Slot } from "../slot.ts";

const sides = ["driver-side", "passenger-side", "front", "rear", "opening", "closing", "underside", "drive"] as const;
const notPressure =
  /\boil\b|\bfuel\b|\bboost\b|\bcompression\b|\bthirty seconds\b|\bmillimeters?\b|# (?:mm|mil)\b|\btread\b|\binch\b|\bmiles\b|\bdollars\b|\bdegrees\b|\bpercent\b|\bcap\b|\b(?:air|water) (?:tank|brakes?)\b/;

/** What a walk says crouching at a wheel, or with the steering wheel in hand. */
export const rollingTalkSlots = [
  {
    name: "tire pressures, unit left out",
    component: "tire",
    part: null,
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["integer", "measure", "money"], units: [null, "psi", "lb", "GBP"], min: 18, max: 110 },
    unless: notPressure,
    cues: [
      { said: /pounds$/, after: /^(?:all (?:a?round|the way)|in (?:each|all four))\b/, zones: sides, score: 1.3 },
      {
        before: /\btires (?:take|want|like|run|get|need|carry)(?: about)?(?: # (?:psi |pounds )?(?:in|at|up) (?:the )?front and)?$/,
        after: /^(?:psi |pounds )?(?:(?:in|at|up|on) (?:the )?(?:fronts?|backs?|rears?)|behind)\b/,
        zones: sides,
        score: 1.2,
      },
      {
        before: /\b(?:tire )?pressures?\b[^.#]{0,60}$/,
        after: /^(?:$|\.|pounds|psi|#|(?:at|in|on|for|up|all|a?round|front|rear|cold|and|or|so|which|that's|if|when|with|is)\b)/,
        zones: sides,
        score: 1.0,
      },
      {
        before:
          /\b(?:got|have|had|set|keep|kept|run|running|put|blown up|pumped|aired)(?: them| the tires| the fronts| the rears| all four| it| these| those)?(?: up)?(?: at| to)(?: about)?$/,
        about: ["tire"],
        after: /^(?:$|\.|pounds|psi|(?:and|all|front|in|cold|a?round|at|on|up)\b)/,
        zones: sides,
        score: 0.95,
      },
    ],
    carries: true,
    example: { heard: "pressures are on the sticker, thirty two at the front", value: 32, zone: "passenger-side" },
  },
  {
    name: "tread in millimetres, told beside the tire",
    component: "tire",
    part: "tread",
    attribute: "depth",
    unit: "mm",
    need: { kinds: ["measure", "fraction"], units: ["mm"], min: 0.8, max: 12 },
    unless:
      /\bkerb|\bscuff|\bmark\b|\bwide\b|\bstuds?\b|\bstripe\b|\bgap\b|\bchip|\bpads?\b|\bdiscs?\b|\boffset\b|\bspacers?\b|\bscratch|\bthick\b|\bgouge/,
    cues: [{ about: ["tire"], beside: { before: 12, after: 4 }, zones: sides, score: 0.9 }],
    carries: true,
    example: { heard: "the tyre's legal but only just, two and a half mil", value: 2.5, zone: "driver-side" },
  },
  {
    name: "diameter of the tires it stands on",
    component: "tire",
    part: null,
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["measure", "integer"], units: ["in", null], min: 27, max: 54 },
    cues: [
      {
        before:
          /\b(?:stands|sits|rolls|rides|running|runs|riding|sitting|standing|up|it's|she's|he's)(?: up)? on(?: the| a set of| new| brand new)?$/,
        said: /s$/,
        score: 1.0,
      },
    ],
    example: { heard: "it stands on thirty threes", value: 33, zone: "driver-side" },
  },
  {
    name: "diameter of the wheels it is on",
    component: "wheel",
    part: null,
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["measure", "integer"], units: ["in", null], min: 12, max: 26 },
    cues: [
      {
        before:
          /\b(?:it's|it is|she's|he's|this one's|car's|truck's|that's|sits|stands|rolls|rides|sitting|riding|standing) on(?: the| a set of| its| new| its original| factory)?$/,
        said: /s$/,
        unless: /\btires\b|\bminutes\b|\bboth\b/,
        zones: sides,
        score: 0.95,
      },
      { before: /\b(?:wheel|rim)(?: size| diameter)(?:'s| is|,)?(?: an?)?$/, score: 1.2 },
      { before: /\b(?:wheels|rims|alloys)$/, after: /^(?:$|\.)/, said: /^(?:\S+teens?|\S+tys?|1[2-9]s?|2[0-6]s?)$/, score: 0.9 },
    ],
    example: { heard: "it's on seventeens, factory ones", value: 17, zone: "driver-side" },
  },
  {
    name: "pots of a caliper",
    component: "brakes",
    part: "caliper piston",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 12 },
    cues: [{ after: /^(?:pots?|pistons?)\b/, about: ["brakes/caliper", "brakes/pot", "brakes"], reach: "clause", score: 1.5 }],
    carries: true,
    example: { heard: "the calipers are six pot at the front", value: 6, zone: "driver-side", position: "front" },
  },
  {
    name: "width of shoes or drums",
    component: "brakes",
    part: "shoes",
    attribute: "width",
    unit: "said",
    need: { units: ["in", "mm"], min: 1, max: 180 },
    cues: [{ after: /^(?:inch |inches )?wide\b/, about: ["brakes/shoes", "brakes/drum"], reach: "clause", score: 1.6 }],
    example: { heard: "the brake shoes are two inches wide", value: 2, zone: "underside" },
  },
  {
    name: "let down or lifted by so much",
    component: "suspension",
    part: "ride height",
    attribute: "size",
    unit: "said",
    need: { units: ["in", "mm"], min: 0.5, max: 400 },
    unless:
      /\broof\b|\btop\b|\bwindow|\bglass\b|\bchop|\bhood\b|\bseats?\b|\bscreen\b|\bwindshield\b|\bsteering\b|\bdented\b|\btrunk\b|\btailgate\b/,
    cues: [
      {
        before: /\b(?:let down|dropped|lowered|lifted|raised|jacked(?: it)? up|slammed)(?: it)?(?: by| about| maybe| around)*$/,
        score: 1.05,
      },
      { after: /^(?:inch |inches )?(?:lower|higher) than (?:it|they|stock|standard|factory|when|the)\b/, score: 1.2 },
      { after: /^(?:inch )?(?:drop|lift)\b/, score: 1.1 },
    ],
    carries: true,
    example: { heard: "it's been let down two inches at the front", value: 2, zone: "underside", position: "front" },
  },
  {
    name: "steering wheel in hand",
    component: "steering",
    part: "steering wheel",
    attribute: "diameter",
    unit: "said",
    need: { units: ["in", "mm"], min: 11, max: 500 },
    cues: [
      {
        before: /\b(?:the|this|that|a) (?:\w+ )?wheel\b[^.#]{0,24}$/,
        zones: ["cabin", "drive"],
        unless: /\bwheels\b|\brims?\b|\balloys?\b|\bspare\b|\btires?\b|\bopening\b|\bsteer\w+ (?:on|box)\b/,
        score: 1.6,
      },
    ],
    example: { heard: "the wheel in my hands is a fifteen inch three spoke", value: 15, zone: "cabin" },
  },
  {
    name: "turns from lock to lock, told after them",
    component: "steering",
    part: "turns",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer", "fraction", "decimal"], units: [null], min: 1.5, max: 7 },
    cues: [
      { after: /^(?:from )?lock to lock\b/, score: 1.35 },
      { before: /\block to lock(?: is|'s| it's| that's|,)?(?: about)?$/, score: 1.35 },
    ],
    example: { heard: "two and three quarters lock to lock, this rack", value: 2.75, zone: "drive" },
  },
  {
    name: "date of the spare",
    component: "spare",
    part: null,
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: (reading) => (/\d/.test(String(reading.value)) ? reading.value : undefined),
    cues: [{ before: /\bspare\b[^.#]{0,34}\b(?:made|dated|from|built|date)\b(?: in| of| is|'s)*$/, score: 1.5 }],
    example: { heard: "the spare was made in 1998", value: 1998, zone: "cargo" },
  },
  {
    name: "gears called by their figure, out back",
    component: "final-drive",
    part: null,
    attribute: "ratio",
    unit: null,
    need: { kinds: ["ratio"], units: [null], min: 2, max: 7.5 },
    unless: /\btires\b|\bwheels\b|\brubber\b|\bmeats\b|\bpsi\b|\bwide\b/,
    cues: [
      {
        before: /\b(?:got|with|has|have|runs|running|there's|had|put|stuck|it's)(?: the| some| a set of)?$/,
        said: /s$/,
        after: /^(?:out back|in the (?:back|rear)|out the back|back there|under it|in it|in the rear end|gears?)\b/,
        score: 1.25,
      },
    ],
    example: { heard: "it's got three fifty fives out back and buckets", value: 3.55, zone: "opening" },
  },
] satisfies readonly Slot[];
