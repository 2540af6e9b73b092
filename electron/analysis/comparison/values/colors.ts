/**
 * Colors as a viewer may call them: each name with every base hue that an honest person could use for it. Two names disagree only where
 * they share no hue, so "oxblood" agrees with "red" and with "maroon", and "charcoal" with "gray" and with "black".
 */
const hues = {
  red: ["red"],
  blue: ["blue"],
  green: ["green"],
  black: ["black"],
  white: ["white"],
  gray: ["gray"],
  grey: ["gray"],
  silver: ["gray", "silver"],
  gold: ["gold", "yellow", "tan"],
  yellow: ["yellow"],
  orange: ["orange"],
  brown: ["brown"],
  purple: ["purple"],
  pink: ["pink"],
  maroon: ["red", "maroon", "brown"],
  burgundy: ["red", "maroon"],
  oxblood: ["red", "maroon"],
  claret: ["red", "maroon"],
  wine: ["red", "maroon"],
  crimson: ["red"],
  scarlet: ["red"],
  cherry: ["red"],
  rust: ["orange", "brown", "red"],
  copper: ["orange", "brown", "copper"],
  bronze: ["brown", "gold", "copper"],
  cream: ["white", "cream", "tan", "yellow"],
  ivory: ["white", "cream"],
  pearl: ["white", "cream", "gray"],
  magnolia: ["white", "cream"],
  tan: ["tan", "brown"],
  saddle: ["tan", "brown"],
  cognac: ["tan", "brown"],
  caramel: ["tan", "brown"],
  camel: ["tan", "brown"],
  biscuit: ["tan", "cream"],
  beige: ["tan", "cream"],
  fawn: ["tan", "cream"],
  sand: ["tan", "cream"],
  parchment: ["tan", "cream", "white"],
  champagne: ["gold", "tan", "silver"],
  chocolate: ["brown"],
  navy: ["blue", "navy"],
  turquoise: ["blue", "green", "turquoise"],
  teal: ["blue", "green", "turquoise"],
  aqua: ["blue", "green", "turquoise"],
  charcoal: ["gray", "black"],
  graphite: ["gray", "black"],
  anthracite: ["gray", "black"],
  slate: ["gray", "blue"],
  gunmetal: ["gray"],
  pewter: ["gray", "silver"],
  olive: ["green", "brown"],
  lime: ["green"],
  plum: ["purple", "maroon"],
  violet: ["purple"],
  natural: ["tan", "brown"],
} as const satisfies Record<string, readonly string[]>;

const shades = /^(dark|light|deep|bright|pale|mid|medium|metallic|satin|gloss|matte?|soft|two|tone)$/;

/** The hues a spoken color may mean; undefined where it names none that is known. "Willow green" is a green, "gray over red" is both. */
export function huesOf(color: string): ReadonlySet<string> | undefined {
  const found = new Set<string>();
  for (const word of color.toLowerCase().split(/[^a-z]+/)) {
    if (shades.test(word)) continue;
    for (const hue of Object.hasOwn(hues, word) ? hues[word as keyof typeof hues] : []) found.add(hue);
  }
  return found.size > 0 ? found : undefined;
}
