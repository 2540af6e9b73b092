/**
 * What a tire can be: bounds that decide whether a run of digits is a size at all.
 * Inch rims 10 to 24 and the half-inch commercial rims: tire trade (from memory); widths step by 10 from 125 and by 5 in older
 * or narrow sizes; aspects step by 5 (82 and older odd ones aside). Common practice throughout.
 */

export const inchRims = { least: 10, most: 26 } as const;
export const metricWidthMm = { least: 105, most: 405 } as const;
export const aspectPercent = { least: 20, most: 95 } as const;
export const flotationDiameterInches = { least: 24, most: 54 } as const;
export const flotationWidthInches = { least: 7, most: 22 } as const;

/** Aspects outside the five-steps that were really printed. */
const oddAspects: ReadonlySet<number> = new Set([78, 82, 83, 88]);

/** Load letters of alphanumeric sizes, A to N; I is not used. */
export const loadLetters: ReadonlySet<string> = new Set("ABCDEFGHJKLMN");

export const alphanumericAspects: ReadonlySet<number> = new Set([50, 60, 70, 78]);

/** Numeric sizes in hundredths of an inch: 5.00 to 10.00. Only these endings were printed. */
const numericEndings: ReadonlySet<number> = new Set([0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95]);

export function isMetricWidth(widthMm: number): boolean {
  return widthMm >= metricWidthMm.least && widthMm <= metricWidthMm.most && widthMm % 5 === 0;
}

export function isAspect(percent: number): boolean {
  return percent >= aspectPercent.least && percent <= aspectPercent.most && (percent % 5 === 0 || oddAspects.has(percent));
}

export function isInchRim(inches: number): boolean {
  return Number.isInteger(inches) && inches >= inchRims.least && inches <= inchRims.most;
}

/** Half-inch rims of commercial vehicles, in tenths of an inch as the digits are said: 195 for 19.5. */
export const commercialRimTenths: ReadonlySet<number> = new Set([145, 165, 175, 195, 225, 245]);

/** Hundredths of an inch, as spoken: 670 for a 6.70 section. */
export function isNumericWidth(hundredths: number): boolean {
  return hundredths >= 440 && hundredths <= 1000 && numericEndings.has(hundredths % 100);
}

/** Rims that numeric and alphanumeric sizes were sold for. */
export function isBiasRim(inches: number): boolean {
  return inches >= 10 && inches <= 21;
}
