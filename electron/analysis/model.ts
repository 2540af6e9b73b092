import type { Caption, ClaimValue, TextSpan, UnitName, ZoneName } from "../../shared-types/index.ts";

/**
 * What the passes hand to one another. Every pass takes earlier results and returns new ones; nothing is changed in place.
 * Order: transcript -> numbers -> zones -> claims -> comparison -> chapters (see analyse.ts).
 */

/** One word of the transcript as it stands, and where it stands. */
export interface Token {
  /** Position in `Speech.tokens`. */
  readonly index: number;
  readonly caption: number;
  /** UTF-16 offsets in the caption's text, end exclusive, punctuation left outside (but "4.11", "235/60", "'69", "it's" are one token). */
  readonly start: number;
  readonly end: number;
  /** As written. */
  readonly text: string;
  /** Lower case, curly apostrophes made straight; "it's" stays "it's". */
  readonly word: string;
  /** Punctuation directly after the word (".", ",", "?", "..." and so on), or "". */
  readonly after: string;
  /** Seconds: interpolated over the caption's characters, or the recogniser's own word time. */
  readonly at: number;
}

/**
 * A stretch of speech that reads as one sentence or clause: cut at sentence punctuation and, where the recogniser wrote none,
 * at spoken joints ("so", "and then", "okay", "now") and pauses. May run over captions.
 */
export interface Sentence {
  readonly index: number;
  /** Token range, end exclusive. */
  readonly first: number;
  readonly end: number;
  readonly startsAt: number;
  readonly endsAt: number;
}

/** The transcript as speech: what the captions say once, without rolled-up repeats, with doubtful captions set apart. */
export interface Speech {
  readonly captions: readonly Caption[];
  /** Seconds. */
  readonly duration: number;
  /** In spoken order; words repeated by a rolling caption appear once, under the caption that spoke them first. Doubtful captions give none. */
  readonly tokens: readonly Token[];
  readonly sentences: readonly Sentence[];
  readonly doubtful: readonly { readonly caption: number; readonly why: string }[];
  /** False where the recogniser wrote next to no sentence punctuation. */
  readonly punctuated: boolean;
  /** True where captions are paragraphs, each ending where a sentence does. */
  readonly paragraphs: boolean;
}

/** What a number can be before a sentence says what it is about. */
export type NumberKind =
  | "tire-size"
  | "date-code"
  | "vin"
  | "fraction"
  | "decimal"
  | "integer"
  | "ordinal"
  | "year"
  | "measure"
  | "money"
  | "ratio"
  | "dimensions"
  | "range"
  /** Width alone ("235") or width and aspect ("215/70") of a tire whose rest is said elsewhere; `parts` has the numbers. */
  | "tire-partial"
  /** Load index and speed symbol after a tire size: "91V". */
  | "service-description"
  /** A month (1969-04) or a day (1965-01-04). */
  | "date"
  | AsideKind;

/** Numbers said in passing that are no claim about the vehicle: see `isAside`. */
export type AsideKind =
  | "percent"
  | "angle"
  | "engine-speed"
  | "road-speed"
  | "fuel-economy"
  | "duration"
  | "clock-time"
  /** "one, two, three, four": counted aloud; `parts` has the numbers. */
  | "counting"
  | "telephone"
  /** The name of an oil grade or a refrigerant ("0W-40", "R-134a"). */
  | "designation";

const asideKinds: ReadonlySet<NumberKind> = new Set([
  "percent",
  "angle",
  "engine-speed",
  "road-speed",
  "fuel-economy",
  "duration",
  "clock-time",
  "counting",
  "telephone",
  "designation",
] satisfies AsideKind[]);

/** True for a number said in passing (degrees, rpm, minutes, a telephone number) that is no claim about the vehicle. */
export function isAside(kind: NumberKind): kind is AsideKind {
  return asideKinds.has(kind);
}

/** One possible value of a stretch of words. */
export interface Reading {
  readonly kind: NumberKind;
  /** As a claim would carry it: 235/60R15 for a tire size, 2219 or 2019-W22 for a date code, a plain number for the rest. */
  readonly value: ClaimValue;
  readonly unit: UnitName | null;
  /** For "dimensions" (14 by 6): every number in spoken order; for "range": low and high. */
  readonly parts: readonly number[] | null;
  /** Rule that made it, from the rule table. */
  readonly rule: string;
  /** Higher is likelier; readings of one number are sorted by it. 0 to 1. */
  readonly likelihood: number;
  /** True where this reading needs more than the plain words (homophone, lost separator, shorthand): a claim that uses it records a repair. */
  readonly repaired: boolean;
}

/** A number in the speech: a token range and all its plausible readings, likeliest first. */
export interface SpokenNumber {
  readonly index: number;
  /** Token range, end exclusive; unit words belong to it. */
  readonly first: number;
  readonly end: number;
  readonly readings: readonly Reading[];
  /** `repaired` of the first reading. */
  readonly broken: boolean;
}

/** A stretch of the recording seen from one place, by token. */
export interface ZoneStretch {
  readonly zone: ZoneName;
  readonly firstToken: number;
  readonly start: number;
  readonly end: number;
}

/** The text spans (one per caption) that a token range covers. */
export function spansOfTokens(tokens: readonly Token[], first: number, end: number): TextSpan[] {
  const spans: TextSpan[] = [];
  for (const token of tokens.slice(first, end)) {
    const last = spans.at(-1);
    if (last && last.caption === token.caption) spans[spans.length - 1] = { ...last, end: token.end };
    else spans.push({ caption: token.caption, start: token.start, end: token.end });
  }
  return spans;
}
