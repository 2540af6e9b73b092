import type { Slot } from "../slot.ts";

/** Where a vehicle wears its engine's size. */
const badgePlace =
  "badges?|boot ?lid|boot|trunk ?lid|trunk|deck ?lid|tailgate|hatch|emblem|script|fender|wing|scoop|grille|air cleaner|rocker cover|valve cover|hood|bonnet";
const badgeSays = new RegExp(
  `\\b(?:${badgePlace})(?: here| there| back here| (?:on|at|in) (?:the|this|that|its) (?:\\w+ )?\\w+)?(?:'s| is| has| it)?(?: still)? (?:says|reads|claims|got|has)(?: it's)?(?: an?)?$`,
);
const onBadge =
  /^(?:right )?(?:there |here )?(?:on|across) (?:it|the|its|that)(?: side of the| front of the| back of the| \w+)? ?(?:badge|boot|trunk|deck|tailgate|emblem|fender|wing|scoop|grille|air cleaner|rocker cover|valve cover|hood|bonnet)\b/;
const noSize =
  /\bmiles\b|\bpsi\b|\bvolts?\b|\bdollars?\b|\bquid\b|\bpounds\b|\bgears?\b|\baxle\b|\bmicrons?\b|\bmils\b|\btires?\b|\bgallons?\b|\bquarts?\b|\bdegrees\b|\brpm\b|\bcompression\b|\bdented?\b|\bstone\b|\bgauge\b|\bmeter\b|\breader\b|\bpaint\b/;

/** Cylinders as engines are laid out. */
const cylinders = (reading: { readonly value: number | string }): number | undefined =>
  typeof reading.value === "number" && [2, 3, 4, 5, 6, 8, 10, 12, 16].includes(reading.value) ? reading.value : undefined;

