import type { Slot } from "../slot.ts";

/** Load spaces, twin tanks and what they are made of, a spare by its size alone, weights at the scale, and spans on paper. */
export const deckAndTankSlots = [
  {
    name: "width between the wheel wells",
    component: "cargo-floor",
    part: "load space",
    attribute: "width",
    unit: "in",
    need: { kinds: ["integer", "fraction", "decimal", "measure"], units: [null, "in", "ft"], min: 3, max: 80 },
    value: (reading) => (typeof reading.value === "number" && (reading.unit === "ft" || reading.value >= 24) ? reading.value : undefined),
    cues: [
      {
        zones: ["cargo", "rear"],
        before:
          /\b(?:between|across) the (?:wheel ?wells?|wheel arches|arches|wells|humps|tubs|wheel houses?|wheel boxes)(?: it's| is| that's| i've got| i have got| i get| \.)*$/,
        score: 1.6,
      },
      {
        zones: ["cargo", "rear"],
        before:
          /\b(?:between|across) the (?:wheel ?wells?|wheel arches|arches|wells|humps|tubs)\b[^#]{0,12}# \. (?:so )?(?:that's|it's|so|call it)?(?: that's)?$/,
        score: 1.6,
      },
    ],
    example: { heard: "in between the wheel wells. forty nine", value: 49, zone: "cargo" },
  },
  {
    name: "height of the load space, unit left out",
    component: "cargo-floor",
    part: "load space",
    attribute: "size",
    unit: "in",
    need: { kinds: ["integer", "fraction", "measure"], units: [null, "in"], min: 8, max: 90 },
    cues: [
      {
        zones: ["cargo", "rear"],
        before: /# (?:wide|across|inches|between the \w+|wide between the \w+|\w+ \w+ \w+)\b[^#.]{0,30}\band$/,
        after: /^(?:inches )?(?:high|tall|deep|to the roof|floor to roof)\b/,
        score: 1.4,
      },
    ],
    circumstance: "height",
    example: { heard: "it's forty six inches wide and thirty one high", value: 31, zone: "cargo" },
  },
  {
    name: "sheet a tank is made of",
    component: "fuel-tank",
    part: "sheet",
    attribute: "thickness",
    unit: "said",
    need: { units: ["in", "mm", "ga"], min: 0.03, max: 20 },
    cues: [{ about: ["fuel-tank"], after: /^(?:inch )?(?:sheet|plate|wall|aluminum|aluminium|steel|material)\b/, score: 1.5 }],
    example: { heard: "i built that tank, welded it up out of aluminum, eighth inch sheet", value: 0.125, zone: "rear" },
  },
  {
    name: "baffles of a tank",
    component: "fuel-tank",
    part: "baffle",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 12 },
    cues: [{ after: /^(?:internal )?baffles?\b/, score: 1.5 }],
    example: { heard: "the tank's got two baffles in it", value: 2, zone: "rear" },
  },
  {
    name: "twin tanks, each by its place",
    component: "fuel-tank",
    part: null,
    attribute: "size",
    unit: "gal",
    position: "front",
    need: { kinds: ["integer"], units: [null, "gal", "L"], min: 8, max: 100 },
    cues: [{ before: /\btanks?\b.{0,60}$/, after: /^(?:gallons? )?in the (?:front|main|forward|first) (?:one|tank)\b/, score: 1.6 }],
    circumstance: "front tank",
    example: { heard: "it's a dual tank truck, twenty in the front one", value: 20, position: "front", zone: "driver-side" },
  },
  {
    name: "twin tanks, the one behind",
    component: "fuel-tank",
    part: null,
    attribute: "size",
    unit: "gal",
    position: "rear",
    need: { kinds: ["integer"], units: [null, "gal", "L"], min: 8, max: 100 },
    cues: [
      {
        before: /\btanks?\b.{0,90}# (?:\w+ )?in the (?:front|main|forward|first)(?: one| tank)? and$/,
        after: /^(?:gallons? )?in the (?:back|rear|second|other|aux\w*)\b/,
        score: 1.6,
      },
    ],
    circumstance: "rear tank",
    example: {
      heard: "it's a dual tank truck, twenty in the front one and twenty in the back",
      value: 20,
      position: "rear",
      zone: "driver-side",
    },
  },
  {
    name: "spare rim, by its size alone",
    component: "spare",
    part: null,
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["integer", "measure"], units: [null, "in"], min: 12, max: 24 },
    unless: /\bpsi\b|\byears?\b|\bmiles\b|\bpounds\b/,
    cues: [
      {
        before: /\bspare(?:'s| is|'s on| is on) an?$/,
        after: /^(?:inch )?(?:on|steel|alloy|painted|wheel|rim|with|and|like|same)\b/,
        score: 1.4,
      },
      {
        before: /\bspare\b[^#.]{0,50}\b(?:it's|that's|is|'s)(?: on)? an? (?:steel|alloy|matching|different|skinny|full size)$/,
        after: /^(?:inch )?(?:same|like|with|and|but|wheel|rim|$|\.)/,
        score: 1.4,
      },
    ],
    example: { heard: "the spare's hung up under here, it's a steel seventeen same as the rest", value: 17, zone: "rear" },
  },
  {
    name: "weight at the scale",
    component: "vehicle",
    part: "weight",
    attribute: "size",
    unit: "lb",
    need: { kinds: ["integer", "measure", "money"], units: [null, "lb", "kg", "GBP"], min: 900, max: 40000 },
    cues: [
      {
        before:
          /\b(?:scaled|weighed|weighs|weighed in|weighs in|scaled out|tipped the scales?)(?: at| in at| out at)?(?: about| around| just over)?$/,
        score: 1.6,
      },
      {
        before: /\b(?:scaled|weighed|scales?)\b[^.]{0,50}\bthat's$/,
        after: /^(?:pounds|lbs|kilos)?\b/,
        unless: /\bpayload\b|\bdollars\b/,
        score: 1.3,
      },
    ],
    circumstance: "weight",
    example: { heard: "empty it scaled eighty four twenty at the elevator", value: 8420, zone: "documents" },
  },
  {
    name: "inspection month",
    component: "title",
    part: "test",
    attribute: "date",
    unit: null,
    need: { kinds: ["date", "year"], units: [null] },
    cues: [
      {
        before:
          /\b(?:dot|d o t|state|safety|annual|smog|emissions?) (?:inspection|test|inspected|check)(?:'s| was| is| were)?(?: done)?(?: in| last)$/,
        score: 1.6,
      },
    ],
    circumstance: "tested",
    example: { heard: "dot inspection was in may", value: "may", zone: "documents" },
  },
  {
    name: "span a person had it",
    component: "title",
    part: "history",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    cues: [
      {
        zones: ["documents"],
        before: /\b(?:owner|keeper|had it|kept it|owned it|ran it|mr|mrs|ms|miss|doctor)\b[^#.]{0,40}\bfrom$/,
        after: /^(?:until|till|to|through|up to)\b/,
        score: 1.4,
      },
      { zones: ["documents"], before: /\bfrom # (?:until|till|to|through|up to)$/, score: 1.4 },
      { zones: ["documents"], before: /\b(?:absent|missing|gap|gone|blank)\b[^#.]{0,25}\bbetween$/, after: /^and #/, score: 1.4 },
      { zones: ["documents"], before: /\b(?:absent|missing|gap|gone|blank)\b[^#.]{0,25}\bbetween # and$/, score: 1.4 },
    ],
    circumstance: "ownership",
    example: { heard: "first owner, mr penhallow, from 2008 until 2015", value: 2008, zone: "documents" },
  },
] satisfies readonly Slot[];
