import type { ClaimValue, UnitName } from "../../../shared-types/index.ts";
import type { NumberKind } from "../model.ts";
import { lookUp } from "../vocabulary/number-words.ts";
import type { Topic } from "../vocabulary/topic-cues.ts";
import type { Line } from "./pieces.ts";
import { pieceAtOffset } from "./pieces.ts";

/** A reading before the sentence around it has been weighed. */
export interface Draft {
  readonly kind: NumberKind;
  readonly value: ClaimValue;
  readonly unit?: UnitName | undefined;
  readonly parts?: readonly number[] | undefined;
  /** How likely without any context, 0 to 1. */
  readonly weight: number;
  readonly repaired?: boolean | undefined;
  /** What the words around must speak of for this reading to gain. */
  readonly topic?: Topic | undefined;
  /** True where the unit was said and can mean nothing else: words about other things nearby take nothing from it. */
  readonly unitSaid?: boolean | undefined;
  /** True for a value that needs its topic: without a word of it nearby the reading is not plausible at all. */
  readonly needsTopic?: boolean | undefined;
}

/** A stretch of pieces (end exclusive) and what it may mean. */
export interface Find {
  readonly first: number;
  readonly end: number;
  readonly drafts: readonly Draft[];
  /** True where a unit word may follow and turn the value into a measure. */
  readonly takesUnit?: boolean | undefined;
}

export interface RuleExample {
  readonly heard: string;
  readonly meant: ClaimValue;
}

/** One way a number is spoken. The test of the rule tables checks that `example` is read by this very rule. */
export interface NumberRule {
  readonly name: string;
  readonly example: RuleExample;
  readonly find: (line: Line, at: number) => readonly Find[];
}

/** Named groups of a match; a group that took no part is "". */
export type Groups = Readonly<Record<string, string>>;

/**
 * A rule from a regular expression over the line's text, tried at a piece's start and bound to end at a piece's end.
 * `(?<name>…)` groups reach `read`; no draft means the words are no such number.
 */
export function phraseRule(
  rule: { name: string; example: RuleExample; pattern: string; takesUnit?: boolean },
  read: (groups: Groups, line: Line, first: number) => readonly Draft[],
): NumberRule {
  const pattern = new RegExp(`(?:${rule.pattern})(?= |$)`, "y");
  return {
    name: rule.name,
    example: rule.example,
    find(line, at) {
      pattern.lastIndex = line.starts[at]!;
      const match = pattern.exec(line.text);
      if (!match || match[0] === "") return [];
      const end = pieceAtOffset(line, match.index + match[0].length + 1);
      if (end === undefined || end <= at) return [];
      const groups: Record<string, string> = {};
      for (const [name, value] of Object.entries(match.groups ?? {})) groups[name] = value ?? "";
      const drafts = read(groups, line, at);
      return drafts.length === 0 ? [] : [{ first: at, end, drafts, takesUnit: rule.takesUnit }];
    },
  };
}

/** The digits a stretch of pieces spells: "2 oh 5s" gives "205". Homophones count as the digit they stand for. */
export function digitsOf(text: string): string {
  return text
    .split(" ")
    .map((word) => lookUp(homophoneDigit, word) ?? word.replace(/\D/g, ""))
    .join("");
}

const homophoneDigit: Readonly<Record<string, string>> = { to: "2", too: "2", for: "4", fore: "4", ate: "8", won: "1", oh: "0" };

export function roundTo(value: number, places: number): number {
  const factor = 10 ** places;
  return Math.round(value * factor) / factor;
}
