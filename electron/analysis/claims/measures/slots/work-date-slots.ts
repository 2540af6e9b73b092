import type { Slot } from "../slot.ts";
import { names, notYear, withYear, work } from "./date-words.ts";

/** When work was done, and the dates that papers give for it. */
export const workDateSlots = [
  {
    name: "date of work",
    component: "topic",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    cues: [
      {
        before: /\b(?:all |brand )?new(?: \w+)?$/,
        about: ["brakes", "suspension", "exhaust", "cooling", "electrical", "top", "tire"],
        unless: /\bdollars|\bbucks|\bmiles?\b/,
        score: 1.0,
      },
      {
        before: /\bnew\b[^.#]{0,30}$/,
        about: [
          "electrical",
          "tire",
          "exhaust",
          "brakes",
          "suspension",
          "glass",
          "top",
          "carpet",
          "fuel-tank",
          "cooling",
          "transmission",
          "seats",
        ],
        reach: "sentence",
        score: 1.1,
      },
      {
        before: new RegExp(`\\b(?:${work})\\b[^.]{0,60}$`),
        unless: /\bdollars|\bbucks|\bmiles?\b$|\bout of a\b|\boff of? an?\b/,
        score: 1.05,
      },
      {
        // "It's a stainless one, 2011 if I remember the invoice."
        after:
          /^(?:if i (?:remember|recall|read)|according to|by|off|going by|it says on|on)\b[^.#]{0,20}\b(?:invoice|receipt|bill|paperwork|ticket)\b/,
        before: /\S$/,
        unless: notYear,
        score: 1.0,
      },
      {
        // "… was done in black leather with white piping by a lady in the next town in 2016": who did it, and where, come between.
        before: new RegExp(`\\b(?:${work})\\b[^.#]{0,70}\\b(?:by|at) (?:an?|the|some|his|her|my|our)\\b[^.#]{0,40}\\bin$`),
        unless: /\bdollars|\bbucks|\bmiles?\b$/,
        score: 1.05,
      },
      { after: new RegExp(`^[^.]{0,24}\\b(?:${work})\\b`), unless: /\bdollars|\bbucks|\bout of a\b|\boff of? an?\b/, score: 0.95 },
      {
        before: /\b(?:new in|from|that was|that was in|dated|receipt from|stainless from here back|invoice|since)(?: about| around)?$/,
        unless: notYear,
        about: [
          "engine",
          "paint",
          "body",
          "exhaust",
          "seats",
          "brakes",
          "suspension",
          "transmission",
          "top",
          "air-conditioning",
          "electrical",
          "cooling",
          "tire",
          "carpet",
          "headliner",
          "glass",
          "fuel-tank",
          "bumper",
        ],
        score: 0.85,
      },
    ],
    circumstance: "work",
    example: { heard: "the seats were redone in 2012", value: 2012 },
  },
  {
    name: "date in the papers",
    component: "title",
    part: "history",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: withYear,
    cues: [
      {
        zones: ["documents"],
        // Two figures alone may be anything: a speed, a bore, a share.
        said: /\d{4}|nineteen|two thousand|twenty |[a-z]{3,} (?:of )?'?\d|'\d\d|\b(?:january|february|march|april|may|june|july|august|september|october|november|december)\b/,
        unless: new RegExp(`${notYear.source}|warranty|until|till|runs to|expires|good through`),
        score: 0.7,
      },
      {
        zones: ["documents"],
        before:
          /\b(?:in|since|from|of|to|dated|around|about|back in|year|summer|winter|spring|fall|autumn|for|till then|during|says|and|the)$/,
        unless: new RegExp(
          `${notYear.source}|warranty|until|till|runs to|expires|good through|\\btemperature|\\bdegrees|\\bspeed|\\bmph\\b|percent|# in\\b|\\bin an? #|# (?:odd|across|thousand|out)\\b|\\bgear\\b|\\bmile an hour`,
        ),
        score: 0.7,
      },
      {
        before: /\b(?:back to|report|mots?|stamp|stamps|receipt|bill|invoice|history|paper|dated)\b[^.]{0,50}$/,
        unless: notYear,
        score: 0.8,
      },
      {
        before: new RegExp(`\\b(?:${names})(?: of)?$`),
        unless: new RegExp(`${notYear.source}|warranty|until|till|runs to|expires|good through`),
        score: 0.75,
      },
    ],
    circumstance: "history",
    example: { heard: "there's MOTs going back to 1978", value: 1978 },
  },
  {
    name: "date of the exhaust or another part, in passing",
    component: "topic",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      {
        after: /^(?:that's|that was|that is) (?:the |when )/,
        about: ["electrical", "exhaust", "seats", "engine", "paint", "top", "carpet", "brakes", "transmission", "suspension", "cooling"],
        reach: "sentence",
        score: 1.5,
      },
      {
        about: [
          "exhaust",
          "seats",
          "engine",
          "paint",
          "top",
          "carpet",
          "body",
          "electrical",
          "transmission",
          "air-conditioning",
          "audio",
          "glass",
          "cooling",
          "suspension",
          "fuel-tank",
        ],
        reach: "sentence",
        unless: /\bwarranty\b|# pence|\b(?:would|could) be an? #|\bdollars|\bout of a\b|\boff of? an?\b|\bmiles\b/,
        score: 0.6,
      },
    ],
    value: (reading, said) =>
      /^(?:'?\d\d|\d{4}|(?:19|20)\d\d|nineteen .+|twenty .+|two thousand.*)$/.test(said) ? reading.value : undefined,
    circumstance: "work",
    example: { heard: "the exhaust is stainless, 2012", value: 2012 },
  },
] satisfies readonly Slot[];
