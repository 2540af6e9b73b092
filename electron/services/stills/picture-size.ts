/** What a picture's own bytes say of it. Pixels. */
export interface PictureFacts {
  readonly mediaType: "image/png" | "image/jpeg" | "image/webp";
  readonly width: number;
  readonly height: number;
}

const text = (bytes: Uint8Array, from: number, length: number): string => String.fromCharCode(...bytes.subarray(from, from + length));
const view = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/**
 * Kind and size of a picture by its bytes, whatever anyone calls it; undefined for everything but PNG, JPEG and WebP, and for a file that
 * ends within its head.
 */
export function pictureFacts(bytes: Uint8Array): PictureFacts | undefined {
  const facts = pngFacts(bytes) ?? jpegFacts(bytes) ?? webpFacts(bytes);
  return facts && facts.width > 0 && facts.height > 0 ? facts : undefined;
}

/** Signature and first chunk: W3C PNG (third edition), 5.2 and 11.2.1. */
function pngFacts(bytes: Uint8Array): PictureFacts | undefined {
  if (bytes.length < 24 || text(bytes, 1, 3) !== "PNG" || view(bytes).getUint32(0) !== 0x89504e47) return undefined;
  if (view(bytes).getUint32(4) !== 0x0d0a1a0a || text(bytes, 12, 4) !== "IHDR") return undefined;
  return { mediaType: "image/png", width: view(bytes).getUint32(16), height: view(bytes).getUint32(20) };
}

/** Markers up to the frame header: ITU-T T.81, B.1.1.3 and B.2.2. */
function jpegFacts(bytes: Uint8Array): PictureFacts | undefined {
  if (bytes.length < 4 || view(bytes).getUint16(0) !== 0xffd8) return undefined;
  let at = 2;
  while (at + 9 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    // Fill bytes before a marker.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    // Start of frame, but for the three codes in its row that mean tables.
    if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc)
      return { mediaType: "image/jpeg", height: view(bytes).getUint16(at + 5), width: view(bytes).getUint16(at + 7) };
    at += 2 + view(bytes).getUint16(at + 2);
  }
  return undefined;
}

/** RFC 9649, 2.5 to 2.7: simple lossy, simple lossless, extended. */
function webpFacts(bytes: Uint8Array): PictureFacts | undefined {
  if (bytes.length < 30 || text(bytes, 0, 4) !== "RIFF" || text(bytes, 8, 4) !== "WEBP") return undefined;
  const mediaType = "image/webp";
  const data = view(bytes);
  const kind = text(bytes, 12, 4);
  if (kind === "VP8 ") return { mediaType, width: data.getUint16(26, true) & 0x3fff, height: data.getUint16(28, true) & 0x3fff };
  if (kind === "VP8L") {
    const bits = data.getUint32(21, true);
    return { mediaType, width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
  }
  if (kind === "VP8X") {
    const three = (at: number) => data.getUint16(at, true) | ((bytes[at + 2] ?? 0) << 16);
    return { mediaType, width: three(24) + 1, height: three(27) + 1 };
  }
  return undefined;
}
