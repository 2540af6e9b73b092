import type { ComponentName } from "../../../../shared-types/index.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { type CountFound, type CountingRule, namedBefore, wordsOf } from "./count-found.ts";
import { phrasesIn } from "./phrases-in.ts";

const small: Readonly<Record<string, number>> = { one: 1, a: 1, two: 2, three: 3, four: 4, pair: 2, couple: 2 };

/** Things that sit in rows, told from the front. */
const inRows = {
  belts: "belt",
  seats: "seat",
  audio: "speaker",
} as const satisfies Partial<Record<ComponentName, string>>;

const quantity = "(?:an? )?(pair|couple|one|two|three|four)(?: of (?:them|em|those))?";
const inFront = "(?:up front|in front|in the front|at the front|for the front)";
const behind = "(?:in back|in the back|out back|behind|in the rear|at the back|at the rear|for the back)";
const rows = new RegExp(`\\b${quantity} (?:\\w+ )?${inFront}(?: and| ,)? (?:then )?${quantity} (?:\\w+ )?${behind}\\b`, "g");

/** How far back the things that are counted may be named. */
const namedWithin = 18;

export const frontAndBackAddedUp: CountingRule = {
  name: "front and back added up",
  find: (counted) =>
    phrasesIn(counted, rows).flatMap(({ first, end, groups }): CountFound[] => {
      const [front, back] = groups.map((word) => small[word ?? ""]);
      const counts = namedBefore(counted, first + 2, namedWithin, ({ component }) => component in inRows);
      if (!counts || front === undefined || back === undefined) return [];
      // Plain numbers are read where they stand; a pair is none.
      if (!groups.some((word) => word === "pair" || word === "couple")) return [];
      const component = counts.component as keyof typeof inRows;
      return [{ component, part: inRows[component], value: front + back, circumstance: null, first, end, at: end - 1 }];
    }),
  examples: [
    {
      says: "Belts. They're lap belts, a pair up front and a pair in back, and I had those out and washed them.",
      zone: "cabin",
      gives: { component: "belts", part: "belt", value: 4, circumstance: null },
    },
  ],
  quiet: [{ says: "Speakers are new, one up front and one in back.", zone: "cabin" }],
};

/** Small things that are laid out and counted one by one. */
function isLaidOut({ component, part }: PartMention): boolean {
  return (component === "vehicle" && part === "key") || (component === "electrical" && part === "charge cable");
}

const oneByOne =
  /\b(?:there's|here's|that's|got|have) (?:the |just )?one (?:\w+ )?(?:and|,) (?:then )?(?:there's |here's |that's )?(an?|another|the)(?: \w+){0,2}? (?:one|spare)\b(?: (?:and|,) (?:then )?(?:there's |here's )?(an?|another) (?:\w+ )?one)?(?= (?:and |, )?(?:that's|that is|is) (?:the lot|it|all|your lot|both)\b)/g;

const onlyOne =
  /\b(?:there's only|it's only|there is only|only|just) (?:the |got the |got )?(?:one|a single one)(?= (?:key|fob|of them|you'll|though|i'm afraid|so|and|mind|i've|to)\b| \.|$)|\bsingular\b/g;

export const laidOutOneByOne: CountingRule = {
  name: "laid out one by one",
  find: (counted) => {
    const sums = phrasesIn(counted, oneByOne).map((found) => ({ ...found, value: found.groups[1] === undefined ? 2 : 3 }));
    const ones = phrasesIn(counted, onlyOne).map((found) => ({ ...found, value: 1 }));
    return [...sums, ...ones].flatMap(({ first, end, value }): CountFound[] => {
      const named = namedBefore(counted, first + 1, namedWithin, isLaidOut);
      return named ? [{ component: "vehicle", part: named.part!, value, circumstance: null, first, end, at: first + 1 }] : [];
    });
  },
  examples: [
    {
      says: "and here's the key envelope there's one and there's a bent one and that's the lot",
      zone: "documents",
      gives: { component: "vehicle", part: "key", value: 2, circumstance: null },
    },
    {
      says: "i'll put the one key there's only the one you'll want to get another cut",
      zone: "closing",
      gives: { component: "vehicle", part: "key", value: 1, circumstance: null },
    },
  ],
  quiet: [
    { says: "there's one and there's a bent one and that's the lot of my spoons", zone: "documents" },
    { says: "the key is in it and only the one thing to say", zone: "documents" },
  ],
};

const both =
  /\bboth (?:of )?(?:the |its |my )?(?:original |spare )?(keys|fobs|key fobs|charge cables|charging cables|charging cords|charging leads|charge leads)\b/g;

export const bothOfThem: CountingRule = {
  name: "both of them",
  find: (counted) =>
    phrasesIn(counted, both).map(({ first, end, groups }) => ({
      component: "vehicle",
      part: /key|fob/.test(groups[0] ?? "") ? "key" : "charge cable",
      value: 2,
      circumstance: null,
      first,
      end,
      at: end - 1,
    })),
  examples: [
    {
      says: "And it comes with both charging cords, the one for the wall socket and the one for the big outlet.",
      zone: "opening",
      gives: { component: "vehicle", part: "charge cable", value: 2, circumstance: null },
    },
    { says: "Both keys are here.", zone: "cabin", gives: { component: "vehicle", part: "key", value: 2, circumstance: null } },
  ],
  quiet: [{ says: "Both doors are straight.", zone: "driver-side" }],
};

const ordinals: Readonly<Record<string, number>> = { first: 1, second: 2, third: 3, fourth: 4, fifth: 5, sixth: 6 };

/** Who is that owner: "the second owner had it painted" names a person, "she'd be the second" counts up to her. */
const countedUpTo =
  /\b(?:i'm|i am|i'd be|i'll be|she's|he's|they're|she is|he is|she was|he was|they were|she'd|he'd|they'd|which makes|makes|that makes|making|would be|would have been|have been|'d be|am|is|was) (?:be |have been |him |her |them |me |you )?(?:its|the|only its|only the) (second|third|fourth|fifth|sixth) (?:owner|keeper|name|(?:person|lady|fella|fellow|guy|man) to (?:own|have))\b/g;

export const ownersCountedUpTo: CountingRule = {
  name: "owners counted up to one",
  find: (counted) =>
    phrasesIn(counted, countedUpTo).flatMap(({ first, end, groups }): CountFound[] => {
      const value = ordinals[groups[0] ?? ""];
      const after = wordsOf(counted.speech, end, end + 4);
      const named = /\bname\b/.test(wordsOf(counted.speech, end - 1, end));
      if (value === undefined || (named && !/^on (?:it|the|this)\b/.test(after))) return [];
      return [{ component: "vehicle", part: "owner", value, circumstance: null, first, end, at: end - 2 }];
    }),
  examples: [
    {
      says: "before her there's a rental outfit so she'd have been the second name on it",
      zone: "documents",
      gives: { component: "vehicle", part: "owner", value: 2, circumstance: null },
    },
    {
      says: "so that makes him the third owner",
      zone: "documents",
      gives: { component: "vehicle", part: "owner", value: 3, circumstance: null },
    },
  ],
  quiet: [
    { says: "the second owner had it painted", zone: "documents" },
    { says: "she was the second lady I asked", zone: "opening" },
  ],
};
