import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parseWebVtt, readWebVttCaptions } from "../../electron/transcripts/parse-webvtt.ts";
import { readTranscript } from "../../electron/transcripts/read-transcript.ts";

const folder = new URL("../../fixtures/transcripts/wpt-webvtt/", import.meta.url);
const stored = (file: string) => readFileSync(new URL(file, folder), "utf8");

/**
 * Cue counts, ids, texts and times asserted by the web platform's own tests (web-platform-tests/wpt,
 * webvtt/parsing/file-parsing/tests, read 2026-11-25; see fixtures/transcripts/wpt-webvtt/ORIGIN.md).
 */
const platformFiles: readonly { file: string; cues: number; ids?: string[]; texts?: string[]; times?: [number, number][] }[] = [
  { file: "arrows.vtt", cues: 6 },
  { file: "ids.vtt", cues: 5, ids: [" leading space", "trailing space ", "-- >", "->", " "] },
  { file: "newlines.vtt", cues: 4, ids: ["cr", "lf", "crlf", "lfcr"], texts: ["text1", "text2", "text3", "text4"] },
  { file: "whitespace-chars.vtt", cues: 3, ids: ["spaces", "tabs", "form feed"], texts: ["   text1", "text2", "text3"] },
  {
    file: "timings-negative.vtt",
    cues: 4,
    times: [
      [0, 0],
      [1, 0.999],
      [60, 59.999],
      [3600, 3599.999],
    ],
  },
  {
    file: "timings-too-long.vtt",
    cues: 2,
    texts: ["text1", "text2"],
    times: [
      [0, 1],
      [0, 1],
    ],
  },
  {
    file: "timings-too-short.vtt",
    cues: 2,
    texts: ["text1", "text2"],
    times: [
      [0, 1],
      [0, 1],
    ],
  },
  {
    file: "timings-omitted-hours.vtt",
    cues: 3,
    times: [
      [0, 1],
      [0, 1],
      [0, 1],
    ],
  },
  { file: "settings-align.vtt", cues: 13 },
  { file: "settings-line.vtt", cues: 45 },
  { file: "settings-position.vtt", cues: 22 },
  { file: "settings-size.vtt", cues: 16 },
  { file: "settings-vertical.vtt", cues: 8 },
  { file: "settings-multiple.vtt", cues: 2, ids: ["id1", "id2"] },
  { file: "settings-region.vtt", cues: 9 },
];

describe("the web platform's own files", () => {
  test.for(platformFiles)("$file", ({ file, cues, ids, texts, times }) => {
    const parsed = parseWebVtt(stored(file)).cues;
    expect(parsed).toHaveLength(cues);
    if (ids) expect(parsed.map((cue) => cue.id)).toEqual(ids);
    if (texts) expect(parsed.map((cue) => cue.text)).toEqual(texts);
    if (times) expect(parsed.map((cue) => [cue.start, cue.end])).toEqual(times);
  });

  // What the platform asserts of these was not read: they only must not break the parser.
  test.for(["regions-old.vtt", "regions-regionanchor.vtt", "regions-scroll.vtt", "regions-viewportanchor.vtt"])("%s is read", (file) => {
    expect(parseWebVtt(stored(file)).cues.length).toBeGreaterThan(0);
  });
});

/** Times of the grammar (W3C WebVTT, section 4.3, "WebVTT timestamp"): what is one and what is not. */
const times = [
  { timing: "00:11.000 --> 00:13.000", start: 11, end: 13, why: "hours left out" },
  { timing: "01:02:03.004 --> 100:00:00.000", start: 3723.004, end: 360_000, why: "hours of any length" },
  { timing: "00:00:01.000-->00:00:02.000", start: 1, end: 2, why: "the parser asks for no space" },
  { timing: "00:00:01.000 --> 00:00:02.000 align:start line:0", start: 1, end: 2, why: "settings are skipped" },
  { timing: "0:00.000 --> 00:01.000", start: null, end: null, why: "minutes need two digits" },
  { timing: "00:00:00,000 --> 00:00:01,000", start: null, end: null, why: "the comma is SRT's" },
  { timing: "00:60.000 --> 01:00.000", start: null, end: null, why: "60 seconds" },
  { timing: "00:59:60.000 --> 01:00:00.000", start: null, end: null, why: "60 seconds again" },
  { timing: "1 --> 2", start: null, end: null, why: "bare numbers" },
];

describe("times", () => {
  test.for(times)("$why", ({ timing, start, end }) => {
    const [cue] = parseWebVtt(`WEBVTT\n\n${timing}\nwords`).cues;
    expect(cue?.start ?? null).toBe(start);
    expect(cue?.end ?? null).toBe(end);
  });
});

test("notes, styles and regions are no captions, and a cue may follow the header at once", () => {
  const text =
    "WEBVTT - said on the lot\n00:01.000 --> 00:02.000\none\n\nNOTE one more\nnot words\n\nSTYLE\n::cue {}\n\nlast\n00:03.000 --> 00:04.000\ntwo\nthree";
  expect(parseWebVtt(text).cues).toEqual([
    { id: "", start: 1, end: 2, text: "one", line: 2 },
    { id: "last", start: 3, end: 4, text: "two\nthree", line: 12 },
  ]);
});

test("a file with SRT's times under WebVTT's name is still read", () => {
  const parsed = readWebVttCaptions("WEBVTT\n\n0:00:01,5 --> 0:00:02,5\nthe grille\n");
  expect(parsed.timed?.map((caption) => [caption.start, caption.end, caption.text])).toEqual([[1.5, 2.5, "the grille"]]);
});

test("a time that cannot be read is refused with its line, for its words would be lost", () => {
  const bytes = new TextEncoder().encode("WEBVTT\n\n00:01.000 --> 00:02.000\none\n\n00:0x.000 --> 00:04.000\ntwo\n");
  expect(() => readTranscript(bytes, "lap.vtt")).toThrow(
    /lap\.vtt, line 6: "00:0x\.000 --> 00:04\.000" is not a caption's time\. Write it as/,
  );
});
