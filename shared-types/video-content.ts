/** What a video is known by: its length in bytes, and SHA-256 of its first and last mebibyte in lower-case hexadecimal. */
export interface VideoContent {
  readonly bytes: number;
  readonly fingerprint: string;
}

/** In what a file differs from the video that a recording came with, in words; null when it is the same content. */
export function videoDifference(known: VideoContent, found: VideoContent, oldName: string): string | null {
  if (known.bytes !== found.bytes) return `it has ${bytesInFull(found.bytes)}, and ${oldName} had ${bytesInFull(known.bytes)}`;
  if (known.fingerprint === found.fingerprint) return null;
  return `it is as long (${bytesInFull(found.bytes)}), but begins or ends with other content`;
}

/** To the byte: two files may differ by one. */
export function bytesInFull(bytes: number): string {
  return `${bytes.toLocaleString("en-US")} bytes`;
}
