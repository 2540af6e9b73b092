/** What can be wrong with a transcript file. For the program; the message is for the person. */
export const transcriptErrorCodes = [
  "empty-file",
  "binary-file",
  "unknown-encoding",
  "unknown-format",
  "no-captions",
  "no-words",
  "broken-time",
  "time-goes-backwards",
  "ends-before-start",
  "broken-json",
  "broken-segment",
] as const;
export type TranscriptErrorCode = (typeof transcriptErrorCodes)[number];

/** A transcript that cannot be used. The message names the file and the line, what was found, and what to do. */
export class TranscriptError extends Error {
  override readonly name = "TranscriptError";
  readonly code: TranscriptErrorCode;
  readonly file: string;
  /** 1-based; 1 where the file as a whole is at fault. */
  readonly line: number;

  /** @param complaint what was found and what to do, as sentences. File and line are put before it. */
  constructor(code: TranscriptErrorCode, place: { readonly file: string; readonly line: number }, complaint: string) {
    super(`${place.file}, line ${place.line}: ${complaint}`);
    this.code = code;
    this.file = place.file;
    this.line = place.line;
  }
}

/** A piece of the file, short enough for one line of a message and without characters that would break it. */
export function found(text: string): string {
  const line = [...text].map((character) => (/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u.test(character) ? " " : character)).join("");
  const folded = line.replace(/\s+/g, " ").trim();
  return `"${folded.length > 60 ? `${folded.slice(0, 57)}…` : folded}"`;
}
