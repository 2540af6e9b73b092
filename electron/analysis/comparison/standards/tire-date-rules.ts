import type { Claim } from "../../../../shared-types/index.ts";
import { type ConflictDraft, conflictOf, type RemarkDraft, remarkOf } from "../conflict-of.ts";
import { slotPart } from "../slots/parts.ts";
import { type TireDate, tireDatesOf } from "../values/tire-dates.ts";
import { moment } from "../wording.ts";
import { type ClaimIndex, modelYear, type StandardRule } from "./rule.ts";

const codeSource = "49 CFR 574.5: the date group is the week (01 to 53) and the year of manufacture";
const lastWeek = 53;

function datedTires(claims: ClaimIndex): Claim[] {
  return [...claims.of("tire", "date"), ...claims.of("spare", "date")];
}

function isSpare(claim: Claim): boolean {
  return claim.component === "spare" || slotPart(claim) === "spare";
}

/** The reading as a week of a full year, where every reading of the value is one. */
function plainWeek(claim: Claim): { readonly week: number; readonly year: number } | undefined {
  const readings = tireDatesOf(claim.value);
  const only = readings[0];
  return readings.length === 1 && only && only.year !== null && only.week !== null ? { week: only.week, year: only.year } : undefined;
}

/** Years and fractions since the year 0, at the week's beginning. */
function instant(date: { readonly week: number; readonly year: number }): number {
  return date.year + (date.week - 1) / 52.18;
}

function isoInstant(date: string): number | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})/.exec(date);
  return match ? Number(match[1]) + (Number(match[2]) - 1) / 12 + (Number(match[3]) - 1) / 365.25 : undefined;
}

/** Dated tires by the value named, spares apart: one finding for each, however often it was said. */
function datesNamed(claims: ClaimIndex): DateNamed[] {
  const dated = datedTires(claims);
  return [dated.filter((claim) => !isSpare(claim)), dated.filter(isSpare)].flatMap((group) =>
    [...byDate(group).values()].map((all) => ({ claim: all[0]!, all })),
  );
}

/** A code and the week spelled out ("5621", "the fifty-sixth week of twenty-one") name one date. */
function byDate(dated: readonly Claim[]): Map<string, Claim[]> {
  const groups = new Map<string, Claim[]>();
  for (const claim of dated) {
    const date = plainWeek(claim);
    const key = date ? `${date.year}-W${date.week}` : String(claim.value);
    const here = groups.get(key);
    if (here) here.push(claim);
    else groups.set(key, [claim]);
  }
  return groups;
}

interface DateNamed {
  /** The first of them. */
  readonly claim: Claim;
  readonly all: readonly Claim[];
}

/** A sum with one value in it is shown against what the rule allows: both sides rest on the same words. */
function singleSided(
  { claim, all }: DateNamed,
  allowed: string,
  topic: string,
  why: string,
  rule: string,
  working: string,
  weight: number,
): ConflictDraft {
  return conflictOf({
    kind: "standard",
    topic,
    why,
    rule,
    standard: { name: "Tire date code", source: codeSource, working },
    weight: isSpare(claim) ? weight * 0.5 : weight,
    sides: [
      { value: claim.value, unit: null, claims: all },
      { value: allowed, unit: null, claims: all },
    ],
  });
}

export const tireDateWeek: StandardRule = {
  name: "tire-date-week",
  source: codeSource,
  find: (claims) => ({
    conflicts: datesNamed(claims).flatMap((named) => {
      const { claim } = named;
      const date = plainWeek(claim);
      if (!date || (date.week >= 1 && date.week <= lastWeek)) return [];
      return [
        singleSided(
          named,
          "week 01 to 53",
          "tire date code",
          `The date code ${claim.value} at ${moment(claim.start)} names week ${date.week}, and a year has weeks 01 to ${lastWeek}.`,
          "tire-date-week",
          `${claim.value}: week ${date.week}, year ${date.year}; allowed 01 to ${lastWeek}.`,
          60,
        ),
      ];
    }),
    remarks: [],
  }),
  example: {
    finds: "conflict",
    claims: [{ component: "tire", attribute: "date", value: "5412" }],
    quiet: [
      [{ component: "tire", attribute: "date", value: "5320" }],
      [{ component: "tire", attribute: "date", value: "0119" }],
      [{ component: "tire", attribute: "date", value: "2019-W22" }],
    ],
  },
};

