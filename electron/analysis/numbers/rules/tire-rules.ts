import { singleDigitCounts } from "../../vocabulary/number-words.ts";
import { metricRimsMm } from "../../vocabulary/tire-geometry.ts";
import {
  alphanumericAspects,
  commercialRimTenths,
  flotationDiameterInches,
  flotationWidthInches,
  isAspect,
  isBiasRim,
  isInchRim,
  isMetricWidth,
  isNumericWidth,
  loadLetters,
} from "../../vocabulary/tire-sizes.ts";
import { fillSlots, type Slots } from "../fill-slots.ts";
import type { Line } from "../pieces.ts";
import { type Draft, type Find, type NumberRule, phraseRule, type RuleExample } from "../rule.ts";
import { asTemporarySpare, withCommercialMark, withHalfInch } from "./tire-endings.ts";

/** Words that may stand between the parts of a size. Letters of construction are kept by the slot filler. */
interface TireForm {
  readonly name: string;
  readonly example: RuleExample;
  /** Digits per slot. */
  readonly slots: readonly number[];
  /** Letter or prefix pieces that must come first; [] for none. */
  readonly lead: "none" | "load-letter" | "bare";
  readonly read: (slots: Slots) => Draft | undefined;
}

const constructionOf = (slots: Slots): string => slots.letters.find((letter) => /^(?:zr|r|d|b)$/.test(letter))?.toUpperCase() ?? "R";

/** The numbers of a size in printed order: width, aspect, rim, or what the form has. */
const partsOf = (slots: Slots): readonly number[] => slots.digits.map(Number);

function metric(slots: Slots, rim: string, weight: number): Draft | undefined {
  const [width = "", aspect = ""] = slots.digits;
  if (!isMetricWidth(Number(width)) || !isAspect(Number(aspect))) return undefined;
  const prefix = slots.prefix.toUpperCase();
  const construction = constructionOf(slots);
  return {
    kind: "tire-size",
    parts: partsOf(slots),
    value: `${prefix}${width}/${aspect}${construction}${rim}`,
    weight,
    repaired: !slots.asWritten && !slots.worded,
    topic: "tire",
  };
}

