import type { Caption, Claim, Repair, TextSpan } from "./analysis.ts";

/** The words that a reviewer's right words take the place of. */
export interface ReplacedWords {
  readonly spans: readonly TextSpan[];
  /** As they stand in the captions. */
  readonly words: string;
  /** False where the value has no words of its own within the phrase: then only a whole phrase can take its place. */
  readonly ofValueAlone: boolean;
}

type Heard = Pick<Claim, "spans" | "repairs" | "value">;

/** What a spoken number is put together from, in words. */
const numberWords = new Set(
  (
    "zero oh one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen " +
    "twenty thirty forty fifty sixty seventy eighty ninety hundred thousand million point fifteens sixteens seventeens eighteens fifties " +
    "sixties seventies eighties nineties"
  ).split(" "),
);

const isNumberWord = (word: string): boolean => /\d/.test(word) || word.split("-").every((part) => numberWords.has(part));

/** Words between two words of a number that belong to neither: "two hundred and forty". */
const joins = new Set(["and"]);

/**
 * What in the captions is a claim's value: the words that its repairs read, else the value's own words, else the only number in the phrase;
 * the whole phrase where none of these is there.
 */
export function replacedWords(claim: Heard, repairs: readonly Repair[], captions: readonly Pick<Caption, "text">[]): ReplacedWords {
  const textOf = ({ caption, start, end }: TextSpan) => captions[caption]?.text.slice(start, end) ?? "";
  const wordsOf = (spans: readonly TextSpan[]) => spans.map(textOf).join(" ");
  const own = repairs.filter(({ id }) => claim.repairs.includes(id)).flatMap(({ spans }) => spans);
  const found = own.length > 0 ? own : (valueWords(claim, textOf) ?? onlyNumber(claim, textOf));
  return found
    ? { spans: found, words: wordsOf(found), ofValueAlone: true }
    : { spans: claim.spans, words: wordsOf(claim.spans), ofValueAlone: false };
}

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\/]/g, "\\$&");

function valueWords({ value, spans }: Heard, textOf: (span: TextSpan) => string): TextSpan[] | null {
  const forms = typeof value === "number" ? [String(value), value.toLocaleString("en-US")] : [value];
  for (const span of spans)
    for (const form of forms) {
      const at = new RegExp(`(?<![\\p{L}\\d.,])${escaped(form)}(?![\\p{L}\\d]|[.,]\\d)`, "iu").exec(textOf(span))?.index;
      if (at !== undefined) return [{ caption: span.caption, start: span.start + at, end: span.start + at + form.length }];
    }
  return null;
}

/** The one run of number words in the phrase; null where it has none or several, since then nobody can say which is meant. */
function onlyNumber({ value, spans }: Heard, textOf: (span: TextSpan) => string): TextSpan[] | null {
  if (!/\d/.test(String(value))) return null;
  const runs = spans.flatMap((span): TextSpan[] => {
    const words = [...textOf(span).matchAll(/[\p{L}\d][\p{L}\d.,/'’-]*/gu)].map((word) => ({
      text: word[0].toLowerCase().replace(/[.,]+$/, ""),
      start: span.start + word.index,
    }));
    const made: TextSpan[] = [];
    let open: TextSpan | null = null;
    for (const { text, start } of words) {
      if (isNumberWord(text)) {
        if (open) open.end = start + text.length;
        else {
          open = { caption: span.caption, start, end: start + text.length };
          made.push(open);
        }
      } else if (!joins.has(text)) open = null;
    }
    return made;
  });
  return runs.length === 1 ? runs : null;
}

/**
 * Where a reviewer's right words go. A value alone takes the place of the value's own words; words that repeat the beginning or the end of
 * the phrase around them take the place of the phrase. Null where a single word was written for a phrase that has no words of its own for
 * the value: in place of the phrase it would take out what was rightly heard.
 */
export function placeOfRightWords(
  rightWords: string,
  claim: Heard,
  repairs: readonly Repair[],
  captions: readonly Pick<Caption, "text">[],
): readonly TextSpan[] | null {
  const { spans, words, ofValueAlone } = replacedWords(claim, repairs, captions);
  const wordsIn = (text: string) => text.toLowerCase().split(/\s+/).filter(Boolean);
  const written = wordsIn(rightWords);
  if (!ofValueAlone) return written.length === 1 && wordsIn(words).length > 1 ? null : spans;
  const phrase = wordsIn(claim.spans.map(({ caption, start, end }) => captions[caption]?.text.slice(start, end) ?? "").join(" "));
  const own = wordsIn(words);
  const beginning = phrase[0] !== own[0] && written.length > 1 && written[0] === phrase[0];
  const ending = phrase.at(-1) !== own.at(-1) && written.length > 1 && written.at(-1) === phrase.at(-1);
  return beginning || ending ? claim.spans : spans;
}
