/**
 * The 17-character vehicle identification number. Transliteration, weights and check digit: 49 CFR 565.15(c) Tables III to VI
 * (restated at http://www.automobilesoftware.com/wiki/index.php?n=VinData.9thCheckDigit). The check digit is a North American rule;
 * elsewhere position 9 may hold anything, so a failed check on an imported vehicle is a warning and no error.
 */

const transliteration: Readonly<Record<string, number>> = {
  A: 1,
  B: 2,
  C: 3,
  D: 4,
  E: 5,
  F: 6,
  G: 7,
  H: 8,
  J: 1,
  K: 2,
  L: 3,
  M: 4,
  N: 5,
  P: 7,
  R: 9,
  S: 2,
  T: 3,
  U: 4,
  V: 5,
  W: 6,
  X: 7,
  Y: 8,
  Z: 9,
};
const weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/** Position 10, in order from 1980, again from 2010: never I, O, Q, U, Z or 0 (http://www.autocalculator.org/VIN/VIN-Year-CODE.aspx). */
const yearCodes = "ABCDEFGHJKLMNPRSTVWXY123456789";

export interface VinCheck {
  readonly vin: string;
  /** Why it is no 17-character number at all; null where its form is right. */
  readonly formFault: string | null;
  /** What position 9 holds and what it should hold; null where the form is wrong. */
  readonly checkDigit: { readonly found: string; readonly expected: string; readonly sum: number; readonly matches: boolean } | null;
  /** Model years that position 10 may mean, likeliest first. Position 7 decides between the 30-year cycles for cars and light trucks. */
  readonly modelYears: readonly number[];
  /** True for the United States, Canada and Mexico (first character 1 to 5), where the check digit is required. */
  readonly northAmerican: boolean;
}

/** Checks a number of any length; lower case is read as upper case. Serial numbers from before 1981 are shorter and normal: see `formFault`. */
export function checkVin(text: string): VinCheck {
  const vin = text.toUpperCase();
  const formFault = formFaultOf(vin);
  if (formFault !== null) return { vin, formFault, checkDigit: null, modelYears: [], northAmerican: false };
  const sum = weightedSum(vin);
  const remainder = sum % 11;
  const expected = remainder === 10 ? "X" : String(remainder);
  const found = vin[8]!;
  return {
    vin,
    formFault,
    checkDigit: { found, expected, sum, matches: found === expected },
    modelYears: modelYearsOf(vin),
    northAmerican: /^[1-5]/.test(vin),
  };
}

/** Letters I, O and Q are impossible: they were 1, 0 and 0 misread. */
export function mendVinLetters(text: string): string {
  return text.toUpperCase().replaceAll("I", "1").replace(/[OQ]/g, "0");
}

function formFaultOf(vin: string): string | null {
  if (vin.length !== 17) return `It has ${vin.length} characters; a number of 1981 or later has 17.`;
  const wrong = /[^A-HJ-NPR-Z0-9]/.exec(vin);
  if (wrong) return `Character ${wrong.index + 1} is "${wrong[0]}"; I, O, Q and signs never appear.`;
  if (/^(.)\1*$/.test(vin) && vin[0] === "0") return "It is all zeros, a placeholder.";
  return null;
}

function weightedSum(vin: string): number {
  return [...vin].reduce((sum, character, position) => sum + (transliteration[character] ?? Number(character)) * weights[position]!, 0);
}

function modelYearsOf(vin: string): readonly number[] {
  const code = yearCodes.indexOf(vin[9]!);
  if (code < 0) return [];
  const earlier = 1980 + code;
  return /[A-Z]/.test(vin[6]!) ? [earlier + 30, earlier] : [earlier, earlier + 30];
}
