import { spawn } from "node:child_process";
import { once } from "node:events";
import { Resvg } from "@resvg/resvg-js";
import { frameHeight, frameWidth } from "./drawing/perspective.ts";
import type { Film } from "./shots.ts";

export const framesPerSecond = 12;
const keyframeSeconds = 2;

/** An SVG document as its pixels. */
export function renderFrame(svg: string): ReturnType<Resvg["render"]> {
  return new Resvg(svg, { font: { loadSystemFonts: false } }).render();
}

/**
 * Draws every frame and hands it to ffmpeg, which adds the sound. VP9 and Opus in WebM play in every Chromium, also in those built
 * without licensed codecs; the index stands at the file's front and a keyframe every two seconds, so that a jump is quick.
 * @throws when ffmpeg fails, with the end of what it said.
 */
export async function encodeFilm(
  film: Film,
  durationSeconds: number,
  soundFile: string,
  videoFile: string,
  progress: (done: number, frames: number) => void,
): Promise<void> {
  const keyframeEvery = String(framesPerSecond * keyframeSeconds);
  const ffmpeg = spawn(
    "ffmpeg",
    [
      ...["-hide_banner", "-loglevel", "error", "-y"],
      ...["-f", "rawvideo", "-pix_fmt", "rgba", "-s", `${frameWidth}x${frameHeight}`, "-r", String(framesPerSecond), "-i", "pipe:0"],
      ...["-i", soundFile],
      ...["-c:v", "libvpx-vp9", "-pix_fmt", "yuv420p", "-b:v", "0", "-crf", "47", "-g", keyframeEvery, "-keyint_min", keyframeEvery],
      ...["-deadline", "good", "-cpu-used", "3", "-row-mt", "1", "-threads", "2", "-auto-alt-ref", "1", "-lag-in-frames", "25"],
      ...[
        "-af",
        "highpass=f=70,loudnorm=I=-18:TP=-2:LRA=9",
        "-ar",
        "48000",
        "-c:a",
        "libopus",
        "-b:a",
        "32k",
        "-ac",
        "1",
        "-application",
        "voip",
      ],
      // No date and no version of the encoder in the file, so that making it again changes nothing by itself.
      ...["-map_metadata", "-1", "-fflags", "+bitexact", "-flags:v", "+bitexact", "-flags:a", "+bitexact"],
      ...["-cues_to_front", "1", "-f", "webm", videoFile],
    ],
    { stdio: ["pipe", "inherit", "pipe"] },
  );
  let said = "";
  ffmpeg.stderr.on("data", (chunk: Buffer) => {
    said = (said + chunk.toString("utf8")).slice(-4000);
  });
  const closed = once(ffmpeg, "close");
  const broken = new Promise<never>((_, reject) => {
    ffmpeg.on("error", reject);
    ffmpeg.stdin.on("error", () => reject(new Error(`ffmpeg stopped taking frames. It said: ${said.trim() || "nothing"}`)));
  });
  broken.catch(() => undefined);
  const frames = Math.round(durationSeconds * framesPerSecond);
  for (let frame = 0; frame < frames; frame++) {
    // Each frame shows the end of its twelfth of a second: a jump to a moment within it finds the new view, not the old one.
    const { pixels } = renderFrame(film.frameAt(Math.min((frame + 1) / framesPerSecond, durationSeconds)));
    if (!ffmpeg.stdin.write(pixels)) await Promise.race([once(ffmpeg.stdin, "drain"), broken]);
    if (frame % 60 === 59) progress(frame + 1, frames);
  }
  ffmpeg.stdin.end();
  const [code] = await Promise.race([closed, broken]);
  if (code !== 0) throw new Error(`ffmpeg ended with ${code}. It said: ${said.trim() || "nothing"}`);
  progress(frames, frames);
}
