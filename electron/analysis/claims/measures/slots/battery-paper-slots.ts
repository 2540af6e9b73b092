import type { Slot } from "../slot.ts";

/** Words by which a share, a date or a term is the traction battery's health and its cover. */
const health = "battery health|health figure|state of health|s o h|soh|pack health|health of the (?:battery|pack)|health";
const cover = "warranty|warranted|guarantee|guaranteed|covered|cover";

/** What a certificate, a label and a warranty say of the traction battery. A share is of the capacity it had new; terms are common practice. */
export const batteryPaperSlots = [
  {
    name: "battery health in percent",
    component: "electrical",
    part: "battery health",
    attribute: "count",
    unit: null,
    need: { kinds: ["percent"], units: [null], min: 40, max: 100 },
    cues: [
      {
        before: new RegExp(`\\b(?:${health})\\b[^.#]{0,40}$`),
        unless: /\bbelow\b|\bunder\b|\bdrops?\b|\bguarante|\bat least\b/,
        score: 1.4,
      },
      {
        after: /^(?:\w+ )?(?:battery |pack )?(?:health|state of health|soh)\b/,
        unless: /\bbelow\b|\bunder\b|\bdrops?\b|\bguarante|\bat least\b/,
        score: 1.4,
      },
    ],
    example: { heard: "the battery health print out says ninety seven percent", value: 97, zone: "documents" },
  },
  {
    name: "battery health at another time",
    component: "electrical",
    part: "battery health",
    attribute: "count",
    unit: null,
    need: { kinds: ["percent", "integer"], units: [null], min: 40, max: 100 },
    cues: [
      {
        before: new RegExp(`\\b(?:${health})\\b[^.]{0,14}#[^.#]{0,16}\\b(?:it was|was|down from|from|against|and)$`),
        after: /^(?:percent )?(?:in|last|when|a year|at|back|new|on|this time)\b/,
        unless: /\bbelow\b|\bunder\b|\bdrops?\b|\bmiles?\b/,
        score: 1.4,
      },
    ],
    circumstance: "at another time",
    example: { heard: "battery health 93 percent today, it was ninety four in March", value: 94, zone: "documents" },
  },
  {
    name: "years a battery's warranty runs",
    component: "electrical",
    part: "traction battery",
    attribute: "count",
    unit: null,
    need: { kinds: ["duration"], units: [null], min: 2, max: 15 },
    cues: [
      {
        said: /years?$/,
        before: new RegExp(`\\b(?:${cover})\\b.{0,50}\\b(?:battery|pack)\\b[^.#]{0,30}$`),
        score: 1.4,
      },
      {
        said: /years?$/,
        before: new RegExp(
          `\\b(?:battery|pack)(?:'s|s)? (?:${cover})\\b[^.#]{0,30}$|\\b(?:battery|pack)(?:'s| is) (?:${cover})\\b[^.#]{0,30}$`,
        ),
        score: 1.4,
      },
      { said: /years?$/, after: /^(?:or|and) (?:up to )?#/, about: ["electrical/traction battery"], reach: "sentence", score: 1.2 },
    ],
    circumstance: "warranty",
    example: { heard: "Warranty. On the battery it's eight years or a hundred thousand miles.", value: 8, zone: "documents" },
  },
  {
    name: "end of a battery's warranty",
    component: "electrical",
    part: "traction battery",
    attribute: "date",
    unit: null,
    need: { kinds: ["date", "year"], units: [null] },
    cues: [
      {
        before:
          /\b(?:battery|pack)\b[^.]{0,40}\b(?:years?|#)\b[^.]{0,60}\b(?:so|until|till|to|through|that's|that takes you to|runs to|ends)$/,
        unless: /\bservice|\bmot\b|\btax\b/,
        score: 1.4,
      },
    ],
    circumstance: "warranty",
    example: {
      heard: "Warranty. On the battery it's eight years or a hundred thousand miles, whichever comes first, so March 2029.",
      value: "2029-03",
      zone: "documents",
    },
  },
  {
    name: "date on a battery's label",
    component: "electrical",
    part: "traction battery",
    attribute: "date",
    unit: null,
    need: { kinds: ["date", "year", "date-code"], units: [null] },
    cues: [
      {
        before:
          /\b(?:label|sticker|plate|tag|stamp|decal)(?: on (?:it|the (?:pack|battery|case)|there))?(?:'s| is| it's| says| reads| dated| has| it is)*(?: dated)?(?: about)?$/,
        about: ["electrical/traction battery", "electrical/battery"],
        unless: /\bvin\b|\btire|\bpaint|\bdoor/,
        score: 1.4,
      },
    ],
    circumstance: "date of manufacture",
    example: { heard: "That's the traction battery, and it's dry. The label on it's November 2020.", value: "2020-11", zone: "underside" },
  },
] satisfies readonly Slot[];
