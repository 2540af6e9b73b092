/** A caption as a parser found it, before ends are filled in and times are checked. */
export interface TimedText {
  /** Seconds; may be anything a number can be until `finishTranscript` has looked. */
  readonly start: number;
  /** Seconds, or null where the file gives none. */
  readonly end: number | null;
  /** Words with the file's markup. */
  readonly text: string;
  /** 1-based line of its time. */
  readonly line: number;
}

/** Why a parser gave up, for the reader to turn into an error that names the file. */
export interface Refusal {
  readonly code: "broken-time" | "broken-json" | "broken-segment";
  readonly line: number;
  readonly complaint: string;
}

export type Parsed = { readonly timed: readonly TimedText[]; readonly refusal: null } | { readonly timed: null; readonly refusal: Refusal };

export const parsedAs = (timed: readonly TimedText[]): Parsed => ({ timed, refusal: null });
export const refused = (code: Refusal["code"], line: number, complaint: string): Parsed => ({
  timed: null,
  refusal: { code, line, complaint },
});
