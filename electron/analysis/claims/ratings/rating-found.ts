import type { ComponentName } from "../../../../shared-types/index.ts";
import type { Speech, SpokenNumber } from "../../model.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";

/** A rating that is told in words and numbers together: what a tire is marked with, how fast the engine turns at a speed. */
export interface RatingFound {
  readonly component: ComponentName;
  readonly part: string;
  /** As a reviewer reads it: "95H", "118 mph", "2600 rpm at 70 mph". */
  readonly value: string;
  /** Token range of the words that say it, end exclusive. */
  readonly first: number;
  readonly end: number;
}

export interface RatedSpeech {
  readonly speech: Speech;
  readonly numbers: readonly SpokenNumber[];
  readonly mentions: readonly PartMention[];
}

export interface RatingRule {
  readonly name: string;
  readonly find: (rated: RatedSpeech) => RatingFound[];
  readonly examples: readonly { readonly says: string; readonly gives: Pick<RatingFound, "component" | "part" | "value"> }[];
  readonly quiet: readonly string[];
}

/** Lower-case words of a token range. */
export function wordsBetween({ tokens }: Speech, first: number, end: number): string {
  return tokens
    .slice(Math.max(0, first), Math.max(0, end))
    .map((token) => token.word)
    .join(" ");
}

/** Whether one of the components was named within so many words before the token, and nothing else since. */
export function talkIsOf({ mentions }: RatedSpeech, token: number, components: readonly ComponentName[], within: number): boolean {
  const last = mentions.findLast((mention) => mention.first <= token && token - mention.end <= within);
  return last !== undefined && components.includes(last.component);
}
