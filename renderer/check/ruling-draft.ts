import {
  type Conflict,
  placeOfRightWords,
  type RecordingDetail,
  type ReplacedWords,
  type RulingDecision,
  replacedWords,
} from "../../shared-types/index.ts";
import { sideLetter } from "../shared/claim-words.ts";

/** A decision the reviewer can choose. */
export interface RulingOption {
  readonly decision: RulingDecision;
  readonly side: number | null;
  readonly label: string;
}

/** The decisions on a conflict in the order of their digit keys: each side stands, then the rest. */
export function rulingOptions(conflict: Pick<Conflict, "sides">): RulingOption[] {
  return [
    ...conflict.sides.map((_, side) => ({ decision: "side-stands" as const, side, label: `${sideLetter(side)} stands` })),
    { decision: "both-hold", side: null, label: conflict.sides.length > 2 ? "All hold, because…" : "Both hold, because…" },
    { decision: "recogniser-error", side: null, label: "Recognizer's error" },
    { decision: "look-at-vehicle", side: null, label: "Look at the vehicle" },
  ];
}

/** The digit of each side that may have been misheard: they go on after the decisions' own. Null past 9. */
export function digitOfMisheard(options: readonly RulingOption[], side: number): number | null {
  const digit = options.length + side + 1;
  return digit <= 9 ? digit : null;
}

/** What a digit chooses: a decision, or a recognizer's error with its side. @param choice from 0, as the digits count from 1. */
export function rulingOfDigit(
  options: readonly RulingOption[],
  sides: number,
  choice: number | null,
): { readonly option: RulingOption; readonly misheard: number | null } | null {
  if (choice === null) return null;
  const own = options[choice];
  if (own) return { option: own, misheard: null };
  const option = options.find(({ decision }) => decision === "recogniser-error");
  const misheard = choice - options.length;
  return option && misheard < sides ? { option, misheard } : null;
}

/** What the header says once it is ruled; a look at the vehicle decides nothing yet. */
export function saidOfRuling({ decision, label }: Pick<RulingOption, "decision" | "label">, topic: string): string {
  return decision === "look-at-vehicle" ? `Still open until someone has looked at the vehicle: ${topic}` : `Decided on ${topic}: ${label}`;
}

export interface RulingDraft {
  readonly option: RulingOption | null;
  /** Which side was misheard, for a recognizer's error. */
  readonly misheard: number | null;
  readonly reason: string;
  readonly rightWords: string;
}

export const emptyRuling: RulingDraft = { option: null, misheard: null, reason: "", rightWords: "" };

/** Half-written rulings, by the key of their conflict. */
export type RulingDrafts = Map<string, RulingDraft>;

/** The side that a ruling names: the one that stands, or the one that was misheard. */
export function sideOfRuling({ option, misheard }: Pick<RulingDraft, "option" | "misheard">): number | null {
  return option?.decision === "recogniser-error" ? misheard : (option?.side ?? null);
}

/** Words of a side that a ruling replaces, and the moment they are said, in seconds. */
export interface SideWords extends ReplacedWords {
  readonly start: number;
}

type Spoken = Pick<RecordingDetail, "captions"> & { readonly analysis: Pick<RecordingDetail["analysis"], "claims" | "repairs"> };

function claimsOfSide(conflict: Pick<Conflict, "sides">, side: number | null, { analysis }: Spoken) {
  const ids = side === null ? [] : (conflict.sides[side]?.claims ?? []);
  return analysis.claims.filter(({ id }) => ids.includes(id));
}

/** The very words that the right words take the place of, one for each moment of the side. */
export function wordsOfSide(conflict: Pick<Conflict, "sides">, side: number | null, spoken: Spoken): SideWords[] {
  return claimsOfSide(conflict, side, spoken).map((claim) => ({
    ...replacedWords(claim, spoken.analysis.repairs, spoken.captions),
    start: claim.start,
  }));
}

/** Why the words cannot stand in the captions; nothing where they can. */
export function faultOfRightWords(
  conflict: Pick<Conflict, "sides">,
  side: number | null,
  rightWords: string,
  spoken: Spoken,
): string | undefined {
  const words = rightWords.trim();
  const replaced = wordsOfSide(conflict, side, spoken);
  if (replaced.length > 0 && replaced.every((one) => one.words === words))
    return "These are the words as they were recognized. Write what was really said.";
  const homeless = claimsOfSide(conflict, side, spoken).find(
    (claim) => placeOfRightWords(words, claim, spoken.analysis.repairs, spoken.captions) === null,
  );
  return homeless && words !== ""
    ? `Write the whole phrase as it was said: one word would take the place of “${homeless.quote}”.`
    : undefined;
}

export type RulingFaults = Partial<Record<"option" | "misheard" | "reason" | "rightWords", string>>;

/** @param ofWords what is wrong with the right words where they would stand, from `faultOfRightWords`. */
export function faultsOfRuling(draft: RulingDraft, ofWords?: string): RulingFaults {
  const faults: RulingFaults = {};
  if (draft.option === null) faults.option = "Choose what you decide.";
  if (draft.reason.trim() === "") faults.reason = "Say why, for whoever reads the record later.";
  if (draft.option?.decision === "recogniser-error" && draft.misheard === null) faults.misheard = "Choose the side that was misheard.";
  if (draft.option?.decision === "recogniser-error" && draft.rightWords.trim() === "")
    faults.rightWords = "Write the words that were really said.";
  else if (draft.option?.decision === "recogniser-error" && ofWords !== undefined) faults.rightWords = ofWords;
  return faults;
}
