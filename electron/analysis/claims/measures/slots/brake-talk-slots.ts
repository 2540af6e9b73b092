import type { Slot } from "../slot.ts";

/** What a rotor may be turned down to, or was when new elsewhere: nothing that was measured here. */
const wornLimit = /\b(?:throw\w*|thrown|discard|minimum|scrap|legal|limit|bin)\b[^~#]*# /;

/** Brakes, steering and springs: figures said without their unit or without their part. */
export const brakeTalkSlots = [
  {
    name: "brake disc or drum diameter, unit left out",
    component: "brakes",
    part: "rotor",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["fraction", "decimal"], units: [null], min: 7, max: 17 },
    unless: /^[^#]*(?:\bpads?\b|\blining|\bshoes?\b|\bpipe\b)|# (?:of )?(?:pads?|linings?|shoes?|thick|bolts?|pounds?|liters?)\b/,
    cues: [
      {
        before:
          /\b(?:rotors?|discs?|disks?|drums?)(?: (?:brakes?|there|here|back here|back there|up here|up front|out back|in the (?:front|back|rear)|on the (?:front|back|rear)|front|rear|are|is|they're|about|at|of|an?|all (?:the way )?(?:a?round)))*$/,
        score: 1.25,
      },
      {
        about: ["brakes/rotor", "brakes/drum"],
        after: /^(?:up front|in front|out back|(?:in|on|at) (?:the )?(?:fronts?|rears?|backs?)|front|rear|behind|ahead)\b/,
        score: 1.0,
      },
    ],
    carries: true,
    example: {
      heard: "front discs ten and three quarter",
      value: 10.75,
      position: "front",
    },
  },
  {
    name: "brake disc thickness in millimetres",
    component: "brakes",
    part: "rotor thickness",
    attribute: "thickness",
    unit: "mm",
    need: { units: ["mm"], min: 6, max: 42 },
    unless: new RegExp(`${wornLimit.source}|\\bpads?\\b|\\blining|\\bshoes?\\b|\\bmeat\\b`),
    cues: [{ about: ["brakes/rotor"], score: 1.12 }],
    carries: true,
    example: {
      heard: "discs in the front they're twenty four millimeters",
      value: 24,
      position: "front",
    },
  },
  {
    name: "helper leaves",
    component: "suspension",
    part: "helper spring",
    attribute: "count",
    unit: null,
    position: "rear",
    need: { kinds: ["integer"], units: [null], min: 1, max: 5 },
    cues: [
      {
        after: /^(?:\w+ )?(?:helpers?|overloads?|overload (?:leaf|leaves|springs?)|helper (?:leaf|leaves|springs?))\b/,
        score: 1.25,
      },
    ],
    example: {
      heard: "seven leaf out back and two helpers",
      value: 2,
      position: "rear",
    },
  },
  {
    name: "steering wheel diameter, unit left out",
    component: "steering",
    part: "steering wheel",
    attribute: "diameter",
    unit: "in",
    need: {
      kinds: ["integer", "fraction", "decimal"],
      units: [null],
      min: 12,
      max: 20,
    },
    cues: [
      {
        before: /\b(?:steering wheel|banjo)(?:'s| is| it's| measures)?(?: an?| the| about| around)*$/,
        unless: /# (?:spokes?|years?|bucks|dollars|thousand|hundred)\b/,
        score: 1.3,
      },
    ],
    example: {
      heard: "steering wheel's fifteen and a half, it's the thin one",
      value: 15.5,
    },
  },
  {
    name: "steering wheel spokes",
    component: "steering",
    part: "steering wheel spoke",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 5 },
    cues: [
      {
        before: /\b(?:steering wheel|banjo|wood rim|column|horn)\b[^#]{0,60}$/,
        after: /^(?:\w+ )?spokes?\b/,
        score: 1.5,
      },
      {
        after: /^(?:\w+ )?spokes? (?:\w+ ){0,2}?(?:steering|banjo|leather|wood|sports?|woodrim) (?:wheel|rim)\b/,
        score: 1.5,
      },
      {
        zones: ["cabin", "drive"],
        after: /^spokes?\b/,
        unless: /\bwire|\balloys?\b|\bmags?\b|\broad wheels?/,
        score: 1.45,
      },
    ],
    example: {
      heard: "steering wheel's four spoke and it's the leather one",
      value: 4,
    },
  },
  {
    name: "steering play, said as wander",
    component: "steering",
    part: "play",
    attribute: "size",
    unit: "in",
    need: { units: ["in"], min: 0.1, max: 6 },
    cues: [
      {
        before:
          /\b(?:wander|wanders|loose on center|loose on centre|loose in the middle|vague|dead ?spot|free ?play|play in (?:it|the wheel)|slop|slack|give in it|lost motion|sloppy)\b[^#]{0,30}$/,
        unless: /\bclutch|\bpedal|\bkingpin|\bbearing|\bdoor|\bhinge|\bshifter|\bstick\b/,
        score: 1.15,
      },
      {
        after:
          /^(?:or so )?(?:before (?:anything|it|she|the wheels|you get)|of (?:dead|lost|wander|nothing|movement at the (?:wheel|rim)))\b/,
        about: ["steering"],
        score: 1.1,
      },
    ],
    example: {
      heard: "steering's got a little wander in it, about half an inch",
      value: 0.5,
    },
  },
  {
    name: "lift or drop told by its kit",
    component: "suspension",
    part: "ride height",
    attribute: "size",
    unit: "in",
    need: { units: ["in"], min: 0.5, max: 14 },
    unless: /\b(?:body kit|exhaust|brakes?|rotors?|discs?|muffler|pipe|screen|speaker|wheels?|rims?|tires?|clutch|bore)\b[^.~#]{0,25}#/,
    cues: [
      {
        after:
          /^(?:inch )?(?:suspension |lift |lifting |lowering |drop |leveling |levelling |spring |coil |lowered )?(?:kit|lift|leveling kit|levelling kit|lowering springs|drop springs|drop spindles?|dropped (?:axle|i beam|beam|spindles?|front))\b/,
        score: 1.25,
      },
      {
        before: /\b(?:sits|stands|rides|raised|jacked up|lifted|lowered|leveled|levelled|slammed)(?: up| down| about| a| an| it)*$/,
        after:
          /^(?:inch(?:es)? )?(?:higher|lower|taller|over stock|above stock|under stock|off stock|than stock|all round|all around|up|down|front|in the)\b/,
        score: 1.05,
      },
    ],
    example: {
      heard: "it's been lifted it's got the four inch kit on it",
      value: 4,
    },
  },
] satisfies readonly Slot[];
