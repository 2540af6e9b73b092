import type { Slot } from "../slot.ts";

const volts = /\bvolts?\b|\bbattery\b|\balternator\b|\bmultimeter\b|\bmeter on\b/;
const notEngineSize =
  /\bvolts?\b|\bbattery\b|\bdollars?\b|\bbucks\b|\bpounds?\b|\bmicrons?\b|\bmils?\b|\bgallons?\b|\bto one\b|\bturns\b|\bhorse/;

/** The engine's size and make-up. */
export const engineSlots = [
  {
    name: "displacement with its unit",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "said",
    need: { units: ["cu in"], min: 40, max: 1000 },
    cues: [{ score: 1.2 }],
    example: { heard: "that's a hundred and seventy eight cubic inches", value: 178 },
  },
  {
    name: "displacement in cubic inches, by name",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cu in",
    need: { kinds: ["integer", "measure"], units: [null], min: 90, max: 700 },
    unless:
      /\bgas\b[^#]*, the #|\bregassed\b|\brefrigerant\b|\bfreon\b|\bair ?con\b|\b(?:first|low|top|reverse|second|third|fourth|fifth|final|gear|alternator|generator|dynamo|battery|starter|inverter|winch|compressor|thermostat|clutch|fan|crane|hitch|trailer)(?:'s| is| was)(?: an?)? #|# (?:\S+ ){1,5}# ~|# (?:\S+ ){1,5}# (?:crank|heads?|cam|casting|intake|stroke|outlet|horse)\b/,
    cues: [
      {
        guess: "cu in",
        about: ["engine", "fuel-system"],
        unless: /\bgears?\b|\bdollars|\bmiles|\bpsi\b|\btires?\b|\baxle|\bmicron/,
        score: 0.9,
      },
      {
        guess: "cu in",
        unless:
          /\bgears?\b|\bthermostat|\boctane|\bunleaded|\bpetrol|\blikes\b|\bvolts?\b|\bbattery|\btach\b|\bmetal\b|\blong wheelbase|\bdollars|\bmiles|\bpsi\b|\btires?\b|\baxle|\bmicron|\bcall\b|\bpapers/,
        score: 0.5,
      },
      {
        before: /(?:#|\b(?:got|has|have|with|had|stuck|put|dropped|is|runs))(?: a| an| the)?$/,
        after: /^(?:in it|in here|in this|in there|under the hood)\b/,
        unless: /\bgears?\b|\baxle|\brear end|\btires?\b|\bwheels?\b|\bpaid|\bdollars/,
        score: 1.05,
      },
      {
        zones: ["engine-bay"],
        before: /\b(?:so|okay|it's|that's|alright|right|here's|a|an|the|that|your|our|numbers|matching|original|factory|genuine)$/,
        unless: /\bdollars|\bmiles|\bpsi\b|\bhorse|\btorque\b|\bvolt/,
        score: 0.6,
      },

      {
        after:
          /^(?:(?:\w+ ){0,2}?(?:motor|engine|small block|big block)|v ?8|v ?eight|v ?6|v ?six|flathead|small block|big block|crate|stroker|four v|4 v|two v|ci|c i|cube|cubes|windsor|straight six|inline)\b/,
        unless: /\bdollars|\bmiles|\bmiles\b/,
        score: 1.15,
      },
      {
        before:
          /\b(?:badge says|bored to|stroked to|bored out to|makes (?:it|that) an?|out to an?|motor(?:'s| is) an?|engine(?:'s| is) an?|stuck an?|dropped an?|put an?|original|ticket says|numbers|matching|factory|genuine|real|got the|has the|with the|got a|has a|with a)$/,
        about: ["engine", "vehicle"],
        unless: /\bgears?\b|\bdollars|\bmiles|\brear end\b|\btorque\b/,
        score: 0.9,
      },
      { before: /\b(?:badge says|badge reads|emblem says|air cleaner says|build (?:sheet|ticket) says)(?: it's)?(?: a)?$/, score: 1.1 },
      {
        about: ["engine"],
        reach: "recent",
        before: /\b(?:it's|that's|is|was|a|an|the|that)(?: a| an| the)?$/,
        unless:
          /\bgears?\b|\bdollars|\bmiles|\bpsi\b|\bpounds?\b|\bhorse|\btires?\b|\bspline|\bpapers\b|\bcasting\b|\btorque\b|\bover\b|\bbarrel\b/,
        score: 0.8,
      },
      { after: /^(?:four|4|five|three|six) (?:speed|v)\b/, score: 1.0 },
    ],
    value: (reading, said) => (/\ds$|[a-z]s$/.test(said) ? undefined : reading.value),
    example: { heard: "it's got the 390 in it", value: 390 },
  },
  {
    name: "displacement in litres",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "L",
    need: { units: ["L"], min: 0.5, max: 16 },
    cues: [
      { after: /^(?:\w+ ){0,2}?(?:engine|motor|v ?8|v ?6|v ?six|v ?eight|four|six|straight|diesel|petrol|turbo|unit|lump)\b/, score: 1.3 },
      { about: ["engine"], score: 1.25 },
      { unless: /\boil\b|\bcoolant|\btank\b|\bboot\b|\btrunk\b|\bcapacity\b/, score: 1.0 },
    ],
    example: { heard: "a six point four liter engine", value: 6.4 },
  },
  {
    name: "displacement in litres, unit left out",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "L",
    need: { kinds: ["decimal", "measure"], units: [null], min: 0.8, max: 8.4 },
    cues: [
      {
        after:
          /^(?:\w+ ){0,1}?(?:four cylinder|4 cylinder|six cylinder|turbo|v ?6|v ?8|v six|v eight|diesel|t ?di|petrol|engine|motor|straight six|inline|on the badge)\b/,
        unless: volts,
        score: 1.15,
      },
      {
        before:
          /\b(?:badge says|engine(?:'s| is)(?: a| the)?|motor(?:'s| is)(?: a| the)?|see|it's the|this is the|has the|got the|with the)$/,
        after: /^(?:on the|$|four|\.|straight|six|in it|engine|you)/,
        unless: notEngineSize,
        about: ["engine", "vehicle", "trim"],
        score: 0.85,
      },
      { about: ["engine"], reach: "recent", before: /\b(?:the|a|it's|that's)(?: a| the)?$/, unless: notEngineSize, score: 0.8 },
      { before: /\bthe$/, unless: new RegExp(`${notEngineSize.source}|axle|gear|diff|ratio`), score: 0.45 },
      {
        before: /#[^.#]{0,30}$/,
        zones: ["opening", "closing"],
        unless: new RegExp(`${notEngineSize.source}|axle|gear|diff|ratio`),
        score: 0.6,
      },
      { zones: ["closing", "opening"], unless: new RegExp(`${notEngineSize.source}|axle|gear|diff|ratio|pounds|grand`), score: 0.45 },
    ],
    example: { heard: "under here is the engine it's the two point four turbo", value: 2.4 },
  },
  {
    name: "displacement in cc",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cc",
    need: { units: ["cc"], min: 200, max: 9999 },
    cues: [{ unless: /\bchamber/, score: 1.2 }],
    example: { heard: "it's 2,359 cc", value: 2359 },
  },
  {
    name: "displacement in cc, by name",
    component: "engine",
    part: null,
    attribute: "displacement",
    unit: "cc",
    need: { kinds: ["integer", "year"], units: [null], min: 600, max: 5200 },
    cues: [
      { before: /\b(?:bored|taken|opened|opened up|stretched|been) (?:out )?to(?: an?)?$/, score: 1.2 },
      {
        after:
          /^(?:(?:\w+ )?(?:four|4|six|6|three|twin|eight) cylinder|straight|flat|inline|overhead|pushrod|(?:\w+ ){0,4}?(?:engine|motor|lump|unit)\b)/,
        unless: /\brpm|\brevs|\bmiles|\bdollars|\bpounds|\bturning/,
        score: 1.1,
      },
      {
        zones: ["engine-bay"],
        before: /\b(?:the|it's the|that's the|it's an?)$/,
        unless: /\brpm|\brevs|\bmiles|\bdollars|\bpounds|\bturning|\bcold|\bidl/,
        score: 0.7,
      },
    ],
    value: (reading) => (typeof reading.value === "number" && reading.value % 50 === 0 ? reading.value : undefined),
    example: { heard: "Bonnet up. Eighteen hundred, four cylinder.", value: 1800 },
  },
  {
    name: "combustion chamber volume",
    component: "engine",
    part: "combustion chamber",
    attribute: "size",
    unit: "cc",
    need: { units: ["cc"], min: 25, max: 140 },
    cues: [
      { after: /^(?:cc )?(?:chamber|combustion|head)/, score: 1.3 },
      { about: ["engine/cylinder head"], score: 1.1 },
    ],
    example: { heard: "heads are iron sixty four cc chamber", value: 64 },
  },
  {
    name: "cylinders",
    component: "engine",
    part: "cylinder",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 16 },
    cues: [
      {
        after: /^(?:cylinders?|cyl|pot(?! (?:calip|callip|brake|disc|stopper|front|rear|set-?up))|banger)\b/,
        unless: /\b(?:wheel|master|slave) cyl|\bcall?ipers?\b/,
        score: 1.25,
      },
      { before: /\b(?:straight|inline|flat|in line)$/, unless: /\bflat (?:four|4) (?:inch|by)/, score: 1.15 },
      {
        before: /\b(?:(?<!off )all|on all|on)$/,
        after: /^(?:of them )?(?:(?:are |is |'re )?(?:firing|hitting|sparking|banging)|cylinders|holes|pots)\b/,
        unless: /\b(?:bolt|wheel|lug)\b/,
        score: 1.2,
      },
      {
        before: /\b(?:running|runs|firing|fires|hitting|hits|purring) on all$/,
        unless: /# (?:of them )?(?:corners|wheels|tires|paws|legs|shocks)\b/,
        score: 1.1,
      },
    ],
    value: (reading) => ([2, 3, 4, 5, 6, 8, 10, 12, 16].includes(reading.value as number) ? reading.value : undefined),
    example: { heard: "it's a four cylinder", value: 4 },
  },
  {
    name: "valves",
    component: "engine",
    part: "valve",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 64 },
    cues: [{ after: /^(?:valves?)\b/, unless: /\bvalve (?:cover|job|stem|cap)/, score: 1.2 }],
    example: { heard: "the twenty four valve motor", value: 24 },
  },
  {
    name: "main bearings",
    component: "engine",
    part: "main bearing",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 9 },
    cues: [
      {
        after: /^(?:main |mains )?(?:bearing|bearings)(?: crank| crankshaft| bottom| block| motor| engine)?\b/,
        about: ["engine"],
        score: 1.1,
      },
      { after: /^bearing crank/, score: 1.2 },
      { before: /\b(?:mains|main bearings)\b[^.#]{0,12}\ball$/, score: 1.15 },
      { after: /^(?:new )?mains?\b/, unless: /\bbolt main/, score: 1.0 },
    ],
    example: { heard: "it's the seven bearing crank", value: 7 },
  },
  {
    name: "bolts to a main cap",
    component: "engine",
    part: "main cap bolts",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 6 },
    cues: [{ after: /^bolt (?:main|mains|block|bottom)\b/, score: 1.25 }],
    example: { heard: "it's a four bolt main block", value: 4 },
  },
  {
    name: "overbore in thousandths",
    component: "engine",
    part: "overbore",
    attribute: "size",
    unit: "in",
    need: { units: [null, "in"], min: 0.01, max: 125 },
    cues: [
      { said: /\bover(?:bore|size)?$/, score: 1.3 },
      {
        after: /^(?:thou(?:sandths?)? )?over(?: bore)?\b(?! (?:the|there|here|it|ten|night|by|and|\d))/,
        unless: /\bgauge|\bmiles\b/,
        score: 1.2,
      },
    ],
    value: (reading) =>
      typeof reading.value !== "number"
        ? undefined
        : reading.unit === "in"
          ? reading.value
          : reading.value % 5 === 0
            ? reading.value / 1000
            : undefined,
    example: { heard: "a 350 motor thirty over", value: 0.03 },
  },
  {
    name: "compression ratio",
    component: "engine",
    part: "compression ratio",
    attribute: "ratio",
    unit: null,
    need: { kinds: ["ratio", "decimal", "integer"], units: [null], min: 5, max: 24 },
    cues: [
      { about: ["engine/compression"], after: /^to (?:one|1)\b/, score: 1.4 },
      { after: /^(?:to (?:one|1) )?compression\b/, score: 1.2 },
      { before: /\bcompression (?:ratio )(?:is|of|at)?$/, score: 1.1 },
    ],
    example: { heard: "it's nine point five to one compression", value: 9.5 },
  },
  {
    name: "oil capacity",
    component: "engine",
    part: "oil",
    attribute: "size",
    unit: "said",
    need: { units: ["pt", "qt", "L", "gal"], min: 1, max: 45 },
    cues: [{ about: ["engine/oil"], score: 1.3 }],
    example: { heard: "oil it takes thirteen pints with the filter", value: 13 },
  },
] satisfies readonly Slot[];
