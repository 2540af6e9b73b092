import { z } from "zod";
import { CaptionIndex, Seconds } from "./analysis.ts";
import { IndexTemplate } from "./index-text.ts";
import { lotMethods, workEvents } from "./lot-contract.ts";
import { Finding, Initials, RecordingDetail, RecordingId, RecordingSummary, Vehicle, ZoneSpan } from "./recording.ts";
import { reviewMethods } from "./review-contract.ts";
import { Comparison, mostCompared, SearchHit } from "./search.ts";
import { startMethods } from "./start-contract.ts";
import { SheetColumns, SheetField } from "./stock-sheet.ts";
import { ZoneName } from "./vocabulary.ts";

/** A method of the application: what goes in and what comes out, both parsed at run time on both hosts. */
export interface Method<Input extends z.ZodType = z.ZodType, Output extends z.ZodType = z.ZodType> {
  readonly input: Input;
  readonly output: Output;
}
function method<Input extends z.ZodType, Output extends z.ZodType>(input: Input, output: Output): Method<Input, Output> {
  return { input, output };
}

const none = z.strictObject({});

/** How the films are heard: kept for the library, not for a page, whose address is another at each start in a browser. */
export const Playing = z.strictObject({
  /** 0 to 1. */
  volume: z.number().min(0).max(1),
  muted: z.boolean(),
  /** Seconds of the recording in a second. */
  rate: z.number().min(0.25).max(3),
});
export type Playing = z.infer<typeof Playing>;

/** A file the person picked, dropped or named; the host knows the path, the page never does. */
export const OfferedFile = z.strictObject({ id: z.uuid(), name: z.string(), bytes: z.int().nonnegative() });
export type OfferedFile = z.infer<typeof OfferedFile>;

/** What is in a folder that the person chose in the host's own window. */
export const OfferedFolder = z.strictObject({
  /** Its name; null when none was chosen. */
  folder: z.string().nullable(),
  /** `folder` of a file: where it lies below the chosen one, with "/", "" for the chosen one itself. */
  files: z.array(OfferedFile.extend({ folder: z.string() })),
  /** True where the folder holds more than was looked at. */
  more: z.boolean(),
});
export type OfferedFolder = z.infer<typeof OfferedFolder>;

/** A recording whose video is gone from where it was. */
export const WantedVideo = z.strictObject({
  recordingId: RecordingId,
  title: z.string(),
  stockNumber: z.string(),
  /** As the file was called. */
  videoName: z.string(),
  /** Length in bytes, and SHA-256 of its first and last mebibyte in lower-case hexadecimal; null where that was never kept. */
  known: z.strictObject({ bytes: z.int().nonnegative(), fingerprint: z.string() }).nullable(),
});
export type WantedVideo = z.infer<typeof WantedVideo>;

export const exportFormats = [
  "chapters-webvtt",
  "chapters-list",
  "chapters-matroska",
  "chapters-ffmpeg",
  "chapters-podcast",
  "chapters-jsonld",
  "captions-webvtt",
  "captions-srt",
  "captions-changes",
  "correction-overlay",
  "correction-text",
  "index-html",
  "index-pdf",
  "index-text",
  "index-csv",
  "index-json",
  "index-schema",
  "record-html",
  "record-pdf",
  "record-json",
  "record-schema",
] as const;
export const ExportFormat = z.enum(exportFormats);
export type ExportFormat = z.infer<typeof ExportFormat>;

/** Formats that a browser's engine prints; each from the page of the same name. */
export const pdfPages = { "index-pdf": "index-html", "record-pdf": "record-html" } as const;
export type PdfFormat = keyof typeof pdfPages;
export type TextFormat = Exclude<ExportFormat, PdfFormat>;
export function isPdfFormat(format: ExportFormat): format is PdfFormat {
  return Object.hasOwn(pdfPages, format);
}
export const textFormats: readonly TextFormat[] = exportFormats.filter((format) => !isPdfFormat(format));

/** Sheets that PDFs are made for: ANSI letter (8.5 by 11 in) and ISO 216 A4 (210 by 297 mm). */
export const papers = ["letter", "a4"] as const;
export const Paper = z.enum(papers);
export type Paper = z.infer<typeof Paper>;

