import type { Claim } from "../../../../shared-types/index.ts";
import { conflictOf } from "../conflict-of.ts";
import { slotPart } from "../slots/parts.ts";
import { positionsMeet } from "../slots/positions.ts";
import { monthOfWeek, tireDatesAgree, tireDatesOf } from "../values/tire-dates.ts";
import { moment } from "../wording.ts";
import type { ClaimIndex, StandardRule } from "./rule.ts";

const codeSource = "49 CFR 574.5: the date group is the week (01 to 53) and the year of manufacture";

/** A speaker reads the code off the wall and says what it means in the same breath: seconds from the one to the other at most. */
const spelledOutWithinSeconds = 20;

const monthNames = "January February March April May June July August September October November December".split(" ");

/** Digits as they stand on the tire: week and year. */
function isCode(claim: Claim): boolean {
  return /^\d{3,4}$/.test(String(claim.value)) && tireDatesOf(claim.value).length === 1;
}

/** The date in words: a month, or a week, of a full year. */
function isSpelledOut(claim: Claim): boolean {
  return /^\d{4}-(W?\d{1,2})$/i.test(String(claim.value));
}

function samePlace(first: Claim, second: Claim): boolean {
  const spare = (claim: Claim): boolean => claim.component === "spare" || slotPart(claim) === "spare";
  if (spare(first) !== spare(second)) return false;
  return first.position === null || second.position === null || positionsMeet(first.position, second.position);
}

function secondsApart(first: Claim, second: Claim): number {
  return Math.abs(first.start - second.start);
}

function breathOf(claim: Claim): number {
  return Math.floor(claim.start / spelledOutWithinSeconds);
}

/** The codes that a date in words may explain: those of its place spoken in the same breath. `codes` by breath, so that cost stays with the claims. */
function codesBeside(spelled: Claim, codes: ReadonlyMap<number, readonly Claim[]>): Claim[] {
  const breath = breathOf(spelled);
  return [breath - 1, breath, breath + 1]
    .flatMap((near) => codes.get(near) ?? [])
    .filter((code) => samePlace(code, spelled) && secondsApart(code, spelled) <= spelledOutWithinSeconds);
}

function codeWords(code: Claim): string {
  const date = tireDatesOf(code.value)[0]!;
  const year = date.year === null ? `a year ending in ${date.yearDigit}` : String(date.year);
  const month = date.week === null ? undefined : monthNames[monthOfWeek(date.week) - 1];
  return `${code.value}: week ${date.week} of ${year}${month === undefined ? "" : `, which lies in ${month}`}`;
}

function spokenDate(spelled: Claim): string {
  const date = tireDatesOf(spelled.value)[0]!;
  return date.month === null ? `week ${date.week} of ${date.year}` : `${monthNames[date.month - 1] ?? date.month} ${date.year}`;
}

function meaningsIn(claims: ClaimIndex) {
  const dated = [...claims.of("tire", "date"), ...claims.of("spare", "date")];
  const codes = new Map<number, Claim[]>();
  for (const code of dated.filter(isCode)) {
    const here = codes.get(breathOf(code));
    if (here) here.push(code);
    else codes.set(breathOf(code), [code]);
  }
  return dated.filter(isSpelledOut).flatMap((spelled) => {
    const beside = codesBeside(spelled, codes);
    // A second tire's code may be the one that is explained: any that fits settles it.
    if (beside.some((code) => tireDatesAgree(tireDatesOf(code.value), tireDatesOf(spelled.value)))) return [];
    const code = beside.toSorted((a, b) => secondsApart(a, spelled) - secondsApart(b, spelled))[0];
    return code ? [{ code, spelled }] : [];
  });
}

export const tireDateMeaning: StandardRule = {
  name: "tire-date-meaning",
  source: codeSource,
  find: (claims) => ({
    conflicts: meaningsIn(claims).map(({ code, spelled }) =>
      conflictOf({
        kind: "standard",
        topic: "tire date code against the date it is said to mean",
        why: `The date code ${codeWords(code)} (${moment(code.start)}), and it is said to mean ${spokenDate(spelled)} (${moment(spelled.start)}).`,
        rule: "tire-date-meaning",
        standard: { name: "Tire date code", source: codeSource, working: `${codeWords(code)}; spoken ${spokenDate(spelled)}.` },
        weight: 50,
        sides: [
          { value: code.value, unit: null, claims: [code] },
          { value: spelled.value, unit: null, claims: [spelled] },
        ],
      }),
    ),
    remarks: [],
  }),
  example: {
    finds: "conflict",
    claims: [
      { component: "tire", attribute: "date", value: "3815", start: 100 },
      { component: "tire", attribute: "date", value: "2015-05", start: 106 },
    ],
    quiet: [
      [
        // Week 40 begins in the last days of September or the first of October.
        { component: "tire", attribute: "date", value: "4022", start: 100 },
        { component: "tire", attribute: "date", value: "2022-10", start: 106 },
      ],
      [
        { component: "tire", attribute: "date", value: "3422", start: 100, position: "front" },
        { component: "tire", attribute: "date", value: "2019-W11", start: 106, position: "rear" },
      ],
      [
        { component: "tire", attribute: "date", value: "3422", start: 100 },
        { component: "tire", attribute: "date", value: "1119", start: 104 },
        { component: "tire", attribute: "date", value: "2019-W11", start: 108 },
      ],
    ],
  },
};
