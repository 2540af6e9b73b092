import type { Slot } from "../slot.ts";

const notOil =
  /\btires?\b|\bfuel\b|\bboost\b|\bpsi (?:all|in)\b|\bdegrees\b|\bmiles\b|\bpercent\b|\bgears?\b|\baired\b|\bpounds of air\b|\bspare\b/;
const hotOrCold = "hot|cold|warm|at idle|idling|at tick ?over|ticking over|off idle|at speed|once it's warm|driving|going down the road";

/** What the instruments show while the engine runs: figures told with no more than "hot", "cold" or "on the gauge". */
export const gaugeSlots = [
  {
    name: "oil pressure, hot and cold",
    component: "engine",
    part: "oil pressure",
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["integer", "decimal", "measure", "money"], units: [null, "psi", "lb", "GBP"], min: 8, max: 110 },
    cues: [
      {
        after: new RegExp(
          `^(?:pounds |psi )?(?:or so |ish )?(?:when (?:it's|she's|it is) (?:up )?|when |once (?:it's|she's) )?(?:${hotOrCold})\\b`,
        ),
        zones: ["drive", "engine-bay", "cabin", "closing"],
        unless: notOil,
        score: 0.9,
      },
      {
        before:
          /\boil(?:'s|'ll| is| has| pressure(?:'s| is)?| at| on)?(?: now| at| about| sitting| showing| up| running| come up to| on)*$/,
        unless: /\bdegrees|\bquarts?|\bpints?|\bliters?|\bmiles\b|\bw ?~|\bweight\b|\bchange/,
        score: 1.15,
      },
    ],
    example: { heard: "sixty pounds cold and it settles", value: 60, zone: "drive" },
  },
  {
    name: "oil pressure in bar",
    component: "engine",
    part: "oil pressure",
    attribute: "pressure",
    unit: "bar",
    need: { kinds: ["measure", "decimal", "integer"], units: ["bar", null], min: 0.5, max: 9 },
    cues: [
      { before: /\boil(?:'s| is| pressure)?(?: is| now| at| about| of)*$/, said: /\bbar\b/, score: 1.4 },
      { before: /\boil(?:'s| is| pressure)?(?: is| now| at| about| of)*$/, after: /^(?:bar )?(?:hot|cold|warm|at idle)\b/, score: 1.25 },
      { about: ["engine/oil pressure"], said: /\bbar\b/, reach: "sentence", score: 1.25 },
    ],
    carries: true,
    example: { heard: "oil pressure 4.2 bar cold", value: 4.2 },
  },
  {
    name: "boost in bar",
    component: "engine",
    part: "turbo",
    attribute: "pressure",
    unit: "said",
    need: { units: ["bar", "psi"], min: 0.2, max: 60 },
    cues: [{ before: /\bboost\b[^.]{0,60}$/, unless: /\boil\b|\btires?\b/, score: 1.3 }],
    circumstance: "boost",
    example: { heard: "boost is one point one bar", value: 1.1 },
  },
  {
    name: "charging voltage on the gauge",
    component: "electrical",
    part: "battery",
    attribute: "voltage",
    unit: "V",
    need: { kinds: ["decimal", "fraction"], units: [null], min: 11.2, max: 15.4 },
    cues: [
      {
        after:
          /^(?:on (?:the|it's) (?:charge|gauge|battery|needle|volt|voltmeter|dash|meter)|while (?:it's|she's) running|with (?:it|her|him|the engine) running|running|charging|at idle|resting|at rest|key off|just sitting|sitting there)\b/,
        unless: /\bcompression|\bgrand|\basking|\bprice|\bpsi\b|\bmpg\b|\bgallon/,
        score: 1.05,
      },
      {
        before:
          /\b(?:battery|alternator|charging|voltmeter|volts|charge)(?:'s| is| at| says| shows| reads)*(?: sitting| resting| about| at| showing)*$/,
        score: 1.1,
      },
      { zones: ["drive"], before: /\b(?:gauge|needle|voltmeter|meter)(?: says| reads| shows|'s (?:at|on))$/, score: 1.2 },
      {
        zones: ["drive"],
        unless: /\bseconds|\bquarter mile|\bmpg\b|\bgallon|\bmiles|\bprice|\basking|\bgrand|\binch|\bliter/,
        score: 0.55,
      },
    ],
    carries: true,
    example: { heard: "thirteen nine on the charge", value: 13.9 },
  },
  {
    name: "voltage after the name of its gauge",
    component: "electrical",
    part: "battery",
    attribute: "voltage",
    unit: "V",
    need: { kinds: ["integer", "decimal", "fraction"], units: [null], min: 10.5, max: 15.5 },
    cues: [
      { before: /\b(?:volts|volt ?meter|volt gauge)(?:'s|,)?(?: (?:says|shows|shows you|reads|is|at|about|around|sitting))*$/, score: 1.3 },
    ],
    example: { heard: "oil sixty and volts fourteen", value: 14, zone: "drive" },
  },
  {
    name: "battery capacity",
    component: "electrical",
    part: "battery",
    attribute: "size",
    unit: "Ah",
    need: { units: ["Ah"], min: 5, max: 2000 },
    cues: [{ score: 1.2 }],
    carries: true,
    example: { heard: "the battery's new, seventy two amp hour", value: 72 },
  },
  {
    name: "inverter power",
    component: "electrical",
    part: "inverter",
    attribute: "power",
    unit: "kW",
    need: { units: ["kW"], min: 0.3, max: 20 },
    cues: [
      { before: /\binverter\b[^.#]{0,30}$/, score: 1.45 },
      { after: /^(?:watts? )?(?:inverter|generator|solar)\b/, score: 1.45 },
    ],
    example: { heard: "inverter there, fifteen hundred watt", value: 1.5 },
  },
  {
    name: "radiator cap pressure, unit left out",
    component: "cooling",
    part: "radiator cap",
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["integer", "measure"], units: [null, "psi", "lb"], min: 4, max: 30 },
    cues: [{ before: /\bcap(?:'s| is| on it is)(?: an?| the)*$/, unless: /\bfuel|\bgas cap|\bfiller/, score: 1.2 }],
    example: { heard: "and the radiator cap's a fifteen", value: 15 },
  },
] satisfies readonly Slot[];
