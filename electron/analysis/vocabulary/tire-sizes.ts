/**
 * What a tire can be: bounds that decide whether a run of digits is a size at all.
 * Inch rims 10 to 24 and the half-inch commercial rims: tire trade (from memory); widths step by 10 from 125 and by 5 in older
 * or narrow sizes, up to the single tires that stand for a pair on a truck (455/55R22.5); aspects step by 5 (82 and older odd ones aside). Common practice throughout.
 */

export const inchRims = { least: 10, most: 26 } as const;
export const metricWidthMm = { least: 105, most: 455 } as const;
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

/** Half-inch rims that each section of a truck tire was made for: 8R17.5 to 13R22.5, 11R24.5. Trade catalogues from memory. */
const truckInchRims: Readonly<Record<number, readonly number[]>> = {
  8: [17.5, 19.5, 22.5],
  9: [17.5, 19.5, 22.5],
  10: [17.5, 19.5, 22.5],
  11: [19.5, 22.5, 24.5],
  12: [19.5, 22.5, 24.5],
  13: [22.5, 24.5],
};

export function isTruckInchTire(sectionInches: number, rimInches: number): boolean {
  return truckInchRims[sectionInches]?.includes(rimInches) ?? false;
}

/** Whole-inch rims of truck sections in hundredths of an inch: 7.50-20 to 14.00-24; 7.50R16 and 8.25R16 on light ones. */
const truckNumericRims: Readonly<Record<number, readonly number[]>> = {
  750: [16, 20],
  825: [16, 20],
  900: [16, 20],
  1000: [20, 22],
  1100: [20, 22, 24],
  1200: [20, 24],
  1300: [20],
  1400: [20, 24],
};

export function isTruckNumericTire(sectionHundredths: number, rimInches: number): boolean {
  return truckNumericRims[sectionHundredths]?.includes(rimInches) ?? false;
}
