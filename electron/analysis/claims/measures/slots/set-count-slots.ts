import type { ComponentName } from "../../../../../shared-types/index.ts";
import type { Slot } from "../slot.ts";

const integer = { kinds: ["integer"], units: [null] } as const;

/** So many of a set in one place of the cabin ("two in the cab and two on the bench"), after the set was named. */
const inPlace = (component: ComponentName, part: string | null, named: string, place: "front" | "rear", heard: string): Slot => ({
  name: `${part ?? component} in the ${place}, by place`,
  component,
  part,
  attribute: "count",
  unit: null,
  position: place,
  need: { ...integer, min: 1, max: 9 },
  cues: [
    {
      zones: ["cabin", "cargo"],
      before: new RegExp(`\\b(?:${named})\\b.{0,70}$`),
      after:
        place === "front"
          ? /^(?:of (?:them|those) )?(?:full (?:ones )?)?(?:in the cab\b(?! corner)|for the two of us)\b/
          : /^(?:of (?:them|those) )?(?:full (?:ones )?)?(?:(?:on|along|across|for) the (?:bench|back seat|rear seat|third row)|in the (?:very back|third row))\b/,
      unless: /\bspeakers?\b|\bwindows?\b|\bdoors?\b/,
      score: 1.2,
    },
  ],
  example: { heard, value: 2, position: place, zone: "cabin" },
});

