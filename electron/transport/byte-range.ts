/** First and last byte, both inclusive. */
export interface ByteRange {
  readonly start: number;
  readonly end: number;
}

/**
 * The one range that a Range header asks for (RFC 9110, 14.1.2), taken back to the file's end. Undefined where the header is to be
 * ignored: another unit, several ranges, an end before the start, no numbers.
 * Not npm's range-parser, which answers 416 where the RFC wants such a header ignored, and where a suffix is longer than the file.
 */
export function byteRange(header: string, size: number): ByteRange | "unsatisfiable" | undefined {
  const { first, last } = /^\s*bytes\s*=\s*(?<first>\d*)\s*-\s*(?<last>\d*)\s*$/i.exec(header)?.groups ?? {};
  if (first === undefined || last === undefined || (first === "" && last === "")) return undefined;
  if (first === "") {
    const length = Math.min(Number(last), size);
    return length === 0 ? "unsatisfiable" : { start: size - length, end: size - 1 };
  }
  const start = Number(first);
  if (last !== "" && Number(last) < start) return undefined;
  if (start >= size) return "unsatisfiable";
  return { start, end: last === "" ? size - 1 : Math.min(Number(last), size - 1) };
}
