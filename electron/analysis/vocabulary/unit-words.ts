import type { UnitName } from "../../../shared-types/index.ts";

/** What a unit counts, and within which bounds a walkaround can speak of it. */
export interface SpokenUnit {
  readonly unit: UnitName;
  /** Regular-expression source over lower-case words; longer phrases first where one begins another. */
  readonly said: string;
  readonly least: number;
  readonly most: number;
  /** Typical values: a reading inside is likelier than one outside. */
  readonly typical: readonly [number, number];
  /** How likely this unit is meant by the words, where they are shared by several ("pounds"). 0 to 1. */
  readonly share: number;
}

/** Bounds are common practice; they only choose between readings of broken words and never refuse a number that was plainly said. */
export const spokenUnits: readonly SpokenUnit[] = [
  {
    unit: "lb-ft",
    said: "(?:foot|ft|feet) (?:- )?(?:pounds?|lbs?)|(?:pounds?|lbs?) (?:- )?(?:foot|feet|ft)|pound - feet|(?:pounds?|lbs?) of torque|torques",
    least: 10,
    most: 2500,
    typical: [80, 1100],
    share: 1,
  },
  { unit: "N·m", said: "newton (?:- )?met(?:er|re)s?|newtons|nm|n·m", least: 10, most: 3000, typical: [90, 1400], share: 1 },
  {
    unit: "psi",
    said: "psi|p s i|pounds? (?:of )?(?:oil )?pressure|pounds? per square inch|pounds of boost",
    least: 1,
    most: 3000,
    typical: [4, 250],
    share: 1,
  },
  { unit: "psi", said: "pounds?|lbs?", least: 1, most: 3000, typical: [4, 110], share: 0.6 },
  { unit: "GBP", said: "pounds? sterling|quid|gbp", least: 0.01, most: 5e6, typical: [20, 200000], share: 1 },
  { unit: "GBP", said: "pounds", least: 0.01, most: 5e6, typical: [200, 200000], share: 0.5 },
  // "thirty five pound a year": the singular for money is British; weights and pressures are rarely said so.
  { unit: "GBP", said: "pound(?! -? ?(?:feet|foot|per))", least: 0.01, most: 5e6, typical: [5, 200000], share: 0.7 },
  { unit: "lb", said: "pounds?|lbs?", least: 1, most: 40000, typical: [110, 12000], share: 0.4 },
  { unit: "kg", said: "kilos?|kilogram(?:me)?s?|kgs?|k g", least: 1, most: 40000, typical: [20, 8000], share: 1 },
  { unit: "bar", said: "bars? of (?:boost|pressure)|bar", least: 0.1, most: 400, typical: [0.3, 6], share: 0.9 },
  { unit: "USD", said: "dollars?|bucks?|usd", least: 0.01, most: 5e6, typical: [20, 300000], share: 1 },
  { unit: "EUR", said: "euros?|eur", least: 0.01, most: 5e6, typical: [20, 300000], share: 1 },
  {
    unit: "cu in",
    said: "cubic (?:- )?inch(?:es)?|inch(?:es)? of (?:motor|engine|v 8|v8)|cubes|cubic|cu in|c i d|cid",
    least: 10,
    most: 1200,
    typical: [90, 640],
    share: 1,
  },
  { unit: "cu ft", said: "cubic (?:- )?(?:foot|feet)", least: 0.5, most: 900, typical: [3, 200], share: 1 },
  { unit: "cc", said: "cc(?: ?'s|s)?|c c(?: ?'s|s)?|cubic centimet(?:er|re)s?", least: 5, most: 20000, typical: [30, 8500], share: 1 },
  { unit: "cfm", said: "cfms?|c f m|cubic feet (?:per|a) minute", least: 100, most: 2200, typical: [150, 1400], share: 1 },
  { unit: "gal", said: "(?:us |imperial )?gallons?", least: 0.1, most: 500, typical: [1, 110], share: 1 },
  { unit: "pt", said: "pints?", least: 0.25, most: 60, typical: [0.5, 30], share: 1 },
  { unit: "qt", said: "quarts?|qts?", least: 0.25, most: 80, typical: [0.5, 45], share: 1 },
  { unit: "L", said: "(?:- )?(?:lit(?:er|re)s?|l)", least: 0.4, most: 3000, typical: [0.6, 10], share: 1 },
  { unit: "kWh", said: "kilowatt (?:- )?hours?|kwhs?|k w h", least: 0.5, most: 400, typical: [5, 220], share: 1 },
  { unit: "Ah", said: "amp(?:ere)? (?:- )?hours?|ahs?|a h|amp hour", least: 1, most: 2000, typical: [20, 800], share: 1 },
  { unit: "A", said: "(?:cold )?(?:cranking )?amps?|cold crank|cca|c c a", least: 1, most: 2000, typical: [5, 1000], share: 1 },
  { unit: "kW", said: "kilowatts?|kws?|k w", least: 1, most: 1500, typical: [20, 800], share: 1 },
  { unit: "PS", said: "ps|p s|metric horse ?power|pferdestarken?", least: 5, most: 2500, typical: [30, 1100], share: 1 },
  {
    unit: "hp",
    said: "(?:brake )?horse(?: ?power)?|bhp|b h p|whp|hp|h p|ponies|brake(?= |$)",
    least: 1,
    most: 3000,
    typical: [25, 1300],
    share: 0.95,
  },
  { unit: "V", said: "(?:volts?|v(?! (?:[24568]|10|12|16)(?= |$)))", least: 0.1, most: 1000, typical: [5.5, 48], share: 0.95 },
  { unit: "µm", said: "microns?|micrometers?|mikes|µm", least: 5, most: 5000, typical: [60, 900], share: 1 },
  { unit: "mil", said: "mils", least: 0.5, most: 200, typical: [2, 40], share: 1 },
  // A British "mil" is a millimetre; "mil" for thousandths of an inch is said in the plural, or by paint people.
  { unit: "mil", said: "mil", least: 0.5, most: 200, typical: [2, 40], share: 0.45 },
  { unit: "mm", said: "mil", least: 0.5, most: 200, typical: [0.5, 40], share: 0.85 },
  { unit: "ga", said: "(?:- )?(?:gauge|gage|ga)", least: 4, most: 30, typical: [8, 24], share: 1 },
  { unit: "mm", said: "(?:- )?(?:millimet(?:er|re)s?|mms?|m m)", least: 0.05, most: 6000, typical: [0.5, 500], share: 0.95 },
  { unit: "km", said: "kilomet(?:er|re)s?|kms?|k m|klicks", least: 0.1, most: 2e6, typical: [50, 500000], share: 1 },
  { unit: "mi", said: "miles?|(?:original|actual) miles", least: 0.1, most: 2e6, typical: [50, 500000], share: 1 },
  { unit: "ft", said: "(?:- )?(?:foot|feet|ft)", least: 0.25, most: 5280, typical: [1, 45], share: 1 },
  // Rim widths: "7J", "four and a half J's".
  { unit: "in", said: "j(?:'?s)?", least: 2.5, most: 16, typical: [3.5, 13], share: 0.95 },
  { unit: "in", said: "(?:- )?(?:inch(?:es)?|inchers?|'')", least: 0.001, most: 400, typical: [0.0625, 140], share: 1 },
];

