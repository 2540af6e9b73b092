import type { ChapterGranularity, ExportFormat, Paper } from "../../shared-types/index.ts";

/** What each export is, and what for. */
export const exportWords = {
  "chapters-webvtt": { name: "Chapters, WebVTT", purpose: "for a player that reads a chapter track" },
  "chapters-list": { name: "Chapters, list", purpose: "lines of time and title for a video's description" },
  "chapters-matroska": { name: "Chapters, Matroska XML", purpose: "for tools that put chapters into mkv files" },
  "chapters-ffmpeg": { name: "Chapters, FFmpeg metadata", purpose: "for FFmpeg, which puts them into mp4 and other files" },
  "chapters-podcast": { name: "Chapters, podcast JSON", purpose: "for podcast and video feeds" },
  "chapters-jsonld": { name: "Chapters, schema.org JSON-LD", purpose: "for the web page that shows the video" },
  "captions-webvtt": { name: "Captions put right, WebVTT", purpose: "repairs and rulings applied; lists what was changed" },
  "captions-srt": { name: "Captions put right, SRT", purpose: "the same for players that read SRT" },
  "captions-changes": { name: "Changes to the captions", purpose: "what the captions now say otherwise, and why" },
  "correction-overlay": { name: "Corrections over the video, WebVTT", purpose: "puts a settled claim right where it was said wrongly" },
  "correction-text": { name: "Corrections, text", purpose: "for the video's description" },
  "index-html": { name: "Condition index, page", purpose: "to read beside the video; its times jump there" },
  "index-pdf": { name: "Condition index, PDF", purpose: "the same page on paper: to send or to print" },
  "index-text": { name: "Condition index, text", purpose: "by one of your templates; for an advert or a listing" },
  "index-csv": { name: "Condition index, CSV", purpose: "for a spreadsheet" },
  "index-json": { name: "Condition index, JSON", purpose: "for another program" },
  "record-html": { name: "Review record, page", purpose: "who ruled what, when and why; to print and keep" },
  "record-pdf": { name: "Review record, PDF", purpose: "the same page on paper, to keep" },
  "record-json": { name: "Review record, JSON", purpose: "the same, sealed with the hashes of its files" },
  "record-schema": { name: "Review record, JSON Schema", purpose: "describes the record for whoever reads it" },
  "index-schema": { name: "Condition index, JSON Schema", purpose: "describes the JSON for whoever reads it" },
} as const satisfies Record<ExportFormat, { name: string; purpose: string }>;

/** All of them by what they are of, in the order in which they are shown. */
export const exportGroups = [
  {
    name: "Condition index",
    purpose: "what is there and what condition it is in: to read, print, send or take over",
    formats: ["index-html", "index-pdf", "index-text", "index-csv", "index-json", "index-schema"],
  },
  {
    name: "Chapters",
    purpose: "for players, descriptions, feeds and web pages",
    formats: ["chapters-list", "chapters-webvtt", "chapters-matroska", "chapters-ffmpeg", "chapters-podcast", "chapters-jsonld"],
  },
  {
    name: "Captions and corrections",
    purpose: "what was heard or said wrongly, put right",
    formats: ["captions-webvtt", "captions-srt", "captions-changes", "correction-overlay", "correction-text"],
  },
  {
    name: "Review record",
    purpose: "who ruled what, when and why: to keep",
    formats: ["record-html", "record-pdf", "record-json", "record-schema"],
  },
] as const satisfies readonly { name: string; purpose: string; formats: readonly ExportFormat[] }[];

/** How much becomes a chapter, in a person's words. */
export const granularityWords = {
  zones: "zones",
  findings: "zones and findings",
  everything: "zones, findings and claims",
} as const satisfies Record<ChapterGranularity, string>;

/** Sheets of paper as people ask for them. */
export const paperWords = { letter: "letter", a4: "A4" } as const satisfies Record<Paper, string>;

export function bytesLabel(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  return bytes < 1_000_000 ? `${(bytes / 1000).toFixed(1)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`;
}
