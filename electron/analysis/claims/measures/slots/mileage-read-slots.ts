import type { Slot } from "../slot.ts";

const noMiles =
  /\bdollars?\b|\bbucks\b|\bquid\b|\basking(?: about| around| just| for| is)? #|\bprice[^#]{0,12}#|\bpsi\b|\brpm\b|\bhorse|\bpercent\b|\bdegrees\b|\btach\b|\brev counter\b/;

/** A reading said as an odometer shows it: five or six figures, and no round sum. */
const asShown = (reading: { readonly value: number | string }): number | undefined =>
  typeof reading.value === "number" && reading.value >= 10000 ? reading.value : undefined;

/** Mileages that are read off, guessed at or copied from a paper without the word for it. */
export const mileageReadSlots = [
  {
    name: "mileage read off with the viewer",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer"], units: [null], min: 10000, max: 999999 },
    unless: noMiles,
    value: asShown,
    cues: [
      {
        before:
          /\b(?:you read it(?: with me| yourself)?|read it with me|read that with me|there it is|there you go|there you are|there she is|look at that|see that)$/,
        zones: ["cabin", "drive", "opening"],
        score: 1.0,
      },
    ],
    example: { heard: "key on and there you go you read it with me two oh six four one two", value: 206412, zone: "cabin" },
  },
  {
    name: "mileage on it, read to the last figure",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer", "measure"], units: [null], min: 10000, max: 999999 },
    unless: noMiles,
    value: asShown,
    cues: [
      {
        before: /\b(?:has|got|with|showing|had|have|only|read|reads)$/,
        after: /^on (?:it|her|him|this|that|the (?:car|truck|clock|van|wagon|odometer|dial))\b/,
        // "88 four twenty" is read off a dial; "eighteen five", "fourteen nine" are asked.
        said: /^\S+ \S+ (?:ten|eleven|twelve|\w+teen|(?:twen|thir|for|six|seven|eigh|nine)ty(?:[ -]\w+)?|oh \w+)$|^\d\d \d{3}$|^\d{3} \d{3}$/,
        score: 1.4,
      },
      {
        // "One ninety four two on it.": more than is ever asked for one.
        before: /(?:^|\.|,)$/,
        after: /^on (?:it|her|him|this one)\b/,
        said: /^(?:a |one |two |three |[1-3])\S* ?(?:hundred|\S+ )/,
        score: 0.9,
      },
    ],
    example: { heard: "We've got 88 four twenty on it", value: 88420, zone: "opening" },
  },
  {
    name: "mileage guessed at past a bad instrument",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "mi",
    need: { kinds: ["integer", "measure", "money"], units: [null, "mi"], min: 500, max: 900000 },
    unless: noMiles,
    value: (reading, said) => (/^(?:19|20)\d\d$/.test(said) ? undefined : reading.value),
    cues: [
      {
        before:
          /\b(?:speedo|speedometer|odometer|odo|mileometer|cable)\b.{0,120}\b(?:put it at|put her at|i'd (?:say|guess|call it|reckon)|guess|call it|(?:think|reckon|figure|say) it's)(?: about| around| maybe| probably| more like)?$/,
        score: 1.45,
      },
    ],
    example: { heard: "speedometer was disconnected half the summer so i'd guess eleven hundred", value: 1100 },
  },
  {
    name: "miles since the build",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "mi",
    need: { kinds: ["integer", "measure", "money"], units: ["mi", "km", null], min: 5, max: 200000 },
    cues: [
      {
        after:
          /^(?:miles |kilometers )?(?:on (?:it|her|him|this|the (?:car|truck|thing)) )?since (?:(?:it|she|he|they)(?: was|'s been| got| has been|'d been)? (?:got )?(?:done|built|put together|finished|restored|completed|rolled|redone)|(?:the|its|his|that|this) (?:frame off |full |whole )?(?:build|restoration|resto)\b|the day (?:it|she|he))/,
        score: 1.45,
      },
    ],
    circumstance: "since the build",
    example: { heard: "forty two hundred miles on it since it got done", value: 4200 },
  },
  {
    name: "mileage at the belt",
    component: "engine",
    part: "timing belt",
    attribute: "mileage",
    unit: "mi",
    need: { kinds: ["integer", "measure"], units: ["mi", "km", null], min: 20, max: 400000 },
    unless: /\bseat ?belts?\b|\blap\b|\bfan belt\b|\bpsi\b|\bdegrees\b|\bpercent\b|\bdollars\b|\bpounds\b|\bquid\b|\byears?\b|\bmonths?\b/,
    value: (reading) => {
      if (typeof reading.value !== "number" || (reading.value >= 1885 && reading.value <= 2035)) return undefined;
      return reading.value >= 500 ? reading.value : reading.value <= 400 ? reading.value * 1000 : undefined;
    },
    cues: [
      {
        before:
          /\b(?:cam ?|timing |wet |the |that )?(?:belt|cambelt|timing chain)\b[^.]{0,40}\b(?:done|changed|replaced|renewed|fitted|swapped)\b[^.#]{0,24}\b(?:at|about|around|round)(?: about| around)?$/,
        zones: ["engine-bay", "documents", "underside", "opening", "closing"],
        score: 1.45,
      },
      {
        before:
          /\b(?:belt|cambelt|timing chain)\b.{0,70}\b(?:think|reckon|believe|say|guess|said|told me|told) (?:it was|it's|that was|at|it were)(?: at| about| around| round| right around)*$/,
        zones: ["engine-bay", "documents", "underside", "opening", "closing"],
        score: 1.45,
      },
    ],
    circumstance: "when the work was done",
    example: { heard: "that belt was done at eighty thousand with the pump", value: 80000, zone: "engine-bay" },
  },
  {
    name: "reading in a test certificate",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "mi",
    need: { units: ["mi", "km", null], min: 1000, max: 900000 },
    unless: noMiles,
    value: (reading, said) =>
      typeof reading.value === "number" &&
      reading.unit === null &&
      (/^(?:19|20)\d\d$/.test(said) || (reading.value >= 1900 && reading.value <= 2035))
        ? undefined
        : reading.value,
    cues: [
      {
        before:
          /\b(?:tester|examiner|inspector|mot man|he|they|she|certificate|inspection|printout|slip|mot)(?: had)? (?:put|wrote|noted|logged|recorded|entered|marked)(?: it| that)?(?: down)?(?: as| at)?$/,
        score: 1.35,
      },
      {
        before:
          /\b(?:mots?|ministry test|state inspection|inspection)\b(?: (?!at\b)\S+){0,4} (?:at|showing|says|reads)(?: about| around)?$/,
        score: 1.35,
      },
      {
        before: /\b(?:mots?|test certificates?|inspection (?:slips?|sheets?|stickers?))\b.{0,60}$/,
        said: /thousand/,
        zones: ["documents"],
        unless: /\bowners?\b|\bwarranty\b/,
        score: 1.3,
      },
    ],
    circumstance: "in a test certificate",
    example: { heard: "an MOT from a while back at thirty one thousand", value: 31000, zone: "documents" },
  },
] satisfies readonly Slot[];
