import { z } from "zod";
import {
  type ChapterGranularity,
  ConditionIndex,
  type ExportFormat,
  firstTemplate,
  type IndexTemplate,
  isPdfFormat,
  pdfPages,
  type RecordingDetail,
  ReviewRecord,
  type TextFormat,
} from "../../shared-types/index.ts";
import { type ChapterEntry, chapterEntries } from "./chapters/entries.ts";
import { chaptersFfmpeg } from "./chapters/ffmpeg-metadata.ts";
import { chaptersMatroska } from "./chapters/matroska-xml.ts";
import { chaptersList } from "./chapters/plain-list.ts";
import { chaptersPodcast, PodcastChapters } from "./chapters/podcast-json.ts";
import { videoObject, videoObjectWarnings } from "./chapters/video-object.ts";
import { chaptersWebvtt } from "./chapters/webvtt.ts";
import { conditionIndex } from "./condition-index.ts";
import { changesList, correctedSrt, correctedWebvtt } from "./corrections/caption-files.ts";
import { correctCaptions } from "./corrections/correct-captions.ts";
import { correctionText } from "./corrections/correction-text.ts";
import { overlayWebvtt } from "./corrections/settled-claims.ts";
import { type IndexStill, indexHtml } from "./html/index-html.ts";
import { planOf } from "./html/index-plan.ts";
import { indexCsv } from "./index-csv.ts";
import { recordHtml } from "./review-record/record-html.ts";
import { type FileHashes, recordText, reviewRecord } from "./review-record/review-record.ts";
import { fillTemplate } from "./templates/fill-template.ts";

export interface BuiltExport {
  /** A plain name without folders, safe on every system. */
  readonly fileName: string;
  readonly mediaType: string;
  readonly text: string;
  /** What the reader of the file should know before it is used; nothing where all is well. */
  readonly warnings: readonly string[];
}

export interface ExportInput {
  readonly detail: RecordingDetail;
  /** ISO 8601 UTC. */
  readonly writtenAt: string;
  /** Where the video lies as seen from the written files, as a relative address; left out, it is taken to lie beside them. */
  readonly videoHref?: string | null;
  /** How much becomes a chapter; zones alone where it is left out. */
  readonly granularity?: ChapterGranularity;
  /** Needed for the formats of `needsHashes` alone. */
  readonly hashes?: FileHashes | null;
  /** Pictures of the video that a page shows beside chapters and findings; a page without any is whole. */
  readonly stills?: readonly IndexStill[];
  /** A page that is only printed has no video, and says which file its times are of. */
  readonly printed?: boolean;
  /** Of the index text; the first of a new library where it is left out. It has no faults. */
  readonly template?: IndexTemplate;
}

/** Formats that name the hashes of the video and the transcript. */
export function needsHashes(format: ExportFormat): boolean {
  return format === "record-html" || format === "record-json" || format === "record-pdf";
}

interface Writer {
  readonly ending: string;
  readonly mediaType: string;
  readonly write: (input: ExportInput) => string | { readonly text: string; readonly warnings: readonly string[] };
}

const entriesOf = ({ detail, granularity = "zones" }: ExportInput): ChapterEntry[] => chapterEntries(detail, granularity);

