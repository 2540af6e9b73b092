import type { Claim } from "../../../shared-types/index.ts";
import { type ConflictDraft, conflictOf } from "./conflict-of.ts";
import { saidApart, sameBreathSeconds } from "./slots/said-apart.ts";
import { capitalised, claimWords, moment } from "./wording.ts";

/** Doubt that a speaker puts to one claim and takes from another: each pair is about the same fact. Common practice of the trade. */
interface Across {
  readonly topic: string;
  readonly weight: number;
  readonly flat: (claim: Claim) => boolean;
  readonly doubted: (claim: Claim) => boolean;
  readonly same: (flat: Claim, doubted: Claim) => boolean;
}

const yearOf = ({ value }: Claim): string => String(value).slice(0, 4);

const isYear = ({ component, attribute, part, circumstance }: Claim): boolean =>
  (component === "vehicle" && attribute === "year" && part === null) ||
  (component === "title" && (attribute === "year" || (attribute === "date" && circumstance === "registered")));

const isWorkMileage = ({ attribute, circumstance }: Claim): boolean => attribute === "mileage" && circumstance === "when the work was done";

/** "The box … I'd think it's the same one": what is doubted is the gearbox, whatever part of it was named on the way. */
const wholeOne = /\b(?:the )?(?:original|same|very|first) one\b/i;
const namesItsPart = /\b(?:shift\w*|knob|lever|housing|pan|mount)\b/i;

const acrossRules: readonly Across[] = [
  {
    topic: "year of registration",
    weight: 75,
    flat: (claim) => isYear(claim) && claim.stance === "stated",
    doubted: (claim) => isYear(claim) && claim.component === "title" && claim.stance === "hedged",
    same: (flat, doubted) => yearOf(flat) === yearOf(doubted),
  },
  {
    topic: "mileage at which work was done",
    weight: 55,
    flat: (claim) => isWorkMileage(claim) && claim.stance === "stated",
    doubted: (claim) => isWorkMileage(claim) && claim.stance !== "stated",
    same: (flat, doubted) => flat.component === doubted.component && flat.value === doubted.value,
  },
  {
    topic: "engine year",
    weight: 80,
    flat: ({ component, attribute, part, stance }) =>
      component === "engine" && attribute === "year" && part === "donor" && stance === "stated",
    doubted: ({ component, attribute, stance }) => component === "engine" && attribute === "year" && stance === "hedged",
    same: (flat, doubted) => flat.value === doubted.value,
  },
  {
    topic: "transmission being the original one",
    weight: 65,
    flat: ({ component, attribute, part, value, stance }) =>
      component === "transmission" && attribute === "originality" && part === null && value === "original" && stance === "stated",
    doubted: ({ component, attribute, part, value, stance, quote }) =>
      component === "transmission" &&
      attribute === "originality" &&
      part !== null &&
      value === "original" &&
      stance === "hedged" &&
      wholeOne.test(quote) &&
      !namesItsPart.test(quote),
    same: () => true,
  },
];

/** Seconds either way within which a figure is the one that trust or doubt was put in. */
const figureWithinSeconds = 14;

/** What is said of the mileage being true, with the figures said beside it: the side a reviewer is shown is the figure. */
function withFigures(trust: readonly Claim[], figures: readonly Claim[]): Claim[] {
  const beside = figures.filter(({ start }) => trust.some((claim) => Math.abs(claim.start - start) <= figureWithinSeconds));
  return [...beside, ...trust];
}

function draftOf(topic: string, weight: number, flat: readonly Claim[], doubted: readonly Claim[]): ConflictDraft {
  const [firstFlat, firstDoubt] = [flat[0]!, doubted[0]!];
  return conflictOf({
    kind: "hedge",
    topic,
    why: capitalised(
      `${topic}: ${claimWords(firstFlat)} is stated flatly at ${moment(firstFlat.start)} and put in doubt at ${moment(firstDoubt.start)} ("${firstDoubt.quote}").`,
    ),
    rule: "flat-and-doubtful",
    weight,
    sides: [
      { value: firstFlat.value, unit: firstFlat.unit, claims: flat },
      { value: firstDoubt.value, unit: firstDoubt.unit, claims: doubted },
    ],
  });
}

function mileageTrust(claims: readonly Claim[]): ConflictDraft[] {
  const trust = claims.filter(
    ({ component, attribute, value }) => component === "odometer" && attribute === "originality" && value === "original",
  );
  const figures = claims.filter(
    ({ component, attribute, circumstance }) => component === "odometer" && attribute === "mileage" && circumstance === null,
  );
  const flat = trust.filter(({ stance }) => stance === "stated");
  const doubted = trust.filter(({ stance }) => stance === "hedged");
  if (!flat[0] || !doubted[0] || !saidApart([flat, doubted], sameBreathSeconds.hedge)) return [];
  return [draftOf("mileage being actual", 90, withFigures(flat, figures), withFigures(doubted, figures))];
}

/** Whether the title, read out after the doubt, bears the year out: "it is, I believe, a sixty six … title says 1966, so I was right". */
export function settledByTitle(draft: ConflictDraft, claims: readonly Claim[]): boolean {
  if (draft.kind !== "hedge" || draft.topic !== "model year") return false;
  const doubts = new Set(draft.sides.at(-1)!.claims);
  const lastDoubt = Math.max(...claims.filter(({ id }) => doubts.has(id)).map(({ start }) => start));
  return claims.some(
    (claim) =>
      claim.component === "title" &&
      claim.attribute === "year" &&
      claim.stance === "stated" &&
      claim.start > lastDoubt &&
      String(claim.value) === String(draft.sides[0]!.value),
  );
}

/**
 * A fact stated flatly in one claim and put in doubt in another of its own: the year of the vehicle against the year it was registered in,
 * the mileage vouched for against the mileage left open. Grows with the claims.
 */
export function hedgesAcross(spoken: readonly Claim[]): ConflictDraft[] {
  const claims = spoken.filter(({ time }) => time === "today");
  const drafts = acrossRules.flatMap(({ topic, weight, flat, doubted, same }) => {
    const doubts = claims.filter(doubted);
    const [first] = doubts;
    if (!first) return [];
    const firm = claims.filter((claim) => flat(claim) && same(claim, first));
    const alike = doubts.filter((claim) => same(claim, first));
    // Said again firmly after the doubt, and from the paper: the doubt is over.
    if (firm.some((claim) => claim.component === "title" && claim.start > alike.at(-1)!.start)) return [];
    return firm.length > 0 && saidApart([firm, alike], sameBreathSeconds.hedge) ? [draftOf(topic, weight, firm, alike)] : [];
  });
  return [...drafts, ...mileageTrust(claims)];
}
