import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { describe, expect, test } from "vitest";
import { writeExportsInto } from "../../electron/services/export-recording.ts";
import { importDemoOnce } from "../../electron/services/import-demo.ts";
import { createOfferedFiles } from "../../electron/services/offered-files.ts";
import { type OfferedFile, textFormats } from "../../shared-types/index.ts";
import { sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { importSample, sampleApplication, sampleVehicle } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

/** The first bytes of a WebM file: EBML's magic number (RFC 8794), then nothing of interest. */
const webm = Buffer.concat([Buffer.from([0x1a, 0x45, 0xdf, 0xa3]), Buffer.alloc(200)]);
/** The first bytes of an MP4 file: a box of type "ftyp" (ISO/IEC 14496-12). */
const mp4 = Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from("ftypisom"), Buffer.alloc(200)]);

const streamOf = (bytes: Uint8Array) => new Blob([Uint8Array.from(bytes)]).stream() as ReadableStream<Uint8Array>;

function importInput(files: { transcript: string; video: string | null; stockSheet?: string | null }) {
  return { stockSheet: null, ...files, title: "Kestrel", stockNumber: "FK-1971", vehicle: sampleVehicle };
}

describe("importing", () => {
  test("a received video moves beside the library, goes with its recording, and is served", async () => {
    const { handlers, parts, mediaFile, folder } = sampleApplication();
    const transcript = await parts.files.receive("walk.txt", streamOf(Buffer.from(sampleTranscriptText)), null);
    const video = await parts.files.receive("walk.WEBM", streamOf(webm), webm.length);
    const summary = await handlers["recording.import"](importInput({ transcript: transcript.id, video: video.id }));
    expect(summary).toMatchObject({ hasVideo: true, videoFound: true, videoKept: true });
    expect(readdirSync(join(folder, "media"))).toEqual([`${summary.id}.webm`]);
    expect(readdirSync(join(folder, ".roundwalk-incoming", String(process.pid)))).toEqual([]);
    expect(mediaFile(summary.id)).toEqual({ path: join(folder, "media", `${summary.id}.webm`), mediaType: "video/webm" });
    expect((await handlers["recording.get"]({ id: summary.id })).videoFile).toBe("walk.WEBM");
    await handlers["recording.remove"]({ id: summary.id });
    expect(readdirSync(join(folder, "media"))).toEqual([]);
  });

  test("a video that is named by its path stays where it is, also when its recording goes", async () => {
    const { handlers, parts, mediaFile, folder } = sampleApplication();
    const path = join(folder, "my walk.mp4");
    writeFileSync(path, mp4);
    writeFileSync(join(folder, "walk.txt"), sampleTranscriptText);
    const summary = await handlers["recording.import"](
      importInput({ transcript: parts.files.offerPath(join(folder, "walk.txt")).id, video: parts.files.offerPath(path).id }),
    );
    expect(mediaFile(summary.id)).toEqual({ path, mediaType: "video/mp4" });
    expect(summary.videoKept).toBe(false);
    await handlers["recording.remove"]({ id: summary.id });
    expect(existsSync(path)).toBe(true);
  });

  test.for([
    { stockNumber: "FK-1971", asked: true, why: "the same" },
    { stockNumber: "fk 1971", asked: true, why: "the same, typed otherwise" },
    { stockNumber: "FK-1972", asked: false, why: "another" },
    { stockNumber: "", asked: false, why: "none" },
  ])("a mended transcript under a stock number that is $why: asked about $asked", async ({ stockNumber, asked }) => {
    const application = sampleApplication();
    const { handlers, parts, folder } = application;
    await importSample(application, application);
    writeFileSync(join(folder, "mended.txt"), `${sampleTranscriptText}[1:55] Mended.\n`);
    const mended = (more: object) =>
      handlers["recording.import"]({
        ...importInput({ transcript: parts.files.offerPath(join(folder, "mended.txt")).id, video: null }),
        ...{ stockNumber, asksOfStockNumber: true, ...more },
      });
    if (asked) {
      await expect(mended({})).rejects.toMatchObject({
        problem: { code: "stock-number-known", message: expect.stringMatching(/in the library already: FK-1971, “Kestrel walk round”/) },
      });
      expect(parts.library.recordings.count()).toBe(1);
    }
    expect(await mended(asked ? { again: true } : {})).toMatchObject({ stockNumber });
    expect(parts.library.recordings.count()).toBe(2);
  });

  test("the same transcript again is asked about, and taken when it is meant", async () => {
    const application = sampleApplication();
    await importSample(application, application);
    await expect(importSample(application, application)).rejects.toMatchObject({
      problem: {
        code: "transcript-known",
        message: expect.stringMatching(/already in the library as “Kestrel walk round” \(stock FK-1971, imported 2026-01-05\)/),
      },
    });
    expect(await application.handlers["recording.list"]({})).toHaveLength(1);
    await importSample(application, { ...application, again: true });
    expect(await application.handlers["recording.list"]({})).toHaveLength(2);
  });

  test("the stock sheet fills what the person left empty, and nothing else", async () => {
    const { handlers, parts, folder } = sampleApplication();
    writeFileSync(join(folder, "walk.txt"), sampleTranscriptText);
    writeFileSync(join(folder, "sheet.csv"), "Stock Number,Year,Make,Model,Mileage\nFK-2000,1972,Fallow,Kestrel GT,68000\n");
    const offer = (name: string) => parts.files.offerPath(join(folder, name)).id;
    const files = () => importInput({ transcript: offer("walk.txt"), video: null, stockSheet: offer("sheet.csv") });
    const vehicle = { ...sampleVehicle, name: "", year: null };
    expect(await handlers["recording.import"]({ ...files(), stockNumber: "", vehicle })).toMatchObject({
      stockNumber: "FK-2000",
      vehicle: { ...sampleVehicle, name: "Fallow Kestrel GT", year: 1972 },
    });
    expect(await handlers["recording.import"]({ ...files(), again: true })).toMatchObject({
      stockNumber: "FK-1971",
      vehicle: sampleVehicle,
    });
  });

  test("a video that has gone since is told by the list", async () => {
    const { handlers, parts, folder } = sampleApplication();
    const path = join(folder, "walk.mp4");
    writeFileSync(path, mp4);
    writeFileSync(join(folder, "walk.txt"), sampleTranscriptText);
    await handlers["recording.import"](
      importInput({ transcript: parts.files.offerPath(join(folder, "walk.txt")).id, video: parts.files.offerPath(path).id }),
    );
    rmSync(path);
    expect(await handlers["recording.list"]({})).toEqual([expect.objectContaining({ hasVideo: true, videoFound: false })]);
  });

  test.for([
    { name: "walk.avi", bytes: webm, code: "video-kind" },
    { name: "walk.txt", bytes: webm, code: "video-kind" },
    { name: "walk.mp4", bytes: webm, code: "video-broken" },
    { name: "walk.mkv", bytes: mp4, code: "video-broken" },
    { name: "walk.webm", bytes: Buffer.alloc(0), code: "video-broken" },
  ])("$name that is none is refused, and nothing is kept of the import", async ({ name, bytes, code }) => {
    const { handlers, parts, folder } = sampleApplication();
    const transcript = await parts.files.receive("walk.txt", streamOf(Buffer.from(sampleTranscriptText)), null);
    const video = await parts.files.receive(name, streamOf(bytes), null);
    await expect(handlers["recording.import"](importInput({ transcript: transcript.id, video: video.id }))).rejects.toMatchObject({
      problem: { code, file: name, message: expect.not.stringMatching(/\ba (?:mp4|m4v|mov|mkv)\b/) },
    });
    expect(await handlers["recording.list"]({})).toEqual([]);
    expect(existsSync(join(folder, "media"))).toBe(false);
    // The person may choose another video without choosing the transcript again.
    expect(parts.files.find(transcript.id).name).toBe("walk.txt");
  });

  test("an analysis that fails leaves a recording that can be worked on by hand", async () => {
    const application = sampleApplication({
      answer: () => {
        throw new Error("no rule for this");
      },
    });
    const summary = await importSample(application, application);
    expect(summary.counts).toMatchObject({ captions: 7, claims: 0 });
    expect(application.logged.join()).toContain("no rule for this");
    const detail = await application.handlers["zone.paint"]({
      recordingId: summary.id,
      start: 0,
      end: 5,
      zone: "front",
      title: null,
      initials: "AB",
    });
    expect(detail.lap.map(({ zone }) => zone)).toEqual(["front", "opening"]);
    expect(await application.handlers["search.find"]({ query: "windshield", limit: 5 })).toEqual([
      expect.objectContaining({ kind: "caption", start: 10 }),
    ]);
  });

  test("the length that the page measures stretches the lap, and never cuts off a caption", async () => {
    const application = sampleApplication();
    const { id } = await importSample(application, application);
    const { handlers } = application;
    await handlers["recording.measured"]({ id, duration: 150 });
    expect((await handlers["recording.get"]({ id })).lap.at(-1)?.end).toBe(150);
    await handlers["recording.measured"]({ id, duration: 3 });
    expect((await handlers["recording.get"]({ id })).summary.duration).toBe(110);
  });
});

