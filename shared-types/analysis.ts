import { z } from "zod";
import { AttributeName, ComponentName, ConflictKind, PositionName, Stance, UnitName, ZoneName } from "./vocabulary.ts";

/** Seconds from the start of the recording. */
export const Seconds = z.number().nonnegative();
export type Seconds = number;

/** Index of a caption in file order, from 0. */
export const CaptionIndex = z.int().nonnegative();

/** One timed piece of the transcript, as it came. Never rewritten. */
export const Caption = z.strictObject({
  index: CaptionIndex,
  start: Seconds,
  /** The next caption's start where the file gives no end; for the last caption see `readTranscript`. */
  end: Seconds,
  /** The words as the file has them, markup removed and white space folded to single spaces. */
  text: z.string(),
});
export type Caption = z.infer<typeof Caption>;

export const transcriptFormats = ["plain", "srt", "webvtt", "recogniser-json"] as const;
export const TranscriptFormat = z.enum(transcriptFormats);
export type TranscriptFormat = z.infer<typeof TranscriptFormat>;

/** A transcript ready for analysis: captions in file order and the time the recording ends. */
export const Transcript = z.strictObject({
  format: TranscriptFormat,
  captions: z.array(Caption),
  duration: Seconds,
});
export type Transcript = z.infer<typeof Transcript>;

/** A stretch of one caption's text: UTF-16 offsets, start inclusive, end exclusive. */
export const TextSpan = z.strictObject({
  caption: CaptionIndex,
  start: z.int().nonnegative(),
  end: z.int().nonnegative(),
});
export type TextSpan = z.infer<typeof TextSpan>;

/** A reading of words that the recognizer broke, or a spoken shorthand that must be read. Kept beside the words. */
export const Repair = z.strictObject({
  id: z.string(),
  caption: CaptionIndex,
  /** One span for each caption the broken words run through. */
  spans: z.array(TextSpan).min(1),
  heard: z.string(),
  meant: z.string(),
  /** Name of the rule that read it. */
  rule: z.string(),
  /** False where another reading is about as likely; such a repair asks to be checked. */
  sure: z.boolean(),
});
export type Repair = z.infer<typeof Repair>;

/** A zone with the words that decided it. Spans cover the recording in order, without gap or overlap. */
export const ZoneProposal = z.strictObject({
  zone: ZoneName,
  start: Seconds,
  end: Seconds,
  /** 0 to 1. */
  confidence: z.number().min(0).max(1),
  evidence: z.array(z.strictObject({ caption: CaptionIndex, quote: z.string(), reason: z.string() })),
});
export type ZoneProposal = z.infer<typeof ZoneProposal>;

/** A number as a number, everything else as the guide's short word or size form. */
export const ClaimValue = z.union([z.number(), z.string()]);
export type ClaimValue = z.infer<typeof ClaimValue>;

/**
 * Whether a claim is about the vehicle as it stands today.
 * `former`: an earlier state of this vehicle's own parts ("it came with", "used to have").
 */
export const claimTimes = ["today", "former"] as const;
export const ClaimTime = z.enum(claimTimes);
export type ClaimTime = z.infer<typeof ClaimTime>;

/** Something checkable that was said, once for each time it was said. */
export const Claim = z.strictObject({
  id: z.string(),
  captions: z.array(CaptionIndex).min(1),
  start: Seconds,
  end: Seconds,
  quote: z.string(),
  spans: z.array(TextSpan).min(1),
  component: ComponentName,
  /** The part within the component where it has several ("carburetor", "sway bar", "trunk pan"); null for the component as a whole. */
  part: z.string().nullable(),
  position: PositionName.nullable(),
  attribute: AttributeName,
  value: ClaimValue,
  unit: UnitName.nullable(),
  stance: Stance,
  time: ClaimTime,
  /** What must also agree before two values may be compared ("cold", "at idle", "front pads", "new price"); null where nothing does. */
  circumstance: z.string().nullable(),
  zone: ZoneName,
  /** Name of the rule that read it. */
  rule: z.string(),
  /** Ids of the repairs its value rests on. */
  repairs: z.array(z.string()),
});
export type Claim = z.infer<typeof Claim>;

/** The published rule or arithmetic a conflict rests on. */
export const StandardReference = z.strictObject({
  name: z.string(),
  source: z.string(),
  /** The sum, with units, in one or two lines. */
  working: z.string(),
});
export type StandardReference = z.infer<typeof StandardReference>;

export const ConflictSide = z.strictObject({ value: ClaimValue, unit: UnitName.nullable(), claims: z.array(z.string()).min(1) });
export type ConflictSide = z.infer<typeof ConflictSide>;

/** Claims that cannot all hold. One per topic, with all its moments; sides by value. */
export const Conflict = z.strictObject({
  id: z.string(),
  /** Stable over re-analysis as long as topic and sides stay: rulings hang on it. */
  key: z.string(),
  kind: ConflictKind,
  topic: z.string(),
  /** One sentence a reviewer can read. */
  why: z.string(),
  rule: z.string(),
  standard: StandardReference.nullable(),
  /** Larger is graver; orders the reviewer's queue. 1 to 100. */
  weight: z.number().min(1).max(100),
  sides: z.array(ConflictSide).min(2),
});
export type Conflict = z.infer<typeof Conflict>;