/** How much becomes a chapter: zones; zones with what people found in them; all that and what was claimed. */
export const chapterGranularities = ["zones", "findings", "everything"] as const;
export const ChapterGranularity = z.enum(chapterGranularities);
export type ChapterGranularity = z.infer<typeof ChapterGranularity>;

export const WrittenFile = z.strictObject({
  format: ExportFormat,
  path: z.string(),
  bytes: z.int(),
  downloadUrl: z.string(),
  /** What the reader of the file should know before it is used. */
  warnings: z.array(z.string()),
});

/** What a text with fields is called in the library. */
const TemplateName = IndexTemplate.shape.name;

/** From the recording's beginning. */
const Milliseconds = z.int().nonnegative();

/** Bytes of a still: in base64 it stays under what one call may carry (a mebibyte). The host looks whether it is a picture, and how large. */
export const stillBytesAllowed = 700_000;
const StillImage = z
  .base64()
  .min(1)
  .max(Math.ceil(stillBytesAllowed / 3) * 4);

export const StillPlace = z.strictObject({
  atMilliseconds: Milliseconds,
  /** Pixels. */
  width: z.int().positive(),
  height: z.int().positive(),
  mediaType: z.enum(["image/png", "image/jpeg", "image/webp"]),
});
export type StillPlace = z.infer<typeof StillPlace>;

/** A part of a finding that a person may set; ids, origin and initials are the host's. */
const FindingInput = Finding.pick({
  start: true,
  end: true,
  zone: true,
  component: true,
  position: true,
  seen: true,
  grade: true,
  note: true,
}).extend({
  // Left out, they stay as they are.
  part: Finding.shape.part.optional(),
  stillAt: Finding.shape.stillAt.optional(),
});