describe("files that a browser sends", () => {
  test("are bounded in size and number, and a refused one leaves nothing", async () => {
    const folder = temporaryFolder();
    const files = createOfferedFiles(folder, { fileBytes: 100, files: 2, spareBytes: 0 });
    const place = join(folder, String(process.pid));
    await expect(files.receive("a", streamOf(Buffer.alloc(101)), 101)).rejects.toMatchObject({ problem: { code: "file-too-big" } });
    // A sender that announces nothing, or too little, is counted as it sends.
    await expect(files.receive("a", streamOf(Buffer.alloc(101)), null)).rejects.toMatchObject({ problem: { code: "file-too-big" } });
    await expect(files.receive("a", streamOf(Buffer.alloc(101)), 5)).rejects.toMatchObject({ problem: { code: "file-too-big" } });
    expect(readdirSync(place)).toEqual([]);
    const kept: OfferedFile[] = [];
    for (const name of ["a", "b", "c"]) kept.push(await files.receive(name, streamOf(Buffer.alloc(100)), 100));
    expect(readdirSync(place)).toHaveLength(2);
    expect(() => files.find(kept[0]?.id as string)).toThrow(/no longer at hand/);
    expect(files.find(kept[2]?.id as string).name).toBe("c");
    files.close();
    expect(existsSync(place)).toBe(false);
  });

  test("are refused where the disk has no room", async () => {
    const files = createOfferedFiles(temporaryFolder(), { fileBytes: 100, files: 2, spareBytes: Number.MAX_SAFE_INTEGER });
    await expect(files.receive("a", streamOf(Buffer.alloc(10)), 10)).rejects.toMatchObject({ problem: { code: "disk-full" } });
  });

  test("that broke off half way leave nothing", async () => {
    const folder = temporaryFolder();
    const files = createOfferedFiles(folder);
    let sent = false;
    const broken = new ReadableStream<Uint8Array>({
      pull(controller) {
        if (sent) controller.error(new Error("gone"));
        else controller.enqueue(new Uint8Array(10));
        sent = true;
      },
    });
    await expect(files.receive("a", broken, null)).rejects.toThrow("gone");
    expect(readdirSync(join(folder, String(process.pid)))).toEqual([]);
  });

  test("of a session that has ended are removed, other folders' files are not", () => {
    const folder = temporaryFolder();
    // No process has this number: Linux allows up to 2^22.
    mkdirSync(join(folder, "99999999"));
    writeFileSync(join(folder, "99999999", "left"), "x");
    mkdirSync(join(folder, "mine"));
    createOfferedFiles(folder);
    expect(readdirSync(folder)).toEqual(["mine"]);
  });

  test("and paths: what is no file is refused", () => {
    const folder = temporaryFolder();
    const files = createOfferedFiles(join(folder, "incoming"));
    expect(() => files.offerPath(folder)).toThrow(/is a folder/);
    expect(() => files.offerPath(join(folder, "nothing"))).toThrow(/no such file/);
  });
});

