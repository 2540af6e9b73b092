import type { Slot } from "../slot.ts";

/** Figures of what is underneath, told short: by the part alone, by comparison with the other end, or by where it sits. */
export const underneathShortSlots = [
  {
    name: "transfer case low range",
    component: "transmission",
    part: "transfer case",
    attribute: "ratio",
    unit: null,
    need: { kinds: ["ratio", "decimal"], units: [null], min: 1.9, max: 6 },
    cues: [
      { after: /^(?:to one )?(?:in |on )?(?:the )?(?:low|low range|low box|crawler)\b/, score: 1.6 },
      {
        before:
          /\b(?:low range|low box|crawler(?: gear)?|transfer (?:case|box)(?: low)?|reduction box)(?: range)?(?:'s| is)?(?: geared)?(?: at| to| an?)?$/,
        score: 1.6,
      },
      {
        before: /\b(?:transfer (?:case|box))\b[^#.]{0,40}\b(?:it's|that's|is)(?: an?)?$/,
        after: /^(?:to one|ratio|reduction)\b/,
        score: 1.5,
      },
    ],
    circumstance: "low range",
    example: { heard: "the transfer case is dry and that's two seventy two to one in low", value: 2.72, zone: "underside" },
  },
  {
    name: "rear end by its ring",
    component: "final-drive",
    part: null,
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["decimal", "fraction", "measure"], units: [null, "in"], min: 6.5, max: 12 },
    unless: /\bto one\b|\bratio\b|\bgears?\b(?! #)|\bquarts?\b|\bpints?\b/,
    cues: [
      {
        before:
          /\b(?:rear end|rear axle|back axle|axle|diff|differential|housing|third member|rear)(?:'s| is)(?: an?| the| that| your)(?: \w+)?$/,
        after: /^(?:inch )?(?:$|\.|out of|from|off|with|and|rear|diff|axle|limited|posi|so|it)/,
        zones: ["underside", "rear", "opening", "closing", "documents"],
        score: 1.2,
      },
      { after: /^(?:inch )?(?:ring gear|rear end|rear axle|housing|third member)\b/, unless: /\bto one\b/, score: 1.2 },
    ],
    example: { heard: "rear end's an eight point eight out of a cop car", value: 8.8, zone: "underside" },
  },
  {
    name: "axle narrowed by so much a side",
    component: "final-drive",
    part: "narrowing",
    attribute: "width",
    unit: "in",
    need: { units: ["in", "mm"], min: 0.5, max: 300 },
    cues: [
      {
        after: /^(?:inch |inches )?(?:a|per|each|off each|on each) (?:side|end)\b/,
        before: /\b(?:took|take|cut|narrowed|lost|shortened|brought)\b[^#]{0,30}$/,
        zones: ["underside", "rear"],
        about: ["final-drive"],
        score: 1.7,
      },
      { after: /^(?:inch |inches )?a side off (?:the )?(?:\w+ )?(?:housing|axle|rear end|tubes)\b/, score: 1.7 },
    ],
    circumstance: "off each side",
    example: { heard: "i took two inches a side off the axle housing", value: 2, zone: "underside" },
  },
  {
    name: "brake booster",
    component: "brakes",
    part: "booster",
    attribute: "diameter",
    unit: "said",
    need: { kinds: ["measure"], units: ["in", "mm"], min: 5, max: 300 },
    cues: [
      { after: /^(?:inch )?(?:dual |single |double |diaphragm |vacuum |power |brake )*(?:booster|servo)\b/, score: 1.7 },
      { before: /\b(?:booster|servo)(?:'s| is| it's)?(?: an?| about)?$/, score: 1.6 },
    ],
    example: { heard: "the master's a dual with an eight inch booster on it", value: 8, zone: "underside" },
  },
  {
    name: "rotors at the other end",
    component: "brakes",
    part: "rotor",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["fraction", "decimal", "integer"], units: [null], min: 7, max: 17 },
    position: "rear",
    unless: /\bpads?\b[^#]*#|\btires?\b|\btread\b|\bpsi\b|\bpounds\b|# (?:millimeters?|mm|mil)\b/,
    cues: [
      {
        before:
          /\brears? (?:discs? |rotors? |ones? |drums? )?(?:are|is)(?: solid| vented| plain)?(?: and)?(?: (?:a )?(?:hair|touch|bit|little|tad|shade|slightly|just|smidge))*(?: bigger| smaller| larger)?(?: at)?$/,
        about: ["brakes/rotor", "brakes/drum"],
        reach: "recent",
        score: 1.3,
      },
    ],
    example: {
      heard: "front rotors are fourteen inch and the rears are a hair bigger fourteen and a quarter",
      value: 14.25,
      position: "rear",
      zone: "underside",
    },
  },
  {
    name: "rotors at the other end, in millimeters",
    component: "brakes",
    part: "rotor",
    attribute: "diameter",
    unit: "mm",
    need: { kinds: ["integer"], units: [null], min: 200, max: 440 },
    position: "rear",
    unless: /\bmicrons?\b|\bmiles\b|\bdollars\b|\bpsi\b|\bpounds\b/,
    cues: [
      {
        before:
          /\brears?(?: discs?| rotors?| ones?| drums?)? (?:are|is|at)(?: solid| vented| plain)?(?: and)?(?: (?:a )?(?:hair|touch|bit|little|tad|shade|slightly|just))*(?: bigger| smaller| larger)?(?: at)?$/,
        about: ["brakes"],
        reach: "recent",
        score: 1.0,
      },
    ],
    example: {
      heard: "front discs are three hundred millimeters the rear discs are slightly smaller two ninety six",
      value: 296,
      position: "rear",
      zone: "underside",
    },
  },
  {
    name: "leaves each side",
    component: "suspension",
    part: "leaf spring",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 16 },
    cues: [{ after: /^(?:leaves|leafs|leaf) (?:a side|each side|per side|each|on each)\b/, score: 1.4 }],
    example: { heard: "leaf springs seven leaves each side", value: 7, zone: "underside" },
  },
  {
    name: "joints of a driveshaft, added up",
    component: "transmission",
    part: "joint",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 8 },
    cues: [{ zones: ["underside"], before: /\b(?:u joints?|joints?)\b[^#]{0,60}\bone (?:on|at) each end(?: of it)? so$/, score: 1.5 }],
    example: { heard: "new joints in the driveline one on each end so two", value: 2, zone: "underside" },
  },
  {
    name: "gears that are used",
    component: "transmission",
    part: "gears",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 3, max: 18 },
    cues: [
      {
        before: /\b(?:it's got|has|got) (?:\S+) (?:and|but) you(?:'ll)?(?: only| just)? use$/,
        after: /^(?:$|\.|of (?:them|those)|and|most|day)/,
        zones: ["drive", "cabin", "underside"],
        score: 1.4,
      },
    ],
    circumstance: "in use",
    example: { heard: "it's got six and you use five", value: 5, zone: "drive" },
  },
  {
    name: "clutch by its size alone",
    component: "transmission",
    part: "clutch",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["integer", "fraction", "decimal", "measure"], units: [null, "in"], min: 6, max: 16 },
    cues: [
      {
        before: /\bclutch\b[^#]{0,40}\b(?:it's|that's|is|was)(?: the| an?)$/,
        after: /^(?:inch )?(?:$|\.|not|one|and|because|so|now)/,
        unless: /\bmonths?\b|\byears?\b|\bspeed\b/,
        score: 1.2,
      },
    ],
    example: { heard: "the clutch is hydraulic it's the eleven.", value: 11, zone: "drive" },
  },
  {
    name: "body mounts",
    component: "body",
    part: "mount",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 24 },
    cues: [
      {
        after: /^(?:new |rubber |good |original |cab |poly )*(?:body|cab) (?:mounts|mount bushings|bushings|pucks|biscuits)\b/,
        score: 1.45,
      },
    ],
    example: { heard: "ten body mounts, rubber", value: 10, zone: "underside" },
  },
  {
    name: "frame rail by its section",
    component: "frame",
    part: null,
    attribute: "size",
    unit: "in",
    need: { kinds: ["dimensions"], units: [null, "in"] },
    cues: [
      {
        after:
          /^(?:inch )?(?:steel |box |boxed |rectangular |square )*(?:tube|tubing|box section|rails?|channel|box)\b(?! (?:bumper|rack))/,
        zones: ["underside", "engine-bay", "front", "rear"],
        score: 1.3,
      },
      { about: ["frame"], reach: "clause", after: /^(?:inch )?(?:tube|tubing|box|channel|steel)\b/, score: 1.4 },
    ],
    value: (reading) => {
      const [first, second] = reading.parts ?? [];
      return first !== undefined && second !== undefined && first <= 12 && second <= 12 ? reading.value : undefined;
    },
    example: { heard: "bent me new rails two by four tube", value: "2x4", zone: "underside" },
  },
  {
    name: "fuel line",
    component: "fuel-system",
    part: "fuel line",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["fraction", "measure"], units: ["in", null], min: 0.15, max: 0.9 },
    cues: [
      { before: /\b(?:fuel|gas|petrol|feed|return) (?:line|pipe|hose)s?(?:'s| is| are)?(?: all| new| steel| it's| that's)*$/, score: 1.4 },
      { after: /^(?:inch )?(?:steel |rubber |hard |stainless |braided )?(?:fuel|gas|petrol|feed) (?:line|pipe|hose)s?\b/, score: 1.4 },
    ],
    example: { heard: "the fuel line's three eighths", value: 0.375, zone: "underside" },
  },
] satisfies readonly Slot[];
