import type { Conflict, Matter, MatterKind, Publication, RecordingDetail, Ruling } from "../../shared-types/index.ts";
import { counted } from "../shared/count.ts";
import { recordingPlace } from "../shared/place.ts";
import { itemOfMatter, mattersLeft } from "./matters-at-hand.ts";
import { type CheckItem, placeOfItem, waitsForLook } from "./queue.ts";

/** One thing to read before a recording goes out. */
export interface PublishLine {
  readonly words: string;
  /** Where the first of it is; null where there is none, or no place of its own. */
  readonly href: string | null;
}

/** What nobody has dealt with, of one kind. */
export interface OpenGroup {
  readonly kind: MatterKind;
  /** "2 denials by the stock sheet" */
  readonly words: string;
  readonly lines: readonly PublishLine[];
}

const groupWords = {
  denial: ["claim the stock sheet denies", "claims the stock sheet denies"],
  promise: ["promise", "promises"],
  question: ["question", "questions"],
} as const satisfies Record<MatterKind, readonly [string, string]>;

/** How a matter is named where it is told that nobody has dealt with it. */
export function matterLine({ about, topic, told }: Matter): string {
  return about === "question" ? told : topic;
}

/** How an open conflict is named there: with who sent it to the vehicle, so that nobody takes it for overlooked. */
export function openConflictLine({ key, topic }: Pick<Conflict, "key" | "topic">, rulings: readonly Ruling[]): string {
  const waits = waitsForLook(rulings, key);
  return waits ? `${topic}: to be looked at, says ${waits.initials}` : topic;
}

/** How many rulings and notes were made since the last publication. */
export function changesSince({ rulings, seenNotes }: Pick<RecordingDetail, "rulings" | "seenNotes">, { at: then }: Publication): number {
  return [...rulings, ...seenNotes].filter(({ at }) => at > then).length;
}

/** The last publication, where what went out is what stands: nothing was decided since, nothing undone, and as much is open as then. */
export function publishedAsItStands(detail: RecordingDetail): Publication | null {
  const last = detail.publications.at(-1);
  if (last === undefined || changesSince(detail, last) > 0) return null;
  const left = mattersLeft(detail).length;
  return last.openConflicts === detail.openConflictKeys.length && (last.openMatters?.length ?? left) === left ? last : null;
}

/** Every denial, promise and question that nobody has dealt with, by name, each with the way to it. */
export function openGroups(detail: RecordingDetail): OpenGroup[] {
  const left = mattersLeft(detail);
  return (Object.keys(groupWords) as MatterKind[]).flatMap((kind) => {
    const ofKind = left.filter(({ about }) => about === kind);
    const [one, many] = groupWords[kind];
    if (ofKind.length === 0) return [];
    const lines = ofKind.map((matter) => ({
      words: matterLine(matter),
      href: recordingPlace(detail.summary.id, "check", placeOfItem(itemOfMatter(matter, detail))),
    }));
    return [{ kind, words: counted(ofKind.length, one, many), lines }];
  });
}

/** What nobody has to deal with and is for a person to read, each with the way to it. */
export function alsoLines(detail: RecordingDetail): PublishLine[] {
  const { doubtful, remarks } = detail.analysis;
  const { id, counts } = detail.summary;
  const to = (item: CheckItem | null) => (item ? recordingPlace(id, "check", placeOfItem(item)) : null);
  const [caption] = doubtful;
  const [remark] = remarks;
  const toMark = [...detail.findingProposals, ...detail.lap.filter(({ zoneSpanId }) => zoneSpanId === null)].map(({ start }) => start);
  return [
    {
      words: `${counted(remarks.length, "remark", "remarks")}, milder than a conflict.`,
      href: to(remark ? { kind: "remark", key: remark.key } : null),
    },
    {
      words: `${counted(doubtful.length, "doubtful caption", "doubtful captions")} that nothing was read from.`,
      href: to(caption ? { kind: "doubtful", key: String(caption.caption) } : null),
    },
    {
      words: `${counted(counts.proposals, "proposed finding", "proposed findings")} and ${counted(counts.proposedZones, "proposed zone", "proposed zones")} that nobody accepted.`,
      href:
        counts.proposals + counts.proposedZones > 0
          ? recordingPlace(id, "mark", toMark.length > 0 ? { at: Math.min(...toMark) } : {})
          : null,
    },
  ];
}
