import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { parse as parseCsv } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { WebVTTParser } from "webvtt-parser";
import { z } from "zod";
import { AttributeName, ComponentName, ConflictKind, PositionName, Stance, UnitName, Vehicle, ZoneName } from "../../shared-types/index.ts";
import { renderFrame } from "../support/demo-film/encode.ts";
import { filmScript } from "../support/demo-film/script/film-script.ts";
import { writtenWords } from "../support/demo-film/script/script-line.ts";
import { Film } from "../support/demo-film/shots.ts";
import type { TimedLine } from "../support/demo-film/speech.ts";
import { goldFile, recordingFile, stamp, stockSheetFile, transcriptFile } from "../support/demo-film/written-files.ts";

const root = new URL("../..", import.meta.url).pathname;
const folder = join(root, "fixtures/demo");
const read = (name: string): string => readFileSync(join(folder, name), "utf8");

const Recording = z.strictObject({
  title: z.string().min(1),
  stockNumber: z.string().min(1),
  vehicle: Vehicle,
  video: z.string(),
  transcript: z.string(),
  stockSheet: z.string(),
});
const recording = Recording.parse(JSON.parse(read("demo.json")));

const Gold = z.object({
  duration: z.number(),
  zones: z.array(z.strictObject({ zone: ZoneName, i: z.int(), from: z.string() })),
  claims: z.array(
    z.strictObject({
      i: z.int(),
      quote: z.string(),
      component: ComponentName,
      position: PositionName.nullable(),
      attribute: AttributeName,
      value: z.union([z.string(), z.number()]),
      unit: UnitName.nullable(),
      stance: Stance,
    }),
  ),
  conflicts: z.array(
    z.strictObject({
      id: z.string(),
      kind: ConflictKind,
      topic: z.string(),
      sides: z.array(z.strictObject({ value: z.union([z.string(), z.number()]), at: z.array(z.int()).min(1) })).min(2),
    }),
  ),
  look_alikes: z.array(z.strictObject({ topic: z.string(), at: z.array(z.int()), why: z.string() })),
  repairs: z.array(z.strictObject({ i: z.int(), heard: z.string(), meant: z.string() })),
  unreliable: z.array(z.strictObject({ i: z.int(), why: z.string() })),
});
const gold = Gold.parse(JSON.parse(read("demo.gold.json")));

/** The captions by webvtt-parser, the reference parser published beside the W3C's WebVTT specification. */
function captions(): { start: number; end: number; text: string }[] {
  const { cues, errors } = new WebVTTParser().parse(read(recording.transcript));
  expect(errors).toEqual([]);
  return cues.map(({ startTime, endTime, text }) => ({ start: startTime, end: endTime, text }));
}

/** The committed captions as the film's maker would have timed them. */
function committedLines(): TimedLine[] {
  const cues = captions();
  return cues.map(({ start, end }, index) => ({
    line: filmScript[index]!,
    start,
    end,
    until: cues[index + 1]?.start ?? gold.duration,
  }));
}

function missing(command: string): boolean {
  return spawnSync(command, ["-version"], { stdio: "ignore" }).error !== undefined;
}
const noProbe = missing("ffprobe");
const noFfmpeg = missing("ffmpeg");
/** Reading the film takes some seconds, and more on a busy machine. */
const pictureTimeoutMs = 60_000;

describe("the demo's files", () => {
  test("demo.json names files that are there", () => {
    for (const name of [recording.video, recording.transcript, recording.stockSheet])
      expect(existsSync(join(folder, name)), name).toBe(true);
  });

  test("the film is no larger than 12 MB", () => {
    const { size } = statSync(join(folder, recording.video));
    expect(size).toBeGreaterThan(1_000_000);
    expect(size).toBeLessThanOrEqual(12_000_000);
  });

  test("captions follow one another without overlap, in the film's length of six to nine minutes", () => {
    const cues = captions();
    expect(cues.length).toBe(filmScript.length);
    for (const [index, cue] of cues.entries()) {
      expect(cue.end, `caption ${index}`).toBeGreaterThan(cue.start);
      expect(cue.text.trim(), `caption ${index}`).not.toBe("");
      if (index > 0) expect(cue.start, `caption ${index}`).toBeGreaterThanOrEqual(cues[index - 1]!.end);
    }
    expect(gold.duration).toBeGreaterThanOrEqual(360);
    expect(gold.duration).toBeLessThanOrEqual(540);
  });

  test("all texts are what the script makes, so a change by hand or a forgotten making anew is seen", () => {
    const lines = committedLines();
    expect(read(recording.transcript)).toBe(transcriptFile(lines));
    expect(read("demo.gold.json")).toBe(goldFile(lines, gold.duration));
    expect(read("demo.json")).toBe(recordingFile());
    expect(read(recording.stockSheet)).toBe(stockSheetFile());
  });

  test("the stock sheet is one row for this car, and denies the title that is claimed", () => {
    const rows = parseCsv(read(recording.stockSheet), { columns: true }) as Record<string, string>[];
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ "Stock Number": recording.stockNumber, Year: "1971", "Title Status": "rebuilt" });
    expect(gold.claims.find((claim) => claim.component === "title" && claim.attribute === "type")?.value).toBe("clean");
    // What else it holds was said in the film too (the engine on one side of its conflict).
    const spoken = (component: string, attribute: string) =>
      gold.claims.filter((claim) => claim.component === component && claim.attribute === attribute).map((claim) => String(claim.value));
    expect(spoken("odometer", "mileage")).toEqual(expect.arrayContaining([rows[0]!.Mileage]));
    expect(spoken("price", "price")).toContain(rows[0]!["Asking Price"]);
    expect(spoken("paint", "color")).toContain(rows[0]!["Exterior Color"]);
  });
});