describe("exporting", () => {
  test("writes every format into the recording's folder, each as the preview shows it", async () => {
    const application = sampleApplication();
    const { id: recordingId } = await importSample(application, application);
    const { handlers, folder } = application;
    const written = await handlers["export.write"]({ recordingId, formats: [...textFormats], granularity: "zones", overwrite: false });
    expect(written.folder).toBe(join(folder, "exports", `fk-1971-kestrel-walk-round-${recordingId.slice(0, 8)}`));
    expect(written.files.map(({ format }) => format)).toEqual([...textFormats]);
    for (const { format, path, bytes } of written.files) {
      const preview = await handlers["export.preview"]({ recordingId, format, granularity: "zones" });
      expect(basename(path)).toBe(preview.fileName);
      expect(readFileSync(path).length).toBe(bytes);
      // The time of writing differs by the clock's steps.
      const withoutTimes = (text: string) => text.replaceAll(/2026-01-05[T ]\d\d:\d\d(?::\d\d(?:\.\d+)?Z?)?/g, "TIME");
      expect(withoutTimes(readFileSync(path, "utf8")).length).toBe(withoutTimes(preview.text).length);
    }
    expect(readdirSync(written.folder)).toHaveLength(textFormats.length);
  });

  test("the written page finds the video from where it lies, whatever its name", async () => {
    const { handlers, parts, folder } = sampleApplication();
    writeFileSync(join(folder, "walk.txt"), sampleTranscriptText);
    const own = join(folder, "50% off #1 & more.mp4");
    writeFileSync(own, mp4);
    const transcript = () => parts.files.offerPath(join(folder, "walk.txt")).id;
    const named = await handlers["recording.import"](importInput({ transcript: transcript(), video: parts.files.offerPath(own).id }));
    const received = await handlers["recording.import"]({
      ...importInput({ transcript: transcript(), video: (await parts.files.receive("walk.webm", streamOf(webm), null)).id }),
      again: true,
    });
    const sourceOf = async (recordingId: string) => {
      const { files } = await handlers["export.write"]({ recordingId, formats: ["index-html"], granularity: "zones", overwrite: false });
      const path = files[0]?.path as string;
      const source = /<video[^>]* src="(?<source>[^"]*)"/.exec(readFileSync(path, "utf8"))?.groups?.source as string;
      return new URL(source.replaceAll("&amp;", "&"), pathToFileURL(path));
    };
    expect(fileURLToPath(await sourceOf(named.id))).toBe(own);
    expect(fileURLToPath(await sourceOf(received.id))).toBe(join(folder, "media", `${received.id}.webm`));
  });

  test("the text goes by the template that is named, else by the library's first, and its download by the same", async () => {
    const application = sampleApplication();
    const { id: recordingId } = await importSample(application, application);
    const { handlers, download } = application;
    await handlers["template.keep"]({ template: { name: "A/B 50%", text: "Short: {stock-number}" } });
    const write = (template?: string) =>
      handlers["export.write"]({
        recordingId,
        formats: ["index-text", "chapters-list"],
        granularity: "zones",
        overwrite: true,
        ...(template === undefined ? {} : { template }),
      });
    const usual = (await write()).files[0];
    expect(basename(usual?.path ?? "")).toBe("fk-1971-kestrel-walk-round.listing-text.text.txt");
    const named = (await write("A/B 50%")).files[0];
    expect(basename(named?.path ?? "")).toBe("fk-1971-kestrel-walk-round.a-b-50.text.txt");
    expect(readFileSync(named?.path ?? "", "utf8")).toMatch(/^Short: FK-1971\n/);
    expect(named?.downloadUrl).toBe(`/exports/${recordingId}/index-text/zones/letter/A%2FB%2050%25`);
    expect((await download(recordingId, "index-text", "zones", "letter", "A/B 50%"))?.content).toMatch(/^Short: FK-1971\n/);
    expect(await download(recordingId, "index-text", "zones", "letter", "Gone")).toBeUndefined();
    const look = await handlers["export.preview"]({ recordingId, format: "index-text", granularity: "zones", template: "A/B 50%" });
    expect(look.text).toMatch(/^Short: FK-1971\n/);
    await expect(write("Gone")).rejects.toMatchObject({ problem: { code: "template-unknown" } });
  });

  test("refuses to overwrite unless asked, naming what is there, and writes nothing then", async () => {
    const application = sampleApplication();
    const { id: recordingId } = await importSample(application, application);
    const { handlers } = application;
    const { files, folder } = await handlers["export.write"]({
      recordingId,
      formats: ["index-csv"],
      granularity: "zones",
      overwrite: false,
    });
    const path = files[0]?.path as string;
    writeFileSync(path, "mine");
    await expect(
      handlers["export.write"]({ recordingId, formats: ["index-json", "index-csv"], granularity: "zones", overwrite: false }),
    ).rejects.toMatchObject({
      problem: { code: "file-exists", file: path, message: expect.stringContaining("Nothing was written") },
    });
    expect([readdirSync(folder), readFileSync(path, "utf8")]).toEqual([[basename(path)], "mine"]);
    await handlers["export.write"]({ recordingId, formats: ["index-json", "index-csv"], granularity: "zones", overwrite: true });
    expect(readFileSync(path, "utf8")).not.toBe("mine");
    expect(readdirSync(folder)).toHaveLength(2);
  });

  test("is whole or not at all: a file that cannot take its place brings the others back", async () => {
    const application = sampleApplication();
    const { id: recordingId } = await importSample(application, application);
    const { parts } = application;
    const folder = join(application.folder, "out");
    const formats = ["chapters-list", "index-json"] as const;
    const { files } = await writeExportsInto(parts, folder, { recordingId, formats: [...formats], granularity: "zones", overwrite: false });
    const [list, json] = files.map(({ path }) => path) as [string, string];
    writeFileSync(list, "former list");
    writeFileSync(json, "former index");
    let moves = 0;
    const move = async (from: string, to: string) => {
      moves += 1;
      // The list is in its place and the former index out of its own when the disk gives up.
      if (moves === 4) throw new Error("the disk gave up");
      renameSync(from, to);
    };
    await expect(
      writeExportsInto(parts, folder, { recordingId, formats: [...formats], granularity: "zones", overwrite: true }, { move }),
    ).rejects.toMatchObject({
      problem: { code: "export-failed", message: expect.stringContaining("the disk gave up") },
    });
    expect(moves).toBeGreaterThan(4);
    expect([readFileSync(list, "utf8"), readFileSync(json, "utf8")]).toEqual(["former list", "former index"]);
    expect(readdirSync(folder).sort()).toEqual([basename(list), basename(json)].sort());
  });

  test("a folder that cannot be made is told with what to do, and nothing is left", async () => {
    const application = sampleApplication();
    const { id: recordingId } = await importSample(application, application);
    const blocked = join(application.folder, "blocked");
    writeFileSync(blocked, "a file where a folder should be");
    await expect(
      writeExportsInto(application.parts, join(blocked, "out"), {
        recordingId,
        formats: ["index-json"],
        granularity: "zones",
        overwrite: true,
      }),
    ).rejects.toMatchObject({ problem: { code: "export-failed", message: expect.stringContaining("check the folder") } });
    expect(readFileSync(blocked, "utf8")).toBe("a file where a folder should be");
  });
});

