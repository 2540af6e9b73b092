import type { Claim } from "../../../../shared-types/index.ts";
import { convert } from "../../vocabulary/units.ts";
import { circumstanceOf } from "../slots/circumstances.ts";
import { isVehicleYear } from "../slots/vehicle-year.ts";
import { spokenStep } from "../values/approximation.ts";

/** What the claims say together that bears on how one of them is to be read. */
export interface ClaimNotes {
  /** The engine is bored out ("thirty over"): its displacement is spoken both as built and as bored. */
  readonly boredOver: boolean;
  /** Figures that were spoken as money; one of them without the word "miles" is no mileage. */
  readonly sumsOfMoney: ReadonlySet<number>;
  /** Miles that were named as such, least and most: a bare number of quite another size is no mileage. */
  readonly milesNamed: { readonly least: number; readonly most: number } | null;
  /** Sums that were named as money, least and most. */
  readonly sumsNamed: { readonly least: number; readonly most: number } | null;
  /** The years given as the vehicle's own, first and last. */
  readonly modelYears: { readonly first: number; readonly last: number } | null;
  /** Liters of displacement that were given with their unit, least and most; likewise. */
  readonly litersNamed: { readonly least: number; readonly most: number } | null;
}

export const noNotes: ClaimNotes = {
  boredOver: false,
  sumsOfMoney: new Set(),
  milesNamed: null,
  litersNamed: null,
  modelYears: null,
  sumsNamed: null,
};

/** Words that make a bare figure a sum of money, whatever it was taken for. */
const moneyWords =
  /\b(wants?|wanted|asking|ask|asked|pric(e|ed|ey|ing)|dollars|bucks|grand|pounds|quid|firm|offers?|website|obo|ono|sticker(ed)?|haggl\w*|takes (it|her|him)|buys (it|her|him)|bid|sell(ing)?|yours for|cash|guy|fella|money|number|start(ed)? (it |him |her )?at)\b/i;

const mileageWords = /\b(miles?|mileage|odometer|odo|clock(ed|s)?|km|kms|kilomet(er|re)s?|showing|counter|speedo(meter)?|turned)\b/i;

/** More than this over the standard bore is another engine. Inches. */
const mostOverboreInches = 0.2;

export function notesOn(claims: readonly Claim[]): ClaimNotes {
  return {
    boredOver: claims.some(isOverbore),
    milesNamed: rangeOf(
      claims.filter(({ component, attribute, quote }) => component === "odometer" && attribute === "mileage" && mileageWords.test(quote)),
      "mi",
    ),
    sumsNamed: sumsIn(claims),
    modelYears: modelYearsIn(claims),
    litersNamed: rangeOf(
      claims.filter(
        ({ component, attribute, quote }) => component === "engine" && attribute === "displacement" && displacementWords.test(quote),
      ),
      "L",
    ),
    sumsOfMoney: new Set(claims.flatMap((claim) => (isMoney(claim) ? [Number(claim.value)] : []))),
  };
}

function sumsIn(claims: readonly Claim[]): ClaimNotes["sumsNamed"] {
  const sums = claims.flatMap((claim) =>
    claim.attribute === "price" && typeof claim.value === "number" && circumstanceOf(claim) === null && moneyWords.test(claim.quote)
      ? [claim.value]
      : [],
  );
  return sums.length === 0 ? null : { least: Math.min(...sums), most: Math.max(...sums) };
}

/** An asking price is not put at twice or half of itself: a bare figure so far off is another sum. */
const mostTimesPrice = 2.5;

function modelYearsIn(claims: readonly Claim[]): ClaimNotes["modelYears"] {
  const years = claims.flatMap((claim) =>
    claim.component === "vehicle" &&
    claim.attribute === "year" &&
    claim.time === "today" &&
    typeof claim.value === "number" &&
    isVehicleYear(claim)
      ? [claim.value]
      : [],
  );
  return years.length === 0 ? null : { first: Math.min(...years), last: Math.max(...years) };
}

/** No vehicle is built so many years from its model year: a date further off was misread. */
const mostYearsFromModel = 12;

/** Whether a date of building may be this vehicle's. */
export function isLikelyBuildDate({ value }: Claim, { modelYears }: ClaimNotes): boolean {
  const year = Number(/^\d{4}/.exec(String(value))?.[0]);
  if (modelYears === null || !Number.isFinite(year)) return true;
  return year > modelYears.first - mostYearsFromModel && year < modelYears.last + mostYearsFromModel;
}

/** A unit of displacement in so many words. */
const displacementWords = /\b(cubic|inch(es)?|c\.?i\.?d?|cubes|lit(er|re)s?|cc|cu)\b/i;