const forms: readonly TireForm[] = [
  {
    name: "tire-metric",
    example: { heard: "the rears are to 35 60 15s", meant: "235/60R15" },
    slots: [3, 2, 2],
    lead: "none",
    read: (slots) => (isInchRim(Number(slots.digits[2])) ? metric(slots, slots.digits[2]!, 0.95) : undefined),
  },
  {
    name: "tire-metric-rim-in-millimetres",
    example: { heard: "a 2 2055 390", meant: "220/55R390" },
    slots: [3, 2, 3],
    lead: "none",
    read: (slots) => (metricRimsMm.includes(Number(slots.digits[2])) ? metric(slots, slots.digits[2]!, 0.95) : undefined),
  },
  {
    name: "tire-metric-commercial-rim",
    example: { heard: "two twenty five seventy R nineteen point five", meant: "225/70R19.5" },
    slots: [3, 2, 3],
    lead: "none",
    read: (slots) => {
      const rim = slots.digits[2]!;
      return commercialRimTenths.has(Number(rim)) ? metric(slots, `${rim.slice(0, 2)}.${rim.slice(2)}`, 0.93) : undefined;
    },
  },
  {
    name: "tire-metric-without-aspect",
    example: { heard: "165 tea are 390", meant: "165TR390" },
    slots: [3, 3],
    lead: "none",
    read: (slots) => {
      const [width = "", rim = ""] = slots.digits;
      const letters = slots.letters.join("");
      if (!isMetricWidth(Number(width)) || !metricRimsMm.includes(Number(rim)) || !/^[thsv]?r$/.test(letters)) return undefined;
      return {
        kind: "tire-size",
        parts: partsOf(slots),
        value: `${width}${letters.toUpperCase()}${rim}`,
        weight: 0.9,
        repaired: !slots.asWritten,
        topic: "tire",
      };
    },
  },
  {
    name: "tire-metric-narrow-without-aspect",
    example: { heard: "one sixty five R thirteen", meant: "165R13" },
    slots: [3, 2],
    lead: "none",
    read: (slots) => {
      const [width = "", rim = ""] = slots.digits;
      const letters = slots.letters.join("");
      if (!isMetricWidth(Number(width)) || Number(width) > 225 || !isInchRim(Number(rim)) || !/^[hsv]?r$/.test(letters)) return undefined;
      return {
        kind: "tire-size",
        parts: partsOf(slots),
        value: `${width}${letters.toUpperCase()}${rim}`,
        weight: 0.85,
        repaired: !slots.asWritten,
        topic: "tire",
      };
    },
  },
  {
    name: "tire-metric-rim-only",
    example: { heard: "the tyres are one forty five ten", meant: "145R10" },
    slots: [3, 2],
    lead: "none",
    read: (slots) => {
      const [width = "", rim = ""] = slots.digits;
      if (!isMetricWidth(Number(width)) || Number(width) > 205 || !isInchRim(Number(rim)) || Number(rim) > 16 || slots.letters.length > 0)
        return undefined;
      return {
        kind: "tire-size",
        parts: partsOf(slots),
        value: `${width}R${rim}`,
        weight: 0.5,
        repaired: true,
        topic: "tire",
        needsTopic: true,
      };
    },
  },
  {
    name: "tire-flotation",
    example: { heard: "thirty one ten fifty fifteen", meant: "31x10.50R15" },
    slots: [2, 4, 2],
    lead: "none",
    read: (slots) => flotation(slots, (width) => width / 100),
  },
  {
    name: "tire-flotation-narrow",
    example: { heard: "a 30 9 50 15", meant: "30x9.50R15" },
    slots: [2, 3, 2],
    lead: "none",
    read: (slots) => flotation(slots, (width) => (width >= 700 && width < 1000 ? width / 100 : Number.NaN)),
  },
  {
    name: "tire-flotation-tens-run-into-ones",
    example: { heard: "thirty nine fifty fifteen", meant: "30x9.50R15" },
    slots: [1, 1, 2, 2],
    lead: "none",
    read: (slots) => {
      // "thirty, nine fifty" sounds and is written like thirty-nine: only 30 and 40 inch tires on narrow rims do that.
      const [tens = "", ones = "", hundredths = "", rim = ""] = slots.digits;
      if (!["3", "4"].includes(tens) || !["7", "8", "9"].includes(ones) || hundredths !== "50" || !isInchRim(Number(rim))) return undefined;
      const value = `${tens}0x${ones}.${hundredths}R${rim}`;
      return {
        kind: "tire-size",
        parts: [Number(tens) * 10, Number(ones) + 0.5, Number(rim)],
        value,
        weight: 0.75,
        repaired: true,
        topic: "tire",
      };
    },
  },
  {
    name: "tire-flotation-short",
    example: { heard: "33 x 12.5 r 15", meant: "33x12.50R15" },
    slots: [2, 3, 2],
    lead: "none",
    read: (slots) => flotation(slots, (width) => (width >= 100 && width <= 220 ? width / 10 : Number.NaN)),
  },
  {
    name: "tire-alphanumeric",
    example: { heard: "the old F 70 14 bias ply", meant: "F70-14" },
    slots: [2, 2],
    lead: "load-letter",
    read: (slots) => {
      const [aspect = "", rim = ""] = slots.digits;
      const letter = slots.prefix.toUpperCase();
      if (!loadLetters.has(letter) || !alphanumericAspects.has(Number(aspect)) || !isBiasRim(Number(rim))) return undefined;
      const radial = slots.letters.includes("r") ? "R" : "";
      return {
        kind: "tire-size",
        parts: partsOf(slots),
        value: `${letter}${radial}${aspect}-${rim}`,
        weight: 0.95,
        repaired: !slots.asWritten,
        topic: "tire",
      };
    },
  },
  {
    name: "tire-numeric",
    example: { heard: "six 40 by 15", meant: "6.40-15" },
    slots: [3, 2],
    lead: "bare",
    read: (slots) => {
      const [width = "", rim = ""] = slots.digits;
      const letters = slots.letters.join("");
      if (!isNumericWidth(Number(width)) || !isBiasRim(Number(rim)) || /[rzd]/.test(letters)) return undefined;
      // The smallest rims only ever carried narrow tires (5.20-10, 6.00-12).
      if (Number(rim) <= 12 && Number(width) > 620) return undefined;
      // A three-digit number before a two-digit one is common speech ("350, 15 inch wheels"); the spoken split or a written point makes it a tire.
      const told =
        slots.asWritten ||
        slots.separators.some((word) => ["by", "x", "-", "dash"].includes(word)) ||
        slots.pieceCount >= 3 ||
        slots.pointWritten;
      return {
        kind: "tire-size",
        parts: partsOf(slots),
        value: `${width[0]}.${width.slice(1)}-${rim}`,
        weight: slots.pointWritten ? 0.88 : told ? 0.8 : 0.3,
        repaired: !slots.asWritten,
        topic: "tire",
        needsTopic: !told,
      };
    },
  },
  {
    name: "tire-numeric-half-inch-rim",
    example: { heard: "those tires were 9 50 16 5s", meant: "9.50-16.5" },
    slots: [3, 3],
    lead: "none",
    read: (slots) => {
      const [width = "", rim = ""] = slots.digits;
      // The half-inch rims of light trucks: 14.5 on trailers, 16.5 and 17.5 on pickups and vans.
      if (!["145", "165", "175"].includes(rim) || !/^(?:7|8|9)(?:00|50|75)$/.test(width) || slots.letters.length > 0) return undefined;
      return {
        kind: "tire-size",
        parts: [Number(width) / 100, Number(rim) / 10],
        value: `${width[0]}.${width.slice(1)}-${rim.slice(0, 2)}.5`,
        weight: 0.9,
        repaired: !slots.asWritten,
        topic: "tire",
      };
    },
  },
  {
    name: "tire-width-and-aspect",
    example: { heard: "your fronts are the two fifteen seventies", meant: "215/70" },
    slots: [3, 2],
    lead: "none",
    read: (slots) => {
      const [width = "", aspect = ""] = slots.digits;
      if (!isMetricWidth(Number(width)) || Number(width) < 125 || !isAspect(Number(aspect)) || Number(aspect) % 5 !== 0) return undefined;
      const told = slots.plural || slots.separators.includes("/");
      return {
        kind: "tire-partial",
        value: `${width}/${aspect}`,
        parts: [Number(width), Number(aspect)],
        // Said in the plural after a width ("two nine five sixties") it is hardly anything else.
        weight:
          slots.plural && Number(width) % 10 === 5 ? 0.92 : told ? 0.75 : Number(width) % 10 === 5 && Number(aspect) >= 30 ? 0.55 : 0.4,
        repaired: !slots.asWritten,
        topic: "tire",
        needsTopic: !told,
      };
    },
  },
];

