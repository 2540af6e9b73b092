import type { Transcript } from "../../shared-types/index.ts";

/** How recognisers differ: the same speech without punctuation, in short captions, or both. */
export const recogniserStyles = {
  "as written": (text: string) => [text],
  "no punctuation": (text: string) => [withoutPunctuation(text)],
  "seven words a caption": (text: string) => inPieces(text, 7),
  "no punctuation, six words a caption": (text: string) => inPieces(withoutPunctuation(text), 6),
  "no punctuation, four words a caption": (text: string) => inPieces(withoutPunctuation(text), 4),
} as const satisfies Record<string, (text: string) => string[]>;
export type RecogniserStyle = keyof typeof recogniserStyles;

/** Lower case, sentence marks gone; marks within figures ("4.11", "58,412") stay. */
function withoutPunctuation(text: string): string {
  return text.replace(/[.,?!;:](?=\s|$)/g, "").toLowerCase();
}

function inPieces(text: string, wordsInCaption: number): string[] {
  const words = text.split(" ");
  return Array.from({ length: Math.ceil(words.length / wordsInCaption) }, (_, at) =>
    words.slice(at * wordsInCaption, (at + 1) * wordsInCaption).join(" "),
  );
}

export interface RestyledTranscript {
  readonly transcript: Transcript;
  /** For each caption of the original, the index of its first caption in the restyled transcript; one more entry for the end. */
  readonly firstCaption: readonly number[];
}

/** The same words in another recogniser's captions; time is shared out evenly. */
export function restyle(original: Transcript, style: RecogniserStyle): RestyledTranscript {
  const captions: Transcript["captions"] = [];
  const firstCaption: number[] = [];
  for (const caption of original.captions) {
    firstCaption.push(captions.length);
    const parts = recogniserStyles[style](caption.text).filter((part) => part.trim() !== "");
    const seconds = (caption.end - caption.start) / Math.max(1, parts.length);
    for (const [at, text] of parts.entries())
      captions.push({ index: captions.length, start: caption.start + at * seconds, end: caption.start + (at + 1) * seconds, text });
  }
  firstCaption.push(captions.length);
  return { transcript: { ...original, captions }, firstCaption };
}
