import type { Slot } from "../slot.ts";

/** Sizes and ratios inside engines, axles and brakes. */
export const mechanicalSizeSlots = [
  {
    name: "drum diameter by width",
    component: "brakes",
    part: "drum",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["dimensions"], units: [null, "in"] },
    cues: [
      { about: ["brakes/drum", "brakes/shoes"], reach: "sentence", score: 1.25 },
      { after: /^(?:inch )?(?:drums?|shoes)\b/, score: 1.3 },
    ],
    value: (reading) => {
      const [first, second] = reading.parts ?? [];
      if (first === undefined || second === undefined) return undefined;
      const [width, diameter] = first < second ? [first, second] : [second, first];
      return diameter >= 7 && diameter <= 16 && width >= 1 && width <= 6 ? diameter : undefined;
    },
    example: { heard: "the drums are eleven by two", value: 11 },
  },
  {
    name: "cylinder bore",
    component: "engine",
    part: "bore",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["fraction", "decimal", "measure", "ratio", "integer"], units: [null, "in"], min: 2, max: 6 },
    cues: [
      { after: /^(?:inch )?bore\b(?! exhaust)/, score: 1.3 },
      { before: /\bbore(?:'s| is| of)(?: an?)?$/, unless: /\bexhaust|\bpipe/, score: 1.3 },
      { before: /\bbored(?: out)? to(?: an?)?$/, score: 1.3 },
    ],
    example: { heard: "four and a quarter bore", value: 4.25 },
  },
  {
    name: "stroke",
    component: "engine",
    part: "stroke",
    attribute: "size",
    unit: "in",
    need: { kinds: ["fraction", "decimal", "measure", "ratio", "integer"], units: [null, "in"], min: 2, max: 6 },
    cues: [
      { after: /^(?:inch )?(?:stroke|crank)\b/, score: 1.3 },
      { before: /\bstroke(?:'s| is| of)(?: an?)?$/, score: 1.3 },
    ],
    example: { heard: "four and a quarter bore, three 38 stroke", value: 3.38 },
  },
  {
    name: "rotor thickness in inches",
    component: "brakes",
    part: "rotor thickness",
    attribute: "thickness",
    unit: "in",
    need: { kinds: ["decimal", "measure", "fraction"], units: ["in", null], min: 0.3, max: 2 },
    cues: [
      {
        before: /\b(?:miked?|mic'?d|measured|measure)\b[^.#]{0,30}\b(?:rotors?|discs?|them|it)(?: at)?$/,
        unless: /\bdiscard|\bminimum/,
        score: 1.2,
      },
      { before: /\b(?:rotors?|discs?)\b[^.#]{0,12}# that's$/, score: 1.2 },
      { about: ["brakes/rotor"], reach: "clause", after: /^(?:inch |inches )?thick\b/, score: 1.2 },
    ],
    example: { heard: "i miked the rotors one point two six inches", value: 1.26 },
  },
  {
    name: "brake disc diameter, unit left out",
    component: "brakes",
    part: "rotor",
    attribute: "diameter",
    unit: "mm",
    need: { kinds: ["integer"], units: [null], min: 200, max: 440 },
    cues: [
      {
        about: ["brakes/rotor", "brakes/drum"],
        reach: "clause",
        before: /\b(?:is|are|at|find|disc|discs|rotors?)(?: about| around)?$/,
        score: 1.1,
      },
      { about: ["brakes/rotor"], reach: "sentence", after: /^(?:across|front|rear|at the (?:front|rear|back))\b/, score: 1.1 },
    ],
    carries: true,
    example: { heard: "and the rear disc is 360", value: 360 },
  },
  {
    name: "ring gear diameter, unit left out",
    component: "final-drive",
    part: "ring gear",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["fraction", "decimal"], units: [null], min: 5.5, max: 14 },
    cues: [
      {
        before: /\b(?:front|rear)(?:'s| is)(?: an?| the)*$/,
        about: ["final-drive"],
        reach: "recent",
        zones: ["underside"],
        unless: /\bpipe|\bexhaust|\brotor|\bdisc/,
        score: 0.95,
      },
      { after: /^(?:inch )?ring(?: gear)?\b/, score: 1.3 },
      {
        about: ["final-drive"],
        reach: "recent",
        before: /\b(?:the|a|an)$/,
        unless: /\bpipe|\bexhaust|\bgears?\b/,
        zones: ["underside"],
        score: 0.8,
      },
    ],
    value: (reading) => (typeof reading.value === "number" && Number.isInteger(reading.value * 8) ? reading.value : undefined),
    example: { heard: "eleven and a half ring gear", value: 11.5 },
  },
  {
    name: "compression ratio, said as so many to one",
    component: "engine",
    part: "compression ratio",
    attribute: "ratio",
    unit: null,
    need: { kinds: ["ratio"], units: [null], min: 6, max: 24 },
    cues: [
      { before: /\bcompression(?:'s| ratio| is| of| at| about)*(?: an?)?$/, score: 1.4 },
      { said: /\bto (?:one|1)$/, about: ["engine"], unless: /\breduction|\baxle|\bdiff|\bfinal/, score: 1.1 },
      { said: /\bto (?:one|1)$/, zones: ["engine-bay"], unless: /\breduction|\baxle|\bdiff|\bfinal/, score: 1.0 },
    ],
    example: { heard: "compression's nine and a half to one", value: 9.5 },
  },
  {
    name: "reduction of an electric drive",
    component: "final-drive",
    part: null,
    attribute: "ratio",
    unit: null,
    need: { kinds: ["ratio", "decimal"], units: [null], min: 5, max: 14 },
    cues: [{ before: /\b(?:gear )?reduction(?: gear)?(?: drive)?(?:'s| is| it's| of)*$/, score: 1.4 }],
    example: { heard: "the gear reduction it's eight point one nine to one", value: 8.19 },
  },
] satisfies readonly Slot[];
