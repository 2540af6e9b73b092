import type { ClaimValue, UnitName } from "../../../../shared-types/index.ts";
import type { StockSheetColumn } from "./columns.ts";

/** What a cell says: a value in a unit. */
export interface ReadCell {
  readonly value: ClaimValue;
  readonly unit: UnitName | null;
}

const spokenUnits: readonly (readonly [RegExp, UnitName])[] = [
  [/\b(cu\.? ?in\.?|cubic inch(es)?|cid|ci)\b/i, "cu in"],
  [/\bcc\b/i, "cc"],
  [/\d ?l\b|\blit(er|re)s?\b/i, "L"],
  [/\b(km|kms|kilomet(er|re)s?)\b/i, "km"],
  [/\b(mi|miles?)\b/i, "mi"],
  [/\bkw\b/i, "kW"],
  [/\bps\b/i, "PS"],
  [/\b(hp|bhp)\b/i, "hp"],
  [/\b(nm|n·m)\b/i, "N·m"],
  [/\bmm\b/i, "mm"],
  [/\$|\busd\b/i, "USD"],
  [/£|\bgbp\b/i, "GBP"],
  [/€|\beur\b/i, "EUR"],
  [/\bgal(lons?)?\b/i, "gal"],
];

/** A cell read as its column's kind; undefined where its text is not understood. */
export function readField(column: StockSheetColumn, text: string): ReadCell | undefined {
  switch (column.reading.as) {
    case "figure": {
      const figure = figureIn(text, column);
      if (figure === undefined) return undefined;
      return { value: figure, unit: spokenUnits.find(([words]) => words.test(text))?.[1] ?? column.reading.unit };
    }
    case "count": {
      const count = /\b(\d{1,2})[ -]?(?:speed|cyl|door|owner|key)|^\s*(\d{1,2})\s*$/i.exec(text);
      return count ? { value: Number(count[1] ?? count[2]), unit: null } : undefined;
    }
    case "tire-size":
      // Two sizes in one field are a front and a rear; which is which, the field does not say.
      return (text.match(/\d{3}\/\d{2}|\d{2}x\d|\b\d{1,2}(?:\.\d{2})?[R-]\d{2}(?:\.5)?\b/gi)?.length ?? 0) > 1
        ? undefined
        : { value: text.trim(), unit: null };
    default:
      return { value: text.trim(), unit: null };
  }
}

/** The figure in a field: the first that can be one for the attribute ("5.7L V8" is 5.7, "V8 350ci" is 350, "3.73:1" is 3.73). */
function figureIn(text: string, column: StockSheetColumn): number | undefined {
  const numbers = [...text.replace(/(\d),(?=\d{3}\b)/g, "$1").matchAll(/(?<![a-z\d])\d+(?:\.\d+)?(?!\d)/gi)].map((match) =>
    Number(match[0]),
  );
  const likely = numbers.find((number) => {
    switch (column.attribute) {
      case "displacement":
        return (number >= 0.6 && number < 10 && !Number.isInteger(number)) || number >= 60;
      case "ratio":
        return number >= 2 && number < 8;
      case "year":
        return number >= 1885 && number < 2100;
      case "diameter":
        return number >= 10 && number <= 30;
      default:
        return true;
    }
  });
  return likely;
}
