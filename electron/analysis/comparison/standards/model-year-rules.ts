import type { Claim } from "../../../../shared-types/index.ts";
import { conflictOf } from "../conflict-of.ts";
import { capitalised, claimWords, moment } from "../wording.ts";
import { modelYear, nothingFound, type StandardRule } from "./rule.ts";

/** Read at https://ecfr.io/Title-40/se40.21.85_12304 (paragraph (a)). */
const source =
  "40 CFR 85.2304(a): a model year's production may begin no earlier than January 2 of the year before it and ends by December 31 of it";

/** A builder's work on an old vehicle is dated decades after it; further off than this is no maker's date. Years; common practice. */
const mostYearsApart = 6;

/** A van built on by another works carries that one's plate too, with a date of its own: common practice. */
const secondWorks = /\b(coach|conver\w+|body ?builder|bodied|up-?fit\w*|camper|second stage)\b/i;

/** A month of building, as a door sticker or a plate gives it; a bare year is as often a builder's. */
function isMonthOfBuilding({ value, part, circumstance, quote }: Claim): boolean {
  return !secondWorks.test(quote) && (part === "built" || circumstance === "built") && /^\d{4}-\d{2}/.test(String(value));
}

/** Whether a vehicle built in this year may be of that model year. */
export function isOfModelYear(builtYear: number, year: number): boolean {
  return builtYear === year || builtYear === year - 1;
}

export const modelYearAgainstBuilding: StandardRule = {
  name: "model-year-against-building",
  source,
  find: (claims) => {
    const model = modelYear(claims);
    if (!model) return nothingFound;
    const outside = claims
      .of("vehicle", "date")
      .filter(isMonthOfBuilding)
      .filter(({ value }) => {
        const built = Number(String(value).slice(0, 4));
        return !isOfModelYear(built, model.year) && Math.abs(built - model.year) <= mostYearsApart;
      });
    const [first] = outside;
    if (!first) return nothingFound;
    const told = model.claims[0]!;
    return {
      conflicts: [
        conflictOf({
          kind: "standard",
          topic: "model year against date of building",
          why: capitalised(
            `the vehicle is called a ${model.year} at ${moment(told.start)}, and was built ${claimWords(first)} by what is read at ${moment(first.start)} ("${first.quote}").`,
          ),
          rule: "model-year-against-building",
          standard: {
            name: "Model year",
            source,
            working: `Built ${first.value}: of model year ${String(first.value).slice(0, 4)} or the next, not ${model.year}.`,
          },
          weight: 80,
          sides: [
            { value: model.year, unit: null, claims: model.claims },
            { value: first.value, unit: null, claims: outside },
          ],
        }),
      ],
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "vehicle", attribute: "year", value: 2006 },
      {
        component: "vehicle",
        attribute: "date",
        part: "built",
        circumstance: "built",
        value: "2003-11",
        quote: "manufactured November of '03",
      },
    ],
    quiet: [
      [
        { component: "vehicle", attribute: "year", value: 2006 },
        { component: "vehicle", attribute: "date", part: "built", circumstance: "built", value: "2005-08" },
      ],
      [
        { component: "vehicle", attribute: "year", value: 1935 },
        { component: "vehicle", attribute: "date", part: "built", circumstance: "built", value: "2016-05" },
      ],
      [
        { component: "vehicle", attribute: "year", value: 2006 },
        { component: "vehicle", attribute: "date", part: "owned since", circumstance: "owned since", value: "2003-11" },
      ],
    ],
  },
};
