import type { ComponentName, PositionName } from "../../../../shared-types/index.ts";
import type { Speech, Token } from "../../model.ts";
import { bodyWords } from "./body.ts";
import { cabinAndPaperWords } from "./cabin-and-papers.ts";
import { drivetrainWords } from "./drivetrain.ts";
import type { PartWord } from "./part-word.ts";
import { runningGearWords } from "./running-gear.ts";

/** A part named in the speech. */
export interface PartMention {
  /** Token range, end exclusive. */
  readonly first: number;
  readonly end: number;
  readonly component: ComponentName;
  readonly part: string | null;
  /** Where the words alone put it; null where the sentence must say. */
  readonly position: PositionName | null;
}

export const partWords: readonly PartWord[] = [...runningGearWords, ...drivetrainWords, ...bodyWords, ...cabinAndPaperWords];

/** Words that look plural or are no plural of a shorter word: never shortened. */
const notPlural = /(?:ss|us|is)$/;

/** The form a word is listed under: possessive and plural endings off ("tire's", "tires" -> "tire"). */
export function listedForm(word: string): string {
  const bare = word.replace(/(?:'s|s')$/, "");
  if (bare.length < 4 || notPlural.test(bare)) return bare;
  if (bare.endsWith("ies")) return `${bare.slice(0, -3)}y`;
  if (/(?:x|ch|sh)es$/.test(bare)) return bare.slice(0, -2);
  return bare.endsWith("s") ? bare.slice(0, -1) : bare;
}

/** A phrase as it stands and with a hyphen at each of its gaps: some recognisers write "coil-over", "anti-roll bar". */
function hyphenated(phrase: string): string[] {
  const words = phrase.split(" ");
  return [
    phrase,
    ...words.slice(1).map((_, gap) => words.map((word, at) => (at === 0 ? word : `${at === gap + 1 ? "-" : " "}${word}`)).join("")),
  ];
}

interface IndexedRow {
  readonly words: readonly string[];
  readonly row: PartWord;
}

/** Rows by first word, longest first, so that "rear quarter" wins over "quarter". */
const rowsByFirstWord: ReadonlyMap<string, readonly IndexedRow[]> = (() => {
  const index = new Map<string, IndexedRow[]>();
  for (const row of partWords) {
    for (const phrase of row.say.flatMap(hyphenated)) {
      const words = phrase.split(" ");
      const list = index.get(words[0]!) ?? [];
      list.push({ words, row });
      index.set(words[0]!, list);
    }
  }
  for (const list of index.values()) list.sort((a, b) => b.words.length - a.words.length);
  return index;
})();

