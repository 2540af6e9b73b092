import { closeSync, openSync, readSync } from "node:fs";
import { extname } from "node:path";
import { Refusal } from "./refusals.ts";

/**
 * Containers that a browser plays, by the file's ending. QuickTime and Matroska files go out under their close relatives' names, since
 * browsers refuse the others unread though their players take the same streams.
 */
const kinds = {
  ".mp4": { mediaType: "video/mp4", container: "iso" },
  ".m4v": { mediaType: "video/mp4", container: "iso" },
  ".mov": { mediaType: "video/mp4", container: "iso" },
  ".webm": { mediaType: "video/webm", container: "matroska" },
  ".mkv": { mediaType: "video/webm", container: "matroska" },
} as const;

/** Box types that an ISO base media or QuickTime file may begin with (ISO/IEC 14496-12; QuickTime File Format). */
const firstBoxes = new Set(["ftyp", "moov", "mdat", "wide", "free", "skip", "pnot"]);

/**
 * The type under which a video goes to the player.
 * @throws Refusal when the ending is none of a video's or the file does not begin as such a video does.
 */
export function videoMediaType(path: string, name: string): string {
  const ending = extname(name).toLowerCase();
  if (!Object.hasOwn(kinds, ending)) {
    throw new Refusal(
      "video-kind",
      `${name}: a video ends with ${Object.keys(kinds).join(", ")}. Convert it, or import the transcript alone.`,
      { file: name },
    );
  }
  const kind = kinds[ending as keyof typeof kinds];
  if (containerOf(path) !== kind.container) {
    throw new Refusal(
      "video-broken",
      `${name} does not begin as ${ending === ".webm" ? "a" : "an"} ${ending.slice(1)} video does; it may be cut short or misnamed. Choose the camera's own file.`,
      {
        file: name,
      },
    );
  }
  return kind.mediaType;
}

function containerOf(path: string): "iso" | "matroska" | "other" {
  const start = Buffer.alloc(8);
  const handle = openSync(path, "r");
  try {
    readSync(handle, start);
  } finally {
    closeSync(handle);
  }
  if (firstBoxes.has(start.toString("latin1", 4, 8))) return "iso";
  // EBML's magic number (RFC 8794).
  return start.readUInt32BE(0) === 0x1a45dfa3 ? "matroska" : "other";
}
