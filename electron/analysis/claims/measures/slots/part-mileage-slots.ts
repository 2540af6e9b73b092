import type { Slot } from "../slot.ts";
import { partsWorkedOn } from "./parts-worked-on.ts";

const noMiles =
  /\bdollars?\b|\bbucks\b|\bquid\b|\basking\b|\bprice\b|\bpsi\b|\brpm\b|\brevs\b|\bturning\b|\bidl\w+|\bhorse|\bdegrees\b|\bpercent\b|\bmph\b|\bpower\b|\btorque\b|\bclock(?:'s)? (?:says|shows|reads)\b|\bdue\b|\bnext\b|\bpound|\bkeeps?\b|\bevery\b/;
const notAYear = (reading: { readonly value: number | string; readonly unit: string | null }): number | undefined =>
  typeof reading.value === "number" && (reading.unit !== null || reading.value < 1885 || reading.value > 2035) ? reading.value : undefined;

/** At what mileage a part was fitted or done, and how far it has gone since. */
export const partMileageSlots = [
  {
    name: "mileage at which a part went on",
    component: "topic",
    part: "work",
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer", "measure"], units: ["mi", "km", null], min: 500, max: 900000 },
    unless: noMiles,
    value: notAYear,
    cues: [
      {
        before:
          /\b(?:went (?:on|in)|put (?:on|in)|fitted|done|did|changed|replaced|rebuilt|renewed|swapped|overhauled|installed|new|reconditioned)(?: new| again)?(?: at| by| around| round)(?: about| around)?$/,
        about: partsWorkedOn,
        reach: "sentence",
        score: 1.5,
      },
      {
        before: /\b(?:at|by)(?: about| around)?$/,
        said: /thousand|,\d{3}|\d{5}|\dk$/,
        about: partsWorkedOn,
        beside: { before: 5, after: 7 },
        score: 1.02,
      },
      {
        after:
          /^(?:miles )?(?:on (?:the clock|the odometer|it|her) )?when (?:the|they|he|she|we|i|it|that)\b[^.#]{0,40}\b(?:done|changed|replaced|fitted|rebuilt|went|put|did|swapped|failed|blew)\b/,
        said: /thousand|,\d{3}|\d{5}|\dk$/,
        about: partsWorkedOn,
        reach: "sentence",
        score: 1.7,
      },
    ],
    circumstance: "when the work was done",
    example: { heard: "the steering rack went in at ninety two thousand miles", value: 92000, zone: "underside" },
  },
  {
    name: "miles on a part since it was done",
    component: "topic",
    part: "since work",
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer", "measure"], units: ["mi", "km", null], min: 20, max: 300000 },
    unless: /\bdollars?\b|\bquid\b|\basking\b|\bprice\b|\bodometer\b|\bodo\b|\bspeedo\b|\bwarranty\b/,
    value: notAYear,
    cues: [
      {
        before:
          /\b(?:motor|engine|gearbox|transmission|trans|box|clutch|diff|rear end|tires|brakes|shocks|rebuild|turbo|top end|bottom end|heads?)\b(?:'s|'ve)?[^.#]{0,26}$/,
        after: /^(?:miles |kilometers )?(?:on (?:it|them|that) )?(?:since|from) (?:the|it|they|he|i|we|that|then|she|being|new)\b/,
        about: ["engine", "transmission", "final-drive", "tire", "brakes", "suspension"],
        reach: "clause",
        score: 1.5,
      },
      {
        after:
          /^(?:miles |kilometers )?on (?:that|the|this|those|these) (?:\w+ )?(?:motor|engine|gearbox|transmission|clutch|diff|tires|brakes|rebuild|top end)\b/,
        about: ["engine", "transmission", "final-drive", "tire", "brakes", "suspension"],
        reach: "clause",
        unless: /\bon the clock\b|\boriginal\b|\bowner\b/,
        score: 1.4,
      },
      { after: /^(?:miles |kilometers )?on that since\b/, about: ["engine", "transmission", "final-drive"], score: 1.75 },
      {
        before: /\b(?:tires|rubber)(?:'ve)?(?: have| has| got| only got| have got)?(?: maybe| about| only)?$/,
        after: /^(?:miles )?on (?:them|it)\b/,
        about: ["tire"],
        reach: "clause",
        score: 1.4,
      },
    ],
    circumstance: "since the work",
    example: { heard: "the gearbox has done nine thousand since the rebuild", value: 9000, zone: "underside" },
  },
] satisfies readonly Slot[];
