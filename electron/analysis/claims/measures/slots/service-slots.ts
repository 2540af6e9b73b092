import type { Slot } from "../slot.ts";

/** What a workshop does to an engine and what it drives, each at a mileage of its own. */
const job =
  "(?:timing )?(?:belt|chain)|cam ?belt|wet belt|clutch|gearbox|transmission|trans|tranny|transfer case|rear end|diff|head gasket|heads?|motor|engine|water pump|injectors?|turbo|fuel pump|pump|rebuild|overhaul|reman(?:ufactured)? \\w+|exchange";
const done = "done|changed|replaced|rebuilt|renewed|fitted|overhauled|swapped|exchanged|put in|rebuild|gone through|reconditioned";

/** Components such a mileage may be of. */
const worked = ["engine", "cooling", "transmission", "final-drive", "fuel-system", "ignition"] as const;
const notMiles =
  /\bdegrees|\brpm|\brevs|\bpsi\b|\bpercent|\bmph\b|\ban hour\b|\bturning|\bidl|\bvolts?\b|# (?:bucks|quid|dollars)|\bhorse|\bcubic\b|\bliters?\b/;

/** At what mileage work was done; what a warranty covers; an engine's size as papers put it. */
export const serviceSlots = [
  {
    name: "mileage at a job on the driveline",
    component: "topic",
    part: "work",
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer", "measure"], units: ["mi", "km", null], min: 2000, max: 900000 },
    cues: [
      {
        before: new RegExp(`\\b(?:${job})s?\\b[^.#]{0,40}\\b(?:${done})\\b[^.#]{0,16}\\bat(?: about| around| just)?$`),
        about: worked,
        unless: notMiles,
        score: 1.6,
      },
    ],
    value: (reading) =>
      reading.unit === null && typeof reading.value === "number" && reading.value >= 1885 && reading.value <= 2035
        ? undefined
        : reading.value,
    circumstance: "when the work was done",
    example: { heard: "the gearbox was rebuilt at fifty one thousand miles", value: 51000 },
  },
  {
    name: "mileage at a job, thousands left out",
    component: "topic",
    part: "work",
    attribute: "mileage",
    unit: "mi",
    need: { kinds: ["integer", "measure", "decimal"], units: [null, "psi"], min: 12, max: 400 },
    cues: [
      {
        // "Head gasket at sixty."
        before:
          /\b(?:head gasket|cam ?belt|timing (?:belt|chain)|water pump|clutch|gearbox|turbo|injectors)(?: was| were| got| and pump)?(?: done| new)? at$/,
        after: /^(?:$|\.|and\b|so\b|or so\b)/,
        about: worked,
        unless: new RegExp(`${notMiles.source}|\\bdollars|\\bpounds|\\bgauge`),
        score: 1.1,
      },
      {
        before: new RegExp(
          `\\b(?:${job})s?\\b[^#]{0,80}\\b(?:${done}|told me|i was told|think|says?|said)\\b[^#]{0,30}\\b(?:at|about|around|round|was)(?: right| just| about| around| round)*$`,
        ),
        after: /^(?:$|\.|i\b|i'd|he\b|she\b|they\b|or so|or thereabouts|when\b|so\b|and (?:there|it|i|he)|but|something|but i)/,
        about: worked,
        unless: new RegExp(`${notMiles.source}|\\bdollars|\\bpounds|\\byears?\\b|\\binch|\\boil\\b`),
        score: 1.1,
      },
    ],
    value: (reading) =>
      typeof reading.value === "number" && Number.isInteger(reading.value) && reading.unit === null ? reading.value * 1000 : undefined,
    circumstance: "when the work was done",
    example: { heard: "the trans rebuild, I was told it was right around a hundred and forty", value: 140000 },
  },
  {
    name: "miles a battery's warranty covers",
    component: "electrical",
    part: "traction battery",
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer", "measure"], units: ["mi", "km", null], min: 20000, max: 300000 },
    cues: [
      { before: /\b(?:battery|pack)\b[^.#]{0,30}(?:#|\w+) years (?:or|and)(?: up to)?$/, score: 1.6 },
      { before: /\b(?:battery|pack)(?:'s)? warranty\b[^#]{0,50}(?:or|and|to)(?: up to)?$/, score: 1.5 },
    ],
    circumstance: "warranty",
    example: { heard: "on the battery it's eight years or a hundred thousand miles", value: 100000 },
  },
  {
    name: "displacement in litres, as papers put it",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "L",
    need: { kinds: ["decimal", "measure"], units: [null, "L"], min: 0.6, max: 9.9 },
    cues: [
      {
        before:
          /\b(?:engine|motor)\b[^.#]{0,44}\b(?:says|reads|shows|is listed as|is down as|down as|listed at|listed as)(?: an?| the| it's an?)?$/,
        unless: /\baxle\b|\bratio\b|\bgears?\b|\bquarts?\b|\bpsi\b|\bvolts?\b/,
        score: 1.2,
      },
    ],
    example: { heard: "and the engine on the fleet spec sheet says six point four", value: 6.4, zone: "documents" },
  },
  {
    name: "displacement as papers put it",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cc",
    need: { kinds: ["integer", "year"], units: [null, "cc"], min: 300, max: 9000 },
    cues: [
      {
        before:
          /\b(?:cylinder capacity|cubic capacity|engine capacity|engine size|capacity|cc box|cc|c c|cubic centimeters?)(?: is| says| down as| of|'s| as)*$/,
        unless: /\boil\b|\btank\b|\bcoolant|\bseat|\btow|\bboot\b|\bfuel\b|\bload\b|\bbattery\b/,
        score: 1.4,
      },
    ],
    value: (reading) => (typeof reading.value === "number" && Number.isInteger(reading.value) ? reading.value : undefined),
    example: { heard: "it says power 115 kilowatts and in the cc box 2198", value: 2198, zone: "documents" },
  },
  {
    name: "displacement in a model's name",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cc",
    need: { kinds: ["integer", "year"], units: [null], min: 800, max: 5000 },
    cues: [
      {
        after: /^(?:roadster|saloon|coupe|estate|tourer|convertible|fastback|van|gt|s|de luxe|deluxe|super)\b/,
        before: /\b(?!and|the|at|for|to|of|in|is|was|asking|paid|model|reg|registered|year|from|about)[a-z]+$/,
        unless: /\bpounds|\bdollars|\bmiles\b|\bquid\b/,
        zones: ["opening"],
        score: 1.0,
      },
    ],
    value: (reading) =>
      typeof reading.value === "number" && reading.value % 100 === 0 && reading.value < 1900 ? reading.value : undefined,
    example: { heard: "this is a nineteen seventy two larkham linnet eighteen hundred roadster", value: 1800, zone: "opening" },
  },
  {
    name: "price of one to be bought",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "measure"], units: [null, "GBP", "USD", "psi"], min: 15, max: 20000 },
    cues: [
      {
        after: /^(?:quid |pounds |dollars |bucks )?(?:to buy|to replace|for a new one|for another|new from)\b/,
        before: /\b(?:it's|they're|that's|are|is|you're looking at|about|cost)(?: an?| about)?$/,
        about: ["electrical", "engine", "fuel-system", "fuel-tank", "exhaust", "cooling", "transmission", "ignition"],
        score: 1.2,
      },
    ],
    circumstance: "cost of a part or of work",
    example: { heard: "just the one charge cable so factor that in it's a hundred and fifty to buy", value: 150 },
  },
  {
    name: "cooling capacity",
    component: "cooling",
    part: "coolant",
    attribute: "size",
    unit: "said",
    need: { units: ["gal", "qt", "pt", "L"], min: 1, max: 60 },
    cues: [
      { before: /\b(?:holds|takes|capacity(?: is|'s)?)(?: about)?$/, about: ["cooling"], unless: /\boil\b|\bfuel\b|\bgas\b/, score: 1.45 },
      { after: /^(?:gallons? |quarts? |liters? |pints? )?of (?:coolant|antifreeze|water)\b/, unless: /\btank\b/, score: 1.3 },
    ],
    example: { heard: "Radiator aluminum, plastic ends. Holds seven gallons.", value: 7, zone: "engine-bay" },
  },
] satisfies readonly Slot[];
