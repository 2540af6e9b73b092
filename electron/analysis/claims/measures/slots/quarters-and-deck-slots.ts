import type { Slot } from "../slot.ts";

const volume = ["L", "gal", "cu ft", "pt", "qt"] as const;

/** What is measured of living quarters and of what hangs on their sides, told short or in a second unit. */
export const quartersAndDeckSlots = [
  {
    name: "refrigerator",
    component: "vehicle",
    part: "refrigerator",
    attribute: "size",
    unit: "said",
    need: { units: volume, min: 0.5, max: 300 },
    cues: [
      {
        before:
          /\b(?:refrigerator|fridge|freezer|cool ?box|icebox|ice chest)(?: freezer)?(?:'s| is| holds| it's| takes| at| that's)(?: an?| about)?$/,
        score: 1.75,
      },
      { after: /^(?:of )?(?:refrigerator|fridge|freezer|cool ?box|icebox)\b/, score: 1.75 },
      { before: /\b(?:refrigerator|fridge|freezer|icebox)\b[^.]{0,30}# ?(?:which is|that's|or|so)?$/, score: 1.75 },
    ],
    circumstance: "refrigerator",
    example: { heard: "the refrigerator is three cubic feet", value: 3, zone: "cabin" },
  },
  {
    name: "fresh tank by its name",
    component: "vehicle",
    part: "water tank",
    attribute: "size",
    unit: "said",
    need: { units: ["L", "gal"], min: 2, max: 600 },
    cues: [
      { before: /\bfresh(?: water)?(?: one| tank)?(?:'s| is| holds| takes| at)(?: about)?$/, score: 1.75 },
      { before: /\bfresh(?: water)?(?: one| tank)?(?:'s| is| holds| takes)? # (?:or|which is|that's|so|which makes)$/, score: 1.75 },
    ],
    circumstance: "fresh water",
    example: { heard: "the fresh one is twenty gallons", value: 20, zone: "cargo" },
  },
  {
    name: "gray tank by its name",
    component: "vehicle",
    part: "water tank",
    attribute: "size",
    unit: "said",
    need: { units: ["L", "gal"], min: 2, max: 600 },
    cues: [
      { before: /\b(?:waste|gr[ae]y|black)(?: water)?(?: one| tank)(?:'s| is| holds| takes| at)(?: about)?$/, score: 1.75 },
      {
        before: /\b(?:waste|gr[ae]y|black)(?: water)?(?: one| tank)(?:'s| is| holds| takes)? # (?:or|which is|that's|so|which makes)$/,
        score: 1.75,
      },
    ],
    circumstance: "waste water",
    example: { heard: "the gray one is eighteen gallons", value: 18, zone: "cargo" },
  },
  {
    name: "gray tank in litres, unit left out",
    component: "vehicle",
    part: "water tank",
    attribute: "size",
    unit: "L",
    need: { kinds: ["integer"], units: [null], min: 8, max: 600 },
    cues: [
      {
        before: /\b(?:waste|gr[ae]y|black)(?: water)?(?: one| tank)(?:'s| is| holds| takes)? # (?:or|which is|that's|so|which makes)$/,
        score: 1.6,
      },
    ],
    circumstance: "waste water",
    example: { heard: "the gray one is eighteen gallons, which is sixty eight", value: 68, zone: "cargo" },
  },
  {
    name: "transfer tank",
    component: "fuel-tank",
    part: "transfer tank",
    attribute: "size",
    unit: "said",
    need: { units: ["gal", "L"], min: 15, max: 900 },
    cues: [
      {
        after:
          /^(?:gallon |liter )?(?:steel |aluminum |aluminium |diamond plate )*(?:transfer|bed|nurse|slip|fuel transfer|l ?shaped|auxiliary bed) tank\b/,
        score: 1.75,
      },
      { before: /\b(?:transfer|nurse|slip) tank\b[^#.]{0,30}$/, score: 1.75 },
      { after: /^(?:gallon |liter )?(?:steel |aluminum |aluminium )?tank\b[^.]{0,40}\bpump on it\b/, score: 1.75 },
    ],
    circumstance: "transfer tank",
    example: { heard: "here's that fifty gallon tank, it's aluminum and the pump on it works", value: 50, zone: "cargo" },
  },
  {
    name: "burners of a stove",
    component: "vehicle",
    part: "stove burner",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 6 },
    cues: [
      {
        after:
          /^(?:burner|ring|hob)s? (?:gas |propane |induction |diesel )?(?:stove|hob|cooker|cooktop|range|burner|top)\b|^(?:burners|rings|gas rings)\b/,
        score: 1.5,
      },
    ],
    example: { heard: "a two burner stove", value: 2, zone: "cabin" },
  },
  {
    name: "length of a bed, by its width",
    component: "vehicle",
    part: "bed",
    attribute: "size",
    unit: "in",
    need: { kinds: ["dimensions"], units: [null, "in"] },
    cues: [{ zones: ["cabin"], before: /\b(?:bed|mattress|bunk|berth)\b[^#.]{0,40}$/, score: 1.5 }],
    value: (reading) =>
      reading.parts?.[0] !== undefined && reading.parts[0] >= 24 && reading.parts[0] <= 90 ? reading.parts[0] : undefined,
    example: { heard: "the bed is seventy six inches by fifty four", value: 76, zone: "cabin" },
  },
  {
    name: "outlets of a kind",
    component: "electrical",
    part: "outlet",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 24 },
    cues: [
      { zones: ["cabin", "cargo"], after: /^(?:more )?(?:outlets|sockets|receptacles|plug sockets|power points)\b/, score: 1.35 },
      {
        zones: ["cabin", "cargo"],
        before: /\b(?:outlets?|sockets?)\b.{0,50}\band$/,
        after: /^(?:of the|on the|at|more of the) /,
        score: 1.4,
      },
    ],
    example: { heard: "there are three outlets on that", value: 3, zone: "cabin" },
  },
  {
    name: "fans in a roof",
    component: "top",
    part: "fan",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 4 },
    cues: [
      { zones: ["roof"], after: /^(?:roof |vent |extractor |ceiling )?(?:fans?|vents?|skylights?|roof vents?|hatch(?:es)?)\b/, score: 1.2 },
    ],
    example: { heard: "two solar panels and one fan", value: 1, zone: "roof" },
  },
  {
    name: "awning",
    component: "trim",
    part: "awning",
    attribute: "size",
    unit: "said",
    need: { units: ["ft", "in", "mm"], min: 4, max: 7000 },
    cues: [
      { before: /\bawning(?:'s| is| it's)?(?: an?| about)?$/, score: 1.5 },
      { after: /^(?:foot |feet )?(?:roll ?out |wind ?out |side |bag )?awning\b/, score: 1.5 },
      { before: /\bawning\b[^.]{0,50}\b(?:and it is|it's|it is|that's|and)$/, score: 1.4 },
    ],
    example: { heard: "the awning is ten feet", value: 10, zone: "passenger-side" },
  },
  {
    name: "brackets of an awning",
    component: "trim",
    part: "awning bracket",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 8 },
    cues: [{ before: /\bawning\b.{0,110}$/, after: /^(?:brackets|arms|legs|repairs?|patch(?:es)?)\b/, score: 1.3 }],
    example: { heard: "the awning's canvas is good. three brackets hold it", value: 3, zone: "passenger-side" },
  },
  {
    name: "step bars",
    component: "trim",
    part: "step bar",
    attribute: "size",
    unit: "said",
    need: { units: ["in", "mm"], min: 2, max: 200 },
    cues: [
      {
        before: /\b(?:step bars?|nerf bars?|side steps?|side bars?|running boards?|rock sliders?)(?:'s| are| is| they're)?(?: the)?$/,
        score: 1.5,
      },
      { after: /^(?:inch )?(?:oval |round |chrome |black |drop )*(?:step bars?|nerf bars?|side steps?|rock sliders?)\b/, score: 1.5 },
    ],
    example: { heard: "step bars, six inch oval", value: 6, zone: "driver-side" },
  },
] satisfies readonly Slot[];