describe("the demo recording", () => {
  function demoFolder(rest: Record<string, unknown> = {}): string {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "demo.vtt"), "WEBVTT\n\n00:00.000 --> 00:05.000\nGood morning\n");
    writeFileSync(join(folder, "demo.webm"), webm);
    writeFileSync(join(folder, "stock-sheet.csv"), "stock number,mileage\nFK-1971,68000\n");
    const description = {
      title: "Demo",
      stockNumber: "FK-1",
      vehicle: sampleVehicle,
      video: "demo.webm",
      transcript: "demo.vtt",
      stockSheet: "stock-sheet.csv",
      ...rest,
    };
    writeFileSync(join(folder, "demo.json"), JSON.stringify(description));
    return folder;
  }

  test("comes into a new library once; who removed it is not given it again", async () => {
    const { parts, analyst, handlers } = sampleApplication();
    const folder = demoFolder();
    const demo = await importDemoOnce(parts, analyst, folder);
    expect(demo).toMatchObject({ title: "Demo", hasVideo: true, videoFound: true });
    await handlers["recording.remove"]({ id: demo?.id as string });
    expect(await importDemoOnce(parts, analyst, folder)).toBeUndefined();
    expect(existsSync(join(folder, "demo.webm"))).toBe(true);
  });

  test("does not come into a library that has recordings already", async () => {
    const application = sampleApplication();
    await importSample(application, application);
    expect(await importDemoOnce(application.parts, application.analyst, demoFolder())).toBeUndefined();
  });

  test.for([
    { why: "nothing there", folder: () => temporaryFolder(), says: "missing, so the library starts empty" },
    { why: "a description that is none", folder: () => demoFolder({ transcript: 5 }), says: "demo.json is not as it should be" },
    {
      why: "a name that leads elsewhere",
      folder: () => demoFolder({ transcript: "../demo.vtt" }),
      says: "demo.json is not as it should be",
    },
    { why: "a transcript that is missing", folder: () => demoFolder({ transcript: "other.vtt" }), says: "no such file" },
  ])("$why is told in the log and keeps nobody from starting", async ({ folder, says }) => {
    const { parts, analyst, logged, handlers } = sampleApplication();
    await expect(importDemoOnce(parts, analyst, folder())).resolves.toBeUndefined();
    expect(logged.join()).toContain(says);
    expect(await handlers["recording.list"]({})).toEqual([]);
  });
});
