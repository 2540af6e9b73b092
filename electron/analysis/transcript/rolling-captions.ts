import type { CaptionToken } from "./tokenize.ts";

/** Share of neighbouring captions that must carry words over before a file counts as rolling. Other files have next to none. */
const rollingShare = 0.4;
/** Fewer shared words than this say nothing: "it is" may end one caption and begin the next. */
const fewestRolledWords = 2;

/**
 * For each caption, how many of its first words the captions before it have spoken already. Zeros throughout for a file that does not
 * roll, so that a narrator who says a thing twice is heard twice.
 */
export function rolledWordCounts(captions: readonly (readonly CaptionToken[])[]): number[] {
  const overlaps = captions.map((tokens, index) => (index === 0 ? 0 : overlapOf(captions[index - 1] ?? [], tokens)));
  let pairs = 0;
  let rolling = 0;
  for (const [index, tokens] of captions.entries()) {
    const before = captions[index - 1];
    if (!before || before.length === 0 || tokens.length === 0) continue;
    const overlap = overlaps[index] ?? 0;
    const whole = overlap === tokens.length && overlap === before.length;
    // A caption that repeats the last one whole is a recogniser's loop, or a rolling file holding its line: it speaks for neither.
    if (whole) continue;
    pairs += 1;
    if (overlap >= fewestRolledWords) rolling += 1;
  }
  if (pairs === 0 || rolling < 2 || rolling < pairs * rollingShare) return captions.map(() => 0);
  return overlaps.map((overlap, index) => {
    // A line of one word rolls up like any other.
    const lastLine = (captions[index - 1]?.length ?? 0) - (overlaps[index - 1] ?? 0);
    const whole = overlap === captions[index]?.length || overlap === captions[index - 1]?.length;
    return overlap >= fewestRolledWords || whole || overlap === lastLine ? overlap : 0;
  });
}

/** Length of the longest end of `before` that `after` begins with, in words. Linear in the words (prefix function of Knuth, Morris and Pratt). */
function overlapOf(before: readonly CaptionToken[], after: readonly CaptionToken[]): number {
  const tail = before.slice(Math.max(0, before.length - after.length)).map((token) => token.word);
  const words = [...after.map((token) => token.word), "\0", ...tail];
  const border: number[] = [0];
  for (let position = 1; position < words.length; position += 1) {
    let length = border[position - 1] ?? 0;
    while (length > 0 && words[position] !== words[length]) length = border[length - 1] ?? 0;
    if (words[position] === words[length]) length += 1;
    border.push(length);
  }
  return tail.length === 0 ? 0 : (border.at(-1) ?? 0);
}
