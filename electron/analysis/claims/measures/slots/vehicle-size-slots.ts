import type { Slot } from "../slot.ts";

/** What else is long, or weighed. */
const otherThing =
  /\bbed\b|\bbox\b|\bcab\b|\bwheelbase\b|\brack\b|\bawning\b|\bcord\b|\bcable\b|\blead\b|\bramps?\b|\bdeck\b|\bload\b|\btrailer\b|\bcrack\b|\bscratch\b|\bengine\b|\bmotor\b|\btransmission\b|\bhammer\b/;

/** Weight, length and pull of the whole vehicle; plausible ranges are common practice. */
export const vehicleSizeSlots = [
  {
    name: "weight of the vehicle",
    component: "vehicle",
    part: "weight",
    attribute: "size",
    unit: "lb",
    need: { kinds: ["integer", "measure", "money"], units: ["lb", "kg", "GBP", null], min: 700, max: 60000 },
    unless: /\bdollars|\basking|\bpsi\b|\btow|\bpull|\btrailer|\bpayload|\brated|\bgross|\bgvw/,
    cues: [
      { after: /^(?:pounds |lbs |kilos )?of (?:car|truck|van|automobile|motor ?car|vehicle|machine|iron|steel)\b/, score: 1.4 },
      {
        before: /\b(?:weighs?|weighing|weighed|tips the scales|scales)\b.{0,40}\b(?:it's|she's|at|in at|is|about|around|only|just)$/,
        unless: otherThing,
        score: 1.2,
      },
      {
        before: /\b(?:curb weight|kerb weight|dry weight|empty|unladen)(?: it's| she's| he's| is| she weighs| it weighs|'s)*$/,
        unless: otherThing,
        score: 1.35,
      },
    ],
    circumstance: "weight",
    example: { heard: "there's only sixteen hundred and eighty pounds of car", value: 1680 },
  },
  {
    name: "length of the vehicle",
    component: "vehicle",
    part: "length",
    attribute: "size",
    unit: "said",
    need: { kinds: ["integer", "measure", "fraction", "decimal"], units: ["ft", "in", "mm"], min: 3, max: 500 },
    unless: otherThing,
    cues: [
      {
        before:
          /\b(?:it's|she's|he's|it is|this is|car is|truck is|van is|thing's|thing is|whole thing(?:'s| is)?)(?: about| around| all of| nearly| just over| just under)*$/,
        after: /^(?:feet |foot |inches |meters )?(?:long|overall|end to end|nose to tail|bumper to bumper|in length|stem to stern)\b/,
        score: 1.3,
      },
    ],
    circumstance: "length",
    example: { heard: "and it's nineteen feet long if it's an inch", value: 19 },
  },
  {
    name: "overall length, unit left out",
    component: "vehicle",
    part: "length",
    attribute: "size",
    unit: "in",
    need: { kinds: ["integer"], units: [null], min: 110, max: 400 },
    cues: [{ after: /^(?:overall|end to end|nose to tail|bumper to bumper)\b/, score: 1.35 }],
    circumstance: "length",
    example: { heard: "it's a hundred and eighteen inch wheelbase and it's two oh seven overall", value: 207 },
  },
  {
    name: "what it pulls",
    component: "vehicle",
    part: "weight rating",
    attribute: "size",
    unit: "lb",
    need: { kinds: ["integer", "measure", "money"], units: ["lb", "kg", null], min: 500, max: 40000 },
    unless: /\bdollars|\basking|\bprice|\bfeet of\b|\bfoot pounds|\bpound feet|\btorque|\blicen[cs]e\b|\bi could\b|\byou could legally\b/,
    cues: [
      {
        before:
          /\b(?:it'll|it'd|it will|it would|she'll|she'd|he'll|will|would|can|could|rated to|good to|allowed to|good for) (?:pull|tow|haul|drag)(?: about| around| up to)?(?: an?)?$/,
        score: 1.35,
      },
    ],
    example: { heard: "It'd pull five thousand pounds, said the book", value: 5000 },
  },
] satisfies readonly Slot[];
