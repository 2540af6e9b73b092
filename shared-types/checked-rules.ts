/** A rule that every recording's words are held against, and where it is published; null for claims held against each other. */
export interface CheckedRule {
  readonly name: string;
  readonly source: string | null;
}

/**
 * Every rule of the analysis as a record names it, also where it found nothing: first claims of one thing against each other, then
 * standards and arithmetic, then words that a buyer may hold the dealer to. The analysis has them where they work; a test holds the two
 * lists against each other.
 */
export const checkedRules: readonly CheckedRule[] = [
  { name: "two-figures-for-one-thing", source: null },
  { name: "two-counts-of-one-thing", source: null },
  { name: "two-types-of-one-part", source: null },
  { name: "two-materials-of-one-part", source: null },
  { name: "two-colors-of-one-part", source: null },
  { name: "there-and-not-there", source: null },
  { name: "original-and-replaced", source: null },
  { name: "two-values-of-one-thing", source: null },
  { name: "displacement-in-two-units", source: "1 in = 25.4 mm exactly, so 1 cu in = 16.387064 mL (NIST SP 811, Appendix B.8)" },
  { name: "figures-in-two-units", source: "Conversion factors: NIST SP 811, Appendix B.8; PS = 75 kgf·m/s = 0.73549875 kW (DIN 66036)" },
  { name: "faultless-and-flawed", source: null },
  { name: "praise-beside-a-fault", source: null },
  { name: "flat-and-doubtful", source: null },
  {
    name: "tire-rim-against-wheel",
    source: "Tire size designations, 49 CFR 571.139 and the tire standards' yearbooks: the last number of a size is the rim diameter",
  },
  { name: "tire-date-week", source: "49 CFR 574.5: the date group is the week (01 to 53) and the year of manufacture" },
  { name: "tire-date-meaning", source: "49 CFR 574.5: the date group is the week (01 to 53) and the year of manufacture" },
  { name: "tire-date-after-recording", source: "49 CFR 574.5: the date group is the week (01 to 53) and the year of manufacture" },
  {
    name: "tire-date-before-model",
    source:
      "49 CFR 574.5: the date group is the week (01 to 53) and the year of manufacture; a model year runs into the calendar year before it (common practice)",
  },
  {
    name: "tire-fitted-before-made",
    source:
      "49 CFR 574.5: the last digits of a tire's code are the week and year it was made; a tire is fitted after it is made (arithmetic)",
  },
  { name: "tire-age", source: "Vehicle and tire makers' common advice of 6 to 10 years (no US federal limit; local law decides)" },
  {
    name: "tread-below-limit",
    source:
      "2/32 in: state rules such as COMAR 11.14.05.05, and 49 CFR 393.75(c) for commercial vehicles; 1.6 mm: UK Construction and Use Regulations 1986; local law decides",
  },
  { name: "vin-check-digit", source: "49 CFR 565.15(c): position 9 is the weighted sum of the other characters modulo 11" },
  { name: "vin-form", source: "49 CFR 565.13 and 565.15: 17 characters, and none of I, O and Q" },
  { name: "vin-model-year", source: "49 CFR 565.15: position 10 is the model year" },
  {
    name: "vin-read-twice",
    source: "A vehicle has one VIN; 49 CFR 565.15(c): position 9 is the weighted sum of the other characters modulo 11",
  },
  { name: "axle-ratio-against-teeth", source: "Axle ratio = ring gear teeth ÷ pinion teeth, quoted to two decimals (arithmetic)" },
  { name: "engine-year-against-original", source: "An engine made after the vehicle's model year is a replaced one (common practice)" },
  {
    name: "cells-against-voltage",
    source: "A lead-acid cell has a nominal voltage of 2 V (IEC 60095-1): three cells make 6 V, six make 12 V",
  },
  { name: "displacement-against-bore-and-stroke", source: "Swept volume = π ÷ 4 × bore² × stroke × cylinders (arithmetic)" },
  { name: "plugs-against-cylinders", source: "A gasoline engine has one spark plug for each cylinder, or two (common practice)" },
  {
    name: "mileage-against-title",
    source:
      "49 CFR 580.17(a): disclosure not required for model year 2010 or older once 10 years have passed, nor for 2011 and later once 20 have",
  },
  {
    name: "model-year-against-building",
    source:
      "40 CFR 85.2304(a): a model year's production may begin no earlier than January 2 of the year before it and ends by December 31 of it",
  },
  { name: "earlier-reading-above-present", source: "An odometer does not run backwards; a changed instrument may (arithmetic)" },
  { name: "former-reading-above-present", source: "An odometer does not run backwards; a changed instrument may (arithmetic)" },
  { name: "load-index-against-load", source: "Tire load index table of the tire standards (e.g. 91 = 615 kg = 1356 lb)" },
  { name: "speed-symbol-against-speed", source: "Speed symbols of the tire standards (e.g. H = 210 km/h = 130 mph)" },
  { name: "engine-speed-against-gearing", source: "rpm = mph × 336 × axle ratio × gear ÷ tire diameter (arithmetic)" },
  { name: "front-and-rear-make-all", source: "Arithmetic: those in front and those in the back make all" },
  { name: "owners-against-sales", source: "Arithmetic: every dated purchase by a private owner is one owner" },
  {
    name: "A statement of fact or a promise that becomes part of the bargain can be an express warranty, without that word",
    source: "UCC 2-313(1), (2)",
  },
  { name: "A dealer may not misstate a used vehicle's mechanical condition or warranty terms", source: "16 CFR 455.1(a), (b)" },
  { name: "Warranty terms stand on the Buyers Guide; spoken promises do not replace it", source: "81 FR 81664 (effective 2017-01-27)" },
  {
    name: "Goods must be as described and of satisfactory quality; public statements count",
    source: "Consumer Rights Act 2015 (UK) ss. 9 to 11",
  },
  { name: "Mere opinion or praise of value is not a warranty, and the border is not sharp", source: "UCC 2-313(2)" },
];
