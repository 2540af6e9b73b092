import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import Ajv from "ajv/dist/2020.js";
import jsonld from "jsonld";
import { describe, expect, test } from "vitest";
import { buildExport } from "../../../electron/exports/build-export.ts";
import { metadataValue } from "../../../electron/exports/chapters/ffmpeg-metadata.ts";
import { chaptersMatroska } from "../../../electron/exports/chapters/matroska-xml.ts";
import { isoDuration } from "../../../electron/exports/chapters/video-object.ts";
import { type ChapterGranularity, chapterGranularities, type TextFormat } from "../../../shared-types/index.ts";
import { temporaryFolder } from "../../support/builders/temporary-folder.ts";
import { missingTools } from "../../support/runner/find-tools.ts";
import { hostileDetail, hostileTexts } from "../hostile-detail.ts";
import { sampleDetail } from "../sample-detail.ts";

const build = (format: TextFormat, granularity: ChapterGranularity = "zones") =>
  buildExport(format, { detail: sampleDetail(), writtenAt: "2026-01-07T12:00:00.000Z", granularity }).text;

/** Two seconds of a black picture, made by FFmpeg itself. */
function blackVideo(folder: string, seconds: number): string {
  const file = join(folder, "black.mkv");
  execFileSync("ffmpeg", ["-v", "error", "-f", "lavfi", "-i", `color=black:s=16x16:r=1:d=${seconds}`, "-c:v", "libvpx", "-y", file]);
  return file;
}

interface ProbedChapter {
  readonly start_time: string;
  readonly end_time: string;
  readonly tags?: { readonly title?: string };
}

function chaptersIn(file: string): ProbedChapter[] {
  const text = execFileSync("ffprobe", ["-v", "error", "-show_chapters", "-of", "json", file], { encoding: "utf8" });
  return (JSON.parse(text) as { chapters: ProbedChapter[] }).chapters;
}

const noFfmpeg = missingTools("ffmpeg", "ffprobe");
const noMkv = missingTools("mkvmerge", "mkvinfo", "ffmpeg");

describe.skipIf(noFfmpeg)(`FFmpeg reads the metadata file${noFfmpeg ? ` (skipped: ${noFfmpeg})` : ""}`, () => {
  test.for([...chapterGranularities])("%s", (granularity) => {
    const folder = temporaryFolder();
    const metadata = join(folder, "chapters.ffmetadata");
    writeFileSync(metadata, build("chapters-ffmpeg", granularity));
    const probed = chaptersIn(metadata);
    if (granularity === "zones")
      expect(probed.map(({ start_time, end_time, tags }) => [Number(start_time), Number(end_time), tags?.title])).toEqual([
        [0, 30, "Front [open conflict: rear tire size]"],
        [30, 75, 'Tires & "wheels" <rear> a --> b [open conflict: rear tire size]'],
        [75, 120, "Underside"],
      ]);
    else expect(probed.length).toBeGreaterThan(3);
  });
});

describe.skipIf(noFfmpeg)(`FFmpeg reads hostile titles whole${noFfmpeg ? ` (skipped: ${noFfmpeg})` : ""}`, () => {
  test.for([...chapterGranularities])("%s", (granularity) => {
    const input = { detail: hostileDetail(), writtenAt: "2026-01-07T12:00:00.000Z", granularity };
    const metadata = join(temporaryFolder(), "chapters.ffmetadata");
    writeFileSync(metadata, buildExport("chapters-ffmpeg", input).text);
    const oneLine = (title: string | undefined) => title?.replaceAll(/\s+/g, " ").trim();
    const expected = (JSON.parse(buildExport("chapters-podcast", input).text).chapters as { title: string }[]).map(({ title }) => title);
    expect(expected.join(" ")).toContain("onerror=alert('attribute')");
    expect(chaptersIn(metadata).map(({ tags }) => oneLine(tags?.title))).toEqual(expected);
  });
});

test("characters that mean something in FFmpeg's metadata stand behind a backslash", () => {
  // FFmpeg doc/metadata.texi: "=", ";", "#", "\" and a newline are escaped.
  expect(metadataValue("50% off; a=b #1 \\ end")).toBe("50% off\\; a\\=b \\#1 \\\\ end");
  expect(metadataValue("two\r\nlines")).toBe("two\\\nlines");
});

