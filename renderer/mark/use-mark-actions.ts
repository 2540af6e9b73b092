import { useState } from "react";
import { type LapSpan, type RecordingDetail, timeLabel, type ZoneName, zoneLabels } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import type { Clock } from "../player/clock.ts";
import { counted } from "../shared/count.ts";
import { redo, undo } from "../shared/undo-bar.tsx";
import { borderBeside, heldToBorder, justPast, nearestBorder, spanAt } from "./lap.ts";
import type { MarkAction } from "./shortcuts.ts";
import type { MarkKeeper } from "./use-marks.ts";

/** A stretch whose zone is being asked for. */
export interface ZoneQuestion {
  readonly start: number;
  readonly end: number;
  readonly zone: ZoneName;
  readonly title: string | null;
}

export type MarkDialog =
  | { readonly kind: "zone"; readonly question: ZoneQuestion }
  | { readonly kind: "title"; readonly span: LapSpan }
  | { readonly kind: "sheet" };

export interface MarkActionsInput {
  readonly detail: RecordingDetail;
  readonly edit: Edit;
  readonly clock: Clock;
  readonly keeper: MarkKeeper;
  /** The list that is shown: what a stretch or all of it is accepted from. */
  readonly pane: Pane;
  /** Shows the form of a finding, new where none is open, and gives it the keyboard or has it take a still. */
  readonly onFinding: (ask: FindingAsk) => void;
  readonly onNextProposal: () => void;
  readonly onPane: (pane: Pane) => void;
  /** The film large or in its place. */
  readonly onFilmSize: () => void;
  /** Something asked of the captions. */
  readonly onCaptions: (ask: CaptionsAsk) => void;
}

/** The lists of the page; the captions have a column of their own. */
export type Pane = "findings" | "zones";
/** Something asked of the form of a finding. */
export type FindingAsk = "focus" | "still";
export type CaptionsAsk = "list" | "correct" | "original" | "search" | "hit-after" | "hit-before";

/** Keys of the proposed findings that begin in a stretch. */
export function proposalsIn(
  proposals: RecordingDetail["findingProposals"],
  stretch: { readonly start: number; readonly end: number },
): string[] {
  return proposals.filter(({ start }) => start >= stretch.start && start < stretch.end).map(({ key }) => key);
}

/** The proposed finding that comes after the accepted one, by time, round to the first; undefined where none is left. */
export function proposalAfter<Proposal extends { readonly key: string; readonly start: number }>(
  proposals: readonly Proposal[],
  accepted: { readonly key: string; readonly start: number },
): Proposal | undefined {
  const others = proposals.filter(({ key }) => key !== accepted.key).toSorted((a, b) => a.start - b.start);
  return others.find(({ start }) => start >= accepted.start) ?? others[0];
}

/** One key press of louder or quieter. */
const volumeStep = 0.1;