function flotation(slots: Slots, widthOf: (digits: number) => number): Draft | undefined {
  const [diameterDigits = "", widthDigits = "", rim = ""] = slots.digits;
  const diameter = Number(diameterDigits);
  const width = widthOf(Number(widthDigits));
  if (!(diameter >= flotationDiameterInches.least && diameter <= flotationDiameterInches.most)) return undefined;
  if (!(width >= flotationWidthInches.least && width <= flotationWidthInches.most) || Math.round(width * 100) % 25 !== 0) return undefined;
  if (!isInchRim(Number(rim)) || Number(rim) >= diameter - 5) return undefined;
  return {
    kind: "tire-size",
    parts: partsOf(slots),
    value: `${diameter}x${width.toFixed(2)}R${rim}`,
    weight: 0.93,
    repaired: !slots.asWritten,
    topic: "tire",
  };
}

/** "six hundred 16", "five hundred fifteen": the width in even inches and the rim, which grammar makes one number of (6.00-16). */
const evenInchRule: NumberRule = phraseRule(
  {
    name: "tire-numeric-run-together",
    example: { heard: "these tires are six hundred sixteen", meant: "6.00-16" },
    pattern: "(?<width>[4-9])(?<rim>1[3-9])s?",
  },
  ({ width = "", rim = "" }, line, first) =>
    line.pieces[first]!.written === "scaled"
      ? [
          {
            kind: "tire-size",
            value: `${width}.00-${rim}`,
            parts: [Number(width), Number(rim)],
            weight: 0.66,
            repaired: true,
            topic: "tire",
            needsTopic: true,
          },
        ]
      : [],
);

export const tireRules: readonly NumberRule[] = [
  evenInchRule,
  ...forms.map(({ name, example, slots, lead, read }) => ({
    name,
    example,
    find(line: Line, at: number): readonly Find[] {
      const filled = fillSlots(line, at, slots, lead);
      if (!filled) return [];
      // "225 70 19, 5 lug": a lone digit that counts the next thing is no part of the rim.
      if (/^[1-9]$/.test(line.pieces[filled.end - 1]!.text) && singleDigitCounts.includes(line.pieces[filled.end]?.text ?? "")) return [];
      const draft = read(filled);
      if (!draft) return [];
      const found = { first: at, end: filled.end, drafts: [draft] };
      return [withHalfInch(line, found) ?? withCommercialMark(line, found) ?? asTemporarySpare(line, found)];
    },
  })),
];
