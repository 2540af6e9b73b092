import type { About, Slot } from "../slot.ts";

/** Parts that come in numbers, counted with no noun beside the figure. */
const counted: readonly About[] = [
  "lights",
  "exhaust",
  "audio",
  "belts",
  "seats",
  "glass",
  "bumper",
  "trim",
  "suspension",
  "wheel",
  "dash",
  "top",
  "floors",
  "body",
  "frame",
  "ignition",
  "fuel-tank",
  "vehicle/key",
  "vehicle/owner",
  "vehicle/airbag",
  "body/jack point",
];

const done = /^(?:$|\.|(?:and|if|but|so|or|in all|all told|of (?:them|those|these)|here|there|on|which|that|i|it|not)\b)/;
const noCount =
  /\bmiles?\b|\bpsi\b|\bpounds\b|\bdollars\b|\bquid\b|\bmicrons?\b|\bmils?\b|\binch\b|\bfoot\b|\bvolts?\b|\bdegrees\b|\bthirty seconds\b|\bmillimeters?\b|\bliters?\b|\bowed\b|\bo'clock\b|\bout of (?:five|ten)\b/;

const wholeNumber = (reading: { readonly value: number | string }): number | undefined =>
  typeof reading.value === "number" && Number.isInteger(reading.value) ? reading.value : undefined;

