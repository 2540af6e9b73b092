import type { Transcript, TranscriptFormat } from "../../shared-types/index.ts";
import { decodeText } from "./decode-text.ts";
import { finishTranscript } from "./finish-transcript.ts";
import { isPlainTimedText, readPlainCaptions } from "./parse-plain-text.ts";
import { looksLikeJson, readJsonCaptions } from "./parse-recogniser-json.ts";
import { isSrt, readSrtCaptions } from "./parse-srt.ts";
import { isWebVtt, readWebVttCaptions } from "./parse-webvtt.ts";
import type { Parsed } from "./timed-text.ts";
import { found, TranscriptError } from "./transcript-error.ts";

/** In the order they are tried: a file belongs to the first format whose mark it bears, whatever its name ends in. */
const formats: readonly {
  readonly format: TranscriptFormat;
  readonly bears: (text: string) => boolean;
  readonly read: (text: string) => Parsed;
}[] = [
  { format: "webvtt", bears: isWebVtt, read: readWebVttCaptions },
  { format: "recogniser-json", bears: looksLikeJson, read: readJsonCaptions },
  { format: "srt", bears: isSrt, read: readSrtCaptions },
  { format: "plain", bears: isPlainTimedText, read: readPlainCaptions },
];

/**
 * A transcript file as captions in file order. The format is found by content, the encoding by its bytes.
 * A caption without an end gets the next one's start; the last one an end estimated from its words. Nothing is dropped: a caption
 * without words keeps its index.
 * @param fileName only for messages.
 * @throws TranscriptError, and nothing else, for bytes that are no usable transcript.
 */
export function readTranscript(bytes: Uint8Array, fileName: string): Transcript {
  const top = { file: fileName, line: 1 };
  if (bytes.length === 0) throw new TranscriptError("empty-file", top, "the file is empty. Choose a transcript with times and words.");
  const decoded = decodeText(bytes);
  if (decoded.trouble === "binary-file") {
    throw new TranscriptError(
      "binary-file",
      top,
      beginsAsVideo(bytes)
        ? "this is a video. Choose it as the video, and its transcript (.txt, .srt, .vtt or .json) here."
        : "this is no text: it holds bytes that no text has. Save the transcript (.txt, .srt, .vtt or .json) as UTF-8 and choose it again.",
    );
  }
  if (decoded.trouble) {
    throw new TranscriptError("unknown-encoding", top, "the text's encoding cannot be told. Save the file as UTF-8 and try again.");
  }
  if (decoded.text.trim() === "")
    throw new TranscriptError("empty-file", top, "there is only white space. Choose a transcript with times and words.");
  const format = formats.find((candidate) => candidate.bears(decoded.text));
  if (!format) {
    throw new TranscriptError(
      "unknown-format",
      top,
      `no times were found; it begins with ${found(decoded.text.slice(0, 200))}. Choose timed text ([1:02] words), SRT, WebVTT or a recognizer's JSON with segments.`,
    );
  }
  const parsed = format.read(decoded.text);
  if (parsed.refusal)
    throw new TranscriptError(parsed.refusal.code, { file: fileName, line: parsed.refusal.line }, parsed.refusal.complaint);
  return finishTranscript(format.format, parsed.timed, fileName);
}

/** ISO base media and QuickTime files name their first box in bytes 4 to 7 (ISO/IEC 14496-12); Matroska begins with EBML's number (RFC 8794). */
function beginsAsVideo(bytes: Uint8Array): boolean {
  const box = String.fromCharCode(...bytes.subarray(4, 8));
  return /^(?:ftyp|moov|mdat|wide|free|skip|pnot)$/.test(box) || [0x1a, 0x45, 0xdf, 0xa3].every((byte, at) => bytes[at] === byte);
}
