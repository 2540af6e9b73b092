/** Kinds of damage, so that "no rust" is not held against a scratch. A word may fall under one kind only. */
const damageKinds = {
  rust: /\b(rust\w*|corro\w*|rot\w*|perforat\w*|scab\w*|blister\w*|bubbl\w*)\b/,
  dent: /\b(dents?|dings?|crease[ds]?|dimple[ds]?)\b/,
  crack: /\b(crack\w*|split\w*|star(red)?|pit|pits|pitted|pitting)\b/,
  scratch: /\b(scratch\w*|chip\w*|scuff\w*|rash|kerb\w*|curb\w*|scrape\w*|rub\w*|nick\w*|touch up)\b/,
  tear: /\b(tears?|torn|rips?|ripped|worn|wear|holes?|frayed)\b/,
  leak: /\b(leak\w*|drip\w*|seep\w*|weep\w*|dry)\b/,
  repair: /\b(patch\w*|weld\w*|cut|let in|repair\w*|filler|bondo|plated)\b/,
  stain: /\b(stain\w*|discolou?r\w*|fad(e|ed|ing)|dirty)\b/,
  play: /\b(play|loose|knock\w*|clunk\w*|rattl\w*|noisy|noise)\b/,
} as const satisfies Record<string, RegExp>;

/** The kinds of damage that the words speak of, whether found or denied. */
export function damageSpokenOf(quote: string): ReadonlySet<string> {
  const text = quote.toLowerCase();
  return new Set(Object.entries(damageKinds).flatMap(([kind, words]) => (words.test(text) ? [kind] : [])));
}

const denial =
  /\b(no|not a|not one|not any|never|none|nothing|without|zero|hasn't got|isn't a|ain't a|ain't got|don't have|free of|neither)\b/;
const faultless =
  /\b(perfect|flawless|faultless|immaculate|spotless|mint|unmarked|unmarked|pristine|like new|as new|clean as a whistle|not a mark|not a thing|every (bit|inch|panel)|completely|100 percent|a hundred percent)\b/;

/** How strongly a claim of good condition rules out damage. */
export type Faultlessness =
  /** No damage of any kind: "perfect", "not a mark". */
  | { readonly strength: "faultless" }
  /** These kinds of damage are denied: "never been patched". */
  | { readonly strength: "denied"; readonly kinds: ReadonlySet<string> }
  /** Praise: "nice", "in good shape". Says little against a small fault. */
  | { readonly strength: "praise" };

export function faultlessnessOf(quote: string): Faultlessness {
  const text = quote.toLowerCase().replaceAll("’", "'");
  if (faultless.test(text)) return { strength: "faultless" };
  const kinds = damageSpokenOf(text);
  if (!denial.test(text)) return { strength: "praise" };
  return kinds.size > 0 ? { strength: "denied", kinds } : { strength: "faultless" };
}

/**
 * Whether such a good claim cannot hold beside these faults.
 * @param faults kinds of damage found
 * @param someUnnamed whether a fault was found whose kind the words do not tell
 */
export function rulesOutAny(good: Faultlessness, faults: ReadonlySet<string>, someUnnamed: boolean): boolean {
  switch (good.strength) {
    case "praise":
      return false;
    case "faultless":
      return true;
    case "denied":
      return someUnnamed || [...good.kinds].some((kind) => faults.has(kind));
  }
}
