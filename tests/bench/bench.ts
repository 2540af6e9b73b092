// npm run bench: how long the analysis takes, as ratios within one run. Baseline: splitting the same text into tokens.
import { fileURLToPath } from "node:url";
import { analyse } from "../../electron/analysis/analyse.ts";
import { tokensOfCaption } from "../../electron/analysis/transcript/tokenize.ts";
import type { Caption, Transcript } from "../../shared-types/index.ts";
import { readCases } from "../corpus/read-cases.ts";

const cases = readCases(fileURLToPath(new URL("../../fixtures/corpus/dev", import.meta.url)));

/** Walks one after the other, over and over, until the given length. */
function transcriptOf(minutes: number): Transcript {
  const captions: Caption[] = [];
  let offset = 0;
  for (let turn = 0; offset < minutes * 60; turn++) {
    const { transcript, gold } = cases[turn % cases.length]!;
    for (const caption of transcript.captions) {
      if (offset + caption.start >= minutes * 60) break;
      captions.push({ ...caption, index: captions.length, start: offset + caption.start, end: offset + caption.end });
    }
    offset += gold.duration;
  }
  return { format: "plain", captions, duration: minutes * 60 };
}

/** Median milliseconds of some runs, after one that warms up. */
function medianMilliseconds(work: () => unknown, runs: number): number {
  work();
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)]!;
}

const options = { stockSheet: null, recordedOn: null };
const lengths = [
  { name: "15 minutes", minutes: 15, runs: 7 },
  { name: "3 hours", minutes: 180, runs: 5 },
  { name: "30 hours", minutes: 1800, runs: 1 },
];
const rows = lengths.map(({ name, minutes, runs }) => {
  const transcript = transcriptOf(minutes);
  const analysing = medianMilliseconds(() => analyse(transcript, options), runs);
  const tokenising = medianMilliseconds(() => transcript.captions.map((caption) => tokensOfCaption(caption)), runs);
  return { name, minutes, captions: transcript.captions.length, analysing, tokenising };
});

/** Milliseconds of each pass over a transcript of that length. */
function passesOver(minutes: number): { pass: string; milliseconds: number }[] {
  const transcript = transcriptOf(minutes);
  const passes: { pass: string; milliseconds: number }[] = [];
  let last = performance.now();
  analyse(transcript, options, (pass) => {
    passes.push({ pass, milliseconds: performance.now() - last });
    last = performance.now();
  });
  return passes;
}
/** A pass over ten times the words should take little more than ten times as long (n log n: about 13). */
const [shorter, longer] = [passesOver(180), passesOver(1800)];

console.log("length       captions   analyse ms   tokenise ms   analyse/tokenise   per minute against 15 minutes");
for (const row of rows) {
  const perMinute = row.analysing / row.minutes / (rows[0]!.analysing / rows[0]!.minutes);
  console.log(
    `${row.name.padEnd(11)} ${String(row.captions).padStart(9)} ${row.analysing.toFixed(1).padStart(12)} ${row.tokenising.toFixed(2).padStart(13)} ` +
      `${(row.analysing / row.tokenising).toFixed(0).padStart(18)} ${perMinute.toFixed(2).padStart(31)}`,
  );
}
console.log(
  `\nPasses over 3 hours, and how many times as long over 30: ${shorter
    .map(
      ({ pass, milliseconds }, position) =>
        `${pass} ${milliseconds.toFixed(0)} ms (${(longer[position]!.milliseconds / Math.max(1, milliseconds)).toFixed(1)})`,
    )
    .join(", ")}`,
);
