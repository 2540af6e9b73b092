import type { ExportFormat } from "../../shared-types/index.ts";

/** What each export is, and what for. */
export const exportWords = {
  "chapters-webvtt": { name: "Chapters, WebVTT", purpose: "for a player that reads a chapter track" },
  "chapters-list": { name: "Chapters, list", purpose: "lines of time and title for a video's description" },
  "index-html": { name: "Condition index, page", purpose: "to read beside the video; its times jump there" },
  "index-csv": { name: "Condition index, CSV", purpose: "for a spreadsheet" },
  "index-json": { name: "Condition index, JSON", purpose: "for another program" },
  "index-schema": { name: "JSON Schema", purpose: "describes the JSON for whoever reads it" },
} as const satisfies Record<ExportFormat, { name: string; purpose: string }>;

export function bytesLabel(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  return bytes < 1_000_000 ? `${(bytes / 1000).toFixed(1)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`;
}
