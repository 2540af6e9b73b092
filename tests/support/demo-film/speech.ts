import { execFile } from "node:child_process";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import type { ScriptLine } from "./script/script-line.ts";

const run = promisify(execFile);

export const sampleRate = 22050;
const leadInSeconds = 0.6;
const usualPauseSeconds = 0.5;

/** A formant voice that is part of espeak-ng itself; its recorded voices have licences of their own and are not used. */
const voice = "gmw/en-US+m3";
const wordsPerMinute = "163";

/** A line with its place in the film, in seconds. */
export interface TimedLine {
  readonly line: ScriptLine;
  readonly start: number;
  /** When the voice, or the radio, stops. */
  readonly end: number;
  /** When the next line's picture begins. */
  readonly until: number;
}

export interface Soundtrack {
  readonly lines: readonly TimedLine[];
  readonly samples: Int16Array;
  readonly duration: number;
}

/**
 * Speaks the script and lays the lines one after another. Times come from the sound itself, so captions cannot drift.
 * @param folder where the single lines' sound files are put.
 */
export async function speakScript(script: readonly ScriptLine[], folder: string): Promise<Soundtrack> {
  const pieces: { at: number; samples: Int16Array }[] = [];
  const lines: TimedLine[] = [];
  let at = Math.round(leadInSeconds * sampleRate);
  for (const [index, line] of script.entries()) {
    const samples = line.noise ? radioTune(line.noise.musicSeconds) : await speakLine(line, join(folder, `line-${index}.wav`));
    pieces.push({ at, samples });
    const end = at + samples.length;
    const until = end + Math.round((line.pauseSeconds ?? usualPauseSeconds) * sampleRate);
    lines.push({ line, start: at / sampleRate, end: end / sampleRate, until: until / sampleRate });
    at = until;
  }
  const whole = new Int16Array(at);
  for (const piece of pieces) whole.set(piece.samples, piece.at);
  for (const timed of lines) if (timed.line.zone === "drive" && timed.line.key !== "fire-up") addEngine(whole, timed);
  return { lines, samples: whole, duration: at / sampleRate };
}

async function speakLine(line: ScriptLine, file: string): Promise<Int16Array> {
  await run("espeak-ng", ["-v", voice, "-s", wordsPerMinute, "-p", "38", "-g", "2", "-w", file, line.spoken]);
  const spoken = samplesOfWave(await readFile(file), file);
  let last = spoken.length - 1;
  while (last > 0 && Math.abs(spoken[last]!) < 90) last--;
  const kept = spoken.slice(0, Math.min(spoken.length, last + Math.round(0.06 * sampleRate)));
  return kept.map((sample) => sample * 0.8);
}

/** The 16-bit samples of a WAV file. @throws when it is not one-channel sound at the expected rate. */
function samplesOfWave(bytes: Buffer, file: string): Int16Array {
  const channels = bytes.readUInt16LE(22);
  const rate = bytes.readUInt32LE(24);
  if (channels !== 1 || rate !== sampleRate) {
    throw new Error(
      `${file}: expected one channel at ${sampleRate} Hz from espeak-ng, found ${channels} at ${rate} Hz; change sampleRate in speech.ts.`,
    );
  }
  const start = bytes.indexOf("data", 12, "latin1") + 8;
  const samples = new Int16Array(Math.floor((bytes.length - start) / 2));
  for (let index = 0; index < samples.length; index++) samples[index] = bytes.readInt16LE(start + index * 2);
  return samples;
}

/** A made-up tune, as from a small radio: plucked chords over a bass, faded at both ends. */
function radioTune(seconds: number): Int16Array {
  const samples = new Int16Array(Math.round(seconds * sampleRate));
  const beatSeconds = 0.28;
  const chords = [
    [261.6, 329.6, 392],
    [220, 261.6, 329.6],
    [174.6, 220, 349.2],
    [196, 246.9, 392],
  ];
  for (let index = 0; index < samples.length; index++) {
    const time = index / sampleRate;
    const beat = Math.floor(time / beatSeconds);
    const since = time - beat * beatSeconds;
    const chord = chords[Math.floor(beat / 4) % chords.length]!;
    const note = chord[beat % 3]! * (beat % 8 === 7 ? 2 : 1);
    const pluck = Math.sin(2 * Math.PI * note * time) + 0.4 * Math.sin(4 * Math.PI * note * time);
    const bass = Math.sin(Math.PI * chord[0]! * time);
    const edge = Math.min(1, time / 0.3, (seconds - time) / 0.6);
    samples[index] = 5200 * edge * (pluck * Math.exp(-since * 7) + 0.5 * bass);
  }
  return samples;
}

/** A quiet engine under the words, while the car is on the road. */
function addEngine(samples: Int16Array, timed: TimedLine): void {
  const first = Math.round(timed.start * sampleRate);
  const last = Math.round(timed.until * sampleRate);
  for (let index = first; index < last; index++) {
    const time = index / sampleRate;
    const hum =
      Math.sin(2 * Math.PI * 80 * time) +
      0.7 * Math.sin(2 * Math.PI * 120 * time + Math.sin(time * 3)) +
      0.4 * Math.sin(2 * Math.PI * 41 * time);
    samples[index] = Math.max(-32767, Math.min(32767, samples[index]! + hum * 520));
  }
}

/** The samples as a WAV file. */
export function waveFile(samples: Int16Array): Buffer {
  const header = Buffer.alloc(44);
  const size = samples.length * 2;
  header.write("RIFF", 0, "latin1");
  header.writeUInt32LE(36 + size, 4);
  header.write("WAVEfmt ", 8, "latin1");
  header.writeUInt32LE(16, 16);
  header.writeUInt16LE(1, 20);
  header.writeUInt16LE(1, 22);
  header.writeUInt32LE(sampleRate, 24);
  header.writeUInt32LE(sampleRate * 2, 28);
  header.writeUInt16LE(2, 32);
  header.writeUInt16LE(16, 34);
  header.write("data", 36, "latin1");
  header.writeUInt32LE(size, 40);
  const body = Buffer.alloc(size);
  samples.forEach((sample, index) => {
    body.writeInt16LE(sample, index * 2);
  });
  return Buffer.concat([header, body]);
}
