import type { Slot } from "../slot.ts";

/** Sizes, weights and outputs of things fitted to a vehicle that share their unit with something bigger; plausible ranges are common practice. */
export const fittingSlots = [
  {
    name: "wheel offset",
    component: "wheel",
    part: "offset",
    attribute: "size",
    unit: "mm",
    need: { kinds: ["integer", "measure", "decimal"], units: [null, "mm"], min: 1, max: 90 },
    cues: [
      { before: /\b(?:offset|e t)(?:'s| is| of| says)?(?: plus| minus| positive| negative| an?)?$/, score: 1.45 },
      { after: /^(?:millimeters? )?(?:of )?offset\b/, score: 1.4 },
    ],
    example: { heard: "the wheels are alloy and the offset is forty five", value: 45 },
  },
  {
    name: "compression ratio, a whole number to one",
    component: "engine",
    part: "compression ratio",
    attribute: "ratio",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 6, max: 23 },
    cues: [{ after: /^to (?:one|1)\b/, zones: ["engine-bay"], unless: /\breduction|\baxle|\bdiff|\bfinal|\bgears?\b/, score: 1.3 }],
    example: { heard: "four bolt mains ten to one seven fifty four barrel", value: 10, zone: "engine-bay" },
  },
  {
    name: "spark plug gap",
    component: "ignition",
    part: "spark plug",
    attribute: "size",
    unit: "said",
    need: { units: ["in", "mm"], min: 0.015, max: 1.6 },
    cues: [
      { before: /\bgap(?:ped|s)?(?:'s| is| are| them| it)?(?: at| to| about)*$/, about: ["ignition"], score: 1.5 },
      { after: /^(?:(?:of an )?inch )?gap\b/, about: ["ignition"], score: 1.4 },
    ],
    example: { heard: "spark plugs are new and the gap's at thirty one thousandths", value: 0.031 },
  },
  {
    name: "heater output",
    component: "air-conditioning",
    part: "heater",
    attribute: "power",
    unit: "kW",
    need: { units: ["kW"], min: 0.3, max: 12 },
    cues: [
      { after: /^(?:kilowatts? )?(?:\w+ )?(?:element|heater|immersion)\b/, score: 1.4 },
      { before: /\b(?:element|heater|heat pump)(?:'s| is| of)?(?: an?| about)*$/, score: 1.4 },
    ],
    example: { heard: "it heats the water with a five and a half kilowatt element", value: 5.5 },
  },
  {
    name: "weight of a part",
    component: "topic",
    part: "weight",
    attribute: "size",
    unit: "lb",
    need: { units: ["lb"], min: 5, max: 499 },
    cues: [
      {
        before: /\b(?:weighs|weigh|weighing)(?: in at| about| around| maybe| like| only| just)*$/,
        about: ["bumper", "wheel", "engine", "transmission", "top", "spare", "body", "seats", "glass"],
        reach: "sentence",
        score: 1.2,
      },
    ],
    example: { heard: "that bumper weighs a hundred and ten pounds", value: 110 },
  },
] satisfies readonly Slot[];
