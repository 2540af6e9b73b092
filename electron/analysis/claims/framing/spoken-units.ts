import type { Speech } from "../../model.ts";

/**
 * A word as phrase tables see it. One token may give two ("it's": "it" and "'s"; "re-chromed": "re" and "chromed"), so that a phrase is
 * written once for every contraction and hyphen a recogniser may or may not write.
 */
export interface SpokenUnit {
  readonly word: string;
  /** Index into `Speech.tokens`. */
  readonly token: number;
  /** True where a sentence ends after this unit: sentence punctuation, or a joint found by the transcript pass. */
  readonly endsSentence: boolean;
  /** True where any punctuation follows. */
  readonly endsPhrase: boolean;
}

/** Contractions a recogniser writes without the apostrophe, and words it spells several ways. */
const spokenForms: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    aint: ["is", "n't"],
    "ain't": ["is", "n't"],
    isnt: ["is", "n't"],
    arent: ["are", "n't"],
    wasnt: ["was", "n't"],
    werent: ["were", "n't"],
    dont: ["do", "n't"],
    doesnt: ["does", "n't"],
    didnt: ["did", "n't"],
    hasnt: ["has", "n't"],
    havent: ["have", "n't"],
    hadnt: ["had", "n't"],
    cant: ["ca", "n't"],
    wont: ["wo", "n't"],
    couldnt: ["could", "n't"],
    wouldnt: ["would", "n't"],
    shouldnt: ["should", "n't"],
    cannot: ["ca", "n't"],
    its: ["it", "'s"],
    thats: ["that", "'s"],
    theres: ["there", "'s"],
    heres: ["here", "'s"],
    whats: ["what", "'s"],
    hes: ["he", "'s"],
    shes: ["she", "'s"],
    theyre: ["they", "'re"],
    youre: ["you", "'re"],
    ive: ["i", "'ve"],
    theyve: ["they", "'ve"],
    youve: ["you", "'ve"],
    im: ["i", "'m"],
    youd: ["you", "'d"],
    theyd: ["they", "'d"],
    em: ["them"],
    "'em": ["them"],
    ok: ["okay"],
    "o.k": ["okay"],
    cause: ["because"],
    "'cause": ["because"],
    cos: ["because"],
    coz: ["because"],
    "'cos": ["because"],
    "a/c": ["ac"],
    "60/40": ["sixty", "forty"],
    tyre: ["tire"],
    tyres: ["tires"],
    grey: ["gray"],
    aluminium: ["aluminum"],
    colour: ["color"],
    coloured: ["colored"],
    kerb: ["curb"],
    kerbed: ["curbed"],
    kerbing: ["curbing"],
    fibreglass: ["fiberglass"],
    carburettor: ["carburetor"],
    carburettors: ["carburetors"],
    mould: ["mold"],
    moulding: ["molding"],
    moulded: ["molded"],
    centre: ["center"],
    breaks: ["brakes"],
    disk: ["disc"],
    disks: ["discs"],
  }),
);

const contraction = /^(.+?)('s|'re|'ve|'d|'ll|'m|n't)$/;

function unitsOfWord(word: string): readonly string[] {
  const form = spokenForms.get(word);
  if (form) return form;
  // An oil grade is one word however it is written: "0W-20", "0w20".
  if (/^\d{1,2}w-\d{2}$/.test(word)) return [word.replace("-", "")];
  if (word.includes("-") && /[a-z]-[a-z]/.test(word)) return word.split("-").filter(Boolean).flatMap(unitsOfWord);
  const split = contraction.exec(word);
  if (!split) return [word];
  return [...(spokenForms.get(split[1]!) ?? [split[1]!]), split[2]!];
}

const unitsBySpeech = new WeakMap<Speech, readonly SpokenUnit[]>();

/** All units of the speech in order; linear in the number of tokens. */
export function spokenUnits(speech: Speech): readonly SpokenUnit[] {
  const known = unitsBySpeech.get(speech);
  if (known) return known;
  const units = cutUnits(speech);
  unitsBySpeech.set(speech, units);
  return units;
}

function cutUnits(speech: Speech): readonly SpokenUnit[] {
  const sentenceEnds = new Set(speech.sentences.map((sentence) => sentence.end - 1));
  const units: SpokenUnit[] = [];
  for (const token of speech.tokens) {
    const words = unitsOfWord(token.word);
    words.forEach((word, place) => {
      const last = place === words.length - 1;
      units.push({
        word,
        token: token.index,
        endsSentence: last && (sentenceEnds.has(token.index) || /[.!?]/.test(token.after)),
        endsPhrase: last && /[,;:.!?…—)]/.test(token.after),
      });
    });
  }
  return units;
}
