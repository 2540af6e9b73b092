import type { ComponentName, Finding, FindingProposal, Grade, PositionName, ZoneName } from "../../../shared-types/index.ts";
import { secondsFromText, tenthsLabel } from "../../shared/time.ts";

/** What the finding form holds, before it is checked. */
export interface FindingDraft {
  readonly start: string;
  readonly end: string;
  readonly zone: ZoneName;
  readonly component: ComponentName;
  readonly position: PositionName | "none";
  readonly seen: string;
  readonly grade: Grade;
  readonly note: string;
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
    component: "body",
    position: "none",
    seen: "",
    grade: "good",
    note: "",
  };
}

export function draftOfFinding(finding: Finding | FindingProposal): FindingDraft {
  return {
    start: tenthsLabel(finding.start),
    end: tenthsLabel(finding.end),
    zone: finding.zone,
    component: finding.component,
    position: finding.position ?? "none",
    seen: finding.seen,
    grade: finding.grade,
    note: "note" in finding ? finding.note : "",
  };
}

export type FindingFaults = Partial<Record<"start" | "end" | "seen", string>>;

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
  if (draft.seen.trim() === "") faults.seen = "Say in a few words what is seen.";
  return faults;
}

/** The finding as the contract takes it. Call only with a draft without faults. */
export function findingOfDraft(draft: FindingDraft) {
  return {
    start: secondsFromText(draft.start) ?? 0,
    end: secondsFromText(draft.end) ?? 0,
    zone: draft.zone,
    component: draft.component,
    position: draft.position === "none" ? null : draft.position,
    seen: draft.seen.trim(),
    grade: draft.grade,
    note: draft.note.trim(),
  };
}
