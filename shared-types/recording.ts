import { z } from "zod";
import { Analysis, Caption, CaptionIndex, Seconds, StockSheetFields, TranscriptFormat } from "./analysis.ts";
import { SeenNote } from "./seen-note.ts";
import { SheetMeanings } from "./stock-sheet.ts";
import { BodyStyle, ComponentName, Grade, PositionName, RulingDecision, ZoneName } from "./vocabulary.ts";

export const RecordingId = z.uuid();
export type RecordingId = z.infer<typeof RecordingId>;

/** The invented or real vehicle a recording shows, as the dealer names it. */
export const Vehicle = z.strictObject({
  name: z.string().trim().max(200),
  year: z.int().min(1880).max(2100).nullable(),
  bodyStyle: BodyStyle,
  /** On which side the driver sits. */
  drive: z.enum(["left-hand", "right-hand"]),
});
export type Vehicle = z.infer<typeof Vehicle>;

export const Initials = z.string().trim().min(1).max(8);

/** That an index was published, and what was open then. */
export const Publication = z.strictObject({
  /** ISO 8601, UTC. */
  at: z.string(),
  initials: z.string(),
  openConflicts: z.int().nonnegative(),
  /** What else nobody had dealt with, each in words; null for a publication from before that was kept. */
  openMatters: z.array(z.string()).nullable(),
});
export type Publication = z.infer<typeof Publication>;

/** A row of the library's list. */
export const RecordingSummary = z.strictObject({
  id: RecordingId,
  title: z.string(),
  stockNumber: z.string(),
  vehicle: Vehicle,
  duration: Seconds,
  /** ISO 8601, UTC. */
  importedAt: z.string(),
  /** The last time that it was published; null while it never was. */
  published: Publication.nullable(),
  hasVideo: z.boolean(),
  /** False when the video's file has gone from where it was. */
  videoFound: z.boolean(),
  /** True where the library keeps a copy of the video itself, which goes when the recording is removed. */
  videoKept: z.boolean(),
  counts: z.strictObject({
    captions: z.int(),
    claims: z.int(),
    findings: z.int(),
    /** Proposed findings. */
    proposals: z.int(),
    /** Spans of the lap that are only proposed. */
    proposedZones: z.int(),
    conflicts: z.int(),
    openConflicts: z.int(),
    /** What else nobody has dealt with: denials of the stock sheet, promises, and questions of what was never shown or said. */
    openDenials: z.int(),
    openPromises: z.int(),
    openQuestions: z.int(),
  }),
});
export type RecordingSummary = z.infer<typeof RecordingSummary>;

/** A zone span that a person drew or accepted. Spans of one recording never overlap; gaps are where only proposals stand. */
export const ZoneSpan = z.strictObject({
  id: z.uuid(),
  zone: ZoneName,
  start: Seconds,
  end: Seconds,
  /** Chapter title; null takes the zone's own. */
  title: z.string().nullable(),
  initials: z.string(),
});
export type ZoneSpan = z.infer<typeof ZoneSpan>;

/** What the desk shows on the lap strip: people's spans, and proposals wherever no person has spoken. Covers the recording. */
export const LapSpan = z.strictObject({
  zone: ZoneName,
  start: Seconds,
  end: Seconds,
  title: z.string(),
  /** Null while it is only proposed. */
  zoneSpanId: z.uuid().nullable(),
  /** 0 to 1 for proposals, 1 for people's. */
  confidence: z.number(),
  /** Words that decided a proposal. */
  evidence: z.array(z.string()),
});
export type LapSpan = z.infer<typeof LapSpan>;

/** A condition remark on a time range, by a person. */
export const Finding = z.strictObject({
  id: z.uuid(),
  start: Seconds,
  end: Seconds,
  zone: ZoneName,
  component: ComponentName,
  /** The part in its own words, closer than the component: "driver front door"; null where the component says it. */
  part: z.string().trim().min(1).max(80).nullable(),
  position: PositionName.nullable(),
  /** What is seen, in a few words. */
  seen: z.string().trim().min(1).max(300),
  grade: Grade,
  note: z.string().max(2000),
  /** Moment of the still that shows it, in milliseconds from the recording's beginning; null without one. */
  stillAt: z.int().nonnegative().nullable(),
  /** Key of the proposal it was accepted from, if any. */
  proposalKey: z.string().nullable(),
  initials: z.string(),
});
export type Finding = z.infer<typeof Finding>;

