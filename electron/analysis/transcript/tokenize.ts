import type { Caption } from "../../../shared-types/index.ts";
import type { Token } from "../model.ts";

/** A token before it has its place in the speech. */
export type CaptionToken = Omit<Token, "index">;

/**
 * One word or figure: a currency sign before figures belongs to it, an apostrophe before letters or figures ('em, '69) too, and so do full
 * stops, commas, colons, slashes and hyphens between figures (4.11, 3,390, 235/60-15). A full stop after a space and before figures is a
 * decimal point (.125). A hyphen between letters parts two words.
 */
const wordPattern =
  /[$£€]?(?:(?<![^\s$£€(])\.(?=\p{N})|['’](?=\p{N}|(?:em|til|cause|bout|round|n|kay)\b))?[\p{L}\p{N}\p{M}]+(?:(?:['’](?=\p{L})|(?<=\p{N})[.,:/⁄-](?=\p{N})|\/(?=\p{N}))[\p{L}\p{N}\p{M}]+)*/gu;
/** What a recogniser writes for sounds; it is no speech. */
const soundPattern =
  /\[[^\]]*\]|♪+|\*[a-z ]{1,30}\*|\((?:music|applause|laughter|laughs|engine[^)]*|horn[^)]*|silence|inaudible|wind[^)]*)\)/giu;

/** The caption's words with their places in its text. Times are spread over its characters. */
export function tokensOfCaption(caption: Caption): CaptionToken[] {
  const sounds = [...caption.text.matchAll(soundPattern)].map((match) => ({ start: match.index, end: match.index + match[0].length }));
  const matches = [...caption.text.matchAll(wordPattern)].filter(
    (match) => !sounds.some((sound) => match.index < sound.end && match.index + match[0].length > sound.start),
  );
  const length = Math.max(1, caption.text.length);
  const seconds = Math.max(0, caption.end - caption.start);
  return matches.map((match, position) => {
    const start = match.index;
    const end = start + match[0].length;
    const between = caption.text.slice(end, matches[position + 1]?.index ?? caption.text.length);
    return {
      caption: caption.index,
      start,
      end,
      text: match[0],
      word: match[0].toLowerCase().replaceAll("’", "'"),
      after: punctuationIn(between, sounds, end),
      at: caption.start + (seconds * start) / length,
    };
  });
}

/** Punctuation directly after a word, without what opens the next one and without sound marks. */
function punctuationIn(between: string, sounds: readonly { start: number }[], offset: number): string {
  const sound = sounds.find((mark) => mark.start >= offset && mark.start < offset + between.length);
  const own = sound ? between.slice(0, sound.start - offset) : between;
  return own.replace(/\s+/g, "").replace(/[([{<"“‘'$£€>]+$/u, (opening) => (/^["']$/.test(opening) && !/\s/.test(own) ? opening : ""));
}

/** Whether the recogniser wrote music or a sound at this caption, beside its words. */
export function soundMarks(text: string): number {
  return [...text.matchAll(/\[[^\]]*(?:music|song|singing|applause|noise)[^\]]*\]|♪|\((?:music|applause)[^)]*\)/giu)].length;
}
