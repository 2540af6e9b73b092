import type { UnitName } from "../../shared-types/index.ts";

/** Factors to a common unit, per quantity. Sources: 1 in = 25.4 mm and 1 mi = 1.609344 km exactly; the rest NIST SP 811, appendix B.8. */
const quantities: Record<string, number>[] = [
  { in: 25.4, mm: 1, cm: 10, ft: 304.8, "32nds": 25.4 / 32 },
  { "cu in": 16.387064, L: 1000, cc: 1 },
  { hp: 745.69987, kW: 1000, PS: 735.49875 },
  { "lb-ft": 1.355818, N·m: 1 },
  { mi: 1.609344, km: 1 },
  { psi: 6.894757, bar: 100 },
];

/** A value in one spelling: spaces, case, P and LT prefixes, ZR and dashes do not make two sizes of one. */
export function canonicalValue(value: number | string): string {
  return String(value)
    .toLowerCase()
    .replace(/^(?:19|20)(\d\d)-w(\d\d)$/, "$2$1")
    .replaceAll(/[\s,]/g, "")
    .replace(/^p(?=\d)/, "")
    .replace(/^lt(?=\d)/, "")
    .replace(/^(\d{3}\/\d{2})z?[r-](\d)/, "$1r$2")
    .replace(/^([a-n])r?(\d{2})-?(\d{2})$/, "$1$2-$3")
    .replace(/lt$/, "");
}

/** A repair's meaning without its unit or gloss: "210 microns" is 210, "454 (week 45 of 1984)" is 454. */
export function bareMeaning(meant: string): string {
  const text = meant.replace(/\s*\(.*\)\s*$/, "").replaceAll(/(\d),(?=\d{3})/g, "$1");
  return /^-?\d+(\.\d+)?\s+[a-zµ/·%-]+$/i.test(text) ? text.split(/\s+/)[0]! : text;
}

export function asNumber(value: number | string): number {
  if (typeof value === "number") return value;
  return /^-?\d+(\.\d+)?$/.test(value) ? Number(value) : Number.NaN;
}

/** The same quantity: within 0.2 %, or within 2 % over two units of the same kind; other values by their one spelling. */
export function sameValue(
  a: number | string,
  aUnit: UnitName | string | null,
  b: number | string,
  bUnit: UnitName | string | null,
): boolean {
  const x = asNumber(a);
  const y = asNumber(b);
  if (Number.isNaN(x) || Number.isNaN(y)) return canonicalValue(a) === canonicalValue(b);
  if (Math.abs(x - y) <= 1e-9) return true;
  const table = aUnit && bUnit && aUnit !== bUnit ? quantities.find((quantity) => aUnit in quantity && bUnit in quantity) : undefined;
  if (!table) return Math.abs(x - y) <= 0.002 * Math.abs(y);
  const [left, right] = [x * table[aUnit!]!, y * table[bUnit!]!];
  return Math.abs(left - right) <= 0.02 * Math.abs(right);
}
