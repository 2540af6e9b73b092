import type { Slot } from "../slot.ts";
import { notYear, withYear } from "./date-words.ts";
import { partsWorkedOn } from "./parts-worked-on.ts";

/** Dates of papers, of ownership and of the vehicle, beside which a part is named for another reason. */
const ofTheVehicle =
  /\btitled?\b|\bregist\w*|\bbought\b|\bsold\b|\bmots?\b|\bwarranty\b|\bstamps?\b|\bstamped\b|\bowned\b|\bowners?\b|\bkeepers?\b|\bbuilt\b|\bbuild\b|\bsince\b|\bmade in\b|\bmodel\b|\bnumbers?\b|\bcertificate\b|\bcame home\b|\bphotos?\b|\bwon\b|\bshow\b/;

/** When a part was put on or put right, told with no more than its name beside the year. */
export const partDateSlots = [
  {
    name: "date in a list of bills",
    component: "topic",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    unless: new RegExp(`${ofTheVehicle.source}|\\bdollars? #|\\bmiles\\b #`),
    value: (reading, said) =>
      /\d/.test(String(reading.value)) &&
      /\d{4}|nineteen|two thousand|twenty |[a-z]{3,} (?:of )?'?\d|'\d\d|\b(?:january|february|march|april|may|june|july|august|september|october|november|december)\b/.test(
        said,
      )
        ? reading.value
        : undefined,
    cues: [
      { about: partsWorkedOn, beside: { before: 4 }, zones: ["documents"], score: 0.95 },
      {
        about: partsWorkedOn,
        beside: { after: 4 },
        before: /(?:^|\.|\b(?:bills?|then|and|next|here|receipts?|there's|#))$/,
        zones: ["documents"],
        score: 1.5,
      },
      { about: partsWorkedOn, beside: { after: 3 }, zones: ["documents"], score: 1.25 },
    ],
    circumstance: "work",
    example: { heard: "Bills. 2016, exhaust.", value: 2016, zone: "documents" },
  },
  {
    name: "date of a repaint",
    component: "paint",
    part: null,
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: withYear,
    unless:
      /\bliner\b|\bbed\b|\bbox\b|\bseats?\b|\bwheels?\b|\brims?\b|\balloys?\b|\bcalipers?\b|\bcallipers?\b|\bframe\b|\bchassis\b|\bengine\b|\bblock\b|\bbumpers?\b|\bgrille\b|\bdash\b|\bdollars\b|\bmiles\b|\bfloors?\b|\b(?:panel|fender|wing|door|quarter|hood|bonnet|tailgate|lid|roof)s?\b|\bpainter\b|\b(?:bought|sold|registered) /,
    cues: [
      {
        before:
          /\b(?:painted|repainted|resprayed|respray|re spray|repaint|shot|sprayed|refinished|paint job|blown over|paint(?:'s| is| was)?(?: from| done| new)?)\b[^.#]{0,40}$/,
        score: 1.06,
      },
      { after: /^(?:respray|re spray|repaint|paint job|refinish)\b/, score: 1.1 },
    ],
    circumstance: "work",
    example: { heard: "she was painted in ninety four", value: 1994, zone: "front" },
  },
  {
    name: "date a named part is from",
    component: "topic",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: withYear,
    unless: new RegExp(
      `${notYear.source}|\\bout of an?\\b|\\boff of? an?\\b|\\bbuilt\\b|\\bregist\\w*|\\bbought\\b|\\bsold\\b|\\bmodel\\b|\\bnumber\\b|\\bbrak(?:ed|ing)\\b|\\bstopped\\b`,
    ),
    cues: [
      {
        before:
          /\b(?:dated|dates from|dates back to|is from|are from|'s from|from|went (?:on|in) in|put (?:on|in)(?: new)? in|came in|done in|fitted in|since)(?: about| around| back in)?$/,
        about: partsWorkedOn,
        beside: { before: 7 },
        score: 0.98,
      },
      { before: /\bnew(?: \w+){0,3}(?: in| for| from|,)?$/, about: partsWorkedOn, beside: { before: 4 }, score: 1.05 },
      {
        before: /\b(?:a|the|this|his)$/,
        after: /^(?:\w+ )?(?:\w+ )(?:repair|replacement|job|rebuild|respray|unit|panel|skin|graft|weld|patch)\b/,
        about: partsWorkedOn,
        beside: { after: 2 },
        score: 1.6,
      },
      {
        about: partsWorkedOn,
        beside: { before: 0 },
        before: /\b(?!(?:engine|motor|frame|rails|grille|dash|block|title)$)\w+$/,
        after: /^(?:$|\.|and\b|so\b|but\b)/,
        said: /^(?:\d{4}|nineteen .+|twenty .+|two thousand.*)$/,
        score: 0.75,
      },
    ],
    circumstance: "work",
    example: { heard: "the belts are dated 1987", value: 1987, zone: "cabin" },
  },
  {
    name: "date a part was done in",
    component: "topic",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["year", "date"], units: [null] },
    value: withYear,
    unless: new RegExp(`${ofTheVehicle.source}|${notYear.source}|\\bborn\\b|\\bplate\\b|\\bextra\\b|\\boption\\w*|\\bnew price\\b`),
    cues: [
      {
        before: /\b(?:in|back in|during)$/,
        said: /\d{4}|nineteen|two thousand|twenty |\b(?:january|february|march|april|may|june|july|august|september|october|november|december)\b/,
        about: partsWorkedOn,
        beside: { before: 5 },
        score: 0.78,
      },
    ],
    circumstance: "work",
    example: { heard: "discs and pads all round in March 2021", value: "2021-03", zone: "driver-side" },
  },
  {
    name: "year of what a part came off, told last",
    component: "topic",
    part: "donor",
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      {
        before: /\b(?:out of|off of|off|from|came from|robbed from|robbed off)(?: an?)$/,
        after: /^(?:$|\.|and\b|so\b|but\b|if\b|i\b)/,
        about: partsWorkedOn,
        beside: { before: 7 },
        score: 1.3,
      },
    ],
    circumstance: "donor vehicle",
    example: { heard: "the dash is out of a 1939", value: 1939, zone: "cabin" },
  },
] satisfies readonly Slot[];
