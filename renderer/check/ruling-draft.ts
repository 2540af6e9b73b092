import type { Conflict, RulingDecision } from "../../shared-types/index.ts";
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
    { decision: "recogniser-error", side: null, label: "Recogniser's error" },
    { decision: "look-at-vehicle", side: null, label: "Look at the vehicle" },
  ];
}

export interface RulingDraft {
  readonly option: RulingOption | null;
  /** Which side was misheard, for a recogniser's error. */
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

export type RulingFaults = Partial<Record<"option" | "misheard" | "reason" | "rightWords", string>>;

export function faultsOfRuling(draft: RulingDraft): RulingFaults {
  const faults: RulingFaults = {};
  if (draft.option === null) faults.option = "Choose what you decide.";
  if (draft.reason.trim() === "") faults.reason = "Say why, for whoever reads the record later.";
  if (draft.option?.decision === "recogniser-error" && draft.misheard === null) faults.misheard = "Choose the side that was misheard.";
  if (draft.option?.decision === "recogniser-error" && draft.rightWords.trim() === "")
    faults.rightWords = "Write the words that were really said.";
  return faults;
}
