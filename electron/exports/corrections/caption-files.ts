import { timeLabel } from "../../../shared-types/index.ts";
import { chapterTitleText, stamp } from "../chapters/webvtt.ts";
import { openMark } from "../claim-standing.ts";
import type { CaptionChange, CorrectedCaptions, DisputedCaption, UnplacedWords } from "./correct-captions.ts";

/** Text of a comment block: no arrow and no empty line, which would end it (W3C WebVTT, comment blocks). */
function comment(text: string): string {
  return text.replaceAll("-->", "→").replaceAll(/\s*\n\s*/g, " ");
}

function changeLine({ caption, start, from, to, why }: CaptionChange): string {
  return `Caption ${caption + 1} (${timeLabel(start)}): "${from}" is now "${to}"; ${why}.`;
}

function unplacedLine({ caption, start, from, rightWords, initials }: UnplacedWords): string {
  return `Caption ${caption + 1} (${timeLabel(start)}) stands as it was recognized: ${initials} ruled "${from}" misheard, and where "${rightWords}" belongs in it is not told.`;
}

function disputedLine({ caption, start, topics }: DisputedCaption): string {
  return `Caption ${caption + 1} (${timeLabel(start)}) stands as it was spoken; do not rely on it ${openMark(topics)}.`;
}

const nothingChanged = "No caption was changed.";

function linesOf({ changes, unplaced, disputed }: CorrectedCaptions): string[] {
  return [
    ...(changes.length === 0 ? [nothingChanged] : changes.map(changeLine)),
    ...unplaced.map(unplacedLine),
    ...disputed.map(disputedLine),
  ];
}

/** Captions of no length, or without words once put right, are no cues. */
function spoken({ captions }: CorrectedCaptions) {
  return captions.filter(({ start, end, text }) => Math.round(end * 1000) > Math.round(start * 1000) && text !== "");
}

/** Corrected captions as WebVTT; a comment block at the head lists every change and why, and every caption that speaks of what is in dispute. */
export function correctedWebvtt(corrected: CorrectedCaptions): string {
  const cues = spoken(corrected).map(
    ({ start, end, text }, position) => `${position + 1}\n${stamp(start)} --> ${stamp(end)}\n${chapterTitleText(text)}\n`,
  );
  return `WEBVTT\n\nNOTE\n${linesOf(corrected).map(comment).join("\n")}\n\n${cues.join("\n")}`;
}

/**
 * Corrected captions as SRT (no formal standard: counter, `HH:MM:SS,mmm`, text, empty line), which has no place for a comment: what was
 * changed and what is in dispute is in the list of changes.
 */
export function correctedSrt(corrected: CorrectedCaptions): { readonly text: string; readonly warnings: readonly string[] } {
  const text = spoken(corrected)
    .map(
      ({ start, end, text }, position) =>
        `${position + 1}\n${stamp(start).replace(".", ",")} --> ${stamp(end).replace(".", ",")}\n${text.replaceAll(/\s+/g, " ").replaceAll("-->", "→")}\n`,
    )
    .join("\n");
  const count = corrected.disputed.length;
  if (count === 0) return { text, warnings: [] };
  const what = count === 1 ? "One caption speaks" : `${count} captions speak`;
  return { text, warnings: [`${what} of what is in dispute. SRT cannot carry that remark; the list of changes names them.`] };
}

/** What the corrected captions say otherwise than the recognizer did, and why: one line each. */
export function changesList(corrected: CorrectedCaptions): string {
  return `${linesOf(corrected).join("\n")}\n`;
}
