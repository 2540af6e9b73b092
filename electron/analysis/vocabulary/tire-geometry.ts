/**
 * Sizes printed on tires, their parts, and the geometry that follows from them.
 * Formulas: section height = width x aspect / 100; overall diameter = 2 x height + rim (https://www.mytoolkit.app/tyre-size-calculator/).
 */

export type TireSize =
  | {
      readonly form: "metric";
      readonly prefix: "" | "P" | "LT" | "T" | "ST";
      readonly widthMm: number;
      readonly aspectPercent: number;
      readonly construction: string;
      readonly rim: Rim;
    }
  | { readonly form: "metric-no-aspect"; readonly widthMm: number; readonly construction: string; readonly rim: Rim }
  | { readonly form: "flotation"; readonly diameterInches: number; readonly widthInches: number; readonly rim: Rim }
  | {
      readonly form: "alphanumeric";
      readonly loadLetter: string;
      readonly radial: boolean;
      readonly aspectPercent: number;
      readonly rim: Rim;
    }
  | { readonly form: "numeric"; readonly widthInches: number; readonly rim: Rim }
  | { readonly form: "truck-inch"; readonly widthInches: number; readonly rim: Rim };

/** Tubeless truck tires in whole inches of section: 11R22.5 is about 41.5 in tall, 11R24.5 about 43.5 (trade tables from memory). An estimate. */
export const truckInchAspectPercent = 87;

/** Rims are in inches, except the metric ones (365, 390, 415), which the size names in millimetres. */
export type Rim = { readonly inches: number; readonly millimetres: number; readonly metric: boolean };

/** Metric rim diameters once used on the road (values from memory; 390 also in spoken sizes, common practice). */
export const metricRimsMm: readonly number[] = [315, 340, 365, 390, 415];

export const millimetresPerInch = 25.4;

/** Older numeric widths: "ending in 0 about 92 %, else about 82 %" (http://customwheelsmarket.com/tirsizsys1.html). An estimate, never proof. */
export function numericAspectPercent(widthInches: number): number {
  return Math.round(widthInches * 100) % 100 === 0 ? 92 : 82;
}

/** Truck tires on rims of 20 inches and more stand taller than wide: 9.00-20 about 40 in, 10.00-20 about 41.5 (trade tables from memory). */
const truckNumeric = { leastRimInches: 20, leastWidthInches: 7.5, aspectPercent: 108 } as const;

function aspectOfNumeric(widthInches: number, rim: Rim): number {
  const ofTruck = rim.inches >= truckNumeric.leastRimInches && widthInches >= truckNumeric.leastWidthInches;
  return ofTruck ? truckNumeric.aspectPercent : numericAspectPercent(widthInches);
}

/** Metric sizes without an aspect are read as 80 series (https://www.austin7.org/TechnicalArticles/TyreSizes/TyreSizes.html). */
export const impliedMetricAspectPercent = 80;

export function rimOf(stated: number): Rim {
  return stated > 100
    ? { inches: stated / millimetresPerInch, millimetres: stated, metric: true }
    : { inches: stated, millimetres: stated * millimetresPerInch, metric: false };
}

const metricSize = /^(P|LT|T|ST)?(\d{3})\/(\d{2})(ZR|R|D|B|-)?(\d{2}(?:\.5)?|\d{3})C?$/;
const bareMetricSize = /^(\d{3})(TR|HR|SR|VR|R|-)(\d{2}|\d{3})$/;
const flotationSize = /^(\d{2}(?:\.\d)?)x(\d{1,2}\.\d{1,2})(R|-)(\d{2}(?:\.5)?)$/;
const alphanumericSize = /^([A-N])(R?)(\d{2})-(\d{2})$/;
const numericSize = /^(\d{1,2}\.\d{2})(?:-|R)(\d{2}(?:\.5)?)$/;
const truckInchSize = /^(\d{1,2})(?:-|R)(\d{2}\.5)$/;

/** Reads a size in the written forms 235/60R15, 220/55R390, 31x10.50R15, G70-14, GR78-15, 6.70-15, 10.00R20, 11R22.5, 165TR390; undefined for anything else. */
export function parseTireSize(text: string): TireSize | undefined {
  const metric = metricSize.exec(text);
  if (metric) {
    const [, prefix = "", width, aspect, construction = "R", rim] = metric;
    return {
      form: "metric",
      prefix: prefix as "" | "P" | "LT" | "T" | "ST",
      widthMm: Number(width),
      aspectPercent: Number(aspect),
      construction,
      rim: rimOf(Number(rim)),
    };
  }
  const bare = bareMetricSize.exec(text);
  if (bare) return { form: "metric-no-aspect", widthMm: Number(bare[1]), construction: bare[2]!, rim: rimOf(Number(bare[3])) };
  const flotation = flotationSize.exec(text);
  if (flotation)
    return { form: "flotation", diameterInches: Number(flotation[1]), widthInches: Number(flotation[2]), rim: rimOf(Number(flotation[4])) };
  const alpha = alphanumericSize.exec(text);
  if (alpha)
    return {
      form: "alphanumeric",
      loadLetter: alpha[1]!,
      radial: alpha[2] === "R",
      aspectPercent: Number(alpha[3]),
      rim: rimOf(Number(alpha[4])),
    };
  const numeric = numericSize.exec(text);
  if (numeric) return { form: "numeric", widthInches: Number(numeric[1]), rim: rimOf(Number(numeric[2])) };
  const truck = truckInchSize.exec(text);
  if (truck) return { form: "truck-inch", widthInches: Number(truck[1]), rim: rimOf(Number(truck[2])) };
  return undefined;
}

export type Diameter = { readonly millimetres: number; readonly inches: number; readonly estimate: boolean };

/** Overall diameter by plain arithmetic, unrounded. Undefined for alphanumeric sizes: their letter gives no width. Published tables round parts and may differ by 2 mm. */
export function overallDiameter(size: TireSize): Diameter | undefined {
  switch (size.form) {
    case "metric":
      return diameterOf(size.widthMm, size.aspectPercent, size.rim, false);
    case "metric-no-aspect":
      return diameterOf(size.widthMm, impliedMetricAspectPercent, size.rim, true);
    case "numeric":
      return diameterOf(size.widthInches * millimetresPerInch, aspectOfNumeric(size.widthInches, size.rim), size.rim, true);
    case "truck-inch":
      return diameterOf(size.widthInches * millimetresPerInch, truckInchAspectPercent, size.rim, true);
    case "flotation":
      return { millimetres: size.diameterInches * millimetresPerInch, inches: size.diameterInches, estimate: false };
    case "alphanumeric":
      return undefined;
  }
}

function diameterOf(widthMm: number, aspectPercent: number, rim: Rim, estimate: boolean): Diameter {
  const millimetres = 2 * sectionHeightMm(widthMm, aspectPercent) + rim.millimetres;
  return { millimetres, inches: millimetres / millimetresPerInch, estimate };
}

export function sectionHeightMm(widthMm: number, aspectPercent: number): number {
  return (widthMm * aspectPercent) / 100;
}

/** Unloaded revolutions per mile: 63360 / (pi x diameter in inches) (https://axletally-v2.pages.dev/gear-ratio-calculator/). */
export function revolutionsPerMile(diameterInches: number): number {
  return 63360 / (Math.PI * diameterInches);
}
