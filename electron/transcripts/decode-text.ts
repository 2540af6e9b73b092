import { analyse } from "chardet";
import iconv from "iconv-lite";

export type Decoded =
  | { readonly text: string; readonly encoding: string; readonly trouble: null }
  | { readonly text: null; readonly encoding: null; readonly trouble: "binary-file" | "unknown-encoding" };

/** Share of control characters from which a file is no text. Text has none; a stray one or two may be damage. */
const binaryControlShare = 0.02;
/** How sure the detector must be before a guess beats Windows-1252, the commonest of the encodings that accept any bytes. */
const sureDetectionPercent = 60;

/**
 * The file's text, whatever it is encoded in: by its byte order mark, as UTF-8 where that is valid, as UTF-16 where every
 * other byte is zero, else by statistics over the bytes. The mark is removed, and line ends are left as they are.
 */
export function decodeText(bytes: Uint8Array): Decoded {
  const marked = byMark(bytes);
  if (marked) return asText(iconv.decode(bytes.subarray(marked.length), marked.encoding), marked.encoding);
  const utf16 = unmarkedUtf16(bytes);
  if (utf16) return asText(iconv.decode(bytes, utf16), utf16);
  const utf8 = strictUtf8(bytes);
  if (utf8 !== null) return asText(utf8, "utf-8");
  if (bytes.includes(0)) return { text: null, encoding: null, trouble: "binary-file" };
  const encoding = guessEncoding(bytes);
  return encoding ? asText(iconv.decode(bytes, encoding), encoding) : { text: null, encoding: null, trouble: "unknown-encoding" };
}

function byMark(bytes: Uint8Array): { encoding: string; length: number } | null {
  const starts = (...mark: number[]) => mark.every((byte, position) => bytes[position] === byte);
  if (starts(0xef, 0xbb, 0xbf)) return { encoding: "utf-8", length: 3 };
  if (starts(0xff, 0xfe, 0x00, 0x00)) return { encoding: "utf-32le", length: 4 };
  if (starts(0x00, 0x00, 0xfe, 0xff)) return { encoding: "utf-32be", length: 4 };
  if (starts(0xff, 0xfe)) return { encoding: "utf-16le", length: 2 };
  if (starts(0xfe, 0xff)) return { encoding: "utf-16be", length: 2 };
  return null;
}

/** English in UTF-16 has a zero in nearly every second byte; nothing else that is text has. */
function unmarkedUtf16(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  const looked = Math.min(bytes.length, 4096) & ~1;
  if (looked < 4) return null;
  let even = 0;
  let odd = 0;
  for (let position = 0; position < looked; position += 2) {
    if (bytes[position] === 0) even += 1;
    if (bytes[position + 1] === 0) odd += 1;
  }
  const pairs = looked / 2;
  if (odd > pairs * 0.7 && even < pairs * 0.1) return "utf-16le";
  if (even > pairs * 0.7 && odd < pairs * 0.1) return "utf-16be";
  return null;
}

function strictUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** The detector's first sure guess; it takes Windows-1252 for ISO 8859-1, which differs only in characters no transcript has. */
function guessEncoding(bytes: Uint8Array): string | null {
  const guess = analyse(bytes.subarray(0, 200_000)).find((match) => iconv.encodingExists(match.name) && !/^utf/i.test(match.name));
  if (!guess) return "windows-1252";
  if (guess.name === "ISO-8859-1" || guess.confidence < sureDetectionPercent) return "windows-1252";
  return guess.name;
}

function asText(text: string, encoding: string): Decoded {
  let controls = 0;
  let damaged = 0;
  for (let position = 0; position < text.length; position += 1) {
    const code = text.charCodeAt(position);
    if ((code < 32 && (code < 9 || code > 13)) || code === 127) controls += 1;
    else if (code === 0xfffd) damaged += 1;
  }
  if (controls > text.length * binaryControlShare) return { text: null, encoding: null, trouble: "binary-file" };
  if (damaged > text.length * 0.2) return { text: null, encoding: null, trouble: "unknown-encoding" };
  return { text, encoding, trouble: null };
}