/** Everything the Mark desk can do, by name; keys, buttons and lists all come through here. */
export function useMarkActions({
  detail,
  edit,
  clock,
  keeper,
  pane,
  onFinding,
  onNextProposal,
  onPane,
  onFilmSize,
  onCaptions,
}: MarkActionsInput) {
  const [dialog, setDialog] = useState<MarkDialog | null>(null);
  const now = () => clock.read().time;
  const markedAt = () => heldToBorder(detail.lap, now(), clock.frameLength());
  const here = () => spanAt(detail.lap, now());
  const toBorder = (direction: 1 | -1) => clock.seek(justPast(borderBeside(detail.lap, now(), direction), detail.lap.at(-1)?.end ?? 0));
  /** The span on which Accept was pressed although it was accepted before; counted, so that a second press is said again. */
  const [acceptedBefore, setAcceptedBefore] = useState<{ readonly id: string; readonly presses: number } | null>(null);

  const acceptZones = (start: number, end: number) => {
    const count = detail.lap.filter((span) => span.zoneSpanId === null && span.start < end && span.end > start).length;
    return edit("zone.accept", { start, end }, count === 1 ? "Zone span accepted" : `${count} zone spans accepted`);
  };
  const acceptFindings = (keys: string[]) =>
    keys.length > 0 ? edit("finding.accept", { proposalKeys: keys }, `${counted(keys.length, "finding", "findings")} accepted`) : undefined;
  const moveBorder = (from: number, to: number) => void edit("zone.moveBorder", { from, to }, `Border moved to ${timeLabel(to)}`);

  const askZone = () => {
    const marked = keeper.stretch;
    const span = here();
    if (marked) setDialog({ kind: "zone", question: { ...marked, zone: span?.zone ?? "opening", title: null } });
    else if (span) setDialog({ kind: "zone", question: { start: span.start, end: span.end, zone: span.zone, title: null } });
  };
  const paint = async (question: ZoneQuestion) => {
    setDialog(null);
    const { start, end, zone, title } = question;
    if (await edit("zone.paint", { start, end, zone, title }, `${timeLabel(start)} to ${timeLabel(end)} is ${zoneLabels[zone]}`))
      keeper.clear();
  };
  const retitle = async (span: LapSpan, title: string | null) => {
    setDialog(null);
    // Only a person's span keeps a title, so a proposal is accepted under its new one.
    if (span.zoneSpanId) await edit("zone.retitle", { zoneSpanId: span.zoneSpanId, title }, "Span retitled");
    else await edit("zone.paint", { start: span.start, end: span.end, zone: span.zone, title }, "Span accepted and retitled");
  };
  const remove = (span: LapSpan | undefined) => {
    if (span?.zoneSpanId) void edit("zone.remove", { zoneSpanId: span.zoneSpanId }, "Span removed; the proposal shows again");
  };
  const join = (border: number | undefined) => {
    if (border !== undefined) void edit("zone.join", { border }, `Spans joined at ${timeLabel(border)}`);
  };

  const actions = {
    play: () => clock.toggle(),
    "shuttle-back": () => clock.shuttle(-1),
    halt: () => clock.halt(),
    "shuttle-on": () => clock.shuttle(1),
    "frame-back": () => clock.step(-1),
    "frame-on": () => clock.step(1),
    "second-back": () => clock.seek(now() - 1),
    "second-on": () => clock.seek(now() + 1),
    "five-back": () => clock.seek(now() - 5),
    "five-on": () => clock.seek(now() + 5),
    slower: () => clock.shiftRate(-1),
    faster: () => clock.shiftRate(1),
    louder: () => clock.setVolume(clock.read().volume + volumeStep),
    quieter: () => clock.setVolume(clock.read().volume - volumeStep),
    mute: () => clock.toggleMuted(),
    "film-size": onFilmSize,
    "border-before": () => toBorder(-1),
    "border-after": () => toBorder(1),
    "mark-start": () => keeper.setStart(markedAt()),
    "mark-end": () => keeper.setEnd(markedAt()),
    "clear-marks": () => keeper.clear(),
    zone: askZone,
    finding: () => onFinding("focus"),
    still: () => onFinding("still"),
    "next-proposal": onNextProposal,
    captions: () => onCaptions("list"),
    findings: () => onPane("findings"),
    zones: () => onPane("zones"),
    correct: () => onCaptions("correct"),
    original: () => onCaptions("original"),
    search: () => onCaptions("search"),
    "hit-after": () => onCaptions("hit-after"),
    "hit-before": () => onCaptions("hit-before"),
    accept: () => {
      const span = here();
      if (span?.zoneSpanId === null) void acceptZones(span.start, span.end);
      else if (span) setAcceptedBefore({ id: span.zoneSpanId, presses: (acceptedBefore?.presses ?? 0) + 1 });
    },
    "accept-stretch": () => {
      const { stretch } = keeper;
      if (!stretch) return;
      if (pane === "findings") void acceptFindings(proposalsIn(detail.findingProposals, stretch));
      else void acceptZones(stretch.start, stretch.end);
    },
    "accept-all": () => {
      if (pane === "findings") void acceptFindings(detail.findingProposals.map(({ key }) => key));
      else if (detail.lap.some((span) => span.zoneSpanId === null)) void acceptZones(0, detail.lap.at(-1)?.end ?? 0);
    },
    split: () => void edit("zone.split", { at: now() }, `Split at ${timeLabel(now())}`),
    join: () => join(nearestBorder(detail.lap, now())),
    retitle: () => {
      const span = here();
      if (span) setDialog({ kind: "title", span });
    },
    remove: () => remove(here()),
    undo: () => undo(detail, edit),
    redo: () => redo(detail, edit),
    sheet: () => setDialog({ kind: "sheet" }),
  } satisfies Record<MarkAction, () => void>;

  return { actions, acceptedBefore, dialog, setDialog, paint, retitle, remove, join, acceptZones, acceptFindings, moveBorder };
}
export type MarkActions = ReturnType<typeof useMarkActions>;
