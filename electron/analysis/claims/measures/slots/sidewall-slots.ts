import type { Slot } from "../slot.ts";

/** What is moulded in a tire's sidewall beside its size, and a width whose plural the recogniser cut off. */
export const sidewallSlots = [
  {
    name: "highest pressure the sidewall allows",
    component: "tire",
    part: "sidewall",
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["integer", "measure"], units: [null, "psi", "lb", "GBP"], min: 26, max: 140 },
    cues: [
      {
        before: /\b(?:sidewall|side wall|tire) (?:says|reads|is marked|allows|takes)(?: up to| at)?$/,
        after: /^(?:psi |pounds |p s i )?(?:max|maximum|cold|tops)\b/,
        score: 1.4,
      },
      {
        before: /\bmax(?:imum)? (?:pressure|inflation)(?:'s| is| says| on (?:the sidewall|them|it)(?: is|'s)?)?$/,
        about: ["tire"],
        score: 1.4,
      },
    ],
    circumstance: "most allowed",
    example: { heard: "the tires are all terrains the sidewall says eighty max", value: 80, zone: "driver-side" },
  },
  {
    name: "tire width that it stood on, its plural cut off",
    component: "tire",
    part: null,
    attribute: "width",
    unit: "mm",
    need: { kinds: ["integer", "tire-partial"], units: [null], min: 125, max: 355 },
    cues: [
      {
        before: /\b(?:it|they|she|these|car|van|truck) (?:was|were|came|is|rode|sat|arrived) on$/,
        after: /^s\b/,
        about: ["tire", "wheel"],
        score: 1.1,
      },
    ],
    value: (reading) => (Number(reading.value) % 5 === 0 ? Number(reading.value) : undefined),
    example: { heard: "the tires are radials it was on 155 s when we got it", value: 155 },
  },
  {
    name: "rim put right after its width",
    component: "wheel",
    part: null,
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["integer"], units: [null], min: 12, max: 24 },
    cues: [
      {
        // "… on a fifteen by four that I want to say it's a sixteen, no it isn't, it's fifteen": what the size before was of.
        before:
          /\b(?:they're|radials|bias|tires?|on an?)\b[^.]{0,50}\bit's an? #(?: inch)? (?:no|wait|sorry|actually)\b[^.#]{0,20}\b(?:it's|they're|is)(?: an?)?$/,
        about: ["wheel", "tire"],
        score: 1.1,
      },
    ],
    example: {
      heard: "the tires up front are radials on a wire wheel and it's a sixteen no it isn't it's fifteen",
      value: 15,
      zone: "front",
    },
  },
] satisfies readonly Slot[];
