import type { Claim, ComponentName } from "../../../../shared-types/index.ts";
import { convert } from "../../vocabulary/units.ts";
import { conflictOf, remarkOf } from "../conflict-of.ts";
import { circumstanceOf } from "../slots/circumstances.ts";
import { isReadingOfThen } from "../slots/reading-of-then.ts";
import { isLoose, spokenStep } from "../values/approximation.ts";
import { claimWords, moment } from "../wording.ts";
import type { ClaimIndex, StandardRule } from "./rule.ts";

const source = "An odometer does not run backwards; a changed instrument may (arithmetic)";

/** Components whose work is told with the mileage it was done at. */
const worked = [
  "engine",
  "transmission",
  "cooling",
  "brakes",
  "suspension",
  "exhaust",
  "fuel-system",
  "ignition",
  "title",
] as const satisfies readonly ComponentName[];

const whenDone = "when the work was done";

/** Circumstances under which the dial read otherwise and rightly so. */
const otherInstrument =
  /\b(former counter|donor|swap|replaced (cluster|speedo\w*|odometer|instrument)|new (cluster|speedo\w*|odometer|instrument))\b/i;

/** "3,000 miles ago" is a distance from today and no reading. */
const distanceAgo = /\b(ago|since|back|later|on (it|them|the (build|rebuild|clutch|tires|motor|engine)))\b/i;

/** Work that is still to come, and what the maker asks for. */
const yetToCome = /\b(next|due|until|every|interval|by the book|recommend\w*|supposed|should|good for|will need|wants? doing)\b/i;

function miles(claim: Claim): number {
  return convert(Number(claim.value), claim.unit ?? "mi", "mi") ?? Number(claim.value);
}

/** What the figure may fall short of or exceed for its rounding, in miles. */
function slackMiles(claim: Claim): number {
  const step = convert(spokenStep(Number(claim.value)), claim.unit ?? "mi", "mi") ?? 0;
  return isLoose(claim) ? Math.max(step, 0.08 * miles(claim)) : step;
}

/** Today's reading: the highest that is surely one, so that no other fault is told twice. */
function presentReading(claims: ClaimIndex): Claim | undefined {
  return claims
    .of("odometer", "mileage")
    .filter((claim) => typeof claim.value === "number" && circumstanceOf(claim) === null && !isReadingOfThen(claim))
    .toSorted((a, b) => miles(b) - miles(a) || a.start - b.start)[0];
}

/** Mileages at which something was written or done before today. */
function earlierReadings(claims: ClaimIndex): Claim[] {
  const work = worked
    .flatMap((component) => claims.of(component, "mileage"))
    .filter((claim) => claim.component === "title" || claim.circumstance === whenDone)
    .filter((claim) => !distanceAgo.test(claim.quote) && !yetToCome.test(claim.quote));
  return [...claims.of("odometer", "mileage").filter(isReadingOfThen), ...work].filter(
    (claim) => typeof claim.value === "number" && !otherInstrument.test(`${claim.circumstance ?? ""} ${claim.quote}`),
  );
}

function isAbove(earlier: Claim, now: Claim): boolean {
  return miles(earlier) > miles(now) + slackMiles(earlier) + slackMiles(now);
}

export const readingAbovePresent: StandardRule = {
  name: "earlier-reading-above-present",
  source,
  find: (claims) => {
    const now = presentReading(claims);
    if (!now) return { conflicts: [], remarks: [] };
    const above = earlierReadings(claims)
      .filter((claim) => isAbove(claim, now))
      .toSorted((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
    const former = claims.formerOf("odometer", "mileage").filter((claim) => typeof claim.value === "number" && isAbove(claim, now));
    const first = above[0];
    const today = claims.of("odometer", "mileage").filter((claim) => miles(claim) === miles(now) && circumstanceOf(claim) === null);
    return {
      conflicts: first
        ? [
            conflictOf({
              kind: "standard",
              topic: "mileage against an earlier reading",
              why: `The mileage is ${claimWords(now)} at ${moment(now.start)}, and an earlier reading of ${claimWords(first)} is told at ${moment(first.start)} ("${first.quote}").`,
              rule: "earlier-reading-above-present",
              standard: {
                name: "Odometer",
                source,
                working: `Earlier ${claimWords(first)}, today ${claimWords(now)}: it would have run backwards.`,
              },
              weight: 95,
              sides: [
                { value: now.value, unit: now.unit, claims: today },
                { value: first.value, unit: first.unit, claims: above },
              ],
            }),
          ]
        : [],
      remarks: former[0]
        ? [
            remarkOf({
              topic: "earlier mileage",
              why: `An earlier reading of ${claimWords(former[0])} (${moment(former[0].start)}) is above today's ${claimWords(now)} (${moment(now.start)}): ask whether the instrument was changed.`,
              rule: "former-reading-above-present",
              claims: [former[0], now],
            }),
          ]
        : [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "odometer", attribute: "mileage", value: 94200, unit: "mi", quote: "94,200 miles" },
      {
        component: "odometer",
        attribute: "mileage",
        value: 101400,
        unit: "mi",
        zone: "documents",
        quote: "last year's test certificate has a hundred and one thousand four hundred",
      },
    ],
    quiet: [
      [
        { component: "odometer", attribute: "mileage", value: 148312, unit: "km" },
        { component: "odometer", attribute: "mileage", value: 131000, unit: "km", time: "former" },
        { component: "engine", attribute: "mileage", part: "timing belt", value: 85000, unit: "mi", circumstance: whenDone },
      ],
      [
        { component: "odometer", attribute: "mileage", value: 2400, unit: "mi" },
        {
          component: "transmission",
          attribute: "mileage",
          part: "clutch",
          value: 3000,
          unit: "mi",
          circumstance: whenDone,
          quote: "the clutch was done about 3,000 miles ago",
        },
      ],
    ],
  },
};
