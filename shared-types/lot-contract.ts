import { z } from "zod";
import { BundleLook, BundleTaken, MergeChoices } from "./bundle.ts";
import { IndexTemplate, longestTemplate, TemplateFault } from "./index-text.ts";
import { LotMatch } from "./lot-sheet.ts";
import { Initials, RecordingId } from "./recording.ts";

function method<Input extends z.ZodType, Output extends z.ZodType>(input: Input, output: Output) {
  return { input, output };
}

const none = z.strictObject({});

/** By which `work.progress` tells of it and `work.cancel` stops it. */
const Ticket = z.uuid();

/** A folder of this machine in full; null for the one that was last used, or the library's own. */
const Folder = z.string().trim().min(1).max(4000).nullable();

const Named = z.strictObject({ recordingId: RecordingId, title: z.string() });
const NamedBundle = Named.extend({ fileName: z.string() });
/** Null for every recording that is ready. */
const AskedRecordings = z.array(RecordingId).min(1).max(100_000).nullable();

/**
 * What concerns recordings as wholes, and many at once.
 * Formats, granularities and papers of the exports are handed in, since they are named where the contract is.
 */
export function lotMethods<Format extends z.ZodType, Granularity extends z.ZodType, Sheet extends z.ZodType>(
  ExportFormat: Format,
  ChapterGranularity: Granularity,
  Paper: Sheet,
) {
  return {
    /** Stops a piece of work, also one that has not arrived yet; its own call then tells what was done. */
    "work.cancel": method(z.strictObject({ ticket: Ticket }), none),

    /** Why no copy of the video with its chapters inside can be made here, and what to do; null where one can. */
    "video.copyAbility": method(z.strictObject({ recordingId: RecordingId }), z.strictObject({ whyNot: z.string().nullable() })),
    /** Makes the copy beside the exports; nothing is encoded again, and the original is only read. */
    "video.copy": method(
      z.strictObject({
        ticket: Ticket,
        recordingId: RecordingId,
        granularity: ChapterGranularity,
        /** Whether the captions put right go in as a track. */
        captions: z.boolean(),
        overwrite: z.boolean(),
      }),
      z.strictObject({ path: z.string(), bytes: z.int(), downloadUrl: z.string() }),
    ),

    /** Where bundles were last kept. */
    "bundle.place": method(none, z.strictObject({ folder: z.string() })),
    /** Writes a bundle for each recording into a folder; those whose bundle there holds the same are left alone. */
    "bundle.keep": method(
      z.strictObject({
        ticket: Ticket,
        recordingIds: AskedRecordings,
        withVideo: z.boolean(),
        folder: Folder,
        /** Also over bundles that were written elsewhere and never brought in here. */
        overwrite: z.boolean(),
      }),
      z.strictObject({
        folder: z.string(),
        written: z.array(NamedBundle.extend({ bytes: z.int() })),
        unchanged: z.array(NamedBundle),
        failed: z.array(NamedBundle.extend({ code: z.string(), why: z.string() })),
        cancelled: z.boolean(),
      }),
    ),
    /** What an offered bundle holds, against what the library has; writes nothing. */
    "bundle.look": method(z.strictObject({ file: z.uuid() }), BundleLook),
    /** The same for every bundle of a folder. */
    "bundle.lookAtFolder": method(
      z.strictObject({ ticket: Ticket, folder: Folder }),
      z.strictObject({
        folder: z.string(),
        bundles: z.array(z.strictObject({ fileName: z.string(), look: BundleLook.nullable(), problem: z.string().nullable() })),
      }),
    ),
    /** Brings a bundle in. Where work differs, each group needs a choice; all that changes is one edit. */
    "bundle.take": method(
      z.strictObject({ ticket: Ticket, file: z.uuid(), choices: MergeChoices.nullable(), again: z.boolean(), initials: Initials }),
      BundleTaken,
    ),

    /** Which recordings an index can go out of without a word, and why of the others it cannot. */
    /** `openMatters`: denials, promises and questions that nobody has dealt with; they hold nothing up here, and are told. */
    "lot.ready": method(
      none,
      z.array(Named.extend({ stockNumber: z.string(), ready: z.boolean(), why: z.string(), openMatters: z.int().nonnegative() })),
    ),
    /** An offered sheet of the whole lot against all recordings; writes nothing. */
    "lot.match": method(z.strictObject({ stockSheet: z.uuid() }), LotMatch),
    /** Gives these recordings their rows of the sheet. */
    "lot.take": method(
      z.strictObject({ stockSheet: z.uuid(), recordingIds: z.array(RecordingId).min(1).max(100_000) }),
      z.strictObject({ recordings: z.int() }),
    ),
    /** Writes the exports, and a text by a template, of many recordings into a folder. */
    "lot.index": method(
      z.strictObject({
        ticket: Ticket,
        recordingIds: AskedRecordings,
        formats: z.array(ExportFormat),
        granularity: ChapterGranularity,
        /** Of the index text that each gets, by name; null writes none that `formats` does not ask for. */
        template: z.string().nullable(),
        /** Of PDFs; letter where it is left out. */
        paper: Paper.optional(),
        folder: Folder,
        overwrite: z.boolean(),
      }),
      z.strictObject({
        /** `warnings`: what the reader of the files should know before they are used. */
        written: z.array(Named.extend({ folder: z.string(), files: z.array(z.string()), warnings: z.array(z.string()) })),
        failed: z.array(Named.extend({ why: z.string() })),
        /** Not ready, and so not written. */
        left: z.array(Named.extend({ why: z.string() })),
        cancelled: z.boolean(),
      }),
    ),

    "template.list": method(none, z.array(IndexTemplate)),
    "template.keep": method(z.strictObject({ template: IndexTemplate }), z.array(IndexTemplate)),
    "template.remove": method(z.strictObject({ name: z.string() }), z.array(IndexTemplate)),
    /** The text of a recording by a template, or the places where it cannot be filled in. */
    "template.preview": method(
      z.strictObject({ recordingId: RecordingId, text: z.string().max(longestTemplate) }),
      z.strictObject({ text: z.string().nullable(), faults: z.array(TemplateFault) }),
    ),
  } as const;
}

/** How far a piece of work that came with a ticket is. */
export const workEvents = {
  "work.progress": z.strictObject({ ticket: Ticket, what: z.string(), done: z.int(), of: z.int() }),
} as const;
