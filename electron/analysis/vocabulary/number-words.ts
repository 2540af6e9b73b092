/** English number words as walkarounds use them. Every table maps a lower-case word to its number. */

export const onesWords = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9 } as const satisfies Record<
  string,
  number
>;

export const teenWords = {
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
} as const satisfies Record<string, number>;

export const tensWords = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
} as const satisfies Record<string, number>;

export const zeroWords: readonly string[] = ["zero", "nought", "naught"];

/** Said for the digit 0, and also an interjection or a letter: a number only between digits. */
export const zeroHomophones: readonly string[] = ["oh", "o", "owe"];

/** Function words that a recogniser writes for a digit. A number only where the neighbours complete one. */
export const digitHomophones = { to: 2, too: 2, for: 4, fore: 4, ate: 8, won: 1 } as const satisfies Record<string, number>;

export const ordinalWords = {
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
  tenth: 10,
  eleventh: 11,
  twelfth: 12,
  thirteenth: 13,
  fourteenth: 14,
  fifteenth: 15,
  sixteenth: 16,
  seventeenth: 17,
  eighteenth: 18,
  nineteenth: 19,
  twentieth: 20,
  thirtieth: 30,
  fortieth: 40,
  fiftieth: 50,
  sixtieth: 60,
  hundredth: 100,
  thousandth: 1000,
} as const satisfies Record<string, number>;

export const monthWords = {
  january: 1,
  jan: 1,
  february: 2,
  feb: 2,
  march: 3,
  april: 4,
  may: 5,
  june: 6,
  july: 7,
  august: 8,
  aug: 8,
  september: 9,
  sept: 9,
  october: 10,
  oct: 10,
  november: 11,
  nov: 11,
  december: 12,
  dec: 12,
} as const satisfies Record<string, number>;

/** Letters as a recogniser writes them when they are spelled out (common practice). Single letters stand for themselves. */
export const letterWords = {
  ay: "A",
  bee: "B",
  be: "B",
  see: "C",
  sea: "C",
  cee: "C",
  dee: "D",
  ee: "E",
  ef: "F",
  eff: "F",
  gee: "G",
  jee: "G",
  aitch: "H",
  jay: "J",
  kay: "K",
  el: "L",
  ell: "L",
  em: "M",
  en: "N",
  pee: "P",
  are: "R",
  ar: "R",
  our: "R",
  ess: "S",
  tee: "T",
  tea: "T",
  you: "U",
  vee: "V",
  ex: "X",
  why: "Y",
  zee: "Z",
  zed: "Z",
} as const satisfies Record<string, string>;

/** ICAO spelling words, the older police and forces words beside them (common practice in reading a VIN aloud). */
export const spellingWords = {
  alpha: "A",
  alfa: "A",
  adam: "A",
  apple: "A",
  bravo: "B",
  boy: "B",
  baker: "B",
  charlie: "C",
  charles: "C",
  cat: "C",
  delta: "D",
  david: "D",
  dog: "D",
  echo: "E",
  edward: "E",
  easy: "E",
  foxtrot: "F",
  frank: "F",
  fox: "F",
  golf: "G",
  george: "G",
  hotel: "H",
  henry: "H",
  juliet: "J",
  juliett: "J",
  john: "J",
  kilo: "K",
  king: "K",
  lima: "L",
  lincoln: "L",
  mike: "M",
  mary: "M",
  november: "N",
  nora: "N",
  nancy: "N",
  papa: "P",
  paul: "P",
  peter: "P",
  romeo: "R",
  robert: "R",
  sierra: "S",
  sam: "S",
  tango: "T",
  tom: "T",
  uniform: "U",
  union: "U",
  victor: "V",
  whiskey: "W",
  whisky: "W",
  william: "W",
  xray: "X",
  "x-ray": "X",
  yankee: "Y",
  young: "Y",
  zulu: "Z",
  zebra: "Z",
} as const satisfies Record<string, string>;

/**
 * Things counted in single digits: in "three ninety four speed" the four belongs to the speed and not to the ninety, in "two point four
 * four cylinder" to the cylinders.
 */
export const singleDigitCounts: readonly string[] =
  "speed speeds door doors barrel barrels bolt bolts cylinder cylinders v pack row lug lugs stud studs wheel owner owners keeper keepers key keys fob fobs belts seats seater post".split(
    " ",
  );

/** The number a word stands for in one of the tables above, or undefined. Guards against names every object has ("constructor"). */
export function lookUp<T>(table: Readonly<Record<string, T>>, word: string): T | undefined {
  return Object.hasOwn(table, word) ? table[word] : undefined;
}
