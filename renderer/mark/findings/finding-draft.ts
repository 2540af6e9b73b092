import type {
  ComponentName,
  Finding,
  FindingPart,
  FindingProposal,
  Grade,
  LapSpan,
  PositionName,
  ZoneName,
} from "../../../shared-types/index.ts";
import { secondsFromText, tenthsLabel } from "../../shared/time.ts";
import { spanAt } from "../lap.ts";

/** What the finding form holds, before it is checked. */
export interface FindingDraft {
  readonly start: string;
  readonly end: string;
  readonly zone: ZoneName;
  /** Until a person chooses one, the zone is the one in view at the start. */
  readonly zoneChosen: boolean;
  /** The part in its own words; empty where the group says it. */
  readonly part: string;
  readonly component: ComponentName;
  readonly position: PositionName | "none";
  readonly seen: string;
  /** Null until it is chosen: a grade that nobody gave must not reach an index. */
  readonly grade: Grade | null;
  readonly note: string;
  /** Moment of its still, in milliseconds. */
  readonly stillAt: number | null;
}

/** How long a finding runs when only its start is known, in seconds: about one spoken sentence. */
const sentenceSeconds = 4;

export interface DraftSource {
  readonly stretch: { readonly start: number; readonly end: number } | null;
  readonly markedStart: number | null;
  readonly now: number;
  readonly duration: number;
  readonly zone: ZoneName;
}

/** A new finding on the marked stretch, or from the mark or the playhead on. */
export function newFindingDraft({ stretch, markedStart, now, duration, zone }: DraftSource): FindingDraft {
  const start = stretch?.start ?? markedStart ?? now;
  const end =
    stretch?.end ??
    (markedStart !== null && now > markedStart ? now : Math.min(duration || Number.POSITIVE_INFINITY, start + sentenceSeconds));
  return {
    start: tenthsLabel(start),
    end: tenthsLabel(Math.max(end, start)),
    zone,
    zoneChosen: false,
    part: "",
    component: "body",
    position: "none",
    seen: "",
    grade: null,
    note: "",
    stillAt: null,
  };
}

export function draftOfFinding(finding: Finding | FindingProposal): FindingDraft {
  return {
    start: tenthsLabel(finding.start),
    end: tenthsLabel(finding.end),
    zone: finding.zone,
    zoneChosen: true,
    part: ("part" in finding ? finding.part : null) ?? "",
    component: finding.component,
    position: finding.position ?? "none",
    seen: finding.seen,
    grade: finding.grade,
    note: "note" in finding ? finding.note : "",
    stillAt: "stillAt" in finding ? finding.stillAt : null,
  };
}

export type FindingFaults = Partial<Record<"start" | "end" | "seen" | "grade", string>>;

export function faultsOfFinding(draft: FindingDraft, duration: number): FindingFaults {
  const faults: FindingFaults = {};
  const start = secondsFromText(draft.start);
  const end = secondsFromText(draft.end);
  const form = "Write minutes and seconds, such as 2:41.3.";
  if (start === null) faults.start = `“${draft.start}” is no time. ${form}`;
  if (end === null) faults.end = `“${draft.end}” is no time. ${form}`;
  if (start !== null && end !== null && end < start) faults.end = `It ends at ${tenthsLabel(end)}, before it starts. Give a later time.`;
  // A tenth of grace: the label was rounded.
  if (start !== null && duration > 0 && start > duration + 0.1)
    faults.start = `The recording ends at ${tenthsLabel(duration)}. Give an earlier time.`;
  if (draft.grade === null) faults.grade = "Choose a grade.";
  if (draft.seen.trim() === "") faults.seen = "Say in a few words what is seen.";
  return faults;
}

/** The draft with another start; the zone goes with it until a person has chosen one. */
export function withStart(draft: FindingDraft, start: string, lap: readonly LapSpan[]): FindingDraft {
  const seconds = secondsFromText(start);
  const zone = draft.zoneChosen || seconds === null ? draft.zone : (spanAt(lap, seconds)?.zone ?? draft.zone);
  return { ...draft, start, zone };
}

/** The draft with another part; one that the list names brings its group and position along. */
export function withPart(draft: FindingDraft, words: string, named: FindingPart | undefined): FindingDraft {
  return named ? { ...draft, part: words, component: named.component, position: named.position ?? "none" } : { ...draft, part: words };
}

/** The finding as the contract takes it. Call only with a draft without faults. */
export function findingOfDraft(draft: FindingDraft) {
  if (draft.grade === null) throw new Error("A finding without a grade cannot be saved.");
  return {
    start: secondsFromText(draft.start) ?? 0,
    end: secondsFromText(draft.end) ?? 0,
    zone: draft.zone,
    part: draft.part.trim() || null,
    component: draft.component,
    position: draft.position === "none" ? null : draft.position,
    seen: draft.seen.trim(),
    grade: draft.grade,
    note: draft.note.trim(),
    stillAt: draft.stillAt,
  };
}