/** The least and the most of figures that their own words name; null where none is. */
function rangeOf(claims: readonly Claim[], unit: "mi" | "L"): { least: number; most: number } | null {
  const amounts = claims.flatMap(({ value, unit: spoken }) => {
    const amount = typeof value === "number" ? convert(value, spoken ?? unit, unit) : undefined;
    return amount === undefined ? [] : [amount];
  });
  if (amounts.length === 0) return null;
  return amounts.reduce((range, amount) => ({ least: Math.min(range.least, amount), most: Math.max(range.most, amount) }), {
    least: amounts[0]!,
    most: amounts[0]!,
  });
}

/** Beyond this many times what was named, a bare number counts something else: turns, octane, pounds. */
const mostTimesApart = { mi: 8, L: 2.2 } as const;

/** Whether a number without words of its own is of quite another size than those that have them. */
function isOfAnotherSize(claim: Claim, range: ClaimNotes["milesNamed"], unit: "mi" | "L"): boolean {
  const amount = typeof claim.value === "number" ? convert(claim.value, claim.unit ?? unit, unit) : undefined;
  if (range === null || amount === undefined) return false;
  return amount * mostTimesApart[unit] < range.least || amount > mostTimesApart[unit] * range.most;
}

/** Whether a figure taken for a displacement may be one. */
export function isLikelyDisplacement(claim: Claim, notes: ClaimNotes): boolean {
  return displacementWords.test(claim.quote) || !isOfAnotherSize(claim, notes.litersNamed, "L");
}

function isOverbore({ component, part, attribute, value, unit }: Claim): boolean {
  if (component !== "engine") return false;
  return (
    part === "overbore" || (attribute === "size" && unit === "in" && typeof value === "number" && value > 0 && value < mostOverboreInches)
  );
}

function isMoney({ attribute, value, quote }: Claim): boolean {
  return (
    typeof value === "number" && (attribute === "price" || (attribute === "mileage" && moneyWords.test(quote) && !mileageWords.test(quote)))
  );
}

/** Other things that are counted, or that a dial is marked with. */
const noMileage =
  /\b((ring|call|phone|telephone|text) (me|us)|hours?|idle|rpm|revs|goes (up )?to|red ?lines?|marked to|miles (an|per) hour|mph|(years?|months?|days?) old)\b/i;

/** How far a warranty reaches. */
const warranted = /\b(whichever|warrant(y|ed|ies)|guarantee\w*|or an? (hundred|\w+) thousand (miles|km|kilomet(er|re)s))\b/i;

function yearLike(value: Claim["value"]): boolean {
  return typeof value === "number" && Number.isInteger(value) && value >= 1900 && value <= 2035;
}

/** Within a thousand of what was named, in miles: the same figure said rounder. */
function echoes(claim: Claim, named: { readonly least: number; readonly most: number }): boolean {
  const amount = convert(Number(claim.value), claim.unit ?? "mi", "mi") ?? 0;
  return amount >= named.least - 1000 && amount <= named.most + 1000;
}

/** Whether a figure taken for a mileage is surely one, and not the price said once more. */
export function isSurelyMileage(claim: Claim, notes: ClaimNotes): boolean {
  if (warranted.test(claim.quote)) return false;
  if (yearLike(claim.value) && !mileageWords.test(claim.quote)) return false;
  if (/\b(goes (up )?to|marked to|hours?|idle)\b/i.test(claim.quote) && !/\b(miles?|mileage|km|kilomet(er|re)s?)\b/i.test(claim.quote))
    return false;
  if (mileageWords.test(claim.quote)) return true;
  // Bare thousands beside a mileage that was named are an echo of it at best, and more often a speed or a price.
  if (notes.milesNamed !== null && typeof claim.value === "number" && spokenStep(claim.value) >= 1000 && !echoes(claim, notes.milesNamed))
    return false;
  if (noMileage.test(claim.quote) || isOfAnotherSize(claim, notes.milesNamed, "mi")) return false;
  return !moneyWords.test(claim.quote) && !notes.sumsOfMoney.has(Number(claim.value));
}

const currencyWords = /\b(dollars?|bucks|pounds?|quid|grand|thousand|hundred|euros?)\b|[$£€]/i;

/** Whether a figure taken for a price is surely one: a bare 1970 is likelier the model year said once more, and a distance names its unit. */
export function isSurelyPrice({ value, quote, zone }: Claim, { sumsNamed }: ClaimNotes): boolean {
  const bare = !moneyWords.test(quote) && !currencyWords.test(quote);
  if (
    bare &&
    sumsNamed &&
    typeof value === "number" &&
    (value * mostTimesPrice < sumsNamed.least || value > mostTimesPrice * sumsNamed.most)
  )
    return false;
  // In the papers a bare figure is a bill's or a reading's.
  if (zone === "documents" && !moneyWords.test(quote)) return false;
  if (/\bstock( (number|no))?\b/i.test(quote) || (mileageWords.test(quote) && !moneyWords.test(quote))) return false;
  return !yearLike(value) || moneyWords.test(quote) || currencyWords.test(quote);
}
