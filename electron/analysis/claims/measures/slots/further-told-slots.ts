import type { Slot } from "../slot.ts";

/** Figures told around the corner: a part's name long before, or a word beside it that says what it is. Plausible ranges are common practice. */
export const furtherToldSlots = [
  {
    name: "offset to the outside",
    component: "wheel",
    part: "offset",
    attribute: "size",
    unit: "mm",
    need: { kinds: ["integer", "measure", "decimal"], units: [null, "mm"], min: -140, max: -1 },
    cues: [
      { after: /^(?:millimeters? )?(?:of )?offset\b/, score: 1.5 },
      { before: /\boffset(?:'s| is| of)?(?: an?)?$/, score: 1.5 },
    ],
    example: { heard: "wheels are aluminum they're a minus twelve offset", value: -12 },
  },
  {
    name: "displacement of what is in it",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cu in",
    need: { kinds: ["integer", "measure"], units: ["cu in", null], min: 97, max: 700 },
    cues: [
      {
        before:
          /\bwhat(?:'s| is|'s really| is really) in (?:it|there|here|her|this one)(?: now| today)?(?: is|'s)(?: really| actually)?(?: an?| the)*$/,
        score: 1.45,
      },
    ],
    example: { heard: "what's in it is a four oh two", value: 402, zone: "front" },
  },
  {
    name: "season in which tires were made",
    component: "tire",
    part: null,
    attribute: "date",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1990, max: 2035 },
    cues: [
      {
        before: /\b(?:made|built|molded|cooked)(?: in)?(?: the)? (?:spring|summer|fall|autumn|winter|start|middle|end|back end) of$/,
        about: ["tire", "spare"],
        score: 2,
      },
    ],
    example: { heard: "the tires they was made in the fall of twenty two", value: 2022, zone: "driver-side" },
  },
  {
    name: "date on a pane of glass",
    component: "glass",
    part: null,
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date", "integer"], units: [null] },
    value: ({ value }) =>
      typeof value !== "number"
        ? value
        : value >= 1930 && value <= 2035
          ? value
          : value >= 10 && value < 100
            ? (value < 40 ? 2000 : 1900) + value
            : undefined,
    cues: [
      {
        before: /\bdate (?:on|in|etched in) (?:it|the glass|the corner|the corner of it)(?: says| is| of| it's)*$/,
        about: ["glass"],
        score: 1.45,
      },
    ],
    example: { heard: "the windscreen has been replaced there is a date on it twenty two", value: 2022, zone: "front" },
  },
  {
    name: "mileage written on a title",
    component: "title",
    part: "recorded mileage",
    attribute: "mileage",
    unit: "mi",
    need: { kinds: ["integer", "measure"], units: [null, "mi", "km"], min: 2000, max: 900000 },
    unless: /\bdollars|\bprice|\basking|\bcode\b|\bnumber\b/,
    cues: [
      {
        zones: ["documents"],
        before: /\b(?:title|log ?book|registration|v5)\b.{0,60}\b(?:it says|it said|says|shows|it's got|it's down as)$/,
        after: /^(?:miles )?on (?:it|the title|there)\b/,
        score: 1.45,
      },
    ],
    circumstance: "written on the title",
    example: { heard: "Title's in my name and it says 71 9 on it", value: 71900, zone: "documents" },
  },
  {
    name: "size of the instrument display",
    component: "dash",
    part: "instrument display",
    attribute: "size",
    unit: "in",
    need: { kinds: ["decimal", "integer", "measure", "fraction"], units: [null, "in"], min: 5, max: 20 },
    cues: [
      {
        zones: ["cabin"],
        before: /\b(?:instruments?|instrument display|driver's display|binnacle|cluster)(?: itself)?(?: is| are|'s)?(?: an?)?$/,
        unless: /\bspeed|\boriginal\b|\bvolts?\b/,
        score: 1.35,
      },
    ],
    example: { heard: "the screen is 12.8 inch and beside it is the instrument 12.3", value: 12.3, zone: "cabin" },
  },
  {
    name: "sources of sound",
    component: "audio",
    part: "speaker",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 50 },
    cues: [{ after: /^(?:sources? of sound|sound sources?|points? of sound|things making (?:a )?noise)\b/, score: 1.45 }],
    example: { heard: "surround sound with seventeen sources of sound", value: 17, zone: "documents" },
  },
  {
    name: "more lamps, by where they are",
    component: "lights",
    part: "lamp",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 8 },
    cues: [
      {
        before: /\b(?:lights?|lamps?)\b[^.#]{0,34}\band$/,
        after: /^(?:more )?(?:at|on|in|out at|up) (?:the |each |either )?(?:sides?|ends?|middle|top|bottom|corners?|outside)\b/,
        zones: ["front", "rear", "driver-side", "passenger-side", "roof"],
        score: 1.4,
      },
    ],
    example: { heard: "One tail light in the middle and two at the side", value: 2, zone: "rear" },
  },
  {
    name: "when a panel was knocked",
    component: "topic",
    part: "damage",
    attribute: "date",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1920, max: 2035 },
    cues: [
      {
        before:
          /\b(?:did (?:that|it|this)|happened|that was (?:done|him|her)|got (?:hit|bumped|knocked|dented)|ran into it|backed into (?:it|her))(?: back)?,? in$/,
        about: ["body", "bumper", "paint", "glass", "trim"],
        score: 1.35,
      },
    ],
    circumstance: "damage",
    example: {
      heard: "a dent down low on the back fender and the boy's sister did that in fifty eight",
      value: 1958,
      position: "passenger-rear",
      zone: "passenger-side",
    },
  },
  {
    name: "code of a shade",
    component: "paint",
    part: "code",
    attribute: "type",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 9999 },
    cues: [
      {
        before: /\bcode(?:'s| is)(?: an?)?$/,
        after: /^[,. ]*(?:and )?(?:that's|which is|that is|it's) (?:just )?(?:the |a )?(?:shade|color|paint|maroon|name of the color)/,
        score: 1.45,
      },
    ],
    value: ({ value }) => String(value),
    example: { heard: "the code's a forty one, that's just the shade", value: "41", zone: "documents" },
  },
  {
    name: "date of a painter's bill",
    component: "paint",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    cues: [
      {
        zones: ["documents"],
        after:
          /^[. ]*(?:it's |that's |here's )?(?:an? |the )?(?:bill|receipt|invoice)\b.{0,40}\b(?:coats?|respray|repaint|paint ?(?:work|job)?|strip and|bare metal)\b/,
        score: 1.45,
      },
    ],
    circumstance: "work",
    example: { heard: "This is from the body shop, 1974. It's a bill for strip and two coats maroon.", value: 1974, zone: "documents" },
  },
  {
    name: "price of a painter's work",
    component: "paint",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { units: ["USD", "GBP", "EUR"], min: 5, max: 60000 },
    cues: [
      {
        after:
          /^(?:for )?(?:an? |the )?(?:strip and|(?:full |complete )?respray|(?:full |complete )?repaint|paint ?(?:work|job)|bare metal|# coats)\b/,
        score: 1.5,
      },
    ],
    circumstance: "cost of a part or of work",
    example: { heard: "it's a bill, two hundred and five dollars, strip and two coats maroon", value: 205, zone: "documents" },
  },
  {
    name: "mileage when it was gone through",
    component: "engine",
    part: "work",
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer", "measure"], units: ["mi", "km", null], min: 3000, max: 900000 },
    cues: [
      {
        zones: ["engine-bay", "documents", "underside"],
        before:
          /\b(?:rings|bearings|pistons|valves|bores?|bottom end|top end|head)\b[^.#]{0,40}\b(?:gone through|been through|ground|honed|let in|done)(?: at| about| around)+$/,
        unless: /\bdollars|\bpsi|\bdegrees/,
        score: 1.5,
      },
    ],
    circumstance: "when the work was done",
    example: { heard: "The rings and bearings were gone through at forty one thousand", value: 41000, zone: "engine-bay" },
  },
  {
    name: "paint measured on a rail",
    component: "paint",
    part: null,
    attribute: "thickness",
    unit: "µm",
    need: { kinds: ["integer"], units: [null], min: 60, max: 1500 },
    cues: [
      {
        before:
          /\b(?:measured?|measuring|gauged?|probe|meter)\b[^.#]{0,30}\b(?:roof|rail|pillar|sill|rocker|fender|wing|door|hood|lid|panel|quarter)\b(?: is| at|'s| reads| says)+$/,
        unless: /\bgaps?\b|\bmiles\b|\bdegrees|\bdollars/,
        score: 0.95,
      },
    ],
    example: { heard: "and i measured the roof rail at 116", value: 116 },
  },
  {
    name: "date of a battery",
    component: "electrical",
    part: "battery",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    cues: [
      {
        before: /\b(?:dated|date(?:'s| is| says)|stamped|both from|made in)(?: in)?$/,
        about: ["electrical/battery"],
        score: 1.45,
      },
    ],
    circumstance: "work",
    example: { heard: "two batteries both twelve volt they're dated march of twenty three oil holds twelve quarts", value: "2023-03" },
  },
  {
    name: "parts of a glass roof",
    component: "top",
    part: "glass roof",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 6 },
    cues: [
      {
        before: /\b(?:roof|panorama|panoramic)\b[^.#]{0,34}\b(?:in|of)$/,
        after: /^(?:parts|panels|pieces|sections|panes)\b/,
        score: 1.5,
      },
    ],
    example: { heard: "the roof is glass panorama in two parts", value: 2, zone: "roof" },
  },
] satisfies readonly Slot[];
