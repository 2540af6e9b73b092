import type { Slot } from "../slot.ts";

/** Nouns that a bill for body, glass or trim work names after its date. */
const workNamedAfter =
  /^[^#]{0,90}\b(?:windshield|windscreen|frame and screen|screen to pattern|long box|short box|pickup box|fenders?|wings?|quarters?|doors?|hood|bonnet|tailgate|bumpers?|lacquer|respray|repaint|paint|top|soft top|seats?|carpets?|headliner|headlining|dash)\b/;

/** What is told in passing of bodies, glass, seats and belts: dates and prices on bills, years of parts, counts by another verb. Common practice. */
export const passingSlots = [
  {
    name: "date of a bill that names its work afterwards",
    component: "topic",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    cues: [
      {
        after: workNamedAfter,
        zones: ["documents"],
        unless: /\bmiles?\b|\bmot\b|\bwarranty\b|\btitle\b|\bregist|\bbuil[dt]\b|\bauction/,
        score: 0.95,
      },
    ],
    circumstance: "work",
    example: { heard: "this one's from a firm in town, 2018, frame and screen to pattern", value: 2018, zone: "documents" },
  },
  {
    name: "price with the fitting in it",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "USD",
    need: { kinds: ["integer", "money"], units: [null], min: 20, max: 20000 },
    cues: [
      {
        after: /^(?:installed|fitted|and fitted|all in|out the door|plus fitting|plus labor)\b/,
        about: ["glass", "bumper", "trim", "top", "seats", "carpet", "headliner", "lights", "air-conditioning", "audio"],
        score: 1.3,
      },
    ],
    circumstance: "cost of a part or of work",
    example: { heard: "windshield's cracked we got a guy two eighty five installed", value: 285, zone: "front" },
  },
  {
    name: "year a part is of, named right after it",
    component: "topic",
    part: "year",
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      {
        before: /\b(?:the|original|stock|genuine)$/,
        after: /^(?:frame|rails|chassis|dash|dashboard|grille|cab|fenders|bumpers?|hood|bonnet|bed)\b(?! (?:swap|off restoration))/,
        score: 1.5,
      },
      {
        before:
          /\b(?:frame|rails|chassis|dash|dashboard|grille|cab|fenders|bumpers?|hood|bonnet|bed)(?:'s| is| are) (?:the |an? |all )?(?:original|stock|genuine|real)$/,
        after: /^(?:(?:one|unit|part|piece|steel)\b|with\b|and\b|$|\.)/,
        score: 1.5,
      },
      { after: /^(?:mark|etching|logo|bug|stamp) (?:on|in|all)\b/, about: ["glass"], score: 1.4 },
    ],
    circumstance: "year of the part",
    example: { heard: "it's on the original frame the 1940 frame", value: 1940, zone: "opening" },
  },
  {
    name: "belts for so many",
    component: "belts",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 17 },
    cues: [
      { before: /\bbelts for$/, score: 1.3 },
      { before: /\bbelted for$/, score: 1.3 },
      { after: /^(?:with|that have|have got) (?:a |their own |its own )?(?:seat )?belts?\b/, zones: ["cabin", "opening"], score: 1.0 },
      { after: /^(?:that )?you (?:could|can) (?:strap|belt|buckle)\b/, score: 1.2 },
    ],
    carries: true,
    example: { heard: "there's belts for six in here, laps mostly", value: 6, zone: "cabin" },
  },
  {
    name: "places on one seat",
    component: "seats",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 5 },
    cues: [
      {
        before: /\b(?:seat|bench|row|chair|sofa|couch)\b[^.#]{0,16}\b(?:sits|seats|takes|carries|holds)$/,
        unless: /\bbags?\b|\bbox|\bcase/,
        score: 1.3,
      },
    ],
    circumstance: "one seat",
    example: { heard: "there's the rear facing seat, which sits two", value: 2, zone: "cargo" },
  },
  {
    name: "turns of a window's crank",
    component: "glass",
    part: "window crank",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer", "fraction"], units: [null], min: 1, max: 15 },
    cues: [
      {
        before: /\b(?:crank|winder|handle|window|windows)\b[^#]{0,70}$/,
        after: /^turns?\b(?! lock| of the (?:key|wheel|screw))/,
        unless: /\bsteering|\bsunroof|\block to lock|\bjack\b|\btorque/,
        score: 1.1,
      },
    ],
    example: { heard: "take a hold of this little crank on the door, four turns and that's clear down", value: 4, zone: "cabin" },
  },
  {
    name: "depth of a frame rail",
    component: "frame",
    part: null,
    attribute: "size",
    unit: "said",
    need: { units: ["in", "mm"], min: 2, max: 400 },
    cues: [{ after: /^(?:inch |deep )*(?:frame|frame rails?|channel frame|rails)\b/, score: 1.3 }],
    example: { heard: "so look up, frame's solid, that's a six inch frame", value: 6, zone: "underside" },
  },
  {
    name: "how far a lamp is sunk",
    component: "lights",
    part: "sunk",
    attribute: "size",
    unit: "said",
    need: { units: ["in", "mm"], min: 0.25, max: 80 },
    cues: [{ before: /\b(?:frenched|sunk|recessed|tunneled|tunnelled)\b[^.#]{0,18}$/, about: ["lights"], score: 1.5 }],
    circumstance: "sunk",
    example: { heard: "headlights are frenched in about an inch", value: 1, zone: "front" },
  },
  {
    name: "how far a body is chopped, front or back, or channeled",
    component: "body",
    part: "chop",
    attribute: "size",
    unit: "in",
    need: { kinds: ["integer", "fraction", "measure", "decimal"], units: ["in", null], min: 0.5, max: 9 },
    cues: [
      { before: /\bchop\b[^.]{0,24}\b(?:front|back|rear)(?: #)?$/, score: 1.2 },
      { before: /\b(?:channel(?:'s| is)?|channeled|channelled|sectioned|pie cut)(?: it| about| down| is| at)*$/, score: 1.4 },
    ],
    circumstance: "front, back or channel",
    example: { heard: "it is channeled two inches over the frame", value: 2, zone: "front" },
  },
] satisfies readonly Slot[];