/** A finding proposed from a condition claim; it stays out of exports until a person accepts it. */
export const FindingProposal = z.strictObject({
  key: z.string(),
  claim: z.string(),
  start: Seconds,
  end: Seconds,
  zone: ZoneName,
  component: ComponentName,
  position: PositionName.nullable(),
  seen: z.string(),
  grade: Grade,
});
export type FindingProposal = z.infer<typeof FindingProposal>;

/** A doubtful caption that a person holds for speech about this vehicle after all: the analysis then reads it like any other. */
export const TrustedCaption = z.strictObject({ caption: CaptionIndex, initials: z.string() });
export type TrustedCaption = z.infer<typeof TrustedCaption>;

/** A caption's words as a person put them right; the words it came with are kept beside them. */
export const CaptionCorrection = z.strictObject({ caption: CaptionIndex, words: z.string(), initials: z.string() });
export type CaptionCorrection = z.infer<typeof CaptionCorrection>;

/** A correction with the caption's words as they came. */
export const CorrectedCaption = CaptionCorrection.extend({ original: z.string() });
export type CorrectedCaption = z.infer<typeof CorrectedCaption>;

/** The reviewer's decision on a conflict. Never deleted: a later one supersedes it. */
export const Ruling = z.strictObject({
  id: z.uuid(),
  conflictKey: z.string(),
  decision: RulingDecision,
  /** Index into the conflict's sides: the one that stands, or the one that was misheard; null for the other decisions. */
  side: z.int().nonnegative().nullable(),
  reason: z.string().trim().min(1).max(2000),
  /** The words that were really said, for a recognizer's error. */
  rightWords: z.string().nullable(),
  initials: z.string(),
  /** ISO 8601, UTC. */
  at: z.string(),
  /** The ruling that took its place; null while it stands. Its own id where it was undone and none had stood before it. */
  supersededBy: z.uuid().nullable(),
  /** The conflict as it stood when it was ruled on, so that the record can be read after the analysis has changed. */
  topic: z.string(),
  sideValues: z.array(z.string()),
});
export type Ruling = z.infer<typeof Ruling>;

/** Whether a conflict is settled: open without a ruling or when the last one says to look at the vehicle. */
export const conflictStates = ["open", "settled"] as const;

/** Everything a desk needs about one recording. */
export const RecordingDetail = z.strictObject({
  summary: RecordingSummary,
  transcriptFile: z.string(),
  transcriptFormat: TranscriptFormat,
  videoFile: z.string().nullable(),
  stockSheet: StockSheetFields.nullable(),
  /** What the sheet's columns mean; null where the sheet came in before that was kept, and their names tell. */
  sheetMeanings: SheetMeanings.nullable(),
  /** With the words that people put right; what those captions came with is in `captionCorrections`. */
  captions: z.array(Caption),
  captionCorrections: z.array(CorrectedCaption),
  analysis: Analysis,
  lap: z.array(LapSpan),
  findings: z.array(Finding),
  findingProposals: z.array(FindingProposal),
  trustedCaptions: z.array(TrustedCaption),
  rulings: z.array(Ruling),
  /** Notes on denials, promises and questions, in the order in which they were made, superseded ones too. */
  seenNotes: z.array(SeenNote),
  /** Keys of conflicts that are open now. */
  openConflictKeys: z.array(z.string()),
  /** Oldest first. */
  publications: z.array(Publication),
  /** What undo and redo would take back or do again, in words; null when there is nothing. */
  undoLabel: z.string().nullable(),
  redoLabel: z.string().nullable(),
});
export type RecordingDetail = z.infer<typeof RecordingDetail>;