/** The engine's size, make-up and pressures in the words of the trade. */
export const engineTalkSlots = [
  {
    name: "displacement on the badge, in litres",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "L",
    need: { kinds: ["decimal", "measure"], units: [null, "L"], min: 0.8, max: 8.4 },
    unless: noSize,
    cues: [
      { before: badgeSays, score: 1.3 },
      {
        before: /\b(?:it's|it is|says|reads|a|the|got|has)$/,
        after: /^(?:right )?(?:there )?(?:on|across) (?:the|its) (?:badge|boot|trunk|deck|tailgate|emblem)\b/,
        score: 1.25,
      },
    ],
    example: { heard: "the badge here says 2.2 and that's the truth", value: 2.2, zone: "rear" },
  },
  {
    name: "displacement on the badge, in cubic inches",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cu in",
    need: { kinds: ["integer", "measure"], units: [null, "cu in"], min: 140, max: 700 },
    unless: noSize,
    cues: [
      { before: badgeSays, score: 1.3 },
      { before: /\b(?:says|reads)(?: an?)?$/, after: onBadge, score: 1.3 },
      { before: /\b(?:badge|air cleaner|scoop|emblem)(?:'s| has)(?: got)?(?: an?| the)?$/, after: /^on it\b/, score: 1.4 },
    ],
    value: (reading, said) => (/\ds$|[a-z]s$/.test(said) ? undefined : reading.value),
    example: { heard: "says four forty right there on the side of the scoop", value: 440, zone: "front" },
  },
  {
    name: "displacement in cc, called so many hundred",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cc",
    need: { kinds: ["integer"], units: [null], min: 800, max: 5000 },
    cues: [
      {
        before: /\b(?:engine|motor|lump|unit)(?:'s| is| in it is)(?: an?| the)(?: little| good old| big)?$/,
        said: /hundred$/,
        after: /^(?:$|\.|and|with|so|but|four|six|petrol|diesel|cc)/,
        unless: /\bmiles\b|\bdollars\b|\bpounds\b|\bquid\b/,
        score: 1.2,
      },
    ],
    value: (reading) => (typeof reading.value === "number" && reading.value % 100 === 0 ? reading.value : undefined),
    example: { heard: "the engine's a sixteen hundred", value: 1600, zone: "engine-bay" },
  },
  {
    name: "displacement in litres, exact figure after it",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "L",
    need: { kinds: ["decimal", "measure"], units: [null, "L"], min: 0.8, max: 8.4 },
    unless: noSize,
    cues: [
      { after: /^# (?:cc |c c )?(?:to be (?:pedantic|exact|precise)|if you (?:want|must)|in the book|actually)/, score: 1.2 },
      {
        before: /\b(?:your|the) (?:engine|motor)$/,
        after: /^(?:#|four|six|straight|iron|alloy|petrol|diesel|twin|push|overhead)/,
        score: 1.1,
      },
    ],
    example: { heard: "there's your engine two point two iron block", value: 2.2, zone: "engine-bay" },
  },
  {
    name: "cylinders by their row",
    component: "engine",
    part: "cylinder",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 16 },
    value: cylinders,
    cues: [
      {
        after: /^(?:all )?in (?:a|one) (?:row|line)\b/,
        about: ["engine"],
        unless: /\bgauges?\b|\bseats?\b|\blamps?\b|\blights\b/,
        score: 1.2,
      },
      { after: /^in (?:a )?line\b/, zones: ["engine-bay"], score: 1.2 },
      {
        after: /^(?:pots|holes|lungs|jugs|barrels all)\b/,
        zones: ["engine-bay", "opening", "drive", "closing"],
        unless: /\bcaliper|\bcalliper|\bbrakes?\b|\bbolt/,
        score: 1.2,
      },
      { before: /\b(?:gauge|tester|compression|check(?:ed)?)\b[^.#]{0,20}\b(?:to|on|in|of|for|across) all$/, score: 1.2 },
      { before: /\bcylinders$/, after: /^(?:$|\.|and|all)/, unless: /\b(?:wheel|master|slave) cyl/, score: 1.0 },
      {
        // "A three litre six", "the two and a half litre four".
        before: /(?:^|\b(?:a|an|the|that|this|your)(?: \w+)?) #$/,
        said: /^(?:three|four|five|six|eight|ten|twelve|[34568]|1[02])$/,
        after: /^(?:$|\.|with\b|that\b|in\b|and\b|engine\b|motor\b|diesel\b|petrol\b|under\b|so\b)/,
        unless: /\bspeed\b|\binch\b|\bdoor\b|\bwheels?\b|\btires?\b|\bmiles\b|\bpounds\b|\bdollars\b|\band a half\b/,
        zones: ["engine-bay", "opening", "closing", "front", "documents"],
        score: 0.95,
      },
    ],
    example: { heard: "in there's your engine, four in a row", value: 4, zone: "engine-bay" },
  },
  {
    name: "oil pressure, oil named after it",
    component: "engine",
    part: "oil pressure",
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["integer", "decimal", "measure", "money"], units: [null, "psi", "lb", "GBP"], min: 4, max: 110 },
    unless: /\bquarts?\b|\bpints?\b|\bliters?\b|\bmiles\b|\bdollars\b|\bquid\b|\bchange[ds]?\b|\bdegrees\b|\bweight\b/,
    cues: [
      {
        after:
          /^(?:pounds |psi )?(?:showing |up )?(?:on|for|of) (?:the )?oil(?: (?:gauge|pressure|clock|needle))?(?: (?:cold|hot|warm|at|now|and|when|once|which)\b|$|\.)/,
        score: 1.35,
      },
      {
        after: /^(?:pounds |psi )?(?:at (?:a )?(?:hot |warm |cold )?(?:idle|tick ?over)|hot|cold|warm)\b[^.#]{0,16}\b(?:on|for) the oil\b/,
        score: 1.35,
      },
      {
        before: /\b(?:needle|oil gauge|oil clock)(?:'s| is| sits| sitting| points?)? (?:on|at|to)(?: about| around)?$/,
        after: /^(?:pounds )?(?:for|on) the oil\b/,
        score: 1.3,
      },
    ],
    carries: true,
    example: { heard: "sixty pounds on the oil gauge cold", value: 60, zone: "drive" },
  },
  {
    name: "oil pressure, between two figures",
    component: "engine",
    part: "oil pressure",
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["range"], units: [null, "psi", "lb"] },
    unless: /\bdegrees\b|\bmiles\b|\btires?\b|\bdollars\b|\bminutes?\b/,
    cues: [
      {
        after:
          /^(?:pounds |psi )?(?:or so |ish )?(?:when (?:it's|she's|he's) |once (?:it's|she's) )?(?:hot|warm|cold|warmed|at (?:a )?(?:hot )?idle|idling)\b/,
        zones: ["drive", "engine-bay", "cabin"],
        score: 1.1,
      },
      { before: /\boil(?: pressure)?(?:'s| is| sits| runs)?(?: about| around| at| between| from)*$/, score: 1.2 },
    ],
    value: (reading) => (reading.parts?.every((part) => part >= 5 && part <= 110) ? reading.value : undefined),
    circumstance: "oil pressure",
    example: { heard: "it'll lay down at twenty five or thirty when it's hot", value: 30, zone: "drive" },
  },
  {
    name: "compression, hole by hole",
    component: "engine",
    part: "compression",
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["integer", "measure"], units: [null, "psi", "lb"], min: 60, max: 550 },
    unless: /\btread\b|\bprice\b|\bmiles\b|\bdollars\b|\bmicrons?\b|\bdegrees\b/,
    cues: [
      {
        before:
          /\b(?:low(?:est)?|high(?:est)?|best|worst|weak(?:est)?|odd|good)(?: hole| one| cylinder| pot| of them| of the lot)?(?: was| is|'s| at| reads| read| came in at| about| around)*$/,
        zones: ["engine-bay", "documents"],
        score: 1.2,
      },
      {
        before:
          /\b(?:number|cylinder|hole|pot) (?:one|two|three|four|five|six|seven|eight)(?:'s| is| was| at| reads| read| came in at)*(?: about| around)?$/,
        zones: ["engine-bay", "documents"],
        score: 1.15,
      },
      { before: /\bwithin (?:\w+ )?(?:pounds )?of$/, about: ["engine/compression"], score: 1.3 },
    ],
    carries: true,
    example: { heard: "we put a gauge to it and the low hole was one fifty two", value: 152, zone: "engine-bay" },
  },
  {
    name: "date an engine was cast",
    component: "engine",
    part: "casting",
    attribute: "date",
    unit: null,
    need: { kinds: ["date"], units: [null] },
    value: (reading) => (/^\d{4}/.test(String(reading.value)) ? reading.value : undefined),
    cues: [
      {
        before:
          /\b(?:cast(?:ing)? (?:dates?|codes?|in|on)|poured|foundry|date on the block|block's dated|block is dated|engine's dated)\b[^#]{0,110}(?:#[^#]{0,20})?$/,
        score: 1.4,
      },
      { after: /^(?:is |was )?when (?:they|it) (?:poured|cast|was cast|was poured|made)\b/, score: 1.4 },
    ],
    circumstance: "casting",
    example: { heard: "there's your casting date, november the fifth of 69", value: "1969-11-05", zone: "engine-bay" },
  },
  {
    name: "overbore, bored so much",
    component: "engine",
    part: "overbore",
    attribute: "size",
    unit: "in",
    need: { kinds: ["integer", "measure"], units: [null, "in"], min: 0.01, max: 125 },
    cues: [
      {
        before: /\bbored(?: out| it)?(?: oh| aught| ought| by| to| an? extra| about)*$/,
        unless: /\bliters?\b|\bcubic\b|\bcc\b|\bout to #/,
        score: 1.3,
      },
      {
        before: /\b(?:engine|motor|block|bores?|it|he)(?:'s| is)?(?: been)?(?: out| over)(?: by| about)?$/,
        said: /\bthou|thousandths/,
        score: 1.3,
      },
    ],
    value: (reading) => {
      if (typeof reading.value !== "number") return undefined;
      const inches = reading.value < 1 ? reading.value : reading.value / 1000;
      return inches >= 0.01 && inches <= 0.125 ? inches : undefined;
    },
    example: { heard: "bored oh thirty and honed", value: 0.03, zone: "documents" },
  },
  {
    name: "oil that a sump holds",
    component: "engine",
    part: "oil",
    attribute: "size",
    unit: "said",
    need: { units: ["qt", "pt", "L", "gal"], min: 1, max: 60 },
    cues: [
      {
        before: /\b(?:sump|crankcase|oil pan|pan)(?: holds| takes| wants| needs|'ll take| will take)(?: about)?$/,
        unless: /\bgearbox|\btransmission|\baxle|\bdiff/,
        score: 1.45,
      },
    ],
    example: { heard: "the sump holds four and a half litres", value: 4.5, zone: "engine-bay" },
  },
  {
    name: "torque, foot pounds said after it",
    component: "engine",
    part: null,
    attribute: "torque",
    unit: "lb-ft",
    need: { kinds: ["integer", "measure"], units: [null], min: 40, max: 2000 },
    cues: [{ after: /^(?:on|in) (?:the )?(?:foot pounds?|pound feet)\b/, score: 1.35 }],
    example: { heard: "three seventy five horse and four eighty on the foot pounds", value: 480, zone: "engine-bay" },
  },
  {
    name: "pressure of a fuel pump",
    component: "fuel-system",
    part: "fuel pump",
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["integer", "decimal", "measure", "fraction"], units: [null, "psi", "lb"], min: 1, max: 100 },
    cues: [
      {
        before: /\b(?:fuel|lift|petrol|gas) pump\b[^.#]{0,30}\b(?:out|makes|making|at|gives|giving|puts|pushes|pushing)(?: about)?$/,
        score: 1.45,
      },
      { before: /\bfuel pressure(?:'s| is| at| of)*(?: about)?$/, score: 1.45 },
    ],
    example: { heard: "the fuel pump's putting out six pounds", value: 6, zone: "engine-bay" },
  },
  {
    name: "width of a radiator",
    component: "cooling",
    part: "radiator",
    attribute: "width",
    unit: "said",
    need: { units: ["in", "mm"], min: 12, max: 1200 },
    cues: [
      {
        before: /\b(?:radiator|rad)(?:'s| is|,)?(?: an?| the)?(?: big| wide)?$/,
        unless: /\b(?:hose|fan|cap)(?:'s| is|,)?(?: an?)? #/,
        score: 1.2,
      },
      { after: /^(?:inch )?(?:wide )?(?:radiator|rad)\b/, score: 1.2 },
    ],
    example: { heard: "radiator's a twenty six inch with three rows to it", value: 26, zone: "engine-bay" },
  },
] satisfies readonly Slot[];