/** Counts said after their noun, shared out by side, or left to "the one". */
export const countedTalkSlots = [
  {
    name: "so many to a side",
    component: "topic",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 60 },
    unless: noCount,
    value: wholeNumber,
    cues: [{ after: /^(?:a|per|to a|to each|on a|on each|each|either|down each|down either) side\b/, about: counted, score: 1.15 }],
    circumstance: "each side",
    example: { heard: "six lamps at the back, three to a side", value: 3, zone: "rear" },
  },
  {
    name: "counted and told after its name",
    component: "topic",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 60 },
    unless: noCount,
    value: wholeNumber,
    cues: [
      {
        before:
          /\b(?:should be|ought to be|supposed to be|meant to be|i count|i counted|i've counted|i only count|i make it|make it|count that|call that|count them)(?: about| only| as)?$/,
        after: done,
        about: counted,
        reach: "recent",
        score: 1.0,
      },
      {
        before:
          /\b(?:i think|i believe|i reckon|i'd say|i want to say|pretty sure|fairly sure|it says)(?: it's| there's| they're| there are| that's| it is)$/,
        after: done,
        about: counted,
        beside: { before: 6 },
        score: 1.05,
      },
    ],
    example: { heard: "airbags, I think it's six", value: 6, zone: "cabin" },
  },
  {
    name: "so many in a place, named once",
    component: "topic",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 20 },
    unless: new RegExp(`${noCount.source}|\\btread\\b|# a pair #`),
    value: wholeNumber,
    cues: [
      {
        before: /\b(?:belts|seats|speakers|lamps|lights|lap belts|seat belts|airbags|windows|headrests|head restraints)$/,
        after:
          /^(?:(?:in|at|on|up|out) (?:the |each )?(?:back|front|rear|here|there|middle|dash|doors?|deck|roof|side)|up (?:front|here)|back here|behind)\b/,
        about: ["belts", "seats", "audio", "lights", "glass", "vehicle/airbag"],
        beside: { before: 0 },
        score: 1.1,
      },
    ],
    carries: true,
    example: { heard: "belts, three in the back, two up front", value: 3, zone: "cabin", position: "rear" },
  },
  {
    name: "only those at one end",
    component: "topic",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 4 },
    unless: noCount,
    value: wholeNumber,
    cues: [
      {
        before: /\b(?:just|only) the (?:front|rear|back|outer|outside)$/,
        after: /^(?:$|\.|(?:and|have|are|not|so|but)\b)/,
        about: ["seats", "belts", "lights", "glass", "tire", "vehicle/airbag"],
        reach: "recent",
        score: 1.15,
      },
    ],
    example: { heard: "heated seats, just the front two", value: 2, zone: "cabin", position: "front" },
  },
  {
    name: "just the one of a part",
    component: "topic",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 1 },
    cues: [
      {
        before: /\b(?:just|only) the$/,
        after: /^(?:$|\.|(?:over (?:here|there)|on (?:this|the|that)|in the|at the|up|with it|so|and)\b)/,
        about: ["trim/mirror", "exhaust", "vehicle/key", "lights", "audio/speaker", "electrical", "fuel-tank", "cooling/fan", "body"],
        reach: "recent",
        score: 0.95,
      },
      { before: /\bout of (?:that|the|this|just the|only the)$/, after: /^speaker\b/, about: ["audio/speaker"], score: 1.1 },
    ],
    example: { heard: "no mirror on this side, it's just the one over there", value: 1, zone: "passenger-side", position: "passenger" },
  },
  {
    name: "holes it is charged through",
    component: "electrical",
    part: "charge port",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 4 },
    cues: [
      {
        before: /\b(?:plug it in|plugs in|plug in|charge port|charging port|charge flap|charge it)\b[^.#]{0,40}$/,
        after: /^(?:holes|sockets|ports|plugs|inlets)\b/,
        score: 1.4,
      },
      { after: /^(?:holes|sockets|ports|inlets)\b[^.#]{0,30}\b(?:plug it in|you plug|charge|charging)\b/, score: 1.4 },
    ],
    example: { heard: "this flap is where you plug it in, and there's two holes in here", value: 2, zone: "front" },
  },
  {
    name: "speeds of a heater",
    component: "air-conditioning",
    part: "blower",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 12 },
    cues: [
      {
        after: /^speeds?\b/,
        before: /\b(?:heater|blower|air ?con|air conditioning|a c|ac|fan)\b[^.]{0,48}$/,
        unless: /\bgear\w*|\btransmission|\bmanual\b|\bauto\w*|\bsynchro|\bfloor\b|\boverdrive\b|\bclutch|\bshift\w*|\bcolumn\b|\bbox\b/,
        score: 1.5,
      },
      { after: /^speed (?:heater|blower|fan|air)\b/, score: 1.5 },
    ],
    example: { heard: "the heater's the round one under there, blows warm, one speed", value: 1, zone: "cabin" },
  },
  {
    name: "places to sit",
    component: "seats",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 17 },
    cues: [
      { after: /^places? to sit\b/, score: 1.3 },
      { before: /\bseats for$/, score: 1.2 },
      { before: /\broom for$/, after: /^(?:on|in) (?:the|those|these) seats\b/, score: 1.2 },
    ],
    example: { heard: "I count it four places to sit", value: 4, zone: "cabin" },
  },
  {
    name: "hands it has been through",
    component: "vehicle",
    part: "owner",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 12 },
    cues: [
      { before: /\b(?:through|had|in)$/, after: /^(?:pairs? of |sets? of )?hands\b/, unless: /\bwheel\b/, score: 1.3 },
      { after: /^(?:family|lady|gentleman|careful) (?:car|truck|owner|from new|owned)\b/, score: 1.2 },
      { before: /\bhow many (?:owners|keepers)$/, score: 1.3 },
    ],
    example: { heard: "it's been through four hands", value: 4, zone: "documents" },
  },
  {
    name: "keys on the ring",
    component: "vehicle",
    part: "key",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 8 },
    cues: [
      { after: /^(?:of them )?on (?:the|one|this|that|a) (?:ring|key ?ring|fob|bunch|hook)\b/, about: ["vehicle/key"], score: 1.3 },
      { before: /\bkeys$/, after: /^(?:$|\.)/, about: ["vehicle/key"], beside: { before: 0 }, score: 1.1 },
    ],
    example: { heard: "two keys and the spare of each one so four on the ring", value: 4, zone: "cabin" },
  },
  {
    name: "how many were made",
    component: "vehicle",
    part: "production",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 2000000 },
    unless: /\bdollars\b|\bpounds\b|\bmiles\b|\bquid\b/,
    value: wholeNumber,
    cues: [
      {
        before:
          /\b(?:they|factory|works|we|company)(?: only| ever| just)? (?:built|made|turned out|produced)(?: just| only| about| around)?$/,
        after: /^(?:of (?:them|these|this|those)|cars|trucks|like|with|in (?:this|that)|that year)\b/,
        score: 1.3,
      },
      {
        before: /\b(?:it's |she's |this is |that's |he's |is )?one of(?: only| just| about| around| some)?$/,
        after: /^(?:$|\.|(?:made|built|cars|trucks|with|in this|in that|so|known|left|ever|produced|like|that)\b)/,
        score: 1.1,
      },
      {
        after: /^(?:cars|trucks|of them|units|examples)? ?(?:total|in all|built|made|worldwide|produced|ever made)\b/,
        said: /hundred|thousand|\d{3}|^\S+ \S+/,
        zones: ["documents", "opening", "closing", "front"],
        about: ["vehicle", "title"],
        score: 1.0,
      },
      { after: /^(?:cars|trucks) total\b/, score: 1.2 },
      { before: /\b(?:production|build) (?:total|number|run|figure)(?:'s| is| was| of)?(?: about)?$/, score: 1.3 },
    ],
    circumstance: "production",
    example: { heard: "they built two hundred and twelve of them with this motor", value: 212, zone: "opening" },
  },
  {
    name: "times it was stamped",
    component: "title",
    part: "service stamp",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 60 },
    cues: [{ before: /\b(?:stamped|serviced|been in|dealer serviced)\b[^.#]{0,24}$/, after: /^times\b/, score: 1.3 }],
    example: { heard: "it's stamped in the book nine times", value: 9, zone: "documents" },
  },
] satisfies readonly Slot[];
