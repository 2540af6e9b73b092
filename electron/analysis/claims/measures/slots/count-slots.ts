import type { ComponentName } from "../../../../../shared-types/index.ts";
import type { Slot } from "../slot.ts";

/** People a vehicle belonged to, named before they are added up. */
const ownedBy =
  "owners?|keepers?|nephew|niece|son|daughter|widow|wife|husband|brother|sister|uncle|aunt|father|mother|dad|cousin|lady|fella|fellow|gentleman|dentist|doctor|teacher|rancher|farmer|bought it|had it";

/** Counts whose noun is no part of the vehicle, or needs more than the noun. */
export const countSlots = [
  {
    name: "doors",
    component: "body",
    part: "door",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 6 },
    cues: [
      {
        after: /^(?:door|dr)\b(?! (?:handle|lock|card|panel|skin|seal|mirror|hinge|pocket|window|glass|speaker|check))/,
        unless: /\bevery one of\b/,
        score: 1.2,
      },
    ],
    example: { heard: "a two door hardtop", value: 2 },
  },
  {
    name: "owners",
    component: "vehicle",
    part: "owner",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 20 },
    cues: [
      { before: /\b(?:v5|v5c|log ?book|report|history)\b[^.#]{0,15}\b(?:says|shows|has)$/, about: ["vehicle/owner"], score: 1.0 },
      { after: /^(?:\w+ )?(?:owners?|keepers?)\b/, unless: /\bowners? club|\bowners? manual/, score: 1.2 },
      { before: /\b(?:owners|keepers)\b[^.#]{0,14}\b(?:been|had|has had|there's)$/, score: 1.2 },
      { before: /\b(?:number of|no of) (?:previous |former |prior |registered |past )?(?:keepers|owners)\b[^.#]{0,22}$/, score: 1.4 },
      {
        // "… and then his nephew, so that's two": those named before are added up.
        before: new RegExp(`\\b(?:${ownedBy})\\b.{0,80}\\b(?:that's|that is|that makes|makes|call it)(?: your| my| the| all| just)?$`),
        after: /^(?:$|\.|and i'm not|not counting|names?\b|people\b|in all\b|all told\b|of them\b|that i\b|before me\b|with me\b|and me\b)/,
        zones: ["documents", "opening", "closing"],
        unless: /\bkeys?\b|\bstamps?\b|\bbills?\b|\breceipts?\b|\btests?\b/,
        score: 1.1,
      },
      {
        after:
          /^(?:people|folks|families|chaps|gentlemen|ladies|drivers) (?:have |has |had |'ve )?(?:ever |only |actually )?owned (?:it|her|him|this)\b/,
        score: 1.2,
      },
      { after: /^(?:people |folks )?that (?:had|has had|owned) (?:it|her|him)\b/, score: 1.2 },
      {
        before: /\b(?:owner|keeper)s?\b[^#]{0,40}\b(?:so|so that's|so that makes|call it|makes)$/,
        after: /^(?!keys|fobs|key|stamps|of\b)/,
        said: /^(?!one$|1$)/,
        score: 0.85,
      },
    ],
    example: { heard: "it's a two owner car", value: 2 },
  },
  {
    name: "owners, counted up before",
    component: "vehicle",
    part: "owner",
    attribute: "count",
    unit: null,
    need: { kinds: ["ordinal"], units: [null], min: 2, max: 20 },
    cues: [{ after: /^(?:owner|keeper)\b/, score: 1.0 }],
    example: { heard: "I'm the third owner", value: 3 },
  },
  {
    name: "keys",
    component: "vehicle",
    part: "key",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 8 },
    cues: [
      {
        after:
          /^(?:(?!stamps\b|and\b|owners?\b|keepers?\b|one\b|two\b|three\b|four\b|in\b|\d)\w+ ){0,2}?(?:keys|fobs|key fobs|key|fob)\b(?! (?:ring|cover|chain|hole|pocket))/,
        unless: /\bkey off\b|\bthird\b/,
        score: 1.2,
      },
      // "Two keys, there's one, and the other one's in the safe": shown one by one.
      {
        before: /\bkeys\b[^.#]{0,40}\b(?:calling it|there's|got|have|are)$/,
        after: /^(?!,? ?and (?:the other|another|there's|here's))/,
        score: 1.0,
      },
      // "I was going to say three, there's two."
      { before: /\bkeys\b[^.#]{0,70}\b(?:say|said) \w+ (?:there's|it's|but there's)(?: only)?$/, score: 1.0 },
      { before: /\bkeys?\b[^.]{0,34}\band$/, after: /^(?:for|to) the \w+/, score: 1.1 },
    ],
    example: { heard: "two keys, both of them work", value: 2 },
  },
  {
    name: "tools",
    component: "vehicle",
    part: "tool",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 60 },
    cues: [{ after: /^(?:\w+ )?tools\b/, score: 1.0 }],
    carries: true,
    example: { heard: "eleven tools in the roll", value: 11 },
  },
  {
    name: "service stamps",
    component: "title",
    part: "service stamp",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 60 },
    cues: [{ after: /^(?:\w+ ){0,2}?(?:stamps|oil changes|services|service stamps|main dealer stamps)\b/, score: 1.15 }],
    example: { heard: "nine oil changes on there", value: 9 },
  },
  {
    name: "coats or kinds of paint",
    component: "paint",
    part: "coats",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 30 },
    cues: [{ after: /^(?:coats|layers|kinds of (?:paint|primer))\b/, unless: /\btwo stage\b/, score: 1.1 }],
    example: { heard: "it got four coats of clear", value: 4 },
  },
  {
    name: "seats in all",
    component: "seats",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 17 },
    cues: [
      { after: /^(?:seats|seater|passenger)\b(?! (?:side|door|front|rear))/, score: 1.1 },
      { before: /(?:\b(?:it|this|that|she|he|car|truck|van|wagon)(?: will|'ll| can)?|^) (?:seats?)$/, score: 1.1 },
      {
        before: /\broom for$/,
        after: /^(?:people|adults|of you|of us|passengers|easy|easily|up|in comfort|comfortably|no problem|in here)?\s*(?:$|[.,#])/,
        unless: /\b(?:gallon|liter|quart|bike|dog|bag|case|golf|suitcase)/,
        zones: ["cabin", "opening", "closing"],
        score: 1.05,
      },
      { before: /(?:^|\. )seats$/, zones: ["cabin", "opening"], score: 1.1 },
      {
        before: /\b(?:it|this|that|she)(?: will|'ll| can) (?:carry|seat|sit)$/,
        after: /^(?:people|adults|of you|of us|passengers|easy|easily|up|in comfort|comfortably|no problem)?\s*(?:$|[.,#])/,
        unless: /\b(?:gallon|liter|quart|bike|dog|bag|case|battery|body|bodies)/,
        zones: ["cabin", "opening", "closing", "driver-side", "passenger-side", "rear", "cargo"],
        score: 1.05,
      },
    ],
    example: { heard: "it's a seven seater", value: 7 },
  },
  {
    name: "belts in all",
    component: "belts",
    part: null,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 17 },
    cues: [
      {
        after:
          /^(?:(?:(?:two|three|four|[234]) point|(?!point\b|\w+s\b)\w+) )?(?:seat ?belts?|belts|lap belts|lap and shoulder|lap and shoulders)\b(?! (?:on the (?:engine|front of)|and pulley|for the))/,
        unless: /\bserpentine|\bfan belt|\bdrive belt|\bone belt\b|\btiming\b/,
        score: 1.2,
      },
      {
        before: /\bbelts(?:,)?[^.#]{0,35}\b(?:there's|got|are|me)$/,
        zones: ["opening", "cabin", "documents", "driver-side", "passenger-side", "rear", "cargo", "closing", "drive"],
        score: 0.92,
      },
    ],
    carries: true,
    example: { heard: "four seat belts in it", value: 4 },
  },
  {
    name: "engines it has had",
    component: "engine",
    part: "engine of this vehicle",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 6 },
    cues: [{ before: /\b(?:motor|engine) number$/, score: 1.2 }],
    example: { heard: "so this is motor number three", value: 3 },
  },
  {
    name: "bars of a link suspension",
    component: "suspension",
    part: "link",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 8 },
    cues: [{ about: ["suspension/link"], reach: "recent", after: /^(?:bars? )?(?:on the (?:top|bottom))\b/, score: 1.1 }],
    carries: true,
    example: { heard: "there's your four link two bars on the top", value: 2 },
  },
  {
    name: "cells or modules",
    component: "electrical",
    part: "battery cell",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 400 },
    cues: [{ after: /^(?:\w+ ){0,1}?(?:cells|modules)\b/, score: 1.0 }],
    example: { heard: "all 96 cells are even", value: 96 },
  },
] satisfies readonly Slot[];

/** Parts that may be counted by naming them after the number ("four headlights", "six speakers"), and the largest believable count. */
export const countedParts: Readonly<Partial<Record<ComponentName, number>>> = {
  lights: 12,
  exhaust: 8,
  "fuel-system": 8,
  electrical: 4,
  audio: 24,
  belts: 17,
  dash: 12,
  seats: 8,
  glass: 10,
  bumper: 12,
  trim: 30,
  vehicle: 12,
  body: 8,
  brakes: 8,
  suspension: 30,
  engine: 8,
  cooling: 4,
  "fuel-tank": 3,
  floors: 8,
  spare: 2,
  tire: 10,
  wheel: 8,
  top: 8,
  title: 60,
  ignition: 16,
};

/** Parts of which "one" is worth a claim; elsewhere "one" mostly points. */
export const countedByOne: ReadonlySet<string> = new Set([
  "key",
  "owner",
  "tailpipe tip",
  "muffler",
  "exhaust",
  "ding",
  "mirror",
  "drive belt",
  "battery",
  "fuel-tank",
  "leaf spring",
  "speaker",
  "tailpipe",
  "turbo",
  "spot lamp",
  "reversing lamp",
]);

/** Between a number and the counted part: any adjectives, but no word that begins another phrase. */
export const notBetween =
  /\b(?:the|a|an|on|in|of|to|at|and|or|is|are|was|with|for|from|this|that|it|it's|inch|inches|foot|mile|miles|year|hundred|thousand|by|side|wheel|percent|degrees|speed|barrel|cylinder|door|owner|row|ply|wire|pin|way|piece|stage|point|point|volt|bolt|lug|spoke|quarter|half|dollar|dollars|pound|pounds|up|out|over|there|here|so|then|now|they|he|she|we|you|i|that's|there's|come|comes|pumps)\b/;

/** Adjectives that do not set one count apart from another; any other one does ("two American owners"). */
export const plainAdjective =
  /^(?:good|nice|big|little|small|tiny|great|working|new|nearly|original|factory|separate|whole|chrome|chromed|shiny|front|rear|back|more|other|lovely|proper|real|different|round|square|full|own)$/;