/** Something milder than a conflict that a reviewer may like to know. */
export const Remark = z.strictObject({
  id: z.string(),
  key: z.string(),
  topic: z.string(),
  why: z.string(),
  claims: z.array(z.string()),
  rule: z.string(),
});
export type Remark = z.infer<typeof Remark>;

/** A claim that the dealer's own record does not bear out. */
export const StockSheetDenial = z.strictObject({
  id: z.string(),
  key: z.string(),
  field: z.string(),
  sheetValue: z.string(),
  claims: z.array(z.string()).min(1),
  why: z.string(),
});
export type StockSheetDenial = z.infer<typeof StockSheetDenial>;

/** A claim that the dealer's own record bears out. */
export const StockSheetSupport = z.strictObject({
  id: z.string(),
  key: z.string(),
  field: z.string(),
  /** What the field tells ("mileage"): a field may tell several things. */
  topic: z.string(),
  sheetValue: z.string(),
  claims: z.array(z.string()).min(1),
  why: z.string(),
});
export type StockSheetSupport = z.infer<typeof StockSheetSupport>;

/** Something that the dealer's own record tells and no claim speaks of. */
export const StockSheetSilence = z.strictObject({
  id: z.string(),
  key: z.string(),
  field: z.string(),
  topic: z.string(),
  sheetValue: z.string(),
  why: z.string(),
});
export type StockSheetSilence = z.infer<typeof StockSheetSilence>;

export const DoubtfulCaption = z.strictObject({ caption: CaptionIndex, why: z.string() });
export type DoubtfulCaption = z.infer<typeof DoubtfulCaption>;

export const promiseKinds = ["warranty", "safety", "absolute", "hedged-fact", "opinion"] as const;
export const PromiseKind = z.enum(promiseKinds);
export type PromiseKind = z.infer<typeof PromiseKind>;

/** Words a buyer may hold the dealer to, for a person to look at; a hint for review, never legal advice. */
export const SpokenPromise = z.strictObject({
  id: z.string(),
  key: z.string(),
  kind: PromiseKind,
  captions: z.array(CaptionIndex).min(1),
  start: Seconds,
  end: Seconds,
  quote: z.string(),
  spans: z.array(TextSpan).min(1),
  /** Why a reviewer is shown it. */
  why: z.string(),
  /** The published rule behind it, with its source. */
  rule: z.strictObject({ name: z.string(), source: z.string() }),
});
export type SpokenPromise = z.infer<typeof SpokenPromise>;

/** Something that was never shown or said, put as a question to whoever films. */
export const CoverageQuestion = z.strictObject({
  id: z.string(),
  key: z.string(),
  about: z.enum(["zone", "corner", "item"]),
  topic: z.string(),
  question: z.string(),
});
export type CoverageQuestion = z.infer<typeof CoverageQuestion>;

/** A titled start for viewers. */
export const ChapterProposal = z.strictObject({ start: Seconds, end: Seconds, zone: ZoneName, title: z.string() });
export type ChapterProposal = z.infer<typeof ChapterProposal>;

/** The dealer's record: field name (lower-case words) to value as written. */
export const StockSheetFields = z.record(z.string(), z.string());
export type StockSheetFields = z.infer<typeof StockSheetFields>;

export const Analysis = z.strictObject({
  analysisVersion: z.int(),
  zones: z.array(ZoneProposal),
  repairs: z.array(Repair),
  claims: z.array(Claim),
  conflicts: z.array(Conflict),
  remarks: z.array(Remark),
  denials: z.array(StockSheetDenial),
  supports: z.array(StockSheetSupport),
  silences: z.array(StockSheetSilence),
  promises: z.array(SpokenPromise),
  questions: z.array(CoverageQuestion),
  doubtful: z.array(DoubtfulCaption),
  chapters: z.array(ChapterProposal),
});
export type Analysis = z.infer<typeof Analysis>;

/** What `npm run analyze` prints, one document for each transcript. */
export const AnalysisDocument = z.strictObject({
  version: z.literal(1),
  source: z.strictObject({ file: z.string(), format: TranscriptFormat, captions: z.int(), duration: Seconds }),
  zones: z.array(z.strictObject({ zone: ZoneName, start: Seconds, end: Seconds })),
  claims: z.array(
    z.strictObject({
      id: z.string(),
      captions: z.array(CaptionIndex),
      start: Seconds,
      end: Seconds,
      quote: z.string(),
      component: ComponentName,
      position: PositionName.nullable(),
      attribute: AttributeName,
      value: ClaimValue,
      unit: UnitName.nullable(),
      stance: Stance,
    }),
  ),
  conflicts: z.array(
    z.strictObject({
      id: z.string(),
      kind: ConflictKind,
      topic: z.string(),
      why: z.string(),
      sides: z.array(z.strictObject({ value: ClaimValue, claims: z.array(z.string()) })),
    }),
  ),
  repairs: z.array(z.strictObject({ caption: CaptionIndex, heard: z.string(), meant: z.string() })),
  unreliable: z.array(z.strictObject({ caption: CaptionIndex, why: z.string() })),
  remarks: z.array(Remark),
  /** Only where a stock sheet was given. */
  stockSheet: z
    .strictObject({ denies: z.array(StockSheetDenial), supports: z.array(StockSheetSupport), unspoken: z.array(StockSheetSilence) })
    .optional(),
});
export type AnalysisDocument = z.infer<typeof AnalysisDocument>;