/** What a key is for, or has, by which one is told from another. */
const keyFor =
  /^(?:(?:is|'s) )?(?:for (?:the )?(?:door|doors|ignition|trunk|boot|tailgate|topper|locker|box|glove|gas|fuel|petrol|filler|camper|canopy|hitch|tonneau|starting)|with (?:a |the )?(?:button|buttons|remote|fob|chip|blade|logo)|without\b|plain\b|works the|does the|valet\b|in the (?:drawer|office|safe))/;
const keysNamed = /\bkeys?\b.{0,90}$/;

/** Sets and singles that are counted with the noun left out, because it was named before or goes without saying. */
export const setCountSlots: readonly Slot[] = [
  inPlace("belts", null, "belts?|harness", "front", "belts. two in the cab and two on the bench"),
  inPlace("belts", null, "belts?|harness", "rear", "belts. there's one for the driver and two on the bench"),
  {
    name: "full belts of a row",
    component: "belts",
    part: null,
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 8 },
    cues: [
      {
        zones: ["cabin"],
        before: /\bbelts?\b.{0,60}$/,
        after: /^(?:full|proper|shoulder|three point|lap and (?:shoulder|diagonal)|inertia) ones\b/,
        score: 1.35,
      },
      { zones: ["cabin"], before: /\bbelts?\b.{0,80}\bthat's$/, after: /^(?:$|\.|all|in all|total)/, score: 1.2 },
    ],
    example: { heard: "belts in the back, two full ones", value: 2, zone: "cabin" },
  },
  {
    name: "lap belt in the middle",
    component: "belts",
    part: "lap belt",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 4 },
    cues: [
      {
        zones: ["cabin"],
        after: /^(?:lap|waist|two point) (?:strap|belt|one)s? (?:in|for|across) the (?:middle|center|centre)\b/,
        score: 1.6,
      },
    ],
    circumstance: "lap",
    example: { heard: "two full ones and one lap strap in the middle", value: 1, zone: "cabin" },
  },
  {
    name: "seats all told",
    component: "seats",
    part: "seat",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 2, max: 17 },
    cues: [
      {
        zones: ["cabin", "cargo"],
        before: /\bseats?\b.{0,80}\b(?:it's|that's|makes|is|so)$/,
        after: /^(?:all told|in all|in total|altogether|all up|total)\b/,
        score: 1.4,
      },
      {
        zones: ["cabin", "cargo"],
        before: /^(?:.* )?(?:it's|that's|makes|is|so)$/,
        after: /^(?:seats )?(?:all told|in all|altogether)\b/,
        about: ["seats"],
        score: 1.3,
      },
      {
        zones: ["cabin", "cargo"],
        after: /^(?:of them )?(?:facing (?:the way you're going|forward|forwards|front)|that face (?:forward|front))\b/,
        score: 1.4,
      },
      { zones: ["cabin", "cargo"], after: /^more (?:little |jump |small )?seats\b/, score: 1.4 },
    ],
    example: { heard: "the seats, it's seven all told", value: 7, zone: "cabin" },
  },
  {
    name: "keys by what each is for",
    component: "vehicle",
    part: "key",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 9 },
    unless: /\b(?:hole|lock|door|drawer|knob|switch) # (?:with|without)\b|\blow key\b/,
    cues: [
      {
        before: keysNamed,
        after: keyFor,
        unless: /\bbadge\b|\bradio\b|\bmirror\b|\b(?:two|three|four|five|both|~) (?:\w+ )?keys\b/,
        score: 1.3,
      },
      { before: /\bkeys?\b.{0,60}\b(?:the|my|your) only$/, after: /^(?:(?:i|we|that|there|he|they|so)\b|$|\.)/, score: 1.35 },
      { before: /\bkeys?\b.{0,40}\b(?:it's|that's|this is|is) the only$/, score: 1.35 },
      {
        before: /\bthe only$/,
        after: /^(?:i was|we were|they|he|she) (?:handed|given|gave|had|got)\b/,
        zones: ["documents", "cabin"],
        score: 1.1,
      },
      {
        before: /\bkeys?\b.{0,140}\b(?:so|that's|that makes|makes)$/,
        after: /^(?:$|\.|keys?\b|in all|all told|altogether)/,
        unless: /\bowners?\b|\bbelts?\b/,
        score: 1.0,
      },
    ],
    circumstance: "by what it is for",
    example: { heard: "keys. one for the ignition and two for the trunk", value: 2, zone: "documents" },
  },
  {
    name: "owners by where or when",
    component: "vehicle",
    part: "owner",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 12 },
    cues: [
      {
        before: /\bowners?\b.{0,30}\b(?:i count|i make it|i'd say|i get|there's|there are|i've got)$/,
        after: /^(?:$|\.|#|(?:and|over|in|one|two|three|then|all)\b)/,
        unless: /\bkeys?\b/,
        score: 1.5,
      },
    ],
    example: { heard: "owners, i count four", value: 4, zone: "documents" },
  },
  {
    name: "owners of a part of its life",
    component: "vehicle",
    part: "owner",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 12 },
    cues: [
      {
        before: /\bowners?\b.{0,70}$/,
        after:
          /^(?:of them |owners? )?(?:over (?:there|in)|then|(?:over )?here\b|in (?:england|germany|france|japan|the (?:states|uk|south|north))|before (?:him|her|me|us|that|them)|since (?:then|the|he|she|that)|(?:after|ahead of) (?:him|her|them|that))\b/,
        unless: /\bkeys?\b|\bmiles\b/,
        score: 1.35,
      },
      { after: /^(?:previous |former )?owners? since\b/, unless: /\bnew\b|\bday one\b/, score: 1.6 },
      { before: /\bthen$/, after: /^(?:over )?here\b/, about: ["vehicle/owner"], score: 1.3 },
    ],
    circumstance: "of a part of its life",
    example: { heard: "owners, i count four, two over in germany", value: 2, zone: "documents" },
  },
  {
    name: "mirror it came with",
    component: "trim",
    part: "mirror",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 4 },
    cues: [
      {
        before: /\bmirrors?\b.{0,40}\b(?:it|she|they) (?:only )?came with(?: just| only)?(?: the)?$/,
        after: /^(?:$|\.|i|and|we|he|so|but|on)/,
        score: 1.45,
      },
      { before: /\bmirrors?\b.{0,70}\b(?:added|put|fitted|bought) (?:the|an)(?: other| another)?(?: one)?(?: on)? so$/, score: 1.45 },
    ],
    circumstance: "told in turn",
    example: { heard: "mirror on this side too, it came with one", value: 1, position: "passenger", zone: "passenger-side" },
  },
  {
    name: "so many a side",
    component: "body",
    part: "stake pocket",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 20 },
    cues: [
      { before: /\b(?:stake )?pockets?\b.{0,60}$/, after: /^(?:to|a|on|per|each) (?:a |each )?side\b/, score: 1.4 },
      { before: /\bpockets?\b.{0,90}$/, after: /^(?:all told|in all|altogether|all in all|total)\b/, score: 1.4 },
    ],
    example: { heard: "stake pockets there's three to a side", value: 3, zone: "cargo" },
  },
  {
    name: "tool boxes a side",
    component: "body",
    part: "compartment",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 8 },
    cues: [
      {
        before: /\b(?:tool ?boxes|boxes|lockers|compartments|tool boxes|side boxes)\b[^#.]{0,25}$/,
        after: /^(?:to |on )?(?:a|per|each|either) side\b/,
        score: 1.5,
      },
    ],
    circumstance: "a side",
    example: { heard: "toolboxes underneath two a side", value: 2, position: "driver", zone: "driver-side" },
  },
  {
    name: "pieces a part was made into",
    component: "topic",
    part: "piece",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 8 },
    cues: [
      {
        before: /\b(?:made|make|turned|welded|joined|built) (?:it|them|that)(?: all)?(?: into| in| up)?$/,
        after: /^pieces?\b/,
        score: 1.45,
      },
    ],
    example: { heard: "the hood was three pieces, i made it one piece", value: 1, zone: "front" },
  },
  {
    name: "coats of clear",
    component: "paint",
    part: "coats",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 40 },
    cues: [
      {
        after: /^(?:coats )?of (?:clear|clearcoat|clear coat|lacquer|primer|base|high build|sealer)\b/,
        before: /\b(?:coats?|color|primer|base|paint|and)(?: \w+){0,5}$/,
        score: 1.2,
      },
    ],
    circumstance: "of clear or primer",
    example: { heard: "four coats of color and six of clear", value: 6, zone: "front" },
  },
  {
    name: "lowest and highest of the readings",
    component: "paint",
    part: null,
    attribute: "thickness",
    unit: "µm",
    need: { kinds: ["integer"], units: [null], min: 60, max: 900 },
    cues: [
      {
        before: /\b(?:lowest|highest|thinnest|thickest|most|least)(?: reading| one| i got| i saw| it gave)*(?: was| is|'s)?(?: an?)?$/,
        about: ["paint", "body"],
        zones: ["front", "driver-side", "passenger-side", "rear", "roof"],
        unless: /\bmiles\b|\bdollars\b|\bpounds\b/,
        score: 1.3,
      },
    ],
    example: {
      heard: "the door reads a hundred and eighteen microns, the highest was a hundred and twenty three",
      value: 123,
      position: "driver",
      zone: "driver-side",
    },
  },
  {
    name: "quantity on a bill",
    component: "topic",
    part: null,
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 24 },
    cues: [{ before: /\b(?:quantity|qty)(?: of)?$/, zones: ["documents"], score: 1.4 }],
    example: { heard: "wheels, wire, quantity four, painted", value: 4, zone: "documents" },
  },
  {
    name: "points found on a test",
    component: "title",
    part: "test",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 1, max: 30 },
    cues: [{ after: /^(?:minor |more |small )?(?:advisor(?:y|ies)|advisory notes|minors|fail(?:s|ures)?\b(?! to))/, score: 1.4 }],
    circumstance: "advisories",
    example: { heard: "mot runs to may, two advisories", value: 2, zone: "documents" },
  },
  {
    name: "marker lamps",
    component: "lights",
    part: "marker lamp",
    attribute: "count",
    unit: null,
    need: { ...integer, min: 2, max: 24 },
    cues: [
      {
        after:
          /^(?:little |small |amber |red |orange |round |led |cab |roof |clearance )+(?:markers|lamps|ones (?:on|up) (?:the roof|top))\b/,
        zones: ["front", "roof", "driver-side", "passenger-side", "rear"],
        score: 1.25,
      },
    ],
    example: { heard: "four little amber markers up top", value: 4, zone: "front" },
  },
];
