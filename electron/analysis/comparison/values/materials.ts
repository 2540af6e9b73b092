/**
 * Materials with the wider ones they are a kind of: "die-cast" says nothing against "zinc", nor "stainless" against "steel".
 * Two materials disagree where neither is a kind of the other. Common practice of the trade.
 */
const kindOf = {
  metal: [],
  steel: ["metal"],
  stainless: ["steel"],
  "mild steel": ["steel"],
  aluminized: ["mild steel"],
  galvanized: ["mild steel"],
  "styled steel": ["steel"],
  aluminum: ["metal", "alloy"],
  alloy: ["metal"],
  magnesium: ["metal", "alloy"],
  iron: ["metal"],
  zinc: ["metal"],
  "die-cast": ["metal", "zinc", "aluminum"],
  brass: ["metal"],
  copper: ["metal"],
  "copper nickel": ["metal", "copper"],
  chrome: ["metal", "steel", "plastic", "brass", "aluminum"],
  plastic: [],
  fiberglass: ["plastic"],
  "carbon fiber": [],
  wood: [],
  walnut: ["wood"],
  oak: ["wood"],
  maple: ["wood"],
  pine: ["wood"],
  mahogany: ["wood"],
  ash: ["wood"],
  elm: ["wood"],
  birch: ["wood"],
  teak: ["wood"],
  cherry: ["wood"],
  rosewood: ["wood"],
  zebrano: ["wood"],
  bamboo: ["wood"],
  eucalyptus: ["wood"],
  poplar: ["wood"],
  beech: ["wood"],
  // A burl is a figure of several woods; walnut is the usual one.
  burl: ["wood", "walnut"],
  leather: [],
  suede: ["leather"],
  vinyl: ["plastic"],
  cloth: [],
  velour: ["cloth"],
  mohair: ["cloth", "wool"],
  corduroy: ["cloth"],
  canvas: ["cloth"],
  nylon: ["cloth", "plastic"],
  wool: ["cloth"],
  wilton: ["wool"],
  rubber: [],
  glass: [],
} as const satisfies Record<string, readonly string[]>;

type Material = keyof typeof kindOf;

/** Spoken names, American and British, and what they mean here. Longer ones first: "carbon fiber" before "carbon". */
const spokenMaterials: readonly (readonly [RegExp, Material])[] = [
  [/\bstyled steels?\b/, "styled steel"],
  [/\bstainless\b/, "stainless"],
  [/\b(mild|plain|black|ordinary) steel\b/, "mild steel"],
  [/\balumini[sz]ed\b/, "aluminized"],
  [/\bgalvani[sz]ed\b/, "galvanized"],
  [/\b(fib(er|re) ?glass|gel ?coat|grp|glass ?fib(er|re))\b/, "fiberglass"],
  [/\bcarbon( fib(er|re))?\b/, "carbon fiber"],
  [/\bcopper nickel\b/, "copper nickel"],
  [/\bdie ?-?cast\b/, "die-cast"],
  [/\b(aluminum|aluminium)\b/, "aluminum"],
  [/\balloys?\b/, "alloy"],
  [/\bmagnesium\b/, "magnesium"],
  [/\b(cast )?iron\b/, "iron"],
  [/\bsteel\b/, "steel"],
  [/\b(zinc|pot metal)\b/, "zinc"],
  [/\bbrass\b/, "brass"],
  [/\bcopper\b/, "copper"],
  [/\bchromed?\b/, "chrome"],
  [/\b(vinyl|leatherette|pleather|faux leather|synthetic leather)\b/, "vinyl"],
  [/\b(suede)\b/, "suede"],
  [/\b(leather|hide|hides)\b/, "leather"],
  [/\bvelou?r\b/, "velour"],
  [/\bmohair\b/, "mohair"],
  [/\bcorduroy\b/, "corduroy"],
  [/\bcanvas\b/, "canvas"],
  [/\bnylon\b/, "nylon"],
  [/\bwilton\b/, "wilton"],
  [/\bwool\b/, "wool"],
  [/\b(broad ?cloth|cloth|fabric|tweed|bedford cord|whip ?cord|houndstooth|tartan|plaid|moquette)\b/, "cloth"],
  [/\bwalnut\b/, "walnut"],
  [/\boak\b/, "oak"],
  [/\bmaple\b/, "maple"],
  [/\bpine\b/, "pine"],
  [/\bmahogany\b/, "mahogany"],
  [/\bash( wood)?\b/, "ash"],
  [/\belm\b/, "elm"],
  [/\bbirch\b/, "birch"],
  [/\bteak\b/, "teak"],
  [/\bcherry ?-?wood\b/, "cherry"],
  [/\brosewood\b/, "rosewood"],
  [/\bzebrano\b/, "zebrano"],
  [/\bbamboo\b/, "bamboo"],
  [/\beucalyptus\b/, "eucalyptus"],
  [/\bpoplar\b/, "poplar"],
  [/\bbeech\b/, "beech"],
  [/\b(burl|burr)( wood)?\b/, "burl"],
  [/\bwood(en)?\b/, "wood"],
  [/\bplastic\b/, "plastic"],
  [/\brubber\b/, "rubber"],
  [/\bglass\b/, "glass"],
  [/\bmetal\b/, "metal"],
];

/** The material a spoken value means; undefined where it names none that is known. */
export function materialOf(spoken: string): string | undefined {
  const text = spoken.toLowerCase();
  return spokenMaterials.find(([words]) => words.test(text))?.[1];
}

/** Whether one is the other or a kind of it. */
export function materialsAgree(first: string, second: string): boolean {
  return first === second || isKindOf(first, second) || isKindOf(second, first);
}

function isKindOf(narrow: string, wide: string): boolean {
  if (!Object.hasOwn(kindOf, narrow)) return false;
  return kindOf[narrow as Material].some((parent) => parent === wide || isKindOf(parent, wide));
}
