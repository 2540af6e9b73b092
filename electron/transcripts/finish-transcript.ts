import type { Caption, Transcript, TranscriptFormat } from "../../shared-types/index.ts";
import { captionText } from "./caption-text.ts";
import { spokenClock } from "./clock-times.ts";
import type { TimedText } from "./timed-text.ts";
import { TranscriptError } from "./transcript-error.ts";

/** How fast a narrator talks, for a last caption that has no end. Common practice: walkaround speech runs at 2.4 to 3 words a second. */
const wordsPerSecond = 2.7;
/** With so many captions before the last, the narrator's own pace is known, pauses and all; paces beyond these are broken times. */
const fewestCaptionsForPace = 10;
const slowestWordsPerSecond = 1.2;
const fastestWordsPerSecond = 4;
const shortestLastCaptionSeconds = 1;
/** A recording longer than this is a broken time, not a walkaround. */
const longestRecordingSeconds = 24 * 3600;

/** Fills in the ends and refuses times that cannot be. Captions without words stay: their index counts. */
export function finishTranscript(format: TranscriptFormat, timed: readonly TimedText[], file: string): Transcript {
  if (timed.length === 0) {
    throw new TranscriptError(
      "no-captions",
      { file, line: 1 },
      "there are no captions in it. Choose a transcript that has times and words.",
    );
  }
  for (const [position, caption] of timed.entries()) checkTimes(caption, timed[position - 1], file);
  const captions = timed.map((caption, index): Caption => {
    const text = captionText(caption.text);
    return { index, start: caption.start, end: caption.end ?? endOf(caption, text, timed[index + 1], timed), text };
  });
  if (captions.every((caption) => caption.text === "")) {
    throw new TranscriptError("no-words", { file, line: 1 }, "its captions have times but no words. Choose a transcript with words in it.");
  }
  return { format, captions, duration: captions.reduce((latest, caption) => Math.max(latest, caption.end), 0) };
}

function endOf(caption: TimedText, text: string, next: TimedText | undefined, all: readonly TimedText[]): number {
  if (next) return next.start;
  const seconds = Math.max(shortestLastCaptionSeconds, wordsIn(text) / paceBeforeLast(all));
  return Math.round((caption.start + seconds) * 1000) / 1000;
}

const wordsIn = (text: string): number => (text === "" ? 0 : text.split(" ").length);

/** Words a second from the first caption to the last one's start. */
function paceBeforeLast(all: readonly TimedText[]): number {
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last || all.length <= fewestCaptionsForPace || last.start <= first.start) return wordsPerSecond;
  const words = all.slice(0, -1).reduce((sum, caption) => sum + wordsIn(captionText(caption.text)), 0);
  return Math.min(fastestWordsPerSecond, Math.max(slowestWordsPerSecond, words / (last.start - first.start)));
}

function checkTimes(caption: TimedText, before: TimedText | undefined, file: string): void {
  const place = { file, line: caption.line };
  for (const seconds of [caption.start, caption.end ?? 0]) {
    if (!Number.isFinite(seconds) || seconds < 0 || seconds > longestRecordingSeconds) {
      throw new TranscriptError(
        "broken-time",
        place,
        `a caption's time is ${seconds} seconds. Times are seconds from the start, below 24 hours.`,
      );
    }
  }
  if (before && caption.start < before.start) {
    throw new TranscriptError(
      "time-goes-backwards",
      place,
      `the caption starts at ${spokenClock(caption.start)}, before the one above it (${spokenClock(before.start)}). Put the captions in order or correct the time.`,
    );
  }
  if (caption.end !== null && caption.end < caption.start) {
    throw new TranscriptError(
      "ends-before-start",
      place,
      `the caption ends at ${spokenClock(caption.end)}, before it starts at ${spokenClock(caption.start)}. Correct the times or remove the caption.`,
    );
  }
}
