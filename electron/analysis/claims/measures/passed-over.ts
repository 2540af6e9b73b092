import type { NumberKind, Reading, Speech, SpokenNumber } from "../../model.ts";
import { type NumberSurroundings, phraseOf } from "./surroundings.ts";

/** Words of a speaker who puts a number right; the number before them is no claim. */
const takesBack =
  /^(?!and\b)(?:\S+ ){0,2}?(?:\. )?(?:no(?= (?:i|i'm|it|it's|that's|sorry|wait|hang|hold|not|make|actually|ma'am|sir|the|a|you)\b|$)|sorry|wait|correction|rather|i mean|i'm lying|i beg your pardon|beg your pardon|forgive me|do forgive me|my mistake|i tell a lie|tell a lie|pardon me|scratch that|strike that|make that|make it|hang on|hold on|let me|excuse me|count (?:them|with))(?: |$)/;

/** Numbers a speaker put right within a breath ("it's a 600, no I'm sorry it's a 650"), and the number that puts each right. */
export function takenBack(speech: Speech, numbers: readonly SpokenNumber[]): Map<number, number> {
  const slips = new Map<number, number>();
  numbers.forEach((number, at) => {
    const next = numbers[at + 1];
    if (!next || next.first - number.end < 1 || next.first - number.end > 12) return;
    const between = phraseOf(speech.tokens, number.end, next.first);
    if (!takesBack.test(between) || /\b(?:and|but) (?!no\b)/.test(between)) return;
    const kinds = new Set(number.readings.map((reading) => reading.kind));
    const [said] = number.readings;
    const [meant] = next.readings;
    // Another order of size is another thing: "forty five pounds and no smoke, the four speed …".
    const apart =
      typeof said?.value === "number" &&
      typeof meant?.value === "number" &&
      !isOfOneSize(said.value, meant.value) &&
      !number.readings.some(
        ({ kind, value }) => kind === "year" && next.readings.some((other) => other.kind === kind && isOfOneSize(value, other.value)),
      );
    const isAmount = (reading: Reading | undefined): boolean => typeof reading?.value === "number" && amounts.has(reading.kind);
    const bothAmounts = isAmount(said) && isAmount(meant);
    if (!apart && (bothAmounts || next.readings.some((reading) => kinds.has(reading.kind)))) slips.set(number.index, next.index);
  });
  return slips;
}

function isOfOneSize(first: Reading["value"], second: Reading["value"]): boolean {
  return typeof first === "number" && typeof second === "number" && first <= second * 5 && second <= first * 5;
}

/** Kinds that put each other right ("seven inch wide, no, six and a half"). */
const amounts: ReadonlySet<NumberKind> = new Set(["integer", "decimal", "fraction", "measure", "money", "ratio"]);

const asides: ReadonlySet<NumberKind> = new Set([
  "percent",
  "angle",
  "engine-speed",
  "road-speed",
  "fuel-economy",
  "duration",
  "clock-time",
  "telephone",
]);

/** Said in passing: most likely a percentage, a speed, a span of time. */
export function isAside(number: SpokenNumber, words: string): boolean {
  // Hours on a meter are no span of time.
  if (number.readings[0]!.kind === "duration" && /\b(?:hour meter|engine hours|pto|p t o|idle hours|generator)\b/.test(words)) return false;
  // Months of test or of warranty are what is sold with the vehicle.
  // A battery's health is a share, and its cover a term of years.
  if (number.readings[0]!.kind === "percent" && /\b(?:health|soh)\b/.test(words)) return false;
  if (number.readings[0]!.kind === "duration" && /\byears?\b/.test(words) && /\b(?:battery|pack|warranty|guarantee)\b/.test(words))
    return false;
  // "On the rest of it, it's me, for six months": the dealer's own cover.
  if (number.readings[0]!.kind === "duration" && /\b(?:me|us|we|i) (?:cover (?:it|you) )?for [a-z\d]+ months?\b/.test(words)) return false;
  if (number.readings[0]!.kind === "duration" && /\bmonths?\b/.test(words) && /\b(?:mot|ticket|warranty|guarantee)\b/.test(words))
    return false;
  return asides.has(number.readings[0]!.kind);
}

/** "The other three" points; it measures nothing. */
const otherOnes = /\bother$/;

/** Other people's vehicles and other builds, where the number itself stands in the phrase; tested on the words before, "#", and the words after. */
const othersVehicles: readonly RegExp[] = [
  /\bmy (?:\w+ )?(?:neighbou?r|buddy|friend|mate|brother|cousin|uncle|dad|father|boss|wife|husband|son|nephew)(?:'s)?(?: in law)?(?: has| had| owns| bought| drives|'s)? (?:got |had )?(?:a|an|one|the)\b(?! (?:fellow|fella|feller|guy|man|shop|lad|bloke|chap|woman|lady|girl|boy|kid|place|outfit|mechanic|painter|upholsterer|trimmer|garage|receipt|bill)\b)[^.]*#/,
  /\bi (?:had|used to have|once had|owned) (?:a|an|one)\b[^.]*#(?:[^.]*\bin (?:my|an?) (?:old|other|last|first)\b)/,
  /#[^.]{0,30}\bthis (?:one|car|truck) (?:has less|doesn't|does not|isn't|ain't|hasn't)\b/,
  /\bthey (?:only )?(?:made|built|sold)\b[^.]*\b(?:of these|of them)\b[^.]*#/,
  // Wishes and questions: "I'd be tempted by a 3.7", "would three deuces bolt on to it".
  /\b(?:i'd|you'd|you could) be tempted by\b[^.]{0,14}#/,
  /\bwould (?:it (?:fit|take|wear)|an? )[^.]{0,14}#|\bwould # [^.]{0,24}\b(?:fit|bolt|go|work|drop)\b/,
  // Another that stood here: "there was a three door in here last month".
  /\bthere was an?\b[^.]{0,20}#[^.]{0,50}\b(?:in here|through here) (?:last|the other|a while)\b/,
];

/** Builds of the same model that this one is not, the number itself as "@": "the taxis had a 4.3", "the cheaper one had a two barrel", "they made a 4.10". */
const otherBuild: readonly RegExp[] = [
  // "A two liter bolts right up as well".
  /\b(?:an?|the|any) (?:bigger |newer |later )?@(?: \w+){0,3} (?:bolts|drops|swaps|slots|slips|goes) (?:right |straight )?(?:up|in)\b(?! (?:here|this))/,
  /\bthe (?:\w+ )?(?:cheaper|dearer|bigger|smaller|later|earlier|big|small|base|sports?|manual|automatic|diesel|petrol|gas|estate|wagon|saloon|sedan|police|taxi|export|battery|early|late) (?:one|ones|car|cars|model|models|version|versions|trucks?)(?:'s)? (?:had|has|have|got|came|come|with|used|ran|run)\b[^.#]{0,24}@/,
  /\bthe (?:taxis|estates?|wagons|saloons?|coupes|convertibles|vans|diesels|automatics|manuals|later ones|early ones) (?:had|have|got|came with|ran)\b[^.#]{0,24}@/,
  /\bthey (?:also )?(?:made|did|offered|sold|built) an?(?: \w+){0,2} @(?![^.]{0,24}\b(?:in (?:this|it|here)|on (?:this|it)|for (?:it|this)))/,
  /\bthey had an?(?: \w+){0,2} @(?: \w+){0,2} you could (?:get|have|order|buy)\b/,
  /@ (?:\w+ ){0,2}(?:trucks|cars|models|versions|wagons|vans) (?:would|had|have|were|will)\b/,
  /\b(?:changed|swapped|converted|turned) (?:his|hers|theirs) (?:over )?to(?: an?| the)? @/,
];

/** Units and things no claim carries. */
const unclaimed =
  /^(?:some (?:thousand|odd|hundred)|amps?|watts?|lumens?|cranking|cold cranking|channels?|megabytes?|songs|people|bucks off|pages?)\b/;

/** A legal limit is no claim about this vehicle: "the law's thirty five on the front windows". */
const legalLimit = /\bthe law(?:'s| is| says| wants| asks| only asks)(?: for| only)*$/;

/** True where a number points, belongs to something no claim carries, or to another vehicle. */
export function claimsNothing(number: SpokenNumber, around: NumberSurroundings): boolean {
  if (unclaimed.test(around.after) || othersVehicles.some((others) => others.test(`${around.before} # ${around.after}`))) return true;
  if (otherBuild.some((other) => other.test(`${around.before} @ ${around.after}`))) return true;
  if (legalLimit.test(around.before)) return true;
  // "Sixty some thousand" is neither 1960 nor a thousand.
  if (/^(?:thousand|hundred)$/.test(around.said)) return true;
  return otherOnes.test(around.before) && number.readings[0]!.kind === "integer" && number.end - number.first === 1;
}
