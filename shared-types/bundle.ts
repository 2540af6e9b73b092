import { z } from "zod";
import { Analysis, Caption, Seconds, StockSheetFields, TranscriptFormat } from "./analysis.ts";
import { CaptionCorrection, Finding, Publication, RecordingId, Ruling, TrustedCaption, Vehicle, ZoneSpan } from "./recording.ts";
import { SeenNote } from "./seen-note.ts";
import { SheetMeanings } from "./stock-sheet.ts";

/** Version of the form of bundles. Raised where an older program could no longer read them rightly. */
export const bundleVersion = 2;

/** How every bundle's file name ends. */
export const bundleEnding = ".roundwalk.zip";

/** Most entries beside the manifest: stills of every second of a five-hour walk. */
export const mostBundleEntries = 20_000;

const Sha256 = z.string().regex(/^[0-9a-f]{64}$/);

/** What a bundle holds, entry by entry, in the order in which they stand in the file. It is an entry itself, the first, and not listed. */
export const BundleManifest = z.strictObject({
  kind: z.literal("roundwalk-bundle"),
  version: z.int().positive(),
  recordingId: RecordingId,
  /** For whoever looks at a folder of bundles; what counts is in `recording.json`. */
  title: z.string(),
  stockNumber: z.string(),
  entries: z
    .array(z.strictObject({ name: z.string().min(1).max(120), bytes: z.int().nonnegative(), sha256: Sha256 }))
    .min(1)
    .max(mostBundleEntries),
});
export type BundleManifest = z.infer<typeof BundleManifest>;

/** The recording without its words, its analysis and people's work. */
export const BundleRecording = z.strictObject({
  id: RecordingId,
  title: z.string().min(1).max(400),
  stockNumber: z.string().max(400),
  vehicle: Vehicle,
  duration: Seconds,
  recordedOn: z.string().nullable(),
  importedAt: z.iso.datetime(),
  transcriptFile: z.string(),
  transcriptFormat: TranscriptFormat,
  transcriptEnd: Seconds,
  /** There also where the video itself stayed behind. */
  video: z.strictObject({ name: z.string().max(1000), mediaType: z.enum(["video/mp4", "video/webm"]) }).nullable(),
  videoFingerprint: z.strictObject({ bytes: z.int().nonnegative(), fingerprint: Sha256 }).nullable(),
  stockSheet: StockSheetFields.nullable(),
  sheetForm: z.string().nullable(),
  sheetMeanings: SheetMeanings.nullable(),
});
export type BundleRecording = z.infer<typeof BundleRecording>;

/** Title, stock number and vehicle: what a person calls a recording. */
export const RecordingDescription = BundleRecording.pick({ title: true, stockNumber: true, vehicle: true });
export type RecordingDescription = z.infer<typeof RecordingDescription>;

function change<Table extends string, Row extends z.ZodType>(table: Table, row: Row) {
  return z.strictObject({ table: z.literal(table), id: z.string().max(100), before: row.nullable(), after: row.nullable() });
}

/** A finding as an edit from any time keeps it: parts and stills came later. */
const KeptFinding = Finding.extend({ part: Finding.shape.part.optional(), stillAt: Finding.shape.stillAt.optional() });

export const BundleEdit = z.strictObject({
  label: z.string(),
  initials: z.string(),
  at: z.iso.datetime(),
  state: z.enum(["done", "undone", "dropped"]),
  movedBy: z.string().nullable(),
  movedAt: z.iso.datetime().nullable(),
  changes: z.array(
    z.discriminatedUnion("table", [
      change("zone_spans", ZoneSpan),
      change("findings", KeptFinding),
      change("trusted_captions", TrustedCaption),
      change("caption_corrections", CaptionCorrection),
      change("recordings", RecordingDescription),
      z.strictObject({ table: z.literal("rulings"), id: z.string().max(100), before: Ruling, after: Ruling }),
      z.strictObject({ table: z.literal("seen_notes"), id: z.string().max(100), before: SeenNote, after: SeenNote }),
    ]),
  ),
});
export type BundleEdit = z.infer<typeof BundleEdit>;

/** What people did. */
export const BundleWork = z.strictObject({
  zoneSpans: z.array(ZoneSpan),
  findings: z.array(Finding),
  /** In the order in which they were made, superseded ones too. */
  rulings: z.array(Ruling),
  trustedCaptions: z.array(TrustedCaption),
  captionCorrections: z.array(CaptionCorrection),
  /** Notes on denials, promises and questions, as the rulings; none in a bundle of form 1. */
  seenNotes: z.array(SeenNote),
  publications: z.array(Publication),
  /** Oldest first. */
  edits: z.array(BundleEdit),
});
export type BundleWork = z.infer<typeof BundleWork>;

