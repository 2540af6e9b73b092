import {
  denialMatter,
  type Matter,
  type MatterKind,
  matterCounts,
  matterCountWords,
  matterName,
  mattersOf,
  openMatters,
  promiseMatter,
  questionMatter,
  type RecordingDetail,
  type SeenNote,
  standingNotes,
} from "../../shared-types/index.ts";
import { counted } from "../shared/count.ts";
import { type CheckItem, standingFirst } from "./queue.ts";

type MatterItem = Extract<CheckItem, { kind: MatterKind }>;

export function isMatter(item: CheckItem): item is MatterItem {
  return item.kind === "denial" || item.kind === "promise" || item.kind === "question";
}

/** What a person can note, of what the list shows; undefined where the analysis no longer finds it. */
export function matterOf({ kind, key }: MatterItem, { analysis }: Pick<RecordingDetail, "analysis">): Matter | undefined {
  if (kind === "denial") return analysis.denials.filter((denial) => denial.key === key).map(denialMatter)[0];
  if (kind === "promise") return analysis.promises.filter(({ id }) => id === key).map(promiseMatter)[0];
  return analysis.questions.filter((question) => question.key === key).map(questionMatter)[0];
}

type Ground = Pick<RecordingDetail, "analysis" | "lap" | "rulings" | "seenNotes">;

/** What nobody has dealt with, in the order of the list. */
export function mattersLeft({ analysis, lap, rulings, seenNotes }: Ground): Matter[] {
  return openMatters({ analysis, spans: lap.filter(({ zoneSpanId }) => zoneSpanId !== null), rulings, seenNotes });
}

/** The place in the list of a matter: the first of its words, where they were said twice. */
export function itemOfMatter({ about, key }: Pick<Matter, "about" | "key">, { analysis }: Pick<RecordingDetail, "analysis">): CheckItem {
  if (about !== "promise") return { kind: about, key };
  return { kind: "promise", key: analysis.promises.find((promise) => promise.key === key)?.id ?? key };
}

export interface MatterState {
  readonly open: boolean;
  /** A word or two for the list: "open", "seen by RT". */
  readonly sign: string;
}

/** How each matter stands, by its name. */
export function matterStates(detail: Ground): (matter: Matter) => MatterState {
  const left = new Set(mattersLeft(detail).map(matterName));
  const standing = standingNotes(detail.seenNotes);
  return (matter) => {
    const name = matterName(matter);
    if (left.has(name)) return { open: true, sign: standing.get(name)?.state === "waits" ? "open again" : "open" };
    const note = standing.get(name);
    if (note?.state === "seen") return { open: false, sign: `seen by ${note.initials}` };
    return { open: false, sign: matter.about === "question" ? "marked since" : "ruled out" };
  };
}

/** Notes on one matter, the standing one first, then the superseded ones from the latest back. */
export function notesOn(notes: readonly SeenNote[], matter: Matter): SeenNote[] {
  return standingFirst(notes.filter((note) => matterName(note) === matterName(matter)));
}

/** Notes whose matter the analysis no longer finds; they stay readable. */
export function notesWithoutMatter({ analysis, seenNotes }: Pick<RecordingDetail, "analysis" | "seenNotes">): SeenNote[] {
  const known = new Set(mattersOf(analysis).map(matterName));
  return standingFirst(seenNotes.filter((note) => !known.has(matterName(note))));
}

/** "3 conflicts and 1 denial by the stock sheet open"; "" where nothing is. */
export function openWords(conflicts: number, matters: readonly Matter[]): string {
  const rest = matterCountWords(matterCounts(matters));
  const first = conflicts > 0 ? counted(conflicts, "conflict", "conflicts") : "";
  if (rest === "") return first;
  return first === "" ? rest : `${first}, and ${rest}`;
}
