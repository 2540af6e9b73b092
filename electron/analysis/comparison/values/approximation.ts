import type { Claim } from "../../../../shared-types/index.ts";

/**
 * Words that round a figure rather than doubt it: "about eighty four thousand" is no retreat from 84,312. A quote that ends in "and" lost
 * its "change". "All the way around" names every wheel.
 */
const roundingWords =
  /\b(about|(?<!\b(?:all|way) )around|roughly|approximately|approx|circa|call it|near(ly)?|near enough|close to|almost|or so|or thereabouts|thereabouts|give or take|just (under|over|shy of)|a (bit|little|hair|touch) (under|over|less|more)|little (under|over)|under|over|some change|and change|something like|ish|say|right at|pushing|north of|odd|and$)\b/i;

/** Whether the figure was given as a round one. */
export function isRounded(claim: Claim): boolean {
  return roundingWords.test(claim.quote);
}

/** Whether the figure may be a loose one, by its words or by the speaker's doubt. */
export function isLoose(claim: Claim): boolean {
  return claim.stance === "hedged" || isRounded(claim);
}

/**
 * The step a spoken figure was rounded to: the worth of its last digit that is not a trailing zero (58400: 100; 2.6: 0.1).
 * Figures are spoken with as many digits as the speaker cares to give.
 */
export function spokenStep(value: number): number {
  if (value === 0) return 1;
  const digits = String(value);
  const point = digits.indexOf(".");
  if (point >= 0) return 10 ** -(digits.length - point - 1);
  return 10 ** /0*$/.exec(digits)![0].length;
}