export const contract = {
  "host.abilities": method(
    none,
    z.strictObject({
      host: z.enum(["desktop", "browser"]),
      /** The page may ask the host to show an exported file in its folder. */
      revealFiles: z.boolean(),
      /** Why this host can make no PDF, and what to do; null where it can. */
      whyNoPdf: z.string().nullable(),
      /** The host has a window for folders of its own: `folder.choose`. */
      chooseFolder: z.boolean(),
      libraryFile: z.string(),
      version: z.string(),
    }),
  ),
  "settings.get": method(none, z.strictObject({ initials: z.string() })),
  "settings.set": method(z.strictObject({ initials: Initials }), z.strictObject({ initials: z.string() })),

  "playing.get": method(none, Playing),
  "playing.set": method(Playing, Playing),

  "recording.list": method(none, z.array(RecordingSummary)),
  "recording.get": method(z.strictObject({ id: RecordingId }), RecordingDetail),
  "recording.import": method(
    z.strictObject({
      transcript: z.uuid(),
      video: z.uuid().nullable(),
      stockSheet: z.uuid().nullable(),
      title: z.string().trim().min(1).max(200),
      stockNumber: z.string().trim().max(60),
      vehicle: Vehicle,
      /** The vehicle's body style is only one to begin with: that of the stock sheet counts, where it tells one. */
      bodyStyleFromSheet: z.boolean().optional(),
      /** Import although the library has this very transcript; without it that is refused with `transcript-known`. */
      again: z.boolean().optional(),
      /** Refuse with `stock-number-known`, unless `again`, where a recording of this stock number is there, so that a person can be asked. */
      asksOfStockNumber: z.boolean().optional(),
      /** By which `import.progress` tells of it and `import.cancel` stops it. */
      ticket: z.uuid().optional(),
    }),
    RecordingSummary,
  ),
  /** Stops an import, also one that has not arrived yet; the import's own call is then refused. One that is done stays. */
  "import.cancel": method(z.strictObject({ ticket: z.uuid() }), none),
  /** Takes back files that were offered and are not needed after all. */
  "file.letGo": method(z.strictObject({ files: z.array(z.uuid()).max(10_000) }), none),
  /** Files that the system handed over (a double click, the desktop's own window, another start) and nobody has taken yet; they are then taken. */
  "file.handedOver": method(none, z.strictObject({ files: z.array(OfferedFile) })),
  "folder.choose": method(none, OfferedFolder),
  /** Asks for a folder to write to or to read from, in the system's own window; null when the person chose none. Looks at nothing in it. */
  "folder.place": method(none, z.strictObject({ folder: z.string().nullable() })),
  "video.wanted": method(none, z.array(WantedVideo)),
  /** Gives a recording its video again: the same content only, unless `replace`. */
  "video.take": method(z.strictObject({ recordingId: RecordingId, video: z.uuid(), replace: z.boolean() }), RecordingSummary),
  "recording.describe": method(
    z.strictObject({ id: RecordingId, title: z.string().trim().min(1).max(200), stockNumber: z.string().trim().max(60), vehicle: Vehicle }),
    RecordingSummary,
  ),
  "recording.remove": method(z.strictObject({ id: RecordingId }), none),
  "recording.analyse": method(z.strictObject({ id: RecordingId }), RecordingDetail),
  /** The page measures the length when the video's metadata is in; a recording without a transcript end takes it. */
  "recording.measured": method(z.strictObject({ id: RecordingId, duration: Seconds }), none),

  /** The columns of an offered stock sheet and what is asked of them; writes nothing. */
  "stockSheet.look": method(z.strictObject({ stockSheet: z.uuid() }), SheetColumns),
  /** The columns of the sheet that a recording came with, as they are read now. */
  "stockSheet.columns": method(z.strictObject({ id: RecordingId }), SheetColumns),
  /**
   * Remembers what the columns of a form mean, for the next sheet like it and for recordings that came with one; the number of those
   * that are now analysed again.
   */
  "stockSheet.map": method(
    z.strictObject({
      form: z.string().min(1).max(40_000),
      /** Null leaves the column out. */
      columns: z.array(z.strictObject({ name: z.string().min(1), field: SheetField.nullable() })).min(1),
    }),
    z.strictObject({ recordings: z.int().nonnegative() }),
  ),

  // Each of these is one edit: undone and redone as a whole, on disk before the reply.
  "zone.paint": method(
    z.strictObject({
      recordingId: RecordingId,
      start: Seconds,
      end: Seconds,
      zone: ZoneName,
      title: z.string().max(200).nullable(),
      initials: Initials,
    }),
    RecordingDetail,
  ),
  "zone.accept": method(z.strictObject({ recordingId: RecordingId, start: Seconds, end: Seconds, initials: Initials }), RecordingDetail),
  "zone.moveBorder": method(z.strictObject({ recordingId: RecordingId, from: Seconds, to: Seconds, initials: Initials }), RecordingDetail),
  "zone.split": method(z.strictObject({ recordingId: RecordingId, at: Seconds, initials: Initials }), RecordingDetail),
  /** Joins the two spans that meet at a border; the earlier one's zone and title stay. */
  "zone.join": method(z.strictObject({ recordingId: RecordingId, border: Seconds, initials: Initials }), RecordingDetail),
  "zone.retitle": method(
    z.strictObject({
      recordingId: RecordingId,
      zoneSpanId: ZoneSpan.shape.id,
      title: z.string().trim().max(200).nullable(),
      initials: Initials,
    }),
    RecordingDetail,
  ),
  "zone.remove": method(z.strictObject({ recordingId: RecordingId, zoneSpanId: ZoneSpan.shape.id, initials: Initials }), RecordingDetail),
  "finding.add": method(FindingInput.extend({ recordingId: RecordingId, initials: Initials }), RecordingDetail),
  "finding.change": method(FindingInput.extend({ recordingId: RecordingId, id: Finding.shape.id, initials: Initials }), RecordingDetail),
  "finding.remove": method(z.strictObject({ recordingId: RecordingId, id: Finding.shape.id, initials: Initials }), RecordingDetail),
  "finding.accept": method(
    z.strictObject({ recordingId: RecordingId, proposalKeys: z.array(z.string()).min(1), initials: Initials }),
    RecordingDetail,
  ),
  /** Lets a doubtful caption give claims, or takes that back; the recording is analysed again before the reply. */
  "caption.trust": method(
    z.strictObject({ recordingId: RecordingId, caption: CaptionIndex, trusted: z.boolean(), initials: Initials }),
    RecordingDetail,
  ),
  /**
   * Puts a caption's words right; the words it came with take a correction back. The recording is analysed again before the reply.
   */
  "caption.correct": method(
    z.strictObject({ recordingId: RecordingId, caption: CaptionIndex, words: z.string().trim().min(1).max(2000), initials: Initials }),
    RecordingDetail,
  ),
  /** Keeps a still of the video at a moment; one that is there for it gives way. A still is no edit: it can be taken again. */
  "still.keep": method(z.strictObject({ recordingId: RecordingId, atMilliseconds: Milliseconds, image: StillImage }), StillPlace),
  "still.get": method(z.strictObject({ recordingId: RecordingId, atMilliseconds: Milliseconds }), StillPlace.extend({ image: StillImage })),
  /**
   * Moments of which an index wants a picture and none is kept near; none where there is no video to take one from. `hostTakes`: the
   * host takes them itself when it writes the index, with the program that it found; else the page can, from its own player.
   */
  "still.wanted": method(
    z.strictObject({ recordingId: RecordingId }),
    z.strictObject({ moments: z.array(Milliseconds), hostTakes: z.boolean() }),
  ),
  "edit.undo": method(z.strictObject({ recordingId: RecordingId, initials: Initials }), RecordingDetail),
  "edit.redo": method(z.strictObject({ recordingId: RecordingId, initials: Initials }), RecordingDetail),

  /** Over the whole library, or of the one recording that is named. */
  "search.find": method(
    z.strictObject({ query: z.string().trim().max(200), limit: z.int().min(1).max(200), recordingId: RecordingId.optional() }),
    z.array(SearchHit),
  ),
  /** What was said of each of these vehicles about one claim ("axle ratio"), side by side. */
  "search.compare": method(
    z.strictObject({ query: z.string().trim().max(200), recordingIds: z.array(RecordingId).min(1).max(mostCompared) }),
    Comparison,
  ),

  "export.preview": method(
    z.strictObject({ recordingId: RecordingId, format: ExportFormat, granularity: ChapterGranularity, template: TemplateName.optional() }),
    z.strictObject({ fileName: z.string(), mediaType: z.string(), text: z.string(), warnings: z.array(z.string()) }),
  ),
  /** Writes into the recording's folder under the library's exports; refuses to overwrite unless asked. */
  "export.write": method(
    z.strictObject({
      recordingId: RecordingId,
      formats: z.array(ExportFormat).min(1),
      granularity: ChapterGranularity,
      overwrite: z.boolean(),
      /** Of PDFs; letter where it is left out. */
      paper: Paper.optional(),
      /** Of the index text, by name; the library's first where it is left out. */
      template: TemplateName.optional(),
    }),
    z.strictObject({ folder: z.string(), files: z.array(WrittenFile) }),
  ),
  /** Ends the writing that is under way for this recording, which then leaves nothing; `ended` is false where none is. */
  "export.cancel": method(z.strictObject({ recordingId: RecordingId }), z.strictObject({ ended: z.boolean() })),
  "export.reveal": method(z.strictObject({ recordingId: RecordingId }), none),

  ...lotMethods(ExportFormat, ChapterGranularity, Paper),
  ...reviewMethods,
  ...startMethods,
} as const;

