import type { Slot } from "../slot.ts";
import { partsWorkedOn } from "./parts-worked-on.ts";

/** Load space, paint told with its unit last, tears and runs, work told before its part. */
export const roomTalkSlots = [
  {
    name: "load space, from one end to the other",
    component: "cargo-floor",
    part: "load space",
    attribute: "size",
    unit: "said",
    need: { units: ["ft", "in", "mm"], min: 1, max: 5000 },
    cues: [
      {
        after:
          /^(?:foot |feet |inches )?from (?:here|the (?:tailgate|bulkhead|bumper|back|sill|doors?|lip|front)) to (?:the )?(?:\w+ )?(?:seats?|seat backs?|headboard|bulkhead|cab|tailgate|doors?|back|end)\b/,
        zones: ["cargo", "rear"],
        score: 1.35,
      },
    ],
    example: { heard: "six foot from here to the front seats with the bench folded", value: 6, zone: "cargo" },
  },
  {
    name: "load space between the arches",
    component: "cargo-floor",
    part: "load space",
    attribute: "width",
    unit: "said",
    need: { units: ["ft"], min: 1, max: 9.99 },
    cues: [
      {
        after:
          /^(?:foot |feet |inches )?(?:wide )?between (?:the )?(?:wheel )?(?:arches|wells|wheelwells|housings|houses|humps|boxes|tubs|them)\b/,
        zones: ["cargo", "rear"],
        score: 1.45,
      },
    ],
    example: { heard: "and three foot ten between the arches", value: 3.833333, zone: "cargo" },
  },
  {
    name: "paint in microns, unit told last",
    component: "paint",
    part: null,
    attribute: "thickness",
    unit: "µm",
    need: { kinds: ["integer"], units: [null], min: 40, max: 1500 },
    unless: /\bmiles\b|\bdollars\b|\bpsi\b|\bquid\b/,
    cues: [
      { after: /^[^.]{0,90}\b(?:microns|mikes)\b/, about: ["body", "paint"], reach: "sentence", score: 1.3 },
      { before: /\bin microns\b[^.]{0,60}$/, about: ["body", "paint"], reach: "sentence", score: 1.1 },
    ],
    example: {
      heard: "the paint on the door's a hundred and ten, and a hundred and twenty on the quarter, microns",
      value: 110,
      zone: "rear",
    },
  },
  {
    name: "paint in thousandths of an inch",
    component: "paint",
    part: null,
    attribute: "thickness",
    unit: "mil",
    need: { kinds: ["measure"], units: ["in"], min: 0.001, max: 0.06 },
    cues: [
      { said: /\bthou(?:sandths)?\b/, about: ["paint"], score: 1.2 },
      { said: /\bthou(?:sandths)?\b/, after: /^(?:in old money|of paint|on the paint)\b/, score: 1.3 },
    ],
    value: (reading) => (typeof reading.value === "number" ? Math.round(reading.value * 1e6) / 1000 : undefined),
    example: { heard: "the paint's six thou on the nose", value: 6, zone: "front" },
  },
  {
    name: "length of a mark in a part named",
    component: "topic",
    part: "mark",
    attribute: "size",
    unit: "said",
    need: { units: ["in", "mm", "ft"], min: 0.05, max: 900 },
    cues: [
      {
        before: /\b(?:tear|hole|rip|split|run|sag|burn|stain|scuff|rust spot|patch)\b[^.#]{0,40}$/,
        about: ["paint", "carpet", "headliner", "top", "glass", "floors", "dash", "trim", "lights"],
        reach: "sentence",
        unless: /\bexhaust\b|\bwheel\b|\bdrain\b/,
        score: 1.3,
      },
    ],
    circumstance: "length of a mark",
    example: { heard: "there's a run in the paint about an inch long", value: 1, zone: "front" },
  },
  {
    name: "date of work, told before its part",
    component: "topic",
    part: "work",
    attribute: "date",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2039 },
    unless: /\bmodel\b|\bfrom an?\b|\boff an?\b|\bout of\b|\bregist\w*|\bbuilt\b|\bplate\b|\btitle\b/,
    cues: [
      {
        before: /(?:^|\.)$/,
        after: /^(?:an?|new|the) /,
        said: /\d{4}|^(?:nineteen|twenty) |two thousand/,
        about: partsWorkedOn,
        beside: { after: 2 },
        zones: ["underside", "engine-bay", "cabin", "front", "rear", "driver-side", "passenger-side"],
        score: 1.7,
      },
      {
        before: /(?:^|\.)$/,
        after: /^(?:\w+ ){0,3}(?:out|rebuilt|done|replaced|changed|resprayed|retrimmed|reground|overhauled)\b/,
        said: /\d{4}|^(?:nineteen|twenty) |two thousand/,
        about: partsWorkedOn,
        beside: { after: 3 },
        score: 1.7,
      },
      {
        before: /\b(?:the|these|are the|his|their)$/,
        after:
          /^(?:floors?|respray|paint(?: job)?|carpets?|interior|tires|exhaust|clutch|gearbox|rebuild|engine rebuild|retrim|upholstery)\b/,
        about: partsWorkedOn,
        beside: { after: 1 },
        score: 1.6,
      },
    ],
    circumstance: "work",
    example: { heard: "these are the 2011 floors and they're sound", value: 2011, zone: "underside" },
  },
] satisfies readonly Slot[];
