import type { Claim } from "../../../../shared-types/index.ts";

/** Kinds of damage, so that "no rust" is not held against a scratch. `named`: what a claim's circumstance calls it. */
const damageKinds = {
  rust: { named: ["rust"], words: /\b(rust\w*|corro\w*|rot\w*|perforat\w*|scab\w*|blister\w*|bubbl\w*|lifting)\b/ },
  dent: { named: ["dents", "dent"], words: /\b(dents?|dings?|crease[ds]?|dimple[ds]?|bent|straight)\b/ },
  crack: { named: ["cracks", "crack"], words: /\b(crack\w*|split\w*|star(red)?|pit|pits|pitted|pitting)\b/ },
  mark: {
    named: ["marks", "mark", "curb rash"],
    words: /\b(scratch\w*|chip\w*|scuff\w*|rash|kerb\w*|curb\w*|scrape\w*|rub\w*|nick\w*|touch up)\b/,
  },
  tear: { named: ["tears", "tear"], words: /\b(tears?|torn|rips?|ripped|worn|wear|holes?|frayed)\b/ },
  leak: { named: ["leaks", "leak"], words: /\b(leak\w*|drip\w*|seep\w*|weep\w*|dry)\b/ },
  repair: { named: ["repairs", "repair"], words: /\b(patch\w*|weld\w*|cut|let in|repair\w*|filler|bondo|plated|hit|wreck\w*|accident)\b/ },
  stain: { named: ["stains", "stain"], words: /\b(stain\w*|discolou?r\w*|fad(e|ed|ing)|dirty)\b/ },
  play: { named: ["play"], words: /\b(play|loose|knock\w*|clunk\w*|rattl\w*|noisy|noise)\b/ },
  /** Metal that is gone, whatever took it. */
  hole: {
    named: ["holes", "hole", "rust through"],
    words:
      /\b(holes?|(rust|rot)\w*( (right|clean|clear))? (through|out)|perforat\w*|soft|thin|spongy|flex(es|ing)?|gives? (way|a bit)|(finger|screwdriver|pick|hand|fist)( \w+){0,3} (through|into?|in)|(goes|went|going) (straight |right |clean )?(in|through)|day ?light|(see|that'?s)( (right|straight|clear|the))*( my)? (sky|ground|road|grass|pavement|driveway|shoes?|boots?|feet)|flak(y|ing|es?)|crunch\w*|crumbl\w*|swiss cheese)\b/,
  },
  wear: { named: ["wear"], words: /\b(better days|worse for wear|dry.?rot\w*|perish\w*|shot|knackered|bald|last legs)\b/ },
  noise: { named: ["noise"], words: /\b(misfir\w*|lifter|tapp?ets?|tappy)\b/ },
  haze: {
    named: ["haze", "clouding"],
    words: /\b(milky|cloud\w*|haz(e|y|ed|ing)|fogg\w*|yellow(ed|ing)|craz(ed|ing)|delaminat\w*|clear|see (right )?through)\b/,
  },
  smoke: { named: ["smoke"], words: /\bsmok(e|es|ed|ing|y)\b|\bpuffs? of\b/ },
  sag: {
    named: ["sagging", "sag"],
    words: /\b(sag\w*|droop\w*|hang(s|ing)|(come|coming|came) (loose|down|away|off)|falling|pull(ed|ing) (away|down)|baggy)\b/,
  },
  fault: {
    named: ["fault", "not working", "function"],
    words:
      /\b(works?|working|worked|inop\w*|inoperative|dead|seized|stuck|sticks|sticking|intermittent\w*|re-?gas\w*|recharg\w*|function\w*|operat\w*|(not|n't|isn'?t|ain'?t)( \w+){0,2} (cold|cool|hot|warm)|blows? (warm|hot|lukewarm)|give it a (hip|shoulder|shove|kick)|(won'?t|doesn'?t|will not|does not) (\w+ )?(shut|close|open|latch|lock|stay|start|come|go|roll|wind))\b/,
  },
} as const satisfies Record<string, { readonly named: readonly string[]; readonly words: RegExp }>;

/** The kinds of damage that a claim speaks of, whether it finds or denies them: by its circumstance, else by its words. */
export function damageSpokenOf(claim: Pick<Claim, "quote" | "circumstance">): ReadonlySet<string> {
  const entries = Object.entries(damageKinds);
  const circumstance = claim.circumstance?.toLowerCase();
  const named = entries.find(([, { named }]) => (named as readonly string[]).includes(circumstance ?? ""));
  const text = claim.quote.toLowerCase();
  const behindFiller = fillerWords.test(text) ? ["repair", "rust"] : [];
  // What eats metal is heard in the words whatever the fault was filed under.
  const eaten = (["rust", "hole"] as const).filter((kind) => damageKinds[kind].words.test(text));
  if (named) return alsoCalled(new Set([named[0], ...behindFiller, ...eaten]), text);
  return alsoCalled(new Set([...entries.flatMap(([kind, { words }]) => (words.test(text) ? [kind] : [])), ...behindFiller]), text);
}

/** A chip in glass is the start of its crack, and a mark on cloth is a stain: who denies one denies the other. Common practice. */
function alsoCalled(kinds: Set<string>, text: string): ReadonlySet<string> {
  if (paneWords.test(text) && (kinds.has("crack") || kinds.has("mark"))) return new Set([...kinds, "crack", "mark"]);
  if (clothWords.test(text) && /\bmarks?\b/.test(text)) return new Set([...kinds, "stain"]);
  // What touched down under a vehicle is scraped and dented at once.
  if (trayWords.test(text) && (kinds.has("dent") || kinds.has("mark"))) return new Set([...kinds, "dent", "mark"]);
  return kinds;
}

const trayWords = /\b(battery|drive battery|traction battery) (tray|box|case|casing|pack|enclosure|housing)\b/;
const paneWords = /\b(wind ?(screen|shield)|screen|glass|pane)\b/;
const clothWords = /\b(head ?lin(er|ing)|roof lining|headcloth|carpets?|upholstery|cloth)\b/;

/** What filler covers is rust, whoever called it clean. Common practice. */
const fillerWords = /\b(filler|filled|bondo|mud(ded)?|screen and mud|p38|lead(ed)? (in|over))\b/;

const denial = /\b(no|not a|not one|not any|never|none|nothing|without|zero|free of|neither)\b|n't\b|\bfree\b/;
const faultless =
  /\b(perfect|flawless|faultless|immaculate|spotless|mint|unmarked|pristine|like new|as new|clean as a|not a mark|not a thing|a thing (on|wrong)|every (bit|inch|panel)|a hundred percent|like the day it|show quality|concours)\b/;
/** Sayings that rule out one kind of damage and say nothing of the others. */
const partialSayings = /\b(straight|dry|solid|sound|tight) as\b|\bbone dry\b/;

/** Plain praise that still rules out the damage that is its very opposite: what is "solid" has no holes. Common practice. */
export const impliedDenials: readonly { readonly words: RegExp; readonly kinds: readonly string[]; readonly example: string }[] = [
  { words: /\b(solid|sound|like a tank|thick)\b/, kinds: ["hole"], example: "the floors are solid" },
  { words: /\b(tight|taut)\b/, kinds: ["sag", "play"], example: "headliner's up tight" },
  {
    words:
      /\b(slides?|glides?|opens?|shuts?|closes?|rolls?) (\S+ )?(like|lovely|easy|easily|nice|nicely|well|smooth|smoothly|perfect|perfectly|with (one|a) finger)\b/,
    kinds: ["fault"],
    example: "the door slides like it's on glass",
  },
  { words: /\b(clean|spotless)\b/, kinds: ["stain"], example: "the headliner's clean" },
  { words: /\b(dry|no drips?|no leaks?)\b/, kinds: ["leak"], example: "the engine's dry" },
  {
    words: /\b(works?|working|functions?|operates?|ice cold|blows (ice )?cold|cold as|does (just )?what it should)\b/,
    kinds: ["fault"],
    example: "the air conditioning works",
  },
  {
    words: /\b(clear|see (right |straight )?through|read [\w' ]{0,20}through)\b/,
    kinds: ["haze"],
    example: "you could read a paper through that",
  },
];

function impliedKinds(text: string): ReadonlySet<string> {
  return new Set(impliedDenials.flatMap(({ words, kinds }) => (words.test(text) ? kinds : [])));
}

function praiseOf(text: string): Faultlessness {
  const kinds = impliedKinds(text);
  return kinds.size > 0 ? { strength: "implied", kinds } : { strength: "praise" };
}

/** How strongly a claim of good condition rules out damage. */
export type Faultlessness =
  /** No damage of any kind: "perfect", "not a mark". */
  | { readonly strength: "faultless" }
  /** These kinds of damage are denied: "never been patched". */
  | { readonly strength: "denied"; readonly kinds: ReadonlySet<string> }
  /** Praise that rules out its opposite, where the fault is named as such: "solid" against a hole. */
  | { readonly strength: "implied"; readonly kinds: ReadonlySet<string> }
  /** Praise: "nice", "in good shape". Says little against a small fault. */
  | { readonly strength: "praise" };

export function faultlessnessOf(claim: Pick<Claim, "quote" | "circumstance">): Faultlessness {
  const text = claim.quote.toLowerCase().replaceAll("’", "'");
  if (claim.circumstance === "praise") return praiseOf(text);
  const kinds = damageSpokenOf(claim);
  if (claim.circumstance !== null && kinds.size > 0) return { strength: "denied", kinds };
  if (faultless.test(text)) return { strength: "faultless" };
  if (partialSayings.test(text)) {
    const denied = new Set([...kinds, ...(/\b(solid|sound) as\b/.test(text) ? ["rust"] : [])]);
    return denied.size > 0 ? { strength: "denied", kinds: denied } : praiseOf(text);
  }
  if (!denial.test(text)) return praiseOf(text);
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
    case "implied":
      return [...good.kinds].some((kind) => faults.has(kind));
    case "denied":
      return someUnnamed || [...good.kinds].some((kind) => faults.has(kind));
  }
}