export type Contract = typeof contract;
export type MethodName = keyof Contract;
export type Input<Name extends MethodName> = z.output<Contract[Name]["input"]>;
export type Output<Name extends MethodName> = z.output<Contract[Name]["output"]>;
/** One function for each method; dispatch parses what goes in and what comes out. */
export type Handlers = { [Name in MethodName]: (input: Input<Name>) => Output<Name> | Promise<Output<Name>> };

/** What the host tells the page without being asked: pushed over IPC or Server-Sent Events. */
export const events = {
  ...workEvents,
  "library.changed": z.strictObject({ recordingId: RecordingId.nullable() }),
  /** Files made of those that were asked for; `format` is the one that is being made now. */
  "export.progress": z.strictObject({ recordingId: RecordingId, format: ExportFormat, done: z.int(), of: z.int() }),
  "analysis.progress": z.strictObject({ recordingId: RecordingId, pass: z.string(), done: z.int(), of: z.int() }),
  /** So many files wait for `file.handedOver`. */
  "file.waiting": z.strictObject({ files: z.int().positive() }),
  /** The analysis within an import that came with a ticket. */
  "import.progress": z.strictObject({ ticket: z.uuid(), pass: z.string(), done: z.int(), of: z.int() }),
} as const;
export type EventName = keyof typeof events;
export type EventPayload<Name extends EventName> = z.output<(typeof events)[Name]>;