/** Words around a part word that show it means something else. */
const otherSenses: readonly {
  readonly word: string;
  readonly before?: RegExp;
  readonly after?: RegExp;
  /** True where the plural means what it says: "the pad" is the dash's, "the pads" are the brakes'. */
  readonly singular?: boolean;
}[] = [
  {
    word: "top",
    before: /\b(?:on|over|at|the very|right at the|bottom to|to|cam up|third and|in|off the|up)(?: the)?$/,
    after: /^(?:of|to bottom|and bottom|speed|loader|end|down low)\b/,
  },
  { word: "head", after: /^(?:of|over|up|down|out|back|on|for)\b/, before: /\b(?:your|my|his|her|a)$/ },
  { word: "heads", before: /\b(?:your|our)$/, after: /^(?:up|of)\b/ },
  { word: "light", before: /\b(?:the|my own|own|this|in|good|green|warning|tire|engine|no warning|street)$/ },
  { word: "lights", before: /\b(?:warning|these|under the|the)$/ },
  { word: "spots", before: /\b(?:of|few|some|rust|rusty|soft|thin|blind|bad|good|two|three|several|no|dead|little|small|the)$/ },
  { word: "lighter" },
  { word: "stripes", before: /\b(?:black|rubber)$/ },
  { word: "points", before: /\b(?:two|three|four)$/ },
  { word: "points", before: /\b(?:jack|jacking|good|bad|high|low)$/ },
  { word: "pack", before: /\b(?:tech|option|sport|winter)$/ },
  { word: "tip", after: /^(?:over|top|it)\b/ },
  { word: "ring", after: /^(?:me|us|first|round|up)\b/ },
  { word: "ring", before: /\b(?:trim|horn|little)$/ },
  { word: "spring", before: /\b(?:last|this|in the|next|of)$/ },
  { word: "boot", before: /\b(?:my|your)$/ },
  { word: "column", before: /\b(?:a)$/ },
  { word: "bed", before: /\b(?:in|to|out of)$/ },
  { word: "head", before: /\b(?:stopped|the back of my)$/ },
  {
    word: "drives",
    after: /^(?:nice|great|well|like|real|really|beautiful|straight|good|out|just|so|as|lovely)\b/,
    before: /\b(?:it|she|he|car|truck|who|just)$/,
  },
  { word: "steers", after: /^(?:straight|nice|well|good|like)\b/, before: /\b(?:it|she)$/ },
  { word: "stick", after: /^(?:a|it|the|that|with|my|your|to|out|around)\b/, before: /\b(?:i'll|will|to|can|don't)$/ },
  { word: "coil", before: /\bignition$/ },
  { word: "body", after: /^(?:else|knows|told)\b/ },
  { word: "car", before: /\b(?:georgia|tow|company|race|show)$/ },
  { word: "screen", before: /\b(?:your|a|on)$/ },
  { word: "body", after: /^(?:works?|shops?|man)\b/ },
  { word: "buckets", before: /\b(?:headlight|light|lamp|headlamp|the old|original|stock)$/ },
  { word: "price", before: /\b(?:half the|twice the)$/ },
  { word: "pipe", before: /\b(?:hose|a|smoked a|his|heater|water|oil|vacuum|fuel)$/ },
  { word: "tank", before: /\b(?:like a)$/ },
  { word: "box", before: /\b(?:glove|this whole|a|in)$/ },
  { word: "rack", before: /\b(?:the|on the|up on the|no)$/, after: /^(?:and (?!pinion)|she|there)\b/ },
  { word: "fan", before: /\ba$/ },
  { word: "cat", before: /\b(?:the|a)$/, after: /^(?:on|in|is|got|jumped|sleeps)\b/ },
  { word: "window", after: /^(?:sticker|shopping)\b/, before: /\bthree$/ },
  { word: "block", after: /^(?:there|of)\b/, before: /\b(?:parking|the road)$/ },
  { word: "head", after: /^(?:to|toward|towards|into)\b/ },
  { word: "quarter", before: /\b(?:and a|a|three|one|and)$/, after: /^(?:of an|inch|mils|mile|to|past|light)\b/ },
  { word: "quarters", before: /\bthree$/ },
  { word: "key", before: /\blow$/ },
  { word: "blower", after: /^(?:motor|fan|speed)\b/ },
  { word: "boost", after: /^(?:the|its|your)\b/ },
  { word: "pad", singular: true, before: /\b(?:the|dash)$/, after: /^(?:that's|so there's|where)\b/ },
  { word: "bench", before: /\b(?:the|work|on)$/ },
  { word: "panel", before: /\bkick$/, after: /^(?:work)\b/ },
];

function wordsBetween(tokens: readonly Token[], first: number, end: number): string {
  let text = "";
  for (let at = Math.max(0, first); at < Math.min(tokens.length, end); at++) text += `${text ? " " : ""}${tokens[at]!.word}`;
  return text;
}

function meansSomethingElse(tokens: readonly Token[], first: number, end: number): boolean {
  if (end - first !== 1) return false;
  const word = tokens[first]!.word;
  const senses = otherSenses.filter((sense) => sense.word === word || (!sense.singular && sense.word === listedForm(word)));
  if (senses.length === 0) return false;
  const before = wordsBetween(tokens, first - 3, first);
  const after = wordsBetween(tokens, end, end + 3);
  return senses.some((sense) => (sense.before?.test(before) ?? false) || (sense.after?.test(after) ?? false));
}

function rowAt(tokens: readonly Token[], first: number): { row: PartWord; end: number } | undefined {
  const word = tokens[first]!.word;
  for (const start of new Set([word, listedForm(word)])) {
    for (const { words, row } of rowsByFirstWord.get(start) ?? []) {
      const end = first + words.length;
      if (end > tokens.length) continue;
      const matches = words.every((listed, offset) => {
        const said = tokens[first + offset]!;
        // A full stop inside the words means two sentences, not one name.
        if (offset < words.length - 1 && /[.?!]/.test(said.after)) return false;
        return said.word === listed || listedForm(said.word) === listed;
      });
      if (matches && !meansSomethingElse(tokens, first, end)) return { row, end };
    }
  }
  return undefined;
}

/** Every part named in the speech, in spoken order, longest name first, never overlapping. */
export function findMentions(speech: Speech): PartMention[] {
  const mentions: PartMention[] = [];
  for (let at = 0; at < speech.tokens.length; ) {
    const found = rowAt(speech.tokens, at);
    if (!found) {
      at++;
      continue;
    }
    const { row, end } = found;
    mentions.push({ first: at, end, component: row.component, part: row.part, position: row.position ?? null });
    at = end;
  }
  return mentions;
}
