import type { AttributeName } from "../../../../../shared-types/index.ts";
import type { About, Slot } from "../slot.ts";

const lampsBefore = /\b(?:headlights?|headlamps?|lights|lamps)\b.{0,90}\b(?:there's|there are|got|you've got|it's got|that's|has)$/;

/** Parts that carry bolts somebody counts. */
const bolted: readonly About[] = ["exhaust", "trim", "bumper", "body", "frame", "suspension", "seats", "top", "audio"];

const size: AttributeName = "size";

/** Metal that was shortened or let down, marks counted as "ones", bolts of what was just named; plausible ranges are common practice. */
export const shapedBodySlots = [
  {
    name: "grille or panel shortened",
    component: "topic",
    part: "shortened",
    attribute: size,
    unit: "said",
    need: { units: ["in", "mm"], min: 0.25, max: 40 },
    cues: [
      {
        before: /\b(?:shortened|narrowed|trimmed|stretched|widened|filled)(?: it| them| by| about| down| up| maybe)*$/,
        about: ["trim", "body", "bumper", "top", "dash", "glass"],
        reach: "sentence",
        unless: /\baxle\b|\bhousing\b|\brear end\b|\bdriveshaft\b|\bspring/,
        score: 1.85,
      },
    ],
    circumstance: "shortened",
    example: { heard: "the grille shell is filled and shortened two inches", value: 2, zone: "front" },
  },
  {
    name: "windshield let down with the chop",
    component: "glass",
    part: "windshield",
    position: "front",
    attribute: size,
    unit: "in",
    need: { kinds: ["integer", "fraction", "decimal", "measure"], units: [null, "in"], min: 0.5, max: 9 },
    cues: [
      {
        before:
          /\b(?:windshield|windscreen|glass|screen)(?:'s| is| was| has been| got)? (?:down|chopped|cut(?: down)?|lowered|leaned|laid back|laid down)(?: by| about| maybe)?$/,
        unless: /\bdegrees|\bdollars|\bmiles/,
        score: 1.4,
      },
      {
        after: /^(?:inch |inches )?(?:off|out of|down on) (?:the )?(?:windshield|windscreen|screen|glass)\b/,
        score: 1.4,
      },
    ],
    circumstance: "chopped",
    example: { heard: "and it's chopped the windshield's down two and a half", value: 2.5, position: "front", zone: "front" },
  },
  {
    name: "marks counted as ones",
    component: "body",
    part: "ding",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 30 },
    cues: [
      {
        before:
          /\b(?:hail ?storm|hail|dents?|dings?|dimples?|door ?dings?|chips?|stone chips|scratches|nicks|creases?|car ?park|parking lot)\b[^.#]{0,16}$/,
        after: /^(?:real |very |tiny |little |small |big |wee |shallow |soft )+ones\b/,
        zones: ["front", "driver-side", "passenger-side", "rear", "roof"],
        score: 1.2,
      },
    ],
    example: { heard: "the fender's been in a hailstorm two little ones", value: 2, zone: "driver-side", position: "driver-front" },
  },
  {
    name: "bolts of a part",
    component: "topic",
    part: "bolt",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 24 },
    cues: [
      {
        after:
          /^(?:(?:stainless|chrome|little|big|new|grade \w+|rusty) )?bolts\b(?! (?:main|mains|pattern|hole|circle|on the (?:pan|cover)))/,
        about: bolted,
        unless: /\bmains?\b|\bhubs?\b|\blugs?\b|\bpattern\b|\bmissing\b|\bshort\b|\bloose\b/,
        score: 1.15,
      },
    ],
    circumstance: "bolts",
    example: { heard: "There's a luggage rack, three bolts, chrome.", value: 3, zone: "rear" },
  },
  {
    name: "lamps by their beams",
    component: "lights",
    part: "headlight",
    position: "front",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 8 },
    cues: [
      {
        before: lampsBefore,
        after: /^(?:of (?:them|those) )?(?:low|high|lows|highs|dipped|main|full|inners?|outers?)(?: beams?)?\b/,
        zones: ["front", "opening"],
        score: 1.1,
      },
    ],
    example: {
      heard: "the headlights are halogens they're cloudy and there's four low and high in each",
      value: 4,
      position: "front",
      zone: "front",
    },
  },
  {
    name: "doors and the one at the back",
    component: "body",
    part: "door",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 5 },
    cues: [
      {
        before: /\bdoors(?: there's| you've got| we've got| it's| are)?$/,
        after: /^(?:of (?:them|those) )?(?:and|plus) (?:the |a )?(?:hatch|hatchback|tailgate|boot|trunk|lift ?gate|back (?:door|one))\b/,
        unless: /\bmicrons?\b|\bmils?\b|\bmeter\b|\bgauge\b/,
        score: 1.4,
      },
    ],
    example: { heard: "Doors, four and the hatch, all shut like they should.", value: 4, zone: "driver-side", position: "driver" },
  },
] satisfies readonly Slot[];
