import type { ComponentName, ZoneName } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";

/** A count that no number word gives: things named one after another, or added up. */
export interface CountFound {
  readonly component: ComponentName;
  readonly part: string;
  readonly value: number;
  /** "at least" where only a part of them was named; else null. */
  readonly circumstance: string | null;
  /** Token range of the words that count, end exclusive. */
  readonly first: number;
  readonly end: number;
  /** Token whose caption carries the count: the last one named, the sum. */
  readonly at: number;
}

/** What the speech holds, laid out for the rules. */
export interface CountedSpeech {
  readonly speech: Speech;
  readonly mentions: readonly PartMention[];
  zoneAt(token: number): ZoneName;
}

export interface CountingRule {
  readonly name: string;
  readonly find: (counted: CountedSpeech) => CountFound[];
  readonly examples: readonly {
    readonly says: string;
    readonly zone: ZoneName;
    readonly gives: Pick<CountFound, "component" | "part" | "value" | "circumstance">;
  }[];
  readonly quiet: readonly { readonly says: string; readonly zone: ZoneName }[];
}

/** The words of a token range, lower case, single blanks; sentence ends are kept as " ." so that phrases do not run over them. */
export function wordsOf({ tokens }: Speech, first: number, end: number): string {
  return tokens
    .slice(Math.max(0, first), end)
    .map(({ word, after }) => (/[.?!]/.test(after) ? `${word} .` : word))
    .join(" ");
}

/** The latest of the parts named within so many words before a token. */
export function namedBefore(
  { mentions }: CountedSpeech,
  token: number,
  within: number,
  wanted: (mention: PartMention) => boolean,
): PartMention | undefined {
  return mentions.findLast((mention) => mention.end <= token && token - mention.end <= within && wanted(mention));
}
