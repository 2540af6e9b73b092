import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

/**
 * FFmpeg where it is installed: the file that `ROUNDWALK_FFMPEG` names, else `ffmpeg` on the PATH. It is no part of the product; what
 * needs it says so where it is missing.
 */
export function findFfmpeg(env: NodeJS.ProcessEnv = process.env): string | null {
  const named = env.ROUNDWALK_FFMPEG;
  if (named) return existsSync(named) ? named : null;
  const file = process.platform === "win32" ? "ffmpeg.exe" : "ffmpeg";
  return (
    (env.PATH ?? "")
      .split(delimiter)
      .filter((folder) => folder)
      .map((folder) => join(folder, file))
      .find((path) => existsSync(path)) ?? null
  );
}

export const noFfmpeg =
  "This needs FFmpeg, and none was found. Install it so that the command ffmpeg works in a terminal (or name its file in ROUNDWALK_FFMPEG), then start Roundwalk again.";

export interface FfmpegRun {
  readonly arguments: readonly string[];
  /** Told the seconds of the recording that are done. */
  readonly onSeconds?: (seconds: number) => void;
  readonly signal: AbortSignal;
}

/** Lines of complaint kept from FFmpeg's own output: enough to say what went wrong. */
const linesKept = 6;

/**
 * Runs FFmpeg to its end. It never asks and never overwrites unless the arguments say so; its progress is read from its own report
 * (`-progress`, ffmpeg documentation, "Advanced options").
 * @throws What the signal was aborted with, or an Error with FFmpeg's last words.
 */
export async function runFfmpeg(program: string, { arguments: asked, onSeconds, signal }: FfmpegRun): Promise<void> {
  signal.throwIfAborted();
  await new Promise<void>((done, failed) => {
    const child = spawn(program, ["-hide_banner", "-nostdin", "-v", "error", "-progress", "pipe:1", ...asked], {
      stdio: ["ignore", "pipe", "pipe"],
    });
    const complaints: string[] = [];
    const stop = () => child.kill("SIGKILL");
    signal.addEventListener("abort", stop, { once: true });
    child.stdout.setEncoding("utf8");
    child.stdout.on("data", (text: string) => {
      const microseconds = /out_time_us=(\d+)(?![\s\S]*out_time_us=\d)/.exec(text)?.[1];
      if (microseconds !== undefined) onSeconds?.(Number(microseconds) / 1e6);
    });
    child.stderr.setEncoding("utf8");
    child.stderr.on("data", (text: string) => {
      complaints.push(...text.split("\n").filter((line) => line.trim() !== ""));
      complaints.splice(0, Math.max(0, complaints.length - linesKept));
    });
    child.on("error", (failure) => failed(failure));
    child.on("close", (code) => {
      signal.removeEventListener("abort", stop);
      if (signal.aborted) failed(signal.reason instanceof Error ? signal.reason : new Error(String(signal.reason)));
      else if (code === 0) done();
      else failed(new Error(complaints.join(" ") || `FFmpeg ended with code ${code}.`));
    });
  });
}