/** Units claims do not carry as such but that turn into one: factor to the claim's unit. */
export const derivedUnits: readonly {
  readonly said: string;
  readonly unit: UnitName;
  readonly factor: number;
  readonly least: number;
  readonly most: number;
}[] = [
  { said: "centimet(?:er|re)s?|cms?|c m", unit: "mm", factor: 10, least: 0.1, most: 700 },
  { said: "met(?:er|re)s?", unit: "mm", factor: 1000, least: 0.2, most: 30 },
  { said: "thou|(?:thousandths|1000ths?)(?: of an inch)?", unit: "in", factor: 0.001, least: 0.5, most: 500 },
  { said: "(?:hundredths|100ths?)(?: of an inch)?", unit: "in", factor: 0.01, least: 3, most: 300 },
  { said: "yards?", unit: "ft", factor: 3, least: 1, most: 2000 },
  { said: "stone(?! (?:chips?|chipped|chipping|guards?|marks?|damage|effect|colou?r\\S*))", unit: "lb", factor: 14, least: 1, most: 300 },
  { said: "metric tons?|tonnes?", unit: "kg", factor: 1000, least: 0.5, most: 60 },
  { said: "tons?", unit: "lb", factor: 2000, least: 2, most: 80 },
  { said: "watts?", unit: "kW", factor: 0.001, least: 5, most: 20000 },
  { said: "kilopascals?|kpa", unit: "bar", factor: 0.01, least: 20, most: 3000 },
];

/** Quantities a walkaround speaks of in passing; a number with one of these is never a claim about the vehicle's build. */
export const asideUnits = [
  { kind: "percent", said: "percent|per cent|%" },
  { kind: "angle", said: "degrees?|°" },
  { kind: "engine-speed", said: "rpms?|r p m(?: s)?|revs?|revolutions" },
  { kind: "road-speed", said: "mph|m p h|miles? (?:an|per) hour|mile an hour|km / h|kph|k p h|kilomet(?:er|re)s? (?:an|per) hour" },
  { kind: "fuel-economy", said: "mpg|m p g|miles? (?:to|per) (?:the |a )?gallon|to the gallon" },
  { kind: "duration", said: "minutes?|mins?|hours?|hrs?|seconds|2ths|secs?|days?|weeks?|months?|years?(?: old)?" },
] as const satisfies readonly { kind: string; said: string }[];
export type AsideKind = (typeof asideUnits)[number]["kind"];
