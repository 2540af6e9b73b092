import { type Matter, type MatterKind, matterName, type SeenState } from "../../shared-types/index.ts";
import { counted } from "../shared/count.ts";

/** A half-written note. */
export interface SeenDraft {
  readonly state: SeenState | null;
  readonly reason: string;
  /** Whether the other open matters of its kind are noted with it. */
  readonly others: boolean;
}

export const emptySeen: SeenDraft = { state: null, reason: "", others: false };

/** Half-written notes, by the name of their matter. */
export type SeenDrafts = Map<string, SeenDraft>;

export interface SeenOption {
  readonly state: SeenState;
  readonly label: string;
}

/** What can be noted, in the order of the digit keys: what is open can only be noted as seen. */
export function seenOptions(isOpen: boolean): SeenOption[] {
  const seen: SeenOption = { state: "seen", label: "Seen, because…" };
  return isOpen
    ? [seen]
    : [
        { ...seen, label: "Seen, for another reason…" },
        { state: "waits", label: "Open it again" },
      ];
}

export type SeenFaults = Partial<Record<"state" | "reason", string>>;

export function faultsOfSeen({ state, reason }: SeenDraft): SeenFaults {
  return {
    ...(state === null ? { state: "Choose what you note." } : {}),
    ...(reason.trim() === "" ? { reason: "Say why, for whoever reads the record later." } : {}),
  };
}

/** The other open matters of the same kind. */
export function otherOpen(matter: Matter, left: readonly Matter[]): Matter[] {
  return left.filter((other) => other.about === matter.about && matterName(other) !== matterName(matter));
}

const kindNouns = {
  denial: ["denial", "denials"],
  promise: ["promise", "promises"],
  question: ["question", "questions"],
} as const satisfies Record<MatterKind, readonly [string, string]>;

/** "and the 2 other open promises, with this reason" */
export function othersWords(about: MatterKind, count: number): string {
  const [one, many] = kindNouns[about];
  return count === 1
    ? `Also the other open ${one}, with this reason`
    : `Also the ${counted(count, one, `other open ${many}`)}, with this reason`;
}

/** What the header says once it is noted. */
export function saidOfSeen(state: SeenState, matters: readonly Matter[]): string {
  const what = matters.length === 1 ? (matters[0]?.topic ?? "") : `${matters.length} matters`;
  return state === "seen" ? `Noted as seen: ${what}` : `Open again: ${what}`;
}
