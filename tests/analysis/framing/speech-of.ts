import type { Sentence, Speech, Token } from "../../../electron/analysis/model.ts";
import type { Caption } from "../../../shared-types/index.ts";

/**
 * Speech for table tests, cut only at written punctuation: the tables must not lean on the transcript pass's own joints.
 * Each text becomes one caption of ten seconds.
 */
export function speechOf(...texts: readonly string[]): Speech {
  const captions: Caption[] = texts.map((text, index) => ({ index, start: index * 10, end: index * 10 + 10, text }));
  const tokens: Token[] = [];
  const sentences: Sentence[] = [];
  let first = 0;
  const close = () => {
    if (tokens.length > first)
      sentences.push({ index: sentences.length, first, end: tokens.length, startsAt: tokens[first]!.at, endsAt: tokens.at(-1)!.at });
    first = tokens.length;
  };
  for (const caption of captions) {
    for (const match of caption.text.matchAll(/['’]?[A-Za-z0-9][A-Za-z0-9'’.,/-]*/g)) {
      const text = match[0].replace(/[.,'’/-]+$/, "");
      const end = match.index + text.length;
      const after = /^[^\sA-Za-z0-9]*/.exec(caption.text.slice(end))![0];
      const at = caption.start + (10 * match.index) / Math.max(1, caption.text.length);
      tokens.push({
        index: tokens.length,
        caption: caption.index,
        start: match.index,
        end,
        text,
        word: text.toLowerCase().replaceAll("’", "'"),
        after,
        at,
      });
      if (/[.?!]/.test(after)) close();
    }
  }
  close();
  return { captions, duration: texts.length * 10, tokens, sentences, doubtful: [], punctuated: true, paragraphs: true };
}

/** Token range of words within the speech. Throws where they are not there: a typing slip in a table must not pass. */
export function rangeOf(speech: Speech, words: string): { first: number; end: number } {
  const wanted = speechOf(words).tokens.map((token) => token.word);
  for (let first = 0; first + wanted.length <= speech.tokens.length; first++) {
    if (wanted.every((word, offset) => speech.tokens[first + offset]!.word === word)) return { first, end: first + wanted.length };
  }
  throw new Error(`"${words}" is not in "${speech.captions.map((caption) => caption.text).join(" / ")}"`);
}
