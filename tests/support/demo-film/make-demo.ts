import { execFileSync } from "node:child_process";
import { copyFile, mkdir, mkdtemp, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { encodeFilm, renderFrame } from "./encode.ts";
import { filmScript } from "./script/film-script.ts";
import { Film } from "./shots.ts";
import { type Soundtrack, speakScript, waveFile } from "./speech.ts";
import { fileNames, goldFile, recordingFile, stockSheetFile, transcriptFile } from "./written-files.ts";

const root = join(dirname(fileURLToPath(import.meta.url)), "../../..");

const usage = `Usage: npm run demo:make [-- OPTIONS]
  --out FOLDER     where the files go (fixtures/demo)
  --words          only the transcript and the other texts, no film
  --stills FOLDER  one picture for each line of the script, no film`;

/** A tool the film is made with. */
interface Tool {
  readonly command: string;
  readonly versionArgument: string;
  readonly use: string;
}
const speechTool: Tool = { command: "espeak-ng", versionArgument: "--version", use: "speaks the script" };
const videoTool: Tool = { command: "ffmpeg", versionArgument: "-version", use: "makes the video" };

/** The tools that cannot be started. */
function missingTools(tools: readonly Tool[]): Tool[] {
  return tools.filter(({ command, versionArgument }) => {
    try {
      execFileSync(command, [versionArgument], { stdio: "ignore" });
      return false;
    } catch {
      return true;
    }
  });
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: { out: { type: "string" }, words: { type: "boolean" }, stills: { type: "string" }, help: { type: "boolean" } },
  });
  if (values.help) {
    console.log(usage);
    return;
  }
  const filming = !values.words && !values.stills;
  const missing = missingTools(filming ? [speechTool, videoTool] : [speechTool]);
  if (missing.length > 0) {
    const list = missing.map(({ command, use }) => `${command} (${use})`).join(" and ");
    throw new Error(
      `The demo film needs ${list} on the PATH, and starting it failed. Install it (on Debian: apt-get install ${missing.map((tool) => tool.command).join(" ")}) and run this again. ` +
        "The finished film is in fixtures/demo already; this is only for making it anew.",
    );
  }
  const out = values.out ?? join(root, "fixtures/demo");
  const workshop = await mkdtemp(join(tmpdir(), "demo-film-"));
  try {
    const sound = await speakScript(filmScript, workshop);
    console.error(`${sound.lines.length} lines, ${sound.duration.toFixed(1)} s`);
    if (values.stills) await makeStills(sound, values.stills);
    else await makeFiles(sound, workshop, out, filming);
  } finally {
    await rm(workshop, { recursive: true, force: true });
  }
}

async function makeStills(sound: Soundtrack, folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  const film = new Film(sound.lines);
  for (const [index, { line, start, end }] of sound.lines.entries()) {
    const still = renderFrame(film.frameAt(start + (end - start) * 0.7));
    await writeFile(join(folder, `${String(index).padStart(2, "0")}-${line.key}.png`), still.asPng());
  }
  console.error(`${sound.lines.length} stills in ${folder}`);
}

/** Everything is made in the workshop first; a failure leaves the old files as they were. */
async function makeFiles(sound: Soundtrack, workshop: string, out: string, filming: boolean): Promise<void> {
  const texts: Record<string, string> = {
    "demo.json": recordingFile(),
    [fileNames.transcript]: transcriptFile(sound.lines),
    [fileNames.gold]: goldFile(sound.lines, sound.duration),
    [fileNames.stockSheet]: stockSheetFile(),
  };
  const video = join(workshop, fileNames.video);
  if (filming) {
    const soundFile = join(workshop, "sound.wav");
    await writeFile(soundFile, waveFile(sound.samples));
    await encodeFilm(new Film(sound.lines), sound.duration, soundFile, video, (done, frames) => {
      if (process.stderr.isTTY) process.stderr.write(`\rframe ${done} of ${frames}`);
      else if (done % 600 === 0 || done === frames) console.error(`frame ${done} of ${frames}`);
    });
  }
  await mkdir(out, { recursive: true });
  for (const [name, text] of Object.entries(texts)) await writeFile(join(out, name), text);
  if (filming) {
    await copyFile(video, join(out, fileNames.video));
    const { size } = await stat(video);
    console.error(`\n${join(out, fileNames.video)}: ${(size / 1e6).toFixed(2)} MB`);
  }
}

try {
  await main();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