describe.skipIf(noMkv)(`Matroska's own tools take the XML${noMkv ? ` (skipped: ${noMkv})` : ""}`, () => {
  test.for([...chapterGranularities])("%s", (granularity) => {
    const folder = temporaryFolder();
    const xml = join(folder, "chapters.xml");
    writeFileSync(xml, build("chapters-matroska", granularity));
    const out = join(folder, "with-chapters.mkv");
    execFileSync("mkvmerge", ["-q", "-o", out, "--chapters", xml, blackVideo(folder, 120)]);
    const told = execFileSync("mkvinfo", ["--ui-language", "en_US", "-a", out], { encoding: "utf8" });
    expect(told).toContain('Chapter string: Tires & "wheels" <rear> a --> b [open conflict: rear tire size]');
    expect(told).toContain("Chapter time start: 00:00:30.000000000");
    if (granularity === "everything") expect(told).toContain("Chapter string: Final drive ratio: 4.11:1");
  });

  test("hostile titles arrive whole", () => {
    const folder = temporaryFolder();
    const input = { detail: hostileDetail(), writtenAt: "2026-01-07T12:00:00.000Z", granularity: "findings" } as const;
    const xml = join(folder, "chapters.xml");
    writeFileSync(xml, buildExport("chapters-matroska", input).text);
    const out = join(folder, "with-chapters.mkv");
    execFileSync("mkvmerge", ["-q", "-o", out, "--chapters", xml, blackVideo(folder, 120)]);
    const told = execFileSync("mkvinfo", ["--ui-language", "en_US", "-a", out], { encoding: "utf8" });
    for (const text of hostileTexts) expect(told).toContain(text.replaceAll(/\s+/g, " ").trim());
  });

  test("characters that XML forbids are taken out, and the file is still taken", () => {
    const folder = temporaryFolder();
    const xml = join(folder, "chapters.xml");
    const hostile = "\u0000\u0008]]> &amp; <x> “ü” עברית 🚙 \u001b";
    writeFileSync(xml, chaptersMatroska([{ start: 0, end: 2, title: hostile, inside: [] }]));
    const out = join(folder, "with-chapters.mkv");
    execFileSync("mkvmerge", ["-q", "-o", out, "--chapters", xml, blackVideo(folder, 2)]);
    expect(chaptersIn(out)[0]?.tags?.title).toBe("]]> &amp; <x> “ü” עברית 🚙");
  });
});

/** The fields that the published format asks for (Podcastindex-org/podcast-namespace, docs/examples/chapters/jsonChapters.md, 1.2). */
const podcastSchema = {
  type: "object",
  required: ["version", "chapters"],
  properties: {
    version: { type: "string" },
    title: { type: "string" },
    fileName: { type: "string" },
    chapters: {
      type: "array",
      items: {
        type: "object",
        required: ["startTime"],
        properties: { startTime: { type: "number" }, endTime: { type: "number" }, title: { type: "string" }, toc: { type: "boolean" } },
      },
    },
  },
};

test.for([...chapterGranularities])("podcast chapters have the published fields, in ascending order: %s", (granularity) => {
  const validate = new Ajv().compile(podcastSchema);
  // The rules' own examples, so that the schema can fail.
  expect(validate({ version: "1.2.0", chapters: [{ startTime: "168" }] })).toBe(false);
  expect(validate({ version: "1.2.0" })).toBe(false);
  expect(validate({ version: "1.2.0", chapters: [{ startTime: 0, title: "Intro", toc: false }] })).toBe(true);
  const written = JSON.parse(build("chapters-podcast", granularity));
  expect(validate(written), JSON.stringify(validate.errors)).toBe(true);
  const starts = (written.chapters as { startTime: number }[]).map(({ startTime }) => startTime);
  expect(starts).toEqual(starts.toSorted((a, b) => a - b));
  expect(written.version).toBe("1.2.0");
});