/** The same as a bundle of form 1 has it: without notes, and publications without other matters. */
export const BundleWorkOfForm1 = BundleWork.omit({ seenNotes: true }).extend({
  publications: z.array(Publication.omit({ openMatters: true })),
});

export const BundleCaptions = z.array(Caption);
export const BundleAnalysis = z.strictObject({ analysedAt: z.iso.datetime(), analysis: Analysis }).nullable();
export type BundleAnalysis = z.infer<typeof BundleAnalysis>;

export const BundleStills = z.array(
  z.strictObject({
    atMilliseconds: z.int().nonnegative(),
    width: z.int().positive(),
    height: z.int().positive(),
    mediaType: z.enum(["image/png", "image/jpeg", "image/webp"]),
  }),
);
export type BundleStills = z.infer<typeof BundleStills>;

/** Kinds of work that are merged each by its own choice. */
export const mergeGroups = ["description", "zones", "findings", "rulings", "seen", "corrections", "trusted"] as const;
export const MergeGroup = z.enum(mergeGroups);
export type MergeGroup = z.infer<typeof MergeGroup>;

export const mergeGroupLabels: Record<MergeGroup, string> = {
  description: "Title, stock number and vehicle",
  zones: "Zones",
  findings: "Findings",
  rulings: "Rulings",
  seen: "Notes of what was seen",
  corrections: "Corrected captions",
  trusted: "Trusted captions",
};

/** `both` keeps what is only here and adds what is only there; where one thing stands otherwise on each side, what is here stays. */
export const mergeChoices = ["mine", "theirs", "both"] as const;
export const MergeChoice = z.enum(mergeChoices);
export type MergeChoice = z.infer<typeof MergeChoice>;

/** Where both can stand: of two titles, or two words for one caption, one counts. */
export const groupsThatTakeBoth: ReadonlySet<MergeGroup> = new Set(["zones", "findings", "rulings", "seen", "corrections", "trusted"]);

/** One thing that is otherwise in the bundle, in words; null on the side where there is none. */
export const MergeDifference = z.strictObject({
  what: z.string(),
  mine: z.string().nullable(),
  theirs: z.string().nullable(),
  /** Initials, and when where that is known. */
  mineBy: z.string(),
  theirsBy: z.string(),
});
export type MergeDifference = z.infer<typeof MergeDifference>;

/** What an offered bundle holds, against what the library has. */
export const BundleLook = z.strictObject({
  file: z.uuid(),
  fileName: z.string(),
  bytes: z.int().nonnegative(),
  recordingId: RecordingId,
  title: z.string(),
  stockNumber: z.string(),
  hasVideo: z.boolean(),
  /** True where this library wrote this very bundle, or brought it in before. */
  seen: z.boolean(),
  /** `new`: not in the library. `same`: there is nothing in it that the library lacks. `differs`: the two are to be merged. */
  state: z.enum(["new", "same", "differs"]),
  /** What is added whatever is chosen, since it can stand beside what is here: stills, publications, a video that is lacking here. */
  adds: z.array(z.string()),
  /** What is otherwise in the bundle and stays as it is here, since it is no one's work: the stock sheet. */
  stays: z.array(z.string()),
  groups: z.array(
    z.strictObject({
      group: MergeGroup,
      /** False where the group is of one thing, and where there is nothing in it that could stand beside what is here. */
      takesBoth: z.boolean(),
      differences: z.array(MergeDifference),
      /** Things that stand otherwise on both sides and cannot stand twice, as `what` names them: with `both`, what is here stays. */
      clashes: z.array(z.string()),
    }),
  ),
  /** Another recording of the library that came from the same transcript, in words; else null. */
  sameWords: z.string().nullable(),
});
export type BundleLook = z.infer<typeof BundleLook>;

export const MergeChoices = z.partialRecord(MergeGroup, MergeChoice);
export type MergeChoices = z.infer<typeof MergeChoices>;

export const BundleTaken = z.strictObject({
  recordingId: RecordingId,
  title: z.string(),
  /** `unchanged`: nothing was written, since there was nothing new in it or what is here was chosen. */
  outcome: z.enum(["imported", "merged", "unchanged"]),
});
export type BundleTaken = z.infer<typeof BundleTaken>;