export const tireDateAfterRecording: StandardRule = {
  name: "tire-date-after-recording",
  source: codeSource,
  find: (claims) => {
    const recorded = claims.recordedOn === null ? undefined : isoInstant(claims.recordedOn);
    if (recorded === undefined) return { conflicts: [], remarks: [] };
    return {
      conflicts: datesNamed(claims).flatMap((named) => {
        const { claim } = named;
        const date = plainWeek(claim);
        if (!date || date.week < 1 || date.week > lastWeek || instant(date) <= recorded) return [];
        return [
          singleSided(
            named,
            `before ${claims.recordedOn}`,
            "tire date code",
            `The date code ${claim.value} at ${moment(claim.start)} is week ${date.week} of ${date.year}, after ${claims.recordedOn}, by when this was recorded.`,
            "tire-date-after-recording",
            `${claim.value}: week ${date.week} of ${date.year}; recorded by ${claims.recordedOn}.`,
            60,
          ),
        ];
      }),
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    recordedOn: "2026-05-01",
    claims: [{ component: "tire", attribute: "date", value: "1250" }],
    quiet: [[{ component: "tire", attribute: "date", value: "1226" }], [{ component: "tire", attribute: "date", value: "2023" }]],
  },
};

/** A model year is sold from the middle of the calendar year before it, on tires that may have lain a year. */
const yearsBeforeModelYear = 2;

export const tireDateBeforeModel: StandardRule = {
  name: "tire-date-before-model",
  source: `${codeSource}; a model year runs into the calendar year before it (common practice)`,
  find: (claims) => {
    const model = modelYear(claims);
    if (!model) return { conflicts: [], remarks: [] };
    const conflicts: ConflictDraft[] = [];
    const remarks: RemarkDraft[] = [];
    for (const { claim, all } of datesNamed(claims)) {
      const readings = tireDatesOf(claim.value);
      if (readings.length === 0 || !readings.every((date) => latestYear(date) < model.year - yearsBeforeModelYear)) continue;
      const why = `The tire date ${claim.value} at ${moment(claim.start)} lies more than ${yearsBeforeModelYear} years before the ${model.year} model year.`;
      // Three digits beside a car of this century are likelier a figure misheard than a tire of the last one.
      const surelyDated = readings.every((date) => date.year !== null);
      if (isSpare(claim) || !surelyDated) {
        remarks.push(
          remarkOf({
            topic: isSpare(claim) ? "spare tire older than the vehicle" : "tire date against model year",
            why,
            rule: "tire-date-before-model",
            claims: [claim, ...model.claims],
          }),
        );
        continue;
      }
      conflicts.push(
        conflictOf({
          kind: "standard",
          topic: "tire date against model year",
          why,
          rule: "tire-date-before-model",
          standard: {
            name: "Tire date code",
            source: codeSource,
            working: `${claim.value}: ${yearWords(readings)}; model year ${model.year}, built from ${model.year - 1} on.`,
          },
          weight: 45,
          sides: [
            { value: claim.value, unit: null, claims: all },
            { value: model.year, unit: null, claims: model.claims },
          ],
        }),
      );
    }
    return { conflicts, remarks };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "vehicle", attribute: "year", value: 2019 },
      { component: "tire", attribute: "date", value: "1215" },
    ],
    quiet: [
      [
        { component: "vehicle", attribute: "year", value: 2019 },
        { component: "tire", attribute: "date", value: "4517" },
      ],
      [
        { component: "vehicle", attribute: "year", value: 1985 },
        { component: "spare", attribute: "date", value: "454" },
      ],
      [
        { component: "vehicle", attribute: "year", value: 1969 },
        { component: "tire", attribute: "date", value: "2219" },
      ],
    ],
  },
};

/** A three-digit code is from before 2000: the latest year it can mean. */
function latestYear(date: TireDate): number {
  return date.year ?? 1990 + date.yearDigit;
}

function yearWords(readings: readonly TireDate[]): string {
  return readings.map((date) => (date.year === null ? `a year ending in ${date.yearDigit} before 2000` : `year ${date.year}`)).join(" or ");
}

/** Vehicle and tire makers commonly advise replacement at 6 to 10 years; there is no US federal limit. */
const adviseFromYears = 6;

export const tireAge: StandardRule = {
  name: "tire-age",
  source: "Vehicle and tire makers' common advice of 6 to 10 years (no US federal limit; local law decides)",
  find: (claims) => {
    const recorded = claims.recordedOn === null ? undefined : isoInstant(claims.recordedOn);
    if (recorded === undefined) return { conflicts: [], remarks: [] };
    return {
      conflicts: [],
      remarks: datesNamed(claims).flatMap(({ claim, all }) => {
        const date = plainWeek(claim);
        if (!date || isSpare(claim)) return [];
        const age = recorded - instant(date);
        if (age < adviseFromYears) return [];
        return [
          remarkOf({
            topic: "tire age",
            why: `The tires dated ${claim.value} were ${Math.floor(age)} years old by ${claims.recordedOn}; makers commonly advise replacement at 6 to 10 years, and local law decides.`,
            rule: "tire-age",
            claims: all,
          }),
        ];
      }),
    };
  },
  example: {
    finds: "remark",
    recordedOn: "2026-05-01",
    claims: [{ component: "tire", attribute: "date", value: "2219" }],
    quiet: [[{ component: "tire", attribute: "date", value: "2223" }]],
  },
};