/**
 * What schema.org's context says of the terms that are written here (schema.org/docs/jsonldcontext.jsonld): addresses are nodes, the day
 * is a date, all else is as it stands. Closed, so that a term which is none of schema.org's is dropped and the library's safe mode objects.
 */
const schemaTerms = {
  "@context": {
    schema: "http://schema.org/",
    ...Object.fromEntries(
      ["name", "description", "duration", "hasPart", "startOffset", "endOffset"].map((term) => [term, `schema:${term}`]),
    ),
    ...Object.fromEntries(["contentUrl", "url"].map((term) => [term, { "@id": `schema:${term}`, "@type": "@id" }])),
    uploadDate: { "@id": "schema:uploadDate", "@type": "schema:Date" },
    VideoObject: "schema:VideoObject",
    Clip: "schema:Clip",
  },
};
/** Nothing is fetched in a test. */
const documentLoader = async (url: string) => ({ document: schemaTerms, documentUrl: url, contextUrl: undefined });
const strictly = { documentLoader, base: "https://dealer.example/walks/", safe: true };

test.for([
  ["published", [{ at: "2026-01-06T09:00:00.000Z", initials: "AB", openConflicts: 1, openMatters: null }], "kestrel.webm"],
  ["never published, without a video", [], null],
] as const)("every term of the JSON-LD is schema.org's, and what is not known is not told: %s", async ([, publications, videoFile]) => {
  const detail = { ...sampleDetail(), publications: [...publications], videoFile };
  const { text, warnings } = buildExport("chapters-jsonld", { detail, writtenAt: "2026-01-07T12:00:00.000Z" });
  const [video] = (await jsonld.expand(JSON.parse(text), strictly)) as Record<string, Record<string, unknown>[]>[];
  expect(video?.["http://schema.org/uploadDate"]).toEqual(
    publications.length > 0 ? [{ "@type": "http://schema.org/Date", "@value": "2026-01-06T09:00:00.000Z" }] : undefined,
  );
  expect(video?.["http://schema.org/contentUrl"]).toEqual(videoFile ? [{ "@id": "https://dealer.example/walks/kestrel.webm" }] : undefined);
  const clips = video?.["http://schema.org/hasPart"] as unknown as Record<string, Record<string, unknown>[]>[] | undefined;
  expect(clips?.[0]?.["http://schema.org/url"]).toEqual(
    videoFile ? [{ "@id": "https://dealer.example/walks/kestrel.webm#t=0,30" }] : undefined,
  );
  expect(warnings.join(" ")).toContain(publications.length > 0 ? "public address" : "uploadDate");
  await expect(jsonld.expand({ ...JSON.parse(text), uploaded: "today" }, strictly)).rejects.toThrow();
});

test("a JSON-LD library reads a video of schema.org with its clips", async () => {
  const document = JSON.parse(build("chapters-jsonld"));
  const [video] = (await jsonld.expand(document, strictly)) as Record<string, { "@value"?: unknown }[]>[];
  expect(video?.["@type"]).toEqual(["http://schema.org/VideoObject"]);
  expect(video?.["http://schema.org/duration"]).toEqual([{ "@value": "PT2M" }]);
  const clips = video?.["http://schema.org/hasPart"] as unknown as Record<string, { "@value": unknown }[]>[];
  expect(clips).toHaveLength(3);
  expect(clips[1]?.["http://schema.org/startOffset"]).toEqual([{ "@value": 30 }]);
  expect(clips[1]?.["http://schema.org/endOffset"]).toEqual([{ "@value": 75 }]);
  expect(clips[1]?.["http://schema.org/url"]?.[0]).toEqual({
    "@id": expect.stringMatching(/^https:\/\/dealer\.example\/walks\/.*#t=30,75$/),
  });
});

test.for([
  // ISO 8601 durations, as schema.org/Duration asks for them.
  { seconds: 460.4, written: "PT7M40S" },
  { seconds: 3600, written: "PT1H" },
  { seconds: 0.2, written: "PT0S" },
  { seconds: 3723, written: "PT1H2M3S" },
])("$seconds s is $written", ({ seconds, written }) => expect(isoDuration(seconds)).toBe(written));