const writers = {
  "chapters-webvtt": { ending: "chapters.vtt", mediaType: "text/vtt", write: (input) => chaptersWebvtt(entriesOf(input)) },
  "chapters-list": { ending: "chapters.txt", mediaType: "text/plain", write: (input) => chaptersList(entriesOf(input)) },
  "chapters-matroska": { ending: "chapters.xml", mediaType: "application/xml", write: (input) => chaptersMatroska(entriesOf(input)) },
  "chapters-ffmpeg": {
    ending: "chapters.ffmetadata",
    mediaType: "text/plain",
    write: (input) => chaptersFfmpeg(entriesOf(input), input.detail.summary.title),
  },
  "chapters-podcast": {
    ending: "chapters.json",
    mediaType: "application/json+chapters",
    write: (input) => json(PodcastChapters.parse(chaptersPodcast(entriesOf(input), input.detail.summary.title, input.detail.videoFile))),
  },
  "chapters-jsonld": {
    ending: "chapters.jsonld",
    mediaType: "application/ld+json",
    write: (input) => ({
      text: json(videoObject(input.detail, entriesOf(input), input.videoHref ?? null)),
      warnings: videoObjectWarnings(input.detail),
    }),
  },
  "captions-webvtt": { ending: "captions.vtt", mediaType: "text/vtt", write: ({ detail }) => correctedWebvtt(correctCaptions(detail)) },
  "captions-srt": {
    ending: "captions.srt",
    mediaType: "application/x-subrip",
    write: ({ detail }) => correctedSrt(correctCaptions(detail)),
  },
  "captions-changes": {
    ending: "captions-changes.txt",
    mediaType: "text/plain",
    write: ({ detail }) => changesList(correctCaptions(detail)),
  },
  "correction-overlay": { ending: "corrections.vtt", mediaType: "text/vtt", write: ({ detail }) => overlayWebvtt(detail) },
  "correction-text": { ending: "corrections.txt", mediaType: "text/plain", write: ({ detail }) => correctionText(detail) },
  "index-html": {
    ending: "condition-index.html",
    mediaType: "text/html",
    write: ({ detail, writtenAt, videoHref, stills, printed }) =>
      indexHtml(conditionIndex(detail, writtenAt), { plan: planOf(detail), videoHref, stills, printed }),
  },
  "index-text": {
    ending: "text.txt",
    mediaType: "text/plain",
    write: ({ detail, writtenAt, template = firstTemplate }) => {
      const { text, faults } = fillTemplate(template.text, detail, writtenAt);
      if (text === null) throw new Error(`“${template.name}” cannot be filled in: ${faults[0]?.message}`);
      return text;
    },
  },
  "index-csv": {
    ending: "condition-index.csv",
    mediaType: "text/csv",
    write: ({ detail, writtenAt }) => indexCsv(conditionIndex(detail, writtenAt)),
  },
  "index-json": {
    ending: "condition-index.json",
    mediaType: "application/json",
    write: ({ detail, writtenAt }) => json(ConditionIndex.parse(conditionIndex(detail, writtenAt))),
  },
  "index-schema": {
    ending: "condition-index.schema.json",
    mediaType: "application/schema+json",
    write: () => json(z.toJSONSchema(ConditionIndex)),
  },
  "record-html": { ending: "review-record.html", mediaType: "text/html", write: (input) => recordHtml(recordOf(input)) },
  "record-json": {
    ending: "review-record.json",
    mediaType: "application/json",
    write: (input) => recordText(ReviewRecord.parse(recordOf(input))),
  },
  "record-schema": {
    ending: "review-record.schema.json",
    mediaType: "application/schema+json",
    write: () => json(z.toJSONSchema(ReviewRecord)),
  },
} as const satisfies Record<TextFormat, Writer>;

function recordOf({ detail, writtenAt, hashes }: ExportInput): ReviewRecord {
  if (!hashes) throw new Error("A review record is written with the hashes of its files.");
  return reviewRecord(detail, writtenAt, hashes);
}

/** One export of a recording as text. Pure: the same recording and time give the same bytes. */
export function buildExport(format: TextFormat, input: ExportInput): BuiltExport {
  const { mediaType, write } = writers[format] as Writer;
  const written = write(input);
  const { text, warnings } = typeof written === "string" ? { text: written, warnings: [] } : written;
  return { fileName: exportFileName(format, input.detail.summary, input.template), mediaType, text, warnings };
}

/** What an export of this recording is called; an index text after its template, so that two of them lie side by side. */
export function exportFileName(
  format: ExportFormat,
  recording: { stockNumber: string; title: string },
  template: Pick<IndexTemplate, "name"> = firstTemplate,
): string {
  if (format === "index-text")
    return `${fileStem(recording)}.${fileStem({ stockNumber: "", title: template.name })}.${writers[format].ending}`;
  const ending = isPdfFormat(format) ? writers[pdfPages[format]].ending.replace(/html$/, "pdf") : writers[format].ending;
  return `${fileStem(recording)}.${ending}`;
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

/** Letters, digits and hyphens from the stock number and title, at most 60 characters: no system refuses it, and no path hides in it. */
export function fileStem({ stockNumber, title }: { stockNumber: string; title: string }): string {
  const stem = `${stockNumber} ${title}`
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-+|-+$/g, "")
    .slice(0, 60)
    .replace(/-+$/, "");
  return stem || "recording";
}
