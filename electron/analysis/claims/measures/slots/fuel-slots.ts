import type { Slot } from "../slot.ts";

/** Engines that are named with their carburetor ("a 350 four barrel"): no flow, unless a carburetor is named (common practice). */
const engineByBarrel =
  /# (?:350|three fifty|400|four hundred|390|three ninety|360|three sixty|440|four forty|460|four sixty|455|four fifty five|340|three forty) # (?!(?:\w+ ){0,2}carb)/;

/** Fuel system and fuel tank. */
export const fuelSlots = [
  {
    name: "carburetor flow",
    component: "fuel-system",
    part: "carburetor",
    attribute: "flow",
    unit: "cfm",
    need: { kinds: ["integer", "measure"], units: [null, "cfm"], min: 150, max: 1400 },
    cues: [
      { after: /^(?:four|4|two|2)? ?barrel\b/, unless: engineByBarrel, score: 1.25 },
      { after: /^(?:cfm )?(?:\w+ ){0,1}?(?:carb|carbs|carburetor|double pumper)\b/, score: 1.25 },
      {
        about: ["fuel-system/carburetor"],
        reach: "recent",
        before: /\b(?:it's|a|an|the|that's|is|carb|carbs|carburetor)(?: a| an| the)?$/,
        unless: /\bdollars|\bmiles|\brpm/,
        score: 1.05,
      },
      { after: /^cfm\b/, score: 1.1 },
      {
        before: /\bbarrel\b(?:(?: it's| the| a| an| is)*(?: little| big| small)?)$/,
        unless: /\bdollars|\bmiles|\brpm|\bhorse|\bcubic/,
        score: 1.15,
      },
      {
        after:
          /^(?:on|with|over) (?:an? |the )?(?:aluminum |aluminium |cast |iron |high rise |dual plane |single plane )*(?:intake|manifold|dual plane|single plane|high rise)\b/,
        unless: /\bdollars|\bmiles|\brpm|\bhorse/,
        score: 1.25,
      },
    ],
    value: (reading, said) => {
      if (typeof reading.value !== "number" || /[a-z\d]s$/.test(said)) return undefined;
      // "Six hundred four barrel" runs the barrels into the flow.
      if (reading.value % 50 === 4 && /\bfour$/.test(said)) return reading.value - 4;
      return reading.value % 5 === 0 ? reading.value : undefined;
    },
    example: { heard: "the carb's a 650", value: 650 },
  },
  {
    name: "carburetor flow with its unit",
    component: "fuel-system",
    part: "carburetor",
    attribute: "flow",
    unit: "cfm",
    need: { units: ["cfm"], min: 100, max: 1600 },
    cues: [{ score: 1.2 }],
    example: { heard: "she flows 750 cfm", value: 750 },
  },
  {
    name: "carburetor bore",
    component: "fuel-system",
    part: "carburetor",
    attribute: "diameter",
    unit: "said",
    need: { units: ["in", "mm"], min: 1, max: 60 },
    value: (reading) =>
      typeof reading.value === "number" && (reading.unit === "in" ? reading.value <= 3 : reading.value >= 20) ? reading.value : undefined,
    cues: [{ about: ["fuel-system/carburetor"], reach: "sentence", score: 1.1 }],
    example: { heard: "a pair of carburetors one and three quarter inch", value: 1.75 },
  },
  {
    name: "fuel tank size",
    component: "fuel-tank",
    part: null,
    attribute: "size",
    unit: "said",
    need: { units: ["gal", "L"], min: 4, max: 160 },
    unless:
      /# (?:a|per) minute\b|\bgallons? (?:a|per) minute\b|\bblue (?:tank|stuff|cap|one|fluid)\b|\b(?:fresh|waste|gray|toilet|def|ad ?blue|fridge|boiler|cassette)\b/,
    cues: [
      { about: ["fuel-tank"], score: 1.3 },
      {
        before: /\b(?:takes|hold|holds|capacity(?: is)?)(?: \w+){0,2}$/,
        unless: /\boil\b|\bradiator|\bcooling|\bcoolant|\bwater\b|\bdef\b|\bad ?blue|\bfeet\b|\bboot\b|\btrunk/,
        score: 0.95,
      },
      { after: /^(?:gallons?|liters?) (?:\w+ )?(?:tank|of (?:fuel|gas|diesel|petrol))\b/, score: 1.2 },
    ],
    carries: true,
    example: { heard: "an aluminum tank sixteen gallon", value: 16 },
  },
  {
    name: "water tank",
    component: "vehicle",
    part: "water tank",
    attribute: "size",
    unit: "said",
    need: { units: ["L", "gal"], min: 2, max: 400 },
    cues: [
      { after: /^(?:liters? |gallons? )?(?:of )?(?:fresh|clean|drinking)\b/, score: 1.35 },
      { before: /\b(?:fresh|clean|drinking)(?: water)?(?: tank)?(?:'s| is| holds)?$/, score: 1.3 },
    ],
    circumstance: "fresh water",
    example: { heard: "a fifty litre fresh tank", value: 50 },
  },
  {
    name: "waste tank",
    component: "vehicle",
    part: "water tank",
    attribute: "size",
    unit: "said",
    need: { units: ["L", "gal"], min: 2, max: 400 },
    cues: [
      { after: /^(?:liters? |gallons? )?(?:of )?(?:waste|gray|toilet|cassette)\b/, score: 1.35 },
      { before: /\b(?:waste|gray)(?: water)?(?: tank)?(?:'s| is| holds)?$/, score: 1.3 },
    ],
    circumstance: "waste water",
    example: { heard: "and a thirty litre waste", value: 30 },
  },
  {
    name: "exhaust fluid tank",
    component: "fuel-tank",
    part: "exhaust fluid tank",
    attribute: "size",
    unit: "said",
    need: { units: ["L", "gal"], min: 1, max: 60 },
    cues: [
      { after: /^(?:gallons? |liters? )?(?:of )?(?:def|ad ?blue|diesel exhaust fluid)\b/, score: 1.4 },
      { before: /\b(?:def|ad ?blue)(?: tank)?(?:'s| is| holds| takes)?(?: about)?$/, score: 1.4 },
    ],
    circumstance: "exhaust fluid",
    example: { heard: "the def tank's five gallons", value: 5 },
  },
  {
    name: "fuel that is in the tank",
    component: "fuel-tank",
    part: "fuel",
    attribute: "size",
    unit: "gal",
    need: { kinds: ["integer", "measure"], units: [null, "gal", "L"], min: 2, max: 60 },
    cues: [
      {
        before: /\b(?:empty|full|half|quarter|fuel|gas|diesel|tank)\b[^#]{0,50}\b(?:got|put|has|have)(?: about| maybe| like)?$/,
        after: /^(?:gallons? |liters? )?in (?:it|her|there|the tank)\b/,
        about: ["fuel-tank", "dash/gauge"],
        unless: /\bdollars|\bbucks|\bquarts?\b|\boil\b/,
        score: 1.3,
      },
    ],
    circumstance: "fuel in it now",
    example: { heard: "the tank gauge was saying half when it's got eight in it", value: 8, zone: "cabin" },
  },
  {
    name: "fuel tank size, unit left out",
    component: "fuel-tank",
    part: null,
    attribute: "size",
    unit: "gal",
    need: { kinds: ["integer", "decimal"], units: [null], min: 5, max: 100 },
    cues: [
      { about: ["fuel-tank"], reach: "sentence", before: /\b(?:that was|it's a|holds|takes|it held|capacity is)$/, score: 0.9 },
      {
        before: /\btanks?(?:'s| is| are| holds?| takes)(?: an?| about)?$/,
        unless: /# (?:percent|full|inch|gauge)|\byears?\b|\bnew\b/,
        score: 1.15,
      },
      { after: /^(?:altogether|all together|in all|combined)\b/, about: ["fuel-tank"], reach: "recent", score: 0.9 },
      { after: /^imperial\b/, about: ["fuel-tank"], reach: "recent", score: 1.25 },
      { after: /^(?:of our|us|imperial) gallons\b/, about: ["fuel-tank"], reach: "recent", score: 1.2 },
    ],
    example: { heard: "the stock tank hung down and that was fourteen", value: 14 },
  },
] satisfies readonly Slot[];
