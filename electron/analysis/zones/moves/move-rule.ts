import type { ZoneName } from "../../../../shared-types/index.ts";

/** Phrases by which the camera is moved. Patterns are over plain words, with "|" where a sentence ends (see spoken-line.ts). */
export interface MoveRule {
  readonly name: string;
  /** Where the words take the camera. `side`: the side they name; `other-side`: the one not seen last; null: away, without saying where. */
  readonly zone: ZoneName | "side" | "other-side" | null;
  /** Moves wherever it is said. */
  readonly phrase?: string;
  /** Moves only where a sentence begins or after a spoken turn ("okay", "now"): the bare name of a place is a heading there. */
  readonly heading?: string;
  /** Without punctuation, moves also elsewhere, unless an article, a preposition or the like stands before it. */
  readonly bareHeading?: string;
  /** 1 to 8: how surely the words move the camera. */
  readonly strength: number;
  /** A zone these words leave, if they say so. */
  readonly leaves?: ZoneName;
  /** True where the walk to the next place begins with these words even if the place follows in the next sentence ("hop out. The trunk …"). */
  readonly setsOff?: boolean;
  /** True where the words say what will be done: they hide a surer rule that would read them as done. */
  readonly announces?: boolean;
  /** True where only a British narrator moves with these words. */
  readonly british?: boolean;
  /** Zones from which alone these words move the camera here: "and back" ends a drive, "in we go" behind an open tailgate is the load bay. */
  readonly onlyFrom?: readonly ZoneName[];
  /** Zones from which these words mean another place. */
  readonly neverFrom?: readonly ZoneName[];
  readonly example: string;
  /** Much the same words that move nothing. */
  readonly quiet: string;
}

/** Up to so many words, none of them the end of a sentence. */
export const gap = (words: number): string => `(?: (?!\\|)[^ ]+){0,${words}}?`;

const turnWords = "okay|ok|alright|all right|now|so|anyway|anyhow|then|next|well|here|finally|lastly|first|okay so|alright so";
const leadIns = `(?:(?:${turnWords}|right|and|but|yeah|oh|there|just|lets see|over) )*`;
/** Where a heading may stand: at a sentence's start or after a turn. */
const headingPlace = new RegExp(`(?:(?<=\\| )|(?<=^)|(?<=(?<![a-z])(?:${turnWords}|guys|folks|yall|everybody) ))\\b`, "g");

/** Offsets of a line at which a heading may stand: looked for once, for all headings. */
export const headingPlaces = (text: string): number[] => [...text.matchAll(headingPlace)].map(({ index }) => index);
/** Words before which no heading stands in speech without punctuation: what follows them belongs to them. */
const bindingWords =
  "the|a|an|on|of|to|from|in|into|at|by|this|that|these|those|his|her|my|your|our|their|its|for|with|or|both|other|same|like|as|up|down|over|toward|towards|near|front|rear|left|right|one|each|every|either|is|are|was|were|be|got|has|have|had|than|off|new|old|little|big|under|behind|inside|no|not|any|some|all|whole|only|driver|drivers|passenger|passengers|power|rust|along|across|around|round";
const bareHeadingPlace = `(?<!(?<![a-z])(?:${bindingWords}) )`;

export interface MoveMatcher {
  readonly rule: MoveRule;
  readonly strength: number;
  readonly pattern: RegExp;
  /** True where the pattern is tried at `headingPlaces` alone; it is sticky then. */
  readonly atHeadings: boolean;
  /** Headings name a place and do nothing, so no word before them can put the doing elsewhere. */
  readonly isHeading: boolean;
}

/** What remains of a heading's strength where no punctuation shows that it is one. */
const bareHeadingLoss = 1.5;

const whole = (source: string, flags = "g") => new RegExp(`\\b(?:${source})(?![a-z0-9])`, flags);

/** The matches of a pattern in a line, none over another. */
export function matchesOf({ pattern, atHeadings }: MoveMatcher, text: string, places: readonly number[]): RegExpExecArray[] {
  if (!atHeadings) return [...text.matchAll(pattern)];
  const found: RegExpExecArray[] = [];
  let end = 0;
  for (const place of places) {
    if (place < end) continue;
    pattern.lastIndex = place;
    const match = pattern.exec(text);
    if (!match) continue;
    found.push(match);
    end = match.index + match[0].length;
  }
  return found;
}

/** The rules as patterns, for speech with or without punctuation. */
export function moveMatchers(rules: readonly MoveRule[], punctuated: boolean): MoveMatcher[] {
  return rules.flatMap((rule) => {
    const matchers: MoveMatcher[] = [];
    if (rule.phrase) matchers.push({ rule, strength: rule.strength, pattern: whole(rule.phrase), isHeading: false, atHeadings: false });
    const heading = [rule.heading, rule.bareHeading].filter((source) => source !== undefined).join("|");
    if (heading)
      matchers.push({ rule, strength: rule.strength, pattern: whole(`${leadIns}(?:${heading})`, "y"), isHeading: true, atHeadings: true });
    if (rule.bareHeading && !punctuated) {
      matchers.push({
        rule,
        strength: rule.strength - bareHeadingLoss,
        pattern: whole(`${bareHeadingPlace}(?:${rule.bareHeading})`),
        isHeading: true,
        atHeadings: false,
      });
    }
    return matchers;
  });
}
