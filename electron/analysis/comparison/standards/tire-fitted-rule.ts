import type { Claim } from "../../../../shared-types/index.ts";
import { type ConflictDraft, conflictOf } from "../conflict-of.ts";
import { positionsMeet } from "../slots/positions.ts";
import { tireDatesOf } from "../values/tire-dates.ts";
import { moment } from "../wording.ts";
import type { StandardRule } from "./rule.ts";

const source =
  "49 CFR 574.5: the last digits of a tire's code are the week and year it was made; a tire is fitted after it is made (arithmetic)";

/** The year in which work was done, or null where only a month or a mileage tells. */
function yearOfWork({ value }: Claim): number | null {
  const year = Number(/^((?:19|20)\d\d)(?:-\d\d)?$/.exec(String(value))?.[1] ?? Number.NaN);
  return Number.isFinite(year) ? year : null;
}

/** Words of putting tires on; "those are from 2020" tells when they were made. */
const puttingOn = /\b(?:put|fitted|fit|installed|mounted|bought|changed|replaced|had|got|new|shod|receipt|invoice)\b/i;

const tellsWork = (claim: Claim): boolean => claim.circumstance === "work";

const meet = (one: Claim, other: Claim): boolean =>
  one.position === null || other.position === null || positionsMeet(one.position, other.position);

/** Tires said to have been put on in a year before the one their code was stamped in. The spare is a tire of its own. */
export const tireFittedBeforeMade: StandardRule = {
  name: "tire-fitted-before-made",
  source,
  find: (claims) => {
    const dates = claims.of("tire", "date");
    const fitted = dates.filter((claim) => tellsWork(claim) && puttingOn.test(claim.quote) && yearOfWork(claim) !== null);
    const stamped = dates.filter((claim) => !tellsWork(claim) && claim.part !== "spare");
    for (const work of fitted) {
      const year = yearOfWork(work)!;
      const later = stamped.filter((claim) => {
        const readings = tireDatesOf(claim.value);
        return meet(work, claim) && readings.length > 0 && readings.every((date) => date.year !== null && date.year > year);
      });
      const [code] = later;
      if (!code) continue;
      const draft: ConflictDraft = conflictOf({
        kind: "standard",
        topic: "tires fitted before they were made",
        why: `The tires are said at ${moment(work.start)} to have been put on in ${year}, and the date ${code.value} at ${moment(code.start)} is later.`,
        rule: "tire-fitted-before-made",
        standard: { name: "Tire date code", source, working: `Put on in ${year}; made ${code.value}.` },
        weight: 55,
        sides: [
          { value: work.value, unit: null, claims: [work] },
          { value: code.value, unit: null, claims: later },
        ],
      });
      return { conflicts: [draft], remarks: [] };
    }
    return { conflicts: [], remarks: [] };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "tire", attribute: "date", value: 2016, circumstance: "work", position: "all", quote: "had them put on in 2016" },
      { component: "tire", attribute: "date", value: "2219" },
    ],
    quiet: [
      [
        { component: "tire", attribute: "date", value: 2020, circumstance: "work", position: "all", quote: "put on in 2020" },
        { component: "tire", attribute: "date", value: "2219" },
      ],
      [
        {
          component: "tire",
          attribute: "date",
          value: 2016,
          circumstance: "work",
          position: "front",
          quote: "the fronts were fitted in 2016",
        },
        { component: "tire", attribute: "date", value: "2219", position: "rear" },
      ],
    ],
  },
};
