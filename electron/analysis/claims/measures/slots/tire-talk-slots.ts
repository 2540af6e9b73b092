import type { Slot } from "../slot.ts";
import { whenPlural } from "./rolling.ts";

/** A figure of the spare or of something that turns and is no road wheel. */
const notOfRoadWheels = /\bsteering\b|\bfan\b|\bspeakers?\b/;

/** Spokes that wire wheels are laced with (common practice). */
const wireSpokes: ReadonlySet<number> = new Set([36, 40, 42, 48, 50, 54, 60, 62, 64, 70, 72, 80, 96, 100, 108]);

/** Tires and wheels: what is said of them beside their printed size, in the ways people put it in passing. */
export const tireTalkSlots = [
  {
    name: "ply rating",
    component: "tire",
    part: "ply rating",
    attribute: "count",
    unit: null,
    position: "all",
    need: { kinds: ["integer"], units: [null], min: 4, max: 20 },
    cues: [
      {
        after: /^(?:ply|plies)\b/,
        unless: /\bplywood|\bpanel|\bfloor|\btop\b|\bboard|\bglass\b|\bskis?\b/,
        score: 1.25,
      },
    ],
    example: {
      heard: "the tires are load range e so that's ten ply",
      value: 10,
      position: "all",
    },
  },
  {
    name: "tire diameter, said in the plural",
    component: "tire",
    part: null,
    attribute: "diameter",
    unit: "in",
    need: {
      kinds: ["integer", "measure"],
      units: [null, "in"],
      min: 27,
      max: 46,
    },
    unless:
      /\bsockets?\b|\bhigh\b|\bmid\b|\b(?:wants?|wanted|buddy's?|friend's?|brother's?|neighbor's?|neighbour's?|could|would|people)\b[^#]* #|\bmuffler|\bspeakers?\b/,
    cues: [
      {
        before: /\b(?:trucks?|rig|rolling|rolls|rides?|sits?|sitting|it's|she's|that's) on$/,
        score: 1.0,
      },
      {
        before:
          /\b(?:on|had|has|runs?|running|with|got|wears|wearing|fits?|clears?|takes?|stuff|turns?|set of|they're|these are|them|those)(?: (?:big|new|the|a|set of|full|those|some|only))*$/,
        about: ["tire", "wheel", "suspension"],
        score: 1.0,
      },
      {
        after: /^on (?:it|her|him|them|there|this)\b/,
        before: /\b(?:had|got|has|ran)$/,
        score: 1.0,
      },
    ],
    value: (reading, said) => whenPlural(reading.value, said),
    example: { heard: "steers tight for a truck on thirty fives", value: 35 },
  },
  {
    name: "tire diameter in inches",
    component: "tire",
    part: null,
    attribute: "diameter",
    unit: "in",
    need: { units: ["in"], min: 24, max: 50 },
    cues: [
      {
        after: /^(?:inch )?(?:tall )?(?:(?:mud|all|terrain|rubber|off road|road) ){0,2}(?:tires?|rubber|meats)\b/,
        score: 1.2,
      },
    ],
    example: {
      heard: "that's a thirty one inch tire and it fills the fender",
      value: 31,
    },
  },
  {
    name: "tire section width",
    component: "tire",
    part: null,
    attribute: "width",
    unit: "mm",
    need: {
      kinds: ["integer", "tire-partial", "measure"],
      units: [null, "mm"],
      min: 125,
      max: 355,
    },
    cues: [
      {
        after: /^(?:section|section width|millimeters? section|millimeters? (?:wide|across) tires?)\b/,
        score: 1.45,
      },
    ],
    value: (reading) => (Number(reading.value) % 5 === 0 ? Number(reading.value) : undefined),
    example: { heard: "that tire's a two oh five section", value: 205 },
  },
  {
    name: "whitewall width",
    component: "tire",
    part: "whitewall",
    attribute: "width",
    unit: "in",
    need: { units: ["in"], min: 0.3, max: 5 },
    cues: [
      {
        after: /^(?:inch )?(?:wide )?(?:white ?walls?|white ?bands?|red ?lines?|gold ?lines?|blue ?lines?)\b/,
        score: 1.3,
      },
      {
        before: /\b(?:white ?walls?|white ?bands?|red ?lines?)(?: is| are|'s|'re)?(?: an?| about| only| some)*$/,
        score: 1.2,
      },
    ],
    example: {
      heard: "bias tires with the three and a quarter inch whitewall",
      value: 3.25,
    },
  },
  {
    name: "tire width that it stood on",
    component: "tire",
    part: null,
    attribute: "width",
    unit: "mm",
    need: {
      kinds: ["integer", "tire-partial"],
      units: [null],
      min: 125,
      max: 355,
    },
    cues: [
      {
        before: /\b(?:it|they|she|these|car|van|truck) (?:was|were|came|is|rode|sat|arrived) on$/,
        about: ["tire", "wheel"],
        score: 1.0,
      },
    ],
    value: (reading, said) => (Number(reading.value) % 5 === 0 ? whenPlural(Number(reading.value), said) : undefined),
    example: {
      heard: "the tires are radials it was on 155s when we got it",
      value: 155,
    },
  },
  {
    name: "wheel width after its diameter",
    component: "wheel",
    part: null,
    attribute: "width",
    unit: "in",
    need: {
      kinds: ["integer", "fraction", "decimal", "measure"],
      units: [null, "in"],
      min: 4,
      max: 14,
    },
    cues: [
      {
        before: /# (?:[\w-]+ ){0,3}by(?: an?)?$/,
        about: ["wheel"],
        unless: /\bdrums?\b|\bbed\b|\bscreen\b|\bpatch\b/,
        score: 1.25,
      },
      {
        before: /# (?:[\w-]+ ){0,2}on an?$/,
        about: ["tire"],
        after: /^(?:$|\.|inch|and|rim|wheel|which|with|what)/,
        score: 1.1,
      },
    ],
    example: {
      heard: "the wheels are seventeens diamond cut by six and a half",
      value: 6.5,
      position: "all",
    },
  },
  {
    name: "wheel diameter after its tire",
    component: "wheel",
    part: null,
    attribute: "diameter",
    unit: "in",
    need: {
      kinds: ["integer", "measure"],
      units: [null, "in"],
      min: 12,
      max: 26,
    },
    cues: [
      {
        before: /# (?:[\w-]+ )?on$/,
        about: ["tire"],
        unless: notOfRoadWheels,
        score: 1.12,
      },
    ],
    value: (reading, said) => whenPlural(reading.value, said),
    example: { heard: "the tires were 35s on fifteens", value: 15 },
  },
  {
    name: "wire wheel spokes, counted",
    component: "wheel",
    part: "spoke",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 36, max: 108 },
    cues: [
      {
        before: /\b(?:lost count|counted|count|make it|made it|makes)(?: (?:them|it|all|twice|again|that)){0,3}$/,
        about: ["wheel"],
        score: 1.05,
      },
    ],
    value: (reading) => (wireSpokes.has(Number(reading.value)) ? reading.value : undefined),
    example: {
      heard: "that rear wheel I cleaned it and I make it seventy two",
      value: 72,
      position: "rear",
    },
  },
  {
    name: "length of a mark on a wheel",
    component: "wheel",
    part: "mark",
    attribute: "size",
    unit: "said",
    need: { units: ["in", "mm"], min: 0.1, max: 300 },
    cues: [
      {
        before:
          /\b(?:curb|curbed|kerb|kerbed|rash|scuff\w*|scrape\w*|kiss|mark|nick|scratch|gouge|rub|clip|clipped|rash on it)\b[^#]{0,50}$/,
        about: ["wheel"],
        reach: "sentence",
        unless: /# (?:inch )?(?:wheels?|rims?|alloys?|tires?)\b|\btread\b/,
        score: 1.65,
      },
    ],
    example: {
      heard: "alloys are good little kerb mark on this front one about an inch",
      value: 1,
    },
  },
  {
    name: "tire pressure, said of one end",
    component: "tire",
    part: null,
    attribute: "pressure",
    unit: "psi",
    need: { units: ["psi", "lb", null], min: 15, max: 120 },
    unless: /\bmax(?:imum)?\b|\bpercent\b|\bdegrees\b|\boil\b|\bboost\b|\bdollars|\bpayload\b/,
    cues: [
      {
        before: /\b(?:i've got|i got|i have|i put|put|we run|we've got|they've got|they had)(?: about| around)?$/,
        after: /^(?:psi |pounds )?in (?:the |both |all )?(?:fronts?|backs?|rears?|duals|steers|drives|them)\b/,
        about: ["tire", "wheel"],
        score: 1.05,
      },
      {
        before: /\bi (?:run|ran|keep|kept|air|have|set) (?:these|them|those|all of them)(?: up)? (?:at|on|to)(?: about)?$/,
        score: 1.1,
      },
    ],
    carries: true,
    example: {
      heard: "the tires are new i've got twenty two in the front because it's stiff",
      value: 22,
      position: "front",
    },
  },
  {
    name: "tire pressure on the placard",
    component: "tire",
    part: "placard",
    attribute: "pressure",
    unit: "said",
    need: { units: ["psi", "lb", "bar"], min: 1.5, max: 120 },
    unless: /\bmax(?:imum)?\b|\bpressures?\b|\bpayload\b|\bgross\b|\bgvw\b|\btow|\bdollars|\bbucks|\bquid|\bweighs?\b|\bweight\b|\boil\b/,
    cues: [
      {
        before:
          /\b(?:sticker|placard|label|plate|jamb|door tag|handbook|owner's manual|book|booklet|fuel flap|filler flap)\b[^.#]{0,30}\b(?:says?|calls? for|wants?|asks for|reads?|is|tells you)$/,
        score: 1.0,
      },
    ],
    value: (reading, said) => (/\b(?:psi|pounds|bar)\b/.test(said) ? reading.value : undefined),
    carries: true,
    example: {
      heard: "the sticker in the jamb says thirty five pounds",
      value: 35,
    },
  },
] satisfies readonly Slot[];
