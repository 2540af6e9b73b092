import type { Slot } from "../slot.ts";

const notRatio = /\bsynchro\w*\b|\bleather\w*\b|\bvinyl\b|\btrimmer|\bvolts?\b|\bliters?\b|\bcubic\b|\bcarb\b|\bpsi\b|\bmils?\b|\bhorse/;
/** "410", "373", "411": an axle ratio said without its point. */
const ratioOf = (value: number | string, kind: string): number | undefined => {
  if (typeof value !== "number" || (kind === "integer" && value < 100)) return undefined;
  const ratio = Number.isInteger(value) && value >= 220 && value <= 760 ? value / 100 : value;
  return ratio >= 2 && ratio <= 7.6 ? ratio : undefined;
};

/** Transmission, final drive, exhaust and cooling. */
export const drivelineSlots = [
  {
    name: "gears",
    component: "transmission",
    part: "gears",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 18 },
    unless: /\bact like\b|\bpretend/,
    cues: [
      {
        after:
          /^(?:speeds?|on the floor(?! of\b)|on the tree|on the column|forward(?: gears?)?)\b(?! (?:limit|bumps?|blower|fan|wiper|bike|heater))/,
        score: 1.2,
      },
      {
        after: /^gears (?:to|in it|in this|in the box|and reverse|plus|up and down)\b/,
        unless: /\bpretend|\bact like\b|\b(?:bike|bicycle)\b/,
        score: 1.1,
      },
      { after: /^gears\b/, unless: /\bpretend|\bact like\b/, about: ["transmission"], score: 1.1 },
      {
        before: /\b(?:got|has|just|only)(?: the| just| only)?$/,
        after: /^gears\b/,
        unless: /\b(?:bike|bicycle|ratio|ring|timing|differential|diff)\b/,
        zones: ["drive", "cabin", "opening"],
        score: 1.0,
      },
      { before: /\ball$/, after: /^(?:of the )?gears\b/, score: 1.1 },
      { before: /\b(?:it's|its|the|through)$/, after: /^(?:forward )?gears\b/, zones: ["drive", "cabin"], score: 1.0 },
      { before: /\bthat's all there is$/, after: /^and (?:done|that's it)\b/, score: 1.0 },
      { before: /\b(?:is|that's|makes)$/, after: /^(?:and done|gears)\b/, score: 0.9 },
    ],
    example: { heard: "it's a four speed car", value: 4 },
  },
  {
    name: "splines",
    component: "transmission",
    part: "spline",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 8, max: 50 },
    cues: [
      { after: /^splines?\b/, about: ["transmission", "final-drive"], score: 1.2 },
      { after: /^splines?\b/, score: 0.8 },
    ],
    example: { heard: "a top loader with the twenty eight spline output", value: 28 },
  },
  {
    name: "axle splines",
    component: "final-drive",
    part: "axle shaft",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 8, max: 50 },
    cues: [{ after: /^splines? (?:axles?|half ?shafts?)\b/, score: 1.35 }],
    example: { heard: "a nine inch with 31 spline axles", value: 31 },
  },
  {
    name: "axle ratio, by name",
    component: "final-drive",
    part: null,
    attribute: "ratio",
    unit: null,
    need: { kinds: ["ratio", "decimal", "fraction", "integer"], units: [null], min: 2, max: 760 },
    cues: [
      { after: /^in the (?:front|rear|back) (?:axle|end|diff|differential)\b/, unless: notRatio, score: 1.25 },
      {
        zones: ["underside"],
        said: /s$/,
        after: /^(?:in the (?:rear|back|diff|pumpkin|front)|out back|front and rear)\b/,
        unless: notRatio,
        score: 1.0,
      },
      { before: /\b(?:gears|rear gears?)(?: are| is|'re|'s)?(?: a| the)?$/, unless: notRatio, score: 1.1 },
      {
        after:
          /^(?:to (?:one|1) )?(?:rear )?(?:gears?|gearing|gear set|ratio|rear end|rear axle|axle|diff|posi|limited slip|final drive|pumpkin|ring and pinion|highway gear|locker)\b/,
        unless: notRatio,
        score: 1.3,
      },
      { after: /^(?:in the (?:back|rear end|rear|diff|pumpkin)|out back)\b/, about: ["final-drive"], unless: notRatio, score: 1.1 },
    ],
    value: (reading) => ratioOf(reading.value, reading.kind),
    example: { heard: "and it has 3.50 gears", value: 3.5 },
  },
  {
    name: "axle ratio",
    component: "final-drive",
    part: null,
    attribute: "ratio",
    unit: null,
    need: { kinds: ["ratio", "decimal", "fraction", "integer", "dimensions"], units: [null], min: 2, max: 760 },
    cues: [
      {
        before: /\b(?:rear|front)(?: end)?(?:'s| is)(?: an?| the)?$/,
        zones: ["underside"],
        unless: /\binch\b|\bspline|\bbolt\b|\bmiles?\b|\bpounds?\b|\bleaf|\bpsi\b/,
        score: 1.0,
      },
      {
        about: ["final-drive"],
        unless:
          /\binch\b(?! and)|\bleather\w*\b|\bvinyl\b|\bpiping\b|\btrimmer|\bsynchro\w*\b|# [^#]+ # spline|# [^#]+ # bolt\b|\bcarb\b|\bvolts?\b|\bliters?\b|\bcubic\b|\bmiles?\b|\bhour\b|\bdollars|\bgrand\b|\bpounds?\b|\bhalf\b|\bturbo\b|\b(?:asking|price|offered)\b/,
        score: 1.05,
      },
    ],
    value: (reading) => ratioOf(reading.value, reading.kind),
    carries: true,
    example: { heard: "the rear end tag says 3.00", value: 3 },
  },
  {
    name: "axle ratio, by where it is said",
    component: "final-drive",
    part: null,
    attribute: "ratio",
    unit: null,
    need: { kinds: ["ratio"], units: [null], min: 2, max: 7.6 },
    cues: [
      { before: /\btag(?:'s)?(?: it| still)?(?: says| reads)?$/, zones: ["underside", "rear", "documents"], unless: notRatio, score: 0.9 },
      { zones: ["underside"], unless: new RegExp(`${notRatio.source}|\\binch\\b|\\breduction|\\bcompression`), score: 0.62 },
    ],
    // Sure of itself by the words about gears before it, or left alone.
    value: (reading) => (reading.likelihood >= 0.6 ? ratioOf(reading.value, reading.kind) : undefined),
    example: { heard: "so it's a three seventy gear they put in here now, see the tag it says 37 over 10", value: 3.7, zone: "underside" },
  },
  {
    name: "axle ratio from tooth counts",
    component: "final-drive",
    part: null,
    attribute: "ratio",
    unit: null,
    need: { kinds: ["dimensions", "fraction", "ratio"], units: [null] },
    cues: [{ about: ["final-drive"], score: 1.2 }],
    value: (reading) => {
      const [ring, pinion] = reading.parts ?? [];
      if (ring === undefined || pinion === undefined || pinion < 5 || pinion > 20 || ring < 28 || ring > 60) return undefined;
      const ratio = Math.round((ring / pinion) * 100) / 100;
      return ratioOf(ratio, "ratio");
    },
    example: { heard: "the axle tag says 37 over 10", value: 3.7 },
  },
  {
    name: "ring gear diameter",
    component: "final-drive",
    part: "ring gear",
    attribute: "diameter",
    unit: "in",
    need: { units: ["in"], min: 5, max: 16 },
    cues: [
      { after: /^(?:inch )?ring\b/, score: 1.3 },
      {
        zones: ["underside", "rear"],
        after: /^(?:right\b|and (?:the tag|they narrowed|it's got)|out of|rear|narrowed|posi|with (?:the )?#)/,
        unless: /\bexhaust|\bpipe|\btip|\bfan\b/,
        score: 0.75,
      },

      { about: ["final-drive"], unless: /\bnarrowed|\bskinnier|\bshortened|\bwider/, score: 1.05 },
      { before: /\b(?:a|the)$/, after: /^(?:inch )?(?:rear end|rear|axle|diff|with (?:the )?(?:three|four|two|\d))/, score: 1.0 },
    ],
    value: (reading) =>
      [
        5.5, 6.5, 7, 7.25, 7.5, 7.625, 8, 8.2, 8.25, 8.5, 8.6, 8.75, 8.8, 8.875, 9, 9.25, 9.375, 9.5, 9.75, 10, 10.25, 10.5, 11, 11.5, 12,
        14,
      ].includes(reading.value as number)
        ? reading.value
        : undefined,
    example: { heard: "rear end is the nine inch", value: 9 },
  },
  {
    name: "axle narrowed by",
    component: "final-drive",
    part: "narrowing",
    attribute: "width",
    unit: "in",
    need: { units: ["in", null], min: 0.5, max: 14 },
    cues: [
      {
        about: ["final-drive"],
        before: /\b(?:narrowed|shortened)\b[^.#]{0,40}$/,
        after: /^(?:inches |inch )?(?:a|each|per) side\b/,
        score: 1.5,
      },
      { about: ["final-drive"], after: /^(?:inches )?(?:skinnier|narrower|shorter)\b/, score: 1.4 },
    ],
    example: { heard: "they narrowed the rear end two and a half a side", value: 2.5 },
  },
  {
    name: "axle bolts",
    component: "final-drive",
    part: "cover bolts",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 10, max: 14 },
    cues: [{ after: /^bolt\b/, unless: /\bmain|\bblock/, score: 1.15 }],
    example: { heard: "it has the twelve bolt rear end", value: 12 },
  },
  {
    name: "exhaust pipe diameter",
    component: "exhaust",
    part: "pipe",
    attribute: "diameter",
    unit: "in",
    need: { units: ["in"], min: 1, max: 9 },
    cues: [
      { about: ["exhaust"], unless: /\bhole\b/, score: 1.0 },
      {
        after: /^(?:inch )?(?:\w+ ){0,1}?(?:exhaust|pipes?|duals?|stacks?|tailpipes?|downpipe|system|primaries|tubes?|collectors?)\b/,
        score: 1.2,
      },
    ],
    carries: true,
    example: { heard: "exhaust is two and a half inch all the way back", value: 2.5 },
  },
  {
    name: "exhaust pipe diameter, unit left out",
    component: "exhaust",
    part: "pipe",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["fraction", "decimal"], units: [null], min: 1.25, max: 6 },
    cues: [{ about: ["exhaust"], reach: "sentence", unless: /\breceiver|\bball\b|\bhitch/, score: 1.0 }],
    carries: true,
    example: { heard: "the exhaust looks like it's two and a quarter", value: 2.25 },
  },
  {
    name: "length of a muffler",
    component: "exhaust",
    part: "muffler",
    attribute: "size",
    unit: "in",
    need: { units: ["in"], min: 8, max: 48 },
    cues: [{ about: ["exhaust/muffler"], unless: /\bpipe|\bfrom\b/, score: 1.3 }],
    example: { heard: "mufflers are the eighteen inch kind", value: 18 },
  },
  {
    name: "bore of an exhaust",
    component: "exhaust",
    part: "pipe",
    attribute: "diameter",
    unit: "in",
    need: { units: ["in"], min: 1, max: 6 },
    cues: [
      {
        after: /^(?:inch )?bore\b/,
        before: /\b(?:exhaust|tailpipe|pipes?|stainless|system|silencer)\b[^.#]{0,24}$/,
        zones: ["rear", "underside", "driver-side", "passenger-side", "closing"],
        score: 1.5,
      },
    ],
    example: { heard: "one tailpipe stainless two inch bore", value: 2, zone: "rear" },
  },
  {
    name: "exhaust pipe diameter in millimetres",
    component: "exhaust",
    part: "pipe",
    attribute: "diameter",
    unit: "mm",
    need: { units: ["mm"], min: 25, max: 200 },
    cues: [{ about: ["exhaust"], score: 0.95 }],
    example: { heard: "the exhaust is 63 mm", value: 63 },
  },
  {
    name: "radiator rows",
    component: "cooling",
    part: "radiator rows",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 6 },
    cues: [
      { about: ["cooling"], after: /^(?:row|rows|core|cores)\b/, unless: /\brow seat|\brows? of |\btuft|\bstitch|\bpleat/, score: 1.15 },
      // Without a radiator named, only what is in view under the hood or in front has cores.
      {
        after: /^(?:row|rows|core|cores)\b/,
        unless: /\brow seat|\brows? of |\btuft|\bstitch|\bpleat|\bheadliner|\bseat/,
        zones: ["engine-bay", "front", "underside", "documents"],
        score: 1.1,
      },
    ],
    example: { heard: "radiator's a four row", value: 4 },
  },
  {
    name: "fan diameter",
    component: "cooling",
    part: "fan",
    attribute: "diameter",
    unit: "in",
    need: { units: ["in"], min: 8, max: 24 },
    cues: [{ about: ["cooling/fan"], score: 1.2 }],
    example: { heard: "a 16 inch electric fan", value: 16 },
  },
  {
    name: "radiator cap pressure",
    component: "cooling",
    part: "radiator cap",
    attribute: "pressure",
    unit: "psi",
    need: { units: ["psi", "lb"], min: 3, max: 30 },
    cues: [{ after: /^(?:pounds? |psi )?(?:radiator )?cap\b/, score: 1.3 }],
    example: { heard: "it's got the 13 psi cap", value: 13 },
  },
] satisfies readonly Slot[];