describe("the demo's annotations", () => {
  const texts = captions().map((caption) => caption.text.replace(/\s+/g, " "));

  test("quotes, repairs and zone starts stand in their captions", () => {
    for (const { i, quote } of gold.claims) expect(texts[i]).toContain(quote);
    for (const { i, heard } of gold.repairs) expect(texts[i]).toContain(heard);
    for (const { i, from } of gold.zones) expect(texts[i]).toContain(from);
  });

  test("zones start with the first caption, in order, and none repeats the one before", () => {
    expect(gold.zones[0]?.i).toBe(0);
    for (let index = 1; index < gold.zones.length; index++) {
      expect(gold.zones[index]!.i).toBeGreaterThan(gold.zones[index - 1]!.i);
      expect(gold.zones[index]!.zone).not.toBe(gold.zones[index - 1]!.zone);
    }
    const wanted = [
      "opening",
      "front",
      "passenger-side",
      "rear",
      "cargo",
      "driver-side",
      "cabin",
      "engine-bay",
      "drive",
      "underside",
      "documents",
      "closing",
    ];
    expect(gold.zones.map((each) => each.zone)).toEqual(expect.arrayContaining(wanted));
  });

  test("there are conflicts of every kind the demo promises, broken numbers, look-alikes and noise", () => {
    expect(new Set(gold.conflicts.map((conflict) => conflict.kind))).toEqual(
      new Set(["measure", "standard", "originality", "type", "condition", "count", "presence", "hedge"]),
    );
    expect(gold.repairs.length).toBeGreaterThanOrEqual(8);
    expect(gold.repairs).toContainEqual(expect.objectContaining({ heard: "to 35 60 15s", meant: "235/60R15" }));
    expect(gold.look_alikes.length).toBeGreaterThanOrEqual(8);
    expect(gold.unreliable).toHaveLength(1);
  });

  test("each side of a conflict rests on a claim in each of its captions", () => {
    for (const { id, sides } of gold.conflicts)
      for (const side of sides)
        for (const i of side.at)
          expect(
            gold.claims.some((claim) => claim.i === i),
            `${id}, caption ${i}`,
          ).toBe(true);
  });
});

