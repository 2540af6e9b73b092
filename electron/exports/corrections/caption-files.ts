import { timeLabel } from "../../../shared-types/index.ts";
import { chapterTitleText, stamp } from "../chapters/webvtt.ts";
import type { CaptionChange, CorrectedCaptions } from "./correct-captions.ts";

/** Text of a comment block: no arrow and no empty line, which would end it (W3C WebVTT, comment blocks). */
function comment(text: string): string {
  return text.replaceAll("-->", "→").replaceAll(/\s*\n\s*/g, " ");
}

function changeLine({ caption, start, from, to, why }: CaptionChange): string {
  return `Caption ${caption + 1} (${timeLabel(start)}): "${from}" is now "${to}"; ${why}.`;
}

const nothingChanged = "No caption was changed.";

/** Captions of no length, or without words once put right, are no cues. */
function spoken({ captions }: CorrectedCaptions) {
  return captions.filter(({ start, end, text }) => Math.round(end * 1000) > Math.round(start * 1000) && text !== "");
}

/** Corrected captions as WebVTT; a comment block at the head lists every change and why. */
export function correctedWebvtt(corrected: CorrectedCaptions): string {
  const notes = corrected.changes.length === 0 ? [nothingChanged] : corrected.changes.map(changeLine);
  const cues = spoken(corrected).map(
    ({ start, end, text }, position) => `${position + 1}\n${stamp(start)} --> ${stamp(end)}\n${chapterTitleText(text)}\n`,
  );
  return `WEBVTT\n\nNOTE\n${notes.map(comment).join("\n")}\n\n${cues.join("\n")}`;
}

/** Corrected captions as SRT (no formal standard: counter, `HH:MM:SS,mmm`, text, empty line); what was changed is in the list of changes. */
export function correctedSrt(corrected: CorrectedCaptions): string {
  return spoken(corrected)
    .map(
      ({ start, end, text }, position) =>
        `${position + 1}\n${stamp(start).replace(".", ",")} --> ${stamp(end).replace(".", ",")}\n${text.replaceAll(/\s+/g, " ").replaceAll("-->", "→")}\n`,
    )
    .join("\n");
}

/** What the corrected captions say otherwise than the recogniser did, and why: one line each. */
export function changesList(corrected: CorrectedCaptions): string {
  return `${(corrected.changes.length === 0 ? [nothingChanged] : corrected.changes.map(changeLine)).join("\n")}\n`;
}
