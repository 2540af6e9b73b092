import type { Slot } from "../slot.ts";

const noPower =
  /# [^#]*\b(?:dollars|bucks|pounds|quid|miles)\b[^#]*#|# (?:psi|pounds?|miles?|dollars|bucks|degrees|volts?|revs|r p m|rpm|gallons?|percent|cubic|cfm|amps?|owners?|inch|inches)\b|\bnoise\b|\bprice\b/;

/** Figures of the engine room whose unit or noun goes without saying. */
export const engineShortSlots = [
  {
    name: "displacement of what sits in it",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cu in",
    need: { kinds: ["integer", "measure"], units: [null, "cu in"], min: 130, max: 650 },
    unless: /\bmiles?\b|\bdollars|\bbucks|\bgears?\b|\baxle\b|\bpounds?\b|\bhorse\b|\bpaid\b|\bput # in\b/,
    value: (reading, said) => (/s$/.test(said) ? undefined : reading.value),
    cues: [
      { zones: ["engine-bay"], after: /^inches\b(?! (?:of|long|wide|tall|across|from|to))/, score: 1.25 },
      {
        before:
          /\b(?:got|has|have|had|with|run|runs|there's|there is|is|it's|that's|stuck|dropped|built)(?: him| her)?(?: an?| the| that| this)(?: \w+)?$/,
        after:
          /^(?:in (?:her|him|there|the front of (?:it|her)|between the rails)|under the (?:hood|bonnet)|up front|between the (?:rails|fenders))\b/,
        score: 1.3,
      },
      {
        before: /\b(?:decal|tag|cast|casting|plate)\b[^#]{0,60}\b(?:it's got|says|reads|with)$/,
        after: /^on it\b/,
        score: 1.35,
      },
    ],
    example: { heard: "she's got a 331 in her", value: 331, zone: "opening" },
  },
  {
    name: "displacement in inches",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cu in",
    need: { kinds: ["measure"], units: ["in"], min: 130, max: 650 },
    value: (reading) => reading.value,
    cues: [
      {
        before: /\b(?:all|every one of(?: the)?|good old|big)$/,
        after: /^(?:of (?:it|her|him|motor|engine|v|flathead|big block|small block)|$|\.)/,
        score: 1.5,
      },
      { about: ["engine"], reach: "sentence", unless: /\blong\b|\bwide\b|\btall\b|\bwheelbase\b|\bbed\b|\bwater\b/, score: 1.4 },
    ],
    example: { heard: "the engine's all three hundred and ninety inches of it", value: 390, zone: "engine-bay" },
  },
  {
    name: "power with a tune",
    component: "engine",
    part: null,
    attribute: "power",
    unit: "hp",
    need: { kinds: ["integer", "measure"], units: [null, "hp"], min: 60, max: 1500 },
    unless: noPower,
    cues: [
      {
        before:
          /\b(?:it'd|it would|she'd|he'd|they'd|would|supposed to|could|(?:tuner?|tuned|chip|chipped|program|remap|remapped|with the (?:tuner?|chip|program)) (?:it )?(?:makes|made|gives)) ?(?:make|put down|do|have|give|makes)?(?: you)?(?: about| around| near| like| over)?$/,
        about: ["engine"],
        score: 1.2,
      },
      {
        before:
          /\b(?:tuner|tune|chip|remap|programmer|program)\b[^#.]{0,60}\b(?:it'd|it would|would|it|she'd|to)(?: make| makes| made| put down| do| give)(?: you)?(?: about| around)?$/,
        score: 1.4,
      },
    ],
    circumstance: "with a tune",
    example: { heard: "it had a tuner on it and the guy said it'd make four hundred", value: 400, zone: "engine-bay" },
  },
  {
    name: "power as it left the maker",
    component: "engine",
    part: null,
    attribute: "power",
    unit: "hp",
    need: { kinds: ["integer", "measure"], units: [null, "hp"], min: 60, max: 1500 },
    unless: noPower,
    cues: [
      {
        before:
          /\b(?:stock|standard|as new|from the factory|new|untuned)(?: tune)? (?:it |she |he |they |that |this )(?:makes?|made|was|had|put out|gives?|gave)(?: about| around)?$/,
        score: 1.4,
      },
      {
        before:
          /\b(?:stock (?:tune|map|file|program)|took (?:that|it|the tuner|the chip) off|tuned? back)\b[^#]{0,30}\b(?:so|and|so it's|that's|so that's|so back to|to)$/,
        after: /^(?:again|stock|horse|like|as|$|\.)/,
        score: 1.6,
      },
    ],
    example: { heard: "it's back on the stock tune so three twenty five again", value: 325, zone: "engine-bay" },
  },
  {
    name: "one belt at the front of the engine",
    component: "engine",
    part: "belt",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 6 },
    cues: [
      {
        zones: ["engine-bay"],
        before: /\b(?:serpentine(?: belt)?|fan belts?|drive belts?|v belts?)(?: is| are|'s|, )*(?: just| only)?(?: the)?$/,
        after: /^(?:$|\.|of (?:those|them|it))/,
        score: 1.5,
      },
    ],
    example: { heard: "serpentine belt just the one of those", value: 1, zone: "engine-bay" },
  },
  {
    name: "the only battery",
    component: "electrical",
    part: "battery",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 4 },
    cues: [
      {
        zones: ["engine-bay", "cargo", "cabin", "underside"],
        before:
          /\bbatter(?:y|ies)(?: is| are|'s)? (?:there's|there is|there are|just|only|it's|we've|you've)(?: got)?(?: just| only)?(?: the)?$/,
        after: /^(?:$|\.|the|of (?:them|those)|and|in)/,
        unless: /# (?:volts?|years?)\b/,
        score: 1.3,
      },
    ],
    example: { heard: "battery there's the one.", value: 1, zone: "engine-bay" },
  },
  {
    name: "oil it takes, by its grade",
    component: "engine",
    part: "oil",
    attribute: "size",
    unit: "said",
    need: { units: ["L", "qt", "pt", "gal"], min: 1, max: 60 },
    cues: [
      {
        after:
          /^(?:liters? |quarts? |pints? |gallons? )?of (?:the )?(?:#|zero|five|ten|fifteen|twenty|straight|full synthetic|semi synthetic|synthetic|mineral|rotella|delo)(?: w)? ?(?:#|w|forty|thirty|fifty|weight|oil)?/,
        unless: /\bgearbox\b|\baxle\b|\btransmission\b|\bdiff\b|\bcoolant\b|\bfuel\b|\bwater\b/,
        score: 1.6,
      },
    ],
    example: { heard: "it wants five and a half litres of ten 40", value: 5.5, zone: "engine-bay" },
  },
  {
    name: "filter by what it stops",
    component: "fuel-system",
    part: "filter",
    attribute: "size",
    unit: "µm",
    need: { kinds: ["integer", "measure"], units: [null, "µm"], min: 1, max: 150 },
    cues: [
      {
        before: /(?<!\b(?:oil|air|cabin|pollen) )filters?(?:'s| is)?(?: an?)?$/,
        after: /^microns?\b/,
        zones: ["engine-bay", "underside"],
        score: 1.5,
      },
      { after: /^microns?\b/, about: ["fuel-system"], score: 1.4 },
      { before: /\b(?:fuel |separator |primary |secondary )filter(?:'s| is)?(?: an?)?$/, after: /^microns?\b/, score: 1.5 },
    ],
    example: { heard: "the fuel filter's a two micron", value: 2, zone: "engine-bay" },
  },
  {
    name: "gap of points or plugs",
    component: "ignition",
    part: "gap",
    attribute: "size",
    unit: "said",
    need: { units: ["in", "mm"], min: 0.008, max: 2 },
    value: (reading) => (reading.unit === "in" && Number(reading.value) > 0.08 ? undefined : reading.value),
    cues: [
      { before: /\b(?:points?\b[^#.]{0,24}\b(?:gap|gapped|set|gaps)|plug gap)(?:'s)?\b[^#.]{0,20}$/, unless: /\bspark\b/, score: 1.6 },
      { zones: ["engine-bay"], before: /\b(?:points|gapped)\b[^#.]{0,30}$/, unless: /\boil\b|\bclearance\b/, score: 1.2 },
    ],
    example: { heard: "points are gapped to fifteen thousandths", value: 0.015, zone: "engine-bay" },
  },
  {
    name: "month a part was done in",
    component: "topic",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["date"], units: [null] },
    cues: [
      {
        before:
          /\b(?:i|we|he|she|they) (?:did|changed|replaced|fitted|swapped)\b(?! (?:stuff|something|work|that|the (?:show|run|trip)))[^.#]{0,50}\b(?:back )?in$/,
        unless: /\bdone with\b|\bcome\b|\bdue\b|\bruns\b|\bborn\b|\bbought\b|\bparade\b/,
        zones: ["engine-bay", "underside", "driver-side", "passenger-side", "front", "rear", "cabin"],
        score: 1.1,
      },
      {
        before: /\b(?:myself|yard|garage|driveway|shop|workshop)(?: back)? in$/,
        zones: ["engine-bay", "underside", "driver-side", "passenger-side", "front", "rear", "cabin"],
        score: 1.0,
      },
    ],
    circumstance: "when the work was done",
    example: { heard: "the water pump i did myself in the yard in march", value: "march", zone: "engine-bay" },
  },
] satisfies readonly Slot[];