describe("the film", () => {
  test.skipIf(noProbe)(
    "ffprobe: VP9 and Opus, as long as the transcript, with keyframes to jump to (skipped where ffprobe is not installed)",
    () => {
      const file = join(folder, recording.video);
      const probe = JSON.parse(
        execFileSync("ffprobe", ["-v", "error", "-of", "json", "-show_streams", "-show_format", file], { encoding: "utf8" }),
      );
      const video = probe.streams.find((stream: { codec_type: string }) => stream.codec_type === "video");
      const sound = probe.streams.find((stream: { codec_type: string }) => stream.codec_type === "audio");
      expect(video.codec_name).toBe("vp9");
      expect(sound.codec_name).toBe("opus");
      expect(video.width).toBeGreaterThanOrEqual(854);
      expect(video.height).toBeGreaterThanOrEqual(480);
      const duration = Number(probe.format.duration);
      expect(Math.abs(duration - captions().at(-1)!.end)).toBeLessThanOrEqual(1);
      expect(Math.abs(duration - gold.duration)).toBeLessThanOrEqual(1);
      const packets = execFileSync(
        "ffprobe",
        ["-v", "error", "-select_streams", "v", "-show_entries", "packet=pts_time,flags", "-of", "csv=p=0", file],
        {
          encoding: "utf8",
          maxBuffer: 64 * 1024 * 1024,
        },
      );
      const keyframes = packets
        .split("\n")
        .map((row) => row.split(","))
        .filter(([, flags]) => flags?.startsWith("K"))
        .map(([time]) => Number(time));
      expect(keyframes[0]).toBeLessThan(0.1);
      for (let index = 1; index < keyframes.length; index++) expect(keyframes[index]! - keyframes[index - 1]!).toBeLessThanOrEqual(2.1);
      expect(duration - keyframes.at(-1)!).toBeLessThanOrEqual(2.1);
    },
  );

  test("its index stands before the first cluster, so that a player can jump before all of it is read", () => {
    // Element ids of Cues and Cluster: RFC 9559 (Matroska), sections 5.1.3 and 5.1.5.
    const bytes = readFileSync(join(folder, recording.video));
    const cues = bytes.indexOf(Buffer.from([0x1c, 0x53, 0xbb, 0x6b]), 200);
    const cluster = bytes.indexOf(Buffer.from([0x1f, 0x43, 0xb6, 0x75]), 200);
    expect(cues).toBeGreaterThan(0);
    expect(cues).toBeLessThan(cluster);
  });

  test.skipIf(noFfmpeg)(
    "ffmpeg: the picture differs from zone to zone and moves within a line (skipped where ffmpeg is not installed)",
    () => {
      const lines = committedLines();
      const grey = (seconds: number): Buffer =>
        execFileSync(
          "ffmpeg",
          [
            "-v",
            "error",
            "-ss",
            seconds.toFixed(2),
            "-i",
            join(folder, recording.video),
            "-frames:v",
            "1",
            "-vf",
            "scale=160:90,format=gray",
            "-f",
            "rawvideo",
            "-",
          ],
          { maxBuffer: 1024 * 1024 },
        );
      const difference = (a: Buffer, b: Buffer): number => a.reduce((sum, value, index) => sum + Math.abs(value - b[index]!), 0) / a.length;
      const middles = gold.zones.map(({ i }) => grey((lines[i]!.start + lines[i]!.end) / 2));
      for (let index = 1; index < middles.length; index++)
        expect(
          difference(middles[index - 1]!, middles[index]!),
          `${gold.zones[index]!.zone} after ${gold.zones[index - 1]!.zone}`,
        ).toBeGreaterThan(4);
      for (const { i, zone } of gold.zones) {
        const { start, end } = lines[i]!;
        expect(difference(grey(start + 0.5), grey(end - 0.2)), `within ${zone}`).toBeGreaterThan(0.3);
      }
    },
  );

  test.skipIf(noFfmpeg)(
    "ffmpeg: the voice stops where each caption ends (skipped where ffmpeg is not installed)",
    { timeout: pictureTimeoutMs },
    () => {
      const heard = spawnSync(
        "ffmpeg",
        [
          "-hide_banner",
          "-nostats",
          "-i",
          join(folder, recording.video),
          "-vn",
          "-af",
          "silencedetect=noise=-42dB:d=0.3",
          "-f",
          "null",
          "-",
        ],
        { encoding: "utf8" },
      );
      const silences = [...heard.stderr.matchAll(/silence_start: ([\d.]+)/g)].map((match) => Number(match[1]));
      const lines = committedLines();
      // On the road an engine runs under the words, and the last line ends with the film.
      const quietAfter = lines.slice(0, -1).filter(({ line }) => line.zone !== "drive");
      const lacking = quietAfter.filter(({ end }) => !silences.some((silence) => Math.abs(silence - end) < 0.25));
      expect(lacking.map(({ line }) => line.key)).toEqual([]);
    },
  );

  test("every part the script names is drawn, and lit while it is spoken of", () => {
    const lines = committedLines();
    const film = new Film(lines);
    const amber = "#ffc247";
    for (const { line, start, end } of lines) {
      const frame = film.frameAt((start + end) / 2 + (end - start) * 0.3);
      // The plate's own mark is amber too; a lit part adds its outline, its tag and its line.
      const marks = frame.split(amber).length;
      if (line.part && line.part !== "road") expect(marks, line.key).toBeGreaterThan(4);
      else expect(marks, line.key).toBeLessThanOrEqual(2);
    }
  });

  test("a frame renders to a whole picture without any font installed", () => {
    const picture = renderFrame(new Film(committedLines()).frameAt(12));
    expect([picture.width, picture.height]).toEqual([960, 540]);
    const { pixels } = picture;
    const colors = new Set<number>();
    for (let at = 0; at < pixels.length; at += 4000) colors.add(pixels.readUInt32LE(at));
    expect(colors.size).toBeGreaterThan(10);
  });
});

describe("the maker", () => {
  test("stamps in hours, minutes, seconds and thousandths", () => {
    expect(stamp(0)).toBe("00:00:00.000");
    expect(stamp(59.9996)).toBe("00:01:00.000");
    // WebVTT timestamp: 01:02:03.004 is 3723004 ms.
    expect(stamp(3723.004)).toBe("01:02:03.004");
  });

  test("says which tools are missing, and leaves the files alone", () => {
    const before = statSync(join(folder, "demo.vtt")).mtimeMs;
    const result = spawnSync(process.execPath, [join(root, "tests/support/demo-film/make-demo.ts")], {
      env: { PATH: "/nowhere" },
      encoding: "utf8",
    });
    expect(result.status).toBe(1);
    expect(result.stderr).toContain("espeak-ng (speaks the script) and ffmpeg (makes the video)");
    expect(result.stderr).toContain("apt-get install espeak-ng ffmpeg");
    expect(statSync(join(folder, "demo.vtt")).mtimeMs).toBe(before);
  });

  test("no line of the script is written without being spoken, save the one over the radio", () => {
    for (const line of filmScript) expect(line.spoken === "", line.key).toBe(line.noise !== undefined);
    expect(new Set(filmScript.map((line) => line.key)).size).toBe(filmScript.length);
    for (const line of filmScript) expect(writtenWords(line), line.key).not.toMatch(/-->|\n/);
  });
});
