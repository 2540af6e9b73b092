import type { Caption, CorrectedCaption } from "../../shared-types/index.ts";
import type { Library } from "../library/open-library.ts";

/** The captions with the words that people put right; everyone but the transcript itself reads these. */
export function effectiveCaptions(library: Pick<Library, "captions" | "captionCorrections">, recordingId: string): Caption[] {
  const words = new Map(library.captionCorrections.of(recordingId).map((correction) => [correction.caption, correction.words]));
  return library.captions.of(recordingId).map((caption) => ({ ...caption, text: words.get(caption.index) ?? caption.text }));
}

/** The corrections, each with the words its caption came with; in file order. */
export function correctedCaptions(library: Pick<Library, "captions" | "captionCorrections">, recordingId: string): CorrectedCaption[] {
  const corrections = library.captionCorrections.of(recordingId);
  if (corrections.length === 0) return [];
  const originals = new Map(library.captions.of(recordingId).map((caption) => [caption.index, caption.text]));
  return corrections.map((correction) => ({ ...correction, original: originals.get(correction.caption) ?? "" }));
}
