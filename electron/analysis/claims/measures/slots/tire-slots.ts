import type { Slot } from "../slot.ts";
import { rolling, tiresInView, whenPlural } from "./rolling.ts";

/** What a new tire has or the law asks for, and not what this one has. */
const notThisTread =
  /\b(?:new|brand new) (?:ones|tires|one)(?: of (?:these|them|those))? (?:come|comes|have|has|start|are|is|be)\b|\b(?:legal|law|minimum|wear bars?)\b[^#]*#[^#]*#|# [^#]* # (?:\S+ ){0,2}(?:the )?(?:legal(?! is| limit is|'s)|by law|minimum|wear bars?)\b/;

/** Nor the section of a size: "11 R 22". */
const notThisTreadNorSize = new RegExp(`${notThisTread.source}|# r\\b`);

/** Tires: sizes, dates, tread and pressures. The spare takes them too, where the talk is about it. */
export const tireSlots = [
  {
    name: "tire size",
    component: "tire",
    part: null,
    attribute: "size",
    unit: null,
    need: { kinds: ["tire-size"], units: [null] },
    // "Four by four a hundred eighteen thousand" is a drive and a mileage.
    cues: [
      { about: rolling, said: /^(?!.*\bthousand\b)/, score: 1.3 },
      // Where no tire is in view, a run of figures that nobody called a tire is a mileage or a code.
      { said: /^(?!.*\bthousand\b)/, zones: tiresInView, score: 1.3 },
      { said: /\/|\dr\d/i, score: 1.3 },
    ],
    example: { heard: "the rears are 235/60R15", value: "235/60R15", position: "rear" },
  },
  {
    name: "tire date code",
    component: "tire",
    part: null,
    attribute: "date",
    unit: null,
    need: { kinds: ["date-code"], units: [null] },
    unless: /# (?:section|profile|series|wide|psi|pounds|millimeters)\b/,
    cues: [
      { before: /\b(?:date codes?|dot|dates?|code|codes|stamped|week|built|made)\b[^.#]{0,50}$/, about: rolling, score: 1.4 },
      { before: /\b(?:date codes?|dot)\b[^.#]{0,50}$/, score: 1.3 },
      // "I'll read you the code, because people ask. 2219."
      { before: /\b(?:codes?|dot|dates?)\b[^.#]{0,40} \.$/, after: /^(?:\.|$)/, about: rolling, score: 1.1 },
      { before: /\b(?:week|dated)\b[^.#]{0,30}$/, about: rolling, score: 1.2 },
      { after: /^[^.#]{0,30}\bweek\b/, score: 1.2 },
      {
        after: /^(?:is |was )?(?:on|for|as) the (?:dates?|codes?|dot)\b/,
        zones: ["driver-side", "passenger-side", "cargo", "rear", "front"],
        score: 1.4,
      },
      { said: /\bweek\b/, unless: /\bwarranty|\bservice/, score: 1.2 },
      { about: rolling, unless: /dollar|bucks|price|miles|asking|\b(?:with|on|got) (?:the|an?) # /, score: 0.8 },
    ],
    example: { heard: "the date code on the tires is 2219", value: "2219" },
  },
  {
    name: "tread depth",
    component: "tire",
    part: "tread",
    attribute: "depth",
    unit: "said",
    need: { units: ["32nds"], min: 0.5, max: 20 },
    unless: notThisTread,
    cues: [{ score: 1.3 }],
    carries: true,
    example: { heard: "eight thirty seconds on the fronts", value: 8, position: "front" },
  },
  {
    name: "tread depth, unit left out",
    component: "tire",
    part: "tread",
    attribute: "depth",
    unit: "said",
    need: { kinds: ["integer", "fraction", "decimal"], units: [null], min: 2, max: 14 },
    unless: notThisTreadNorSize,
    cues: [
      {
        before:
          /\b(?:fronts?|rears?|backs?|duals)(?: ones?| tires?)?(?:'s|'re|'ve| is| are| were| has| have)?(?: at| about| on| around| got| like| down to)*$/,
        about: ["tire"],
        unless: /\b(?:lug|bolt|psi|pressure|inch|gauge|pads?)\b/,
        score: 0.95,
      },
      {
        after: /^on (?:the |these |those |your )?(?:fronts?|backs?|rears?)\b/,
        about: ["tire"],
        unless: /\b(?:lug|bolt|psi|pressure|inch)\b/,
        score: 0.9,
      },
      { before: /\btread\b[^.#]{0,30}\b(?:at|is|about|got|around)$/, score: 0.95 },
    ],
    carries: true,
    example: { heard: "tires on this side nine on the front", value: 9, position: "front" },
  },
  {
    name: "tread depth in millimetres",
    component: "tire",
    part: "tread",
    attribute: "depth",
    unit: "mm",
    need: { units: ["mm"], min: 1, max: 18 },
    unless: notThisTread,
    cues: [
      {
        before:
          /\b(?:near ?side|off ?side|front|rear|fronts|rears|backs)(?: one| ones)?(?:'s| has| have|'s got| got| is| are)?(?: at| down to| about| around| got)*$/,
        unless: /\bpads?\b|\brotors?\b|\bdiscs?\b/,
        zones: ["driver-side", "passenger-side"],
        score: 0.85,
      },
      { about: ["tire", "spare"], unless: /\bpads?\b|\brotors?\b|\bdiscs?\b|\bwheel bolts?\b/, score: 1.1 },
      { before: /\btread\b[^.#]{0,60}$/, score: 1.3 },
      { after: /^(?:of |left on the |on the )?tread\b/, score: 1.3 },
    ],
    carries: true,
    example: { heard: "plenty of tread on the tires about six millimeters", value: 6 },
  },
  {
    name: "tire pressure",
    component: "tire",
    part: null,
    attribute: "pressure",
    unit: "psi",
    unless: /\bmax(?:imum)?\b/,
    need: { units: ["psi", "lb", "GBP", null], min: 15, max: 130 },
    cues: [
      {
        said: /\b(?:psi|pounds)\b/,
        after: /^in (?:the |both )?(?:fronts?|backs?|rears?|duals)\b/,
        about: ["tire", "wheel"],
        unless: /\boil\b|\bboost\b|\bair (?:system|tank|brakes)\b|\bload\b|\bdollars|\bbags?\b/,
        score: 1.1,
      },
      {
        said: /\b(?:psi|pounds)\b/,
        after: /^in (?:the )?(?:fronts?|backs?|rears?|duals)\b/,
        zones: ["driver-side", "passenger-side"],
        unless: /\boil\b|\bboost\b|\bair (?:system|tank|brakes)\b|\bload\b|\bdollars|\bbags?\b/,
        score: 0.85,
      },
      {
        said: /\b(?:psi|pounds)\b/,
        before: /\b(?:fronts?|rears?|backs?|near ?side|off ?side)(?: one)?(?:'s| is| are)?(?: at| about| on)*$/,
        zones: ["driver-side", "passenger-side"],
        score: 0.9,
      },
      {
        said: /\b(?:psi|pounds)\b/,
        about: ["tire", "spare"],
        unless: /\boil\b|\bboost\b|\bair (?:system|tank|brakes)\b|\bfoot pounds|\bload\b|\bdollars/,
        score: 0.95,
      },
      {
        before: /\bi (?:run|ran|keep|kept|air) (?:it|them|her|mine|these)(?: up)?(?: at| on| to)?(?: about| around)?$/,
        after: /^(?:psi |pounds )?(?:in|all|front|cold|at)\b/,
        score: 0.95,
      },
      {
        before: /\b(?:run|runs|running|ran|aired|air|inflated|pressures?|pumped|set at|go up to|they're at|told us go)\b[^.#]{0,40}$/,
        about: ["tire", "spare"],
        unless: /percent|\b(?:gallon|highway|town)\b/,
        score: 1.15,
      },
      { before: /\b(?:aired (?:them |it |up )*|tire pressures? (?:is |are |at )*|cold pressure is )(?:up )?(?:to |at )?$/, score: 1.2 },
      {
        after: /^(?:pounds )?(?:of air|all round|all around|cold|in it|in them|in each|in the (?:front|back|rear))\b/,
        about: ["tire", "spare"],
        reach: "sentence",
        score: 1.0,
      },
    ],
    carries: true,
    example: { heard: "I run the tires at 28 psi in the front", value: 28, position: "front" },
  },
  {
    name: "tire pressure in bar",
    component: "tire",
    part: null,
    attribute: "pressure",
    unit: "bar",
    need: { units: ["bar"], min: 1, max: 9 },
    cues: [
      { about: ["tire", "spare"], unless: /\boil\b|\bboost\b|\bsway\b|\broll\b/, score: 1.1 },
      { zones: ["driver-side", "passenger-side", "closing", "opening", "drive"], unless: /\boil\b|\bboost\b|\bfuel\b/, score: 0.5 },
    ],
    carries: true,
    example: { heard: "the tires sit at 2.2 bar", value: 2.2 },
  },
  {
    name: "tire pressure in bar, unit asked before",
    component: "tire",
    part: null,
    attribute: "pressure",
    unit: "bar",
    need: { units: [null], min: 1.2, max: 9 },
    cues: [
      { before: /\bin bar\b[^.#]{0,20}(?:\. )?[^.#]{0,25}$/, about: ["tire"], score: 1.2 },
      { before: /\bin bar\b[^.#]{0,25}# (?:in front |up front |front )?and$/, about: ["tire"], score: 1.2 },
    ],
    example: { heard: "what are the tires in bar it's just under two", value: 2 },
  },
  {
    name: "tires that match",
    component: "tire",
    part: null,
    attribute: "count",
    unit: null,
    position: "all",
    need: { kinds: ["integer"], units: [null], min: 3, max: 8 },
    cues: [
      {
        before: /\ball(?: of)?(?: the)?$/,
        after: /^(?:of them )?(?:are )?(?:all )?(?:match|matching|the same|same|identical|alike)\b/,
        about: ["tire"],
        score: 1.2,
      },
      { before: /\b(?:set of|all)$/, after: /^(?:\w+ )?tires\b/, unless: /\bcheap|another\b/, score: 0.9 },
    ],
    example: { heard: "the tires are good all four match", value: 4 },
  },
  {
    name: "tire width and aspect, rim said before",
    component: "tire",
    part: null,
    attribute: "size",
    unit: null,
    need: { kinds: ["tire-partial"], units: [null] },
    cues: [
      { about: ["wheel", "tire"], score: 1.2 },
      {
        said: /s$/,
        after: /^(?:up front|in front|out back|behind|ahead|(?:on|in|at) (?:the )?(?:fronts?|backs?|rears?)|all round|all around)\b/,
        score: 0.95,
      },
    ],
    value: (reading) => (reading.parts && reading.parts.length > 1 ? reading.value : undefined),
    example: { heard: "the wheels are eighteens with 275 35s all round", value: "275/35R18", position: "all" },
  },
  {
    name: "tire width alone",
    component: "tire",
    part: null,
    attribute: "width",
    unit: "mm",
    need: { kinds: ["integer", "measure", "tire-partial"], units: [null, "mm"], min: 125, max: 355 },
    cues: [
      {
        before: /\b(?:they're|it's|on|with|got|and|wears|wearing|running|runs|take|takes|of|are|the)(?: the| a set of| big)?$/,
        after:
          /^(?:up front|in front|ahead|in the front|on the front|behind|out back|in the back|on the back|at the back|all round|all around|front|rear)\b/,
        about: ["tire", "wheel"],
        score: 0.95,
      },
      { about: ["tire"], after: /^(?:wide|section|wides?)\b/, score: 1.1 },
    ],
    value: (reading, said) =>
      typeof reading.value === "number" && reading.value % 5 === 0
        ? (whenPlural(reading.value, said) ?? (reading.unit === "mm" ? reading.value : undefined))
        : undefined,
    carries: true,
    example: { heard: "the tires are two thirty fives ahead", value: 235, position: "front" },
  },
] satisfies readonly Slot[];
