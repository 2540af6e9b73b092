import { readdirSync, readFileSync } from "node:fs";
import { parseText } from "media-captions";
import { describe, expect, test } from "vitest";
import { WebVTTParser } from "webvtt-parser";
import { buildExport } from "../../electron/exports/build-export.ts";
import { parseWebVtt } from "../../electron/transcripts/parse-webvtt.ts";
import { type ChapterGranularity, chapterGranularities, type RecordingDetail } from "../../shared-types/index.ts";
import { hostileDetail } from "./hostile-detail.ts";
import { sampleDetail } from "./sample-detail.ts";

/** Times as milliseconds: the readers differ in the last bit of a second. */
const times = (cues: readonly { start: number; end: number }[]) =>
  cues.map(({ start, end }) => [Math.round(start * 1000), Math.round(end * 1000)]);

const formats = { chapters: "chapters-webvtt", captions: "captions-webvtt", corrections: "correction-overlay" } as const;

interface Written {
  readonly name: string;
  readonly detail: () => RecordingDetail;
  readonly granularity: ChapterGranularity;
  readonly kind: keyof typeof formats;
}

const written: readonly Written[] = [sampleDetail, hostileDetail].flatMap((detail): Written[] => [
  ...chapterGranularities.map((granularity) => ({
    name: `${detail.name}, chapters of ${granularity}`,
    detail,
    granularity,
    kind: "chapters" as const,
  })),
  { name: `${detail.name}, captions`, detail, granularity: "zones", kind: "captions" },
  { name: `${detail.name}, corrections`, detail, granularity: "zones", kind: "corrections" },
]);

describe("two libraries from elsewhere read what is written, without an error and alike", () => {
  test.for(written)("$name", async ({ detail, granularity, kind }) => {
    const { text } = buildExport(formats[kind], { detail: detail(), writtenAt: "2026-01-07T12:00:00.000Z", granularity });
    const ours = parseWebVtt(text).cues;
    expect(ours.length).toBeGreaterThan(0);
    const reference = new WebVTTParser().parse(text, kind === "chapters" ? "chapters" : "subtitles/captions/descriptions");
    expect(reference.errors).toEqual([]);
    expect(times(reference.cues.map(({ startTime, endTime }) => ({ start: startTime, end: endTime })))).toEqual(times(ours));
    expect(reference.cues.map(({ id }) => id)).toEqual(ours.map(({ id }) => id));
    const other = await parseText(text, { type: "vtt", strict: true });
    expect(other.errors).toEqual([]);
    expect(times(other.cues.map(({ startTime, endTime }) => ({ start: startTime, end: endTime })))).toEqual(times(ours));
  });
});

/** Files of the web platform's tests; see the ORIGIN.md beside them. */
const folder = new URL("../../fixtures/transcripts/wpt-webvtt/", import.meta.url);
const platformFiles = readdirSync(folder).filter((name) => name.endsWith(".vtt"));
/**
 * What media-captions 1.0.4 reads otherwise than the specification's parser: it drops cues that end before they begin and timings it
 * finds too long, and keeps those that are too short.
 */
const otherwise = new Set(["arrows.vtt", "timings-negative.vtt", "timings-too-long.vtt", "timings-too-short.vtt", "whitespace-chars.vtt"]);

describe("the web platform's files: the specification's own parser sees what ours sees", () => {
  test.for(platformFiles)("%s", async (name) => {
    const text = readFileSync(new URL(name, folder), "utf8");
    const ours = parseWebVtt(text).cues;
    const { cues } = new WebVTTParser().parse(text);
    expect(cues.map(({ id }) => id)).toEqual(ours.map(({ id }) => id));
    expect(times(cues.map(({ startTime, endTime }) => ({ start: startTime, end: endTime })))).toEqual(times(ours));
    const other = await parseText(text, { type: "vtt" });
    if (otherwise.has(name)) expect(other.cues.length).not.toBe(ours.length);
    else expect(other.cues.map(({ id }) => id)).toEqual(ours.map(({ id }) => id));
  });

  test("all of them are there", () => expect(platformFiles.length).toBeGreaterThan(15));
});

test("a file that is none is refused by both, so that the reading above means something", async () => {
  const srt = "1\n00:00:00,000 --> 00:00:01,000\nSRT\n";
  expect(new WebVTTParser().parse(srt).errors).not.toEqual([]);
  const other = await parseText(srt, { type: "vtt", strict: true, errors: true }).catch((failure: unknown) => ({ errors: [failure] }));
  expect(other.errors.length).toBeGreaterThan(0);
});
