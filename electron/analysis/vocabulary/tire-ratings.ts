/**
 * Speed symbols to km/h (https://tyrepowergateshead.com.au/tyres/load-index, https://bestdrive.no/dekk/hastighets-og_lasteindeks.html).
 * H stands between U and V: the letters are not in order. Letters below L are for slower vehicles than those told of here.
 */
export const speedSymbols: Readonly<Record<string, number>> = {
  L: 120,
  M: 130,
  N: 140,
  P: 150,
  Q: 160,
  R: 170,
  S: 180,
  T: 190,
  U: 200,
  H: 210,
  V: 240,
  W: 270,
  Y: 300,
};

/** Load index to kilograms (bestdrive page; the rows that were read in published tables). */
export const loadKilograms: Readonly<Record<number, number>> = {
  71: 345,
  75: 387,
  80: 450,
  82: 475,
  84: 500,
  85: 515,
  88: 560,
  90: 600,
  91: 615,
  92: 630,
  94: 670,
  95: 690,
  98: 750,
  100: 800,
  104: 900,
  108: 1000,
  110: 1060,
  112: 1120,
  115: 1215,
  116: 1250,
  118: 1320,
  119: 1360,
  120: 1400,
  121: 1450,
};

/** Load index and speed symbol of a service description such as "95H" or "120/116R"; null for anything else. */
export function readServiceDescription(text: string): { readonly loadIndex: number; readonly symbol: string } | null {
  const found = /^(\d{2,3})(?:\/\d{2,3})?([A-Z])$/.exec(text);
  return found ? { loadIndex: Number(found[1]), symbol: found[2]! } : null;
}
