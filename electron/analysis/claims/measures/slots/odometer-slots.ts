import type { Slot } from "../slot.ts";

const notMiles = /\bdollars?\b|\bbucks\b|\bquid\b|\bpounds?\b|\basking\b|\bprice\b|\bpsi\b|\bhorse/;

/** Odometer, range and the vehicle's number. */
export const odometerSlots = [
  {
    name: "electric range",
    component: "vehicle",
    part: "range",
    attribute: "mileage",
    unit: "said",
    need: { units: ["mi", "km"], min: 20, max: 600 },
    cues: [
      {
        before:
          /\b(?:it'll|it will|she'll|you'll|will|should|it still|still) (?:still )?(?:do|show|shows|get|go|give you|does)\b[^.#]{0,20}$/,
        score: 1.2,
      },
      { before: /\b(?:range|guess o meter|guessometer|full charge|charged up|charge it|hundred percent)\b[^.#]{0,80}$/, score: 1.3 },
      {
        after:
          /^(?:miles? |kilometers? )?(?:of range|range|on a (?:full )?charge|to a charge|a charge|per charge|in (?:the )?(?:summer|winter|warm|cold)|on a warm day|on a cold day)\b/,
        score: 1.4,
      },
    ],
    circumstance: "range",
    carries: true,
    example: { heard: "on a full charge it'll do 210 miles", value: 210 },
  },
  {
    name: "electric range, unit left out",
    component: "vehicle",
    part: "range",
    attribute: "mileage",
    unit: "mi",
    need: { kinds: ["integer"], units: [null], min: 40, max: 600 },
    unless: /\bload range\b|\bpounds\b/,
    cues: [
      { before: /\brange(?:'s| is| says| was| of| shows| reads)?\b[^.#]{0,30}$/, unless: /\bpercent|\bvolts|\bkilowatt/, score: 1.0 },
      { after: /^(?:of range|on a (?:full )?charge)\b/, score: 1.2 },
      {
        // "Range, it's saying one ninety two, and the brochure'll tell you two hundred and eleven."
        before: /\brange\b.{0,90}\b(?:brochure|book|handbook|sticker|maker|makers|advert|rating|rated|official)\b[^#]{0,30}$/,
        unless: /\bpercent|\bvolts|\bkilowatt|\bdollars|\bpounds/,
        score: 1.0,
      },
    ],
    circumstance: "range",
    example: { heard: "it's showing a range of 195 today", value: 195 },
  },
  {
    name: "mileage when a part was done",
    component: "topic",
    part: "work",
    attribute: "mileage",
    unit: "said",
    value: (reading) =>
      reading.unit === null && typeof reading.value === "number" && reading.value >= 1885 && reading.value <= 2035
        ? undefined
        : reading.value,
    need: { kinds: ["integer", "measure", "decimal"], units: ["mi", "km", null], min: 500, max: 900000 },
    cues: [
      {
        before: /\bat(?: about| around)?$/,
        said: /thousand|,\d{3}|\d{5}|\dk$/,
        about: ["engine", "cooling", "transmission", "brakes", "suspension", "exhaust"],
        reach: "clause",
        unless: /\bgauge|\bpressure|\bidl|\bturning|\brpm|\brevs|\bshift/,
        score: 1.0,
      },
      {
        before:
          /\b(?:done|replaced|changed|rebuilt|fitted|installed|new|renewed|serviced|overhauled|redone|swapped|put in|belt|off of it)\b[^.]{0,34}\b(?<!up )(?:at|about)(?: about| around)?$/,
        unless: new RegExp(`${notMiles.source}|hour meter|\\bup at #|\\bnext one[^#]*#|\\bdue\\b[^#]*#`),
        score: 1.3,
      },
      { after: /^(?:miles |kilometers )?(?:ago|back)\b/, score: 1.3 },
      {
        before: /\b(?:done|new|replaced|changed|clutch|rebuilt|since)(?: about| around| maybe)?$/,
        after: /^miles (?:ago|back|since)/,
        score: 1.2,
      },
    ],
    circumstance: "when the work was done",
    example: { heard: "the clutch was done about 3,000 miles ago", value: 3000 },
  },
  {
    name: "distance since",
    component: "vehicle",
    part: "distance since work",
    attribute: "mileage",
    unit: "said",
    need: { units: ["mi", "km"], min: 1, max: 100000 },
    unless: /\bodometer\b|\bodo\b|\bclock\b|\bspeedo|\bmileometer/,
    cues: [
      {
        after:
          /^(?:miles |kilometers )?(?:on (?:it|them|this|that|the \w+) )?(?:since|on (?:the|this|that|these) (?:build|rebuild|motor|engine|tires|brakes|clutch))\b/,
        unless: /\bon the build\b/,
        score: 1.2,
      },
    ],
    circumstance: "since the work",
    example: { heard: "it's been 400 km since the oil change", value: 400 },
  },
  {
    name: "mileage in the papers",
    component: "title",
    part: "recorded mileage",
    attribute: "mileage",
    unit: "mi",
    need: { units: ["mi", "km", null], min: 500, max: 900000 },
    value: (reading) =>
      typeof reading.value === "number" && reading.unit === null && reading.value >= 1900 && reading.value <= 2035
        ? undefined
        : reading.value,
    cues: [
      {
        before: /\b(?:service|serviced|mots?|ministry test)\b(?: (?!at\b)\S+){0,4} at(?: about| around)?$/,
        unless: /\bdollars|\bpounds|\bquid|\bpressure|\brpm|\bdegrees|\bo'clock/,
        score: 1.2,
      },
      {
        said: /thousand/,
        about: ["title"],
        zones: ["documents"],
        unless:
          /\bapplication|\btitle|\bdollars|\bpounds|\bquid|\basking|\bprice|\bbook (?:value|on)\b|\b(?:adds?|added|totals?|totall?ed|comes?|came) (?:up )?(?:to )?#|\bspent|\breceipts? (?:for|total)|\bodometer|\bdone at|\brebuilt|\breplaced/,
        score: 1.2,
      },
      {
        before:
          /\b(?:stamped (?:up )?(?:to|at)|service book|stamps? (?:stop )?(?:at|to)|last (?:mot|service|stamp)|mot (?:at|says))\b[^.#]{0,50}$/,
        unless: /\bdollars|pounds/,
        score: 1.2,
      },
    ],
    circumstance: "where the stamps stop",
    example: { heard: "a service book stamped up to 31,000", value: 31000 },
  },
  {
    name: "mileage",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "said",
    need: { units: ["mi", "km"], min: 1000, max: 999999 },
    cues: [
      { said: /\b(?:actual|original|genuine)\b/, score: 1.2 },
      {
        unless:
          /\ban hour\b|\bper hour\b|\bper gallon\b|\bto the gallon\b|\bdelivery\b|\bdeliver\b|\baway\b|\bevery\b|\bwarranty\b|\bgood for\b|\bgo another\b|\bup the road\b|\bdrove\b|\bdriven\b|\bdrive it\b|\btrip\b|\bmiles (?:from|to|round)\b|\btowed\b|\bto a tank\b|\ba tank\b|\ba year\b|\bper year\b|\bintervals?\b|\bshop\b|\bcame from\b|\b(?:it'll|it will|she'll|you'll) (?:still )?(?:do|show|get|go|give)\b/,
        score: 1.05,
      },
    ],
    example: { heard: "it's showing 58,412 miles", value: 58412 },
  },
  {
    name: "low mileage",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "said",
    need: { units: ["mi", "km"], min: 5, max: 999 },
    cues: [
      { before: /\b(?:odometer|odo|mileometer|clock|speedo|showing|shows|reads|reading)\b[^.#]{0,25}$/, score: 1.0 },
      { after: /^(?:on the (?:clock|odometer|odo|dash|display)|from new|since new)\b/, score: 1.0 },
    ],
    example: { heard: "the odometer is showing 412 miles", value: 412 },
  },
  {
    name: "mileage, unit left out",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer", "measure", "year", "decimal"], units: [null], min: 1000, max: 999999 },
    // "It's a 2020" names its year.
    unless:
      /\b(?:it's|it is|she's|car's|this is|that's|car is) an? #|\brev counter\b|\btach\b|\bturning\b|\brpm\b|\brevs\b|\b(?:miles|kilometers) an hour\b|\bm ?p ?h\b|~ on the (?:speedo|clock)\b[^#]*#|\bhour meter\b|\bon at #|\bclock(?:'s| is)? (?:stuck|stopped|slow|fast|right|wrong|dead)\b|\b(?:book|estimate|guide)(?:'s| is)? (?:at|is|on) #|\b(?:offered|priced|listed|advertised|estimated|reserved) (?:at|for) (?:\w+ )?#/,
    cues: [
      { after: /^and (?:some )?change\b/, unless: /\bdollars|\basking|\bprice|\bpaid|\bspent/, score: 1.0 },
      {
        about: ["odometer"],
        reach: "recent",
        said: /\bthousand\b/,
        before: /(?:^|\.)$/,
        unless: /\bdollars|\basking|\bprice|\bpounds/,
        score: 0.9,
      },
      { before: /\bkilomet(?:er|re)s?\b[^.#]{0,20}$/, said: /\bthousand\b|,\d{3}/, unless: /\bper\b|\ban hour/, score: 1.3 },
      {
        about: ["odometer"],
        before: /\b(?:call it|that's|which is|comes to|works out at)(?: about| around)?$/,
        unless: /\bdollars|\basking|\bprice/,
        score: 1.05,
      },
      {
        before: /\b(?:it says|says|reads|showing|shows)$/,
        zones: ["cabin"],
        unless: /\bdollars|\brpm|\btach|\bgauge|\bpsi|\brange\b/,
        score: 0.75,
      },
      {
        before: /\b(?:has|got|with|about|showing|had|have|only)$/,
        after: /^on (?:it|her|him|them|the (?:car|truck|clock|van))\b/,
        unless: /(?:\basking|\bprice|\bspent)[^#]*# [^#]+ #|\b(?:i|we|he|they)(?:'ve| have| had)? (?:got|had|have|has|put) #/,
        score: 1.1,
      },
      {
        before:
          /\b(?:odometer|odo|mileometer|milometer|mileage|(?<!on the )clock|(?<!# )miles|speedo|speedometer)(?:'s| is| has| it)?\b[^.#]{0,45}$/,
        unless:
          /\bdollars|\basking|\bprice|\boffered|\blisted|\byours\b|\bup for\b|\bpercent|\brpm|\bhorse|\bfor sale|rev counter|\btach|\bprice|\basking|\bglass|\b(?:number|list|money|ask)(?:'s| is)? #|\b(?:i|we) (?:got|had|have) #|\btires?\b(?![^#]*\b(?:odometer|odo|mileage|miles|clock|speedo)\b[^#]*#)|\bgoes to #/,
        score: 1.15,
      },
      {
        after:
          /^(?:and (?:some )?change )?(?:on the (?:clock|clocks|odometer|odo|dash|dial|miles|speedo|display|screen|cluster)|(?:original|actual|genuine)(?! (?:\w+ )?(?:panels?|parts?|ones?|wings?|doors?|steel|items?|units?|paint|equipment|fenders?|bonnet|hood|glass|seats?)\b)|from new|and some change on)\b/,
        score: 1.25,
      },
      {
        before: /\b(?:showing|shows|reads|reading|it's got|rolled over|done|covered|only)(?: only| just| about| around)?$/,
        unless: /\bdollars|\basking|\bprice|\brpm|\bgauge|\bpsi|\btread|\bpressure|\bthirty seconds|\breceipts?\b/,
        score: 0.8,
      },
      { after: /^[^.#]{0,45}\b(?:actual|original|genuine) miles\b/, score: 1.0 },
      {
        about: ["odometer"],
        reach: "recent",
        before: /\b(?:says|showing|shows|reads|it's|at|is|was|had|there you are|there)(?: a| about| around| just)?$/,
        unless: /\bdollars|\basking|\bprice|\brpm/,
        score: 1.15,
      },
      {
        about: ["odometer"],
        reach: "clause",
        unless: /\bin #|rev counter|\btach|\bturning\b|\bprice|\basking|\bglass|\bdollars|\bmight come off/,
        score: 1.05,
      },
    ],
    value: (reading, said) =>
      typeof reading.value === "number" &&
      reading.value >= 1000 &&
      !/[a-z]s$|\ds$/.test(said) &&
      // "It says seventy nine" is a year or seventy nine of something, never 1979 miles.
      !(reading.kind === "year" && !/\d{4}|hundred|thousand/.test(said))
        ? reading.value
        : undefined,
    example: { heard: "the odometer says 58,412", value: 58412 },
  },
  {
    name: "mileage by its size",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "said",
    need: { kinds: ["integer"], units: [null], min: 10000, max: 400000 },
    unless: notMiles,
    cues: [
      { zones: ["cabin", "drive"], score: 0.5 },
      { after: /^on (?:it|her|him|this one)\b/, zones: ["opening", "closing"], score: 0.9 },
    ],
    value: (reading, said) =>
      typeof reading.value === "number" && /thousand|hundred|\d{5}|\d,\d{3}|\d \d/.test(said) && !/[a-z]s$|\ds$/.test(said)
        ? reading.value
        : undefined,
    example: { heard: "let's see, it's 121,400 and every light goes off", value: 121400, zone: "cabin" },
  },
  {
    name: "mileage on another counter",
    component: "odometer",
    part: null,
    attribute: "mileage",
    unit: "mi",
    need: { units: [null], min: 1000, max: 999999 },
    cues: [
      {
        before: /\b(?:title application|application|paperwork|title|report)\b[^.#]{0,50}\b(?:says|reads|shows)$/,
        unless: /\bdollars|\b(?:19|20)\d\d\b/,
        score: 0.9,
      },
    ],
    value: (reading, said) => (reading.kind === "year" && !/hundred|thousand/.test(said) ? undefined : reading.value),
    example: { heard: "on the title application it says 92,157", value: 92157 },
  },
  {
    name: "digits of the odometer",
    component: "odometer",
    part: "digits",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 5, max: 6 },
    cues: [
      { after: /^digits?\b/, unless: /\b(?:last|first|final|vin|chassis|serial|engine number|block|plate) (?:\w+ )?#|\bmatch/, score: 1.2 },
      { after: /^(?:wheels?|numbers|figures) (?:odometer|clock|mileometer)\b/, score: 1.3 },
      {
        before: /\b(?:odometer|odo|clock|mileometer|speedo|miles?)\b[^.]*$/,
        after: /^(?:wheels?|numbers|figures)\b/,
        zones: ["cabin", "documents", "drive"],
        score: 1.25,
      },
      {
        about: ["odometer"],
        reach: "recent",
        after: /^(?:wheels?|numbers|figures)\b/,
        zones: ["cabin", "documents", "drive"],
        score: 1.25,
      },
    ],
    example: { heard: "it's a five digit odometer", value: 5 },
  },
  {
    name: "hours",
    component: "odometer",
    part: "hour meter",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer", "duration"], units: [null], min: 50, max: 60000 },
    cues: [
      { before: /\bhour meter\b[^.#]{0,30}$/, score: 1.3 },
      {
        said: /\bhours?$/,
        before: /\b(?:engine|pto|p t o|meter|idle|generator)\b[^.#]{0,40}$/,
        unless: /\bwork|\blabou?r|\bdrive\b|\baway\b/,
        score: 1.2,
      },
      { before: /\bhours(?:'s| is| are| on it| at| about| it says)+$/, unless: /\bopen\b|\bwork|\bdrive\b/, score: 1.3 },
      { before: /# idle (?:hours )?(?:is|are|'s|at)$/, score: 1.3 },
      {
        after: /^hours?\b(?! (?:of )?(?:work|labor|labour|drive|away|later|ago|polishing))/,
        before: /\b(?:engine|pto|hour meter|idle|shows|showing|reads|on it|with)\b[^.#]{0,40}$/,
        score: 1.1,
      },
    ],
    example: { heard: "the hour meter reads 4,200 hours", value: 4200 },
  },
  {
    name: "vehicle identification number",
    component: "vin",
    part: null,
    attribute: "type",
    unit: null,
    need: { kinds: ["vin"], units: [null] },
    cues: [{ score: 1.3 }],
    example: { heard: "the VIN is 1M8GDM9AXKP042788", value: "1M8GDM9AXKP042788" },
  },
] satisfies readonly Slot[];
