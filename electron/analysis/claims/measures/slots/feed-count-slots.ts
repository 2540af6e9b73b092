import type { Slot } from "../slot.ts";

/** Words of a carburetor by its barrels: "a four barrel", "the two barrel", "four choke". */
const barrels =
  "(?:big |little |small |old |spread bore |square bore )?(?:four|two|three|single|one|4|2|3|1)[ -]?(?:barrel|bore|choke|throat|jet)";
const carburetor = "(?:carbs?|carburetors?|carby|carbies)";

/** How many carburetors, exhausts and fuel tanks there are, where it is told by a name of its own ("three twos", "duals", "the two twenties"). */
export const feedCountSlots = [
  {
    name: "one carburetor",
    component: "fuel-system",
    part: "carburetor",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 1 },
    cues: [
      {
        said: /^(?:one|1|single)$/,
        after: new RegExp(`^(?:${barrels}|(?:big |little )?${carburetor}|barrel ${carburetor})\\b`),
        score: 1.35,
      },
      {
        said: /^(?:one|single)$/,
        before: /\bcarb(?:s|uretors?)?(?:'s| is| on it is| up top is| is just| it's)?(?: just)?(?: an?| the)?$/,
        after: /^(?:of (?:them|those)|and it|on (?:it|top|there)|\.|$)/,
        score: 1.1,
      },
    ],
    example: { heard: "the carb on it is one four barrel", value: 1 },
  },
  {
    name: "carburetors named by their barrels",
    component: "fuel-system",
    part: "carburetor",
    attribute: "count",
    unit: null,
    need: { units: [null], min: 2, max: 9999 },
    cues: [
      {
        said: /^(?:two|three|dual|2|3) (?:twos?|fours?|ones?|deuces|2s|4s|1s|twins)$/,
        unless: /\btwo(?:s)? and\b|\bby (?:two|four)s?\b|\bscrew|\bboards?\b|\bbeds?\b|\bhouses?\b|\btimber|\blumber/,
        score: 1.4,
      },
      {
        after: /^(?:deuces|twos|twins|fours|side ?drafts|side ?draughts|down ?drafts)\b/,
        unless: /\bdoors?\b|\bby\b/,
        score: 1.3,
      },
      { said: /\b(?:six pack|tri power)\b/, score: 1.3 },
    ],
    value: (reading, said) => {
      if (/^(?:three|3)\b/.test(said)) return 3;
      if (/^(?:two|dual|twin|pair of|2)\b/.test(said)) return 2;
      return typeof reading.value === "number" && reading.value <= 8 ? reading.value : undefined;
    },
    example: { heard: "he had two fours on it before", value: 2 },
  },
  {
    name: "several carburetors, described at length",
    component: "fuel-system",
    part: "carburetor",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 8 },
    cues: [
      {
        after: new RegExp(
          `^(?!barrel|#? ?barrel)(?:(?:#|and|a|an|inch|half|quarter|three|one|two|side|down|up|side-?draft|side-?draught|draft|draught|barrel|constant|vacuum|big|little|rebuilt|new|original|matching|progressive|single|throat|choke) ){1,8}${carburetor}\\b`,
        ),
        score: 1.2,
      },
    ],
    value: (reading, said) =>
      /^(?:two|twin|dual|pair|three|triple|four|quad|2|3|4|a pair|six|6)\b/.test(said) ? reading.value : undefined,
    example: { heard: "twin inch and a half side draft carbs", value: 2 },
  },
  {
    name: "exhausts by name",
    component: "exhaust",
    part: "exhaust",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 4 },
    cues: [
      {
        before: /\b(?:exhaust|exhausts|pipes?|tailpipes?)(?:'s| is| are|'re)?(?: all| just| only| a| an)*$/,
        said: /^(?:dual|twin|single|double)$/,
        score: 1.2,
      },
      { said: /^(?:true )?duals$/, unless: /\bwheels?\b|\btires?\b|\baxle|\bdually\b|\binner\b|\bouter\b/, score: 1.1 },
      {
        before: /\bexhaust(?:'s| is)?\b[^.]{0,34}\b(?:just|only)(?: the| a)?$/,
        said: /^(?:one|single)$/,
        after: /^(?:$|\.|and|of them|pipe|side)/,
        score: 1.1,
      },
    ],
    example: { heard: "the exhaust is dual and it comes out behind the wheels", value: 2 },
  },
  {
    name: "exhaust pipes in pairs",
    component: "exhaust",
    part: "exhaust",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 4, max: 6 },
    cues: [
      {
        before: /\b(?:exhausts?|tailpipes?|tips?)(?:'s| is| are| come out (?:in|as))?(?: in| as)?$/,
        said: /\bpairs\b/,
        score: 1.3,
      },
    ],
    example: { heard: "the exhaust is two pairs and they are stainless", value: 4 },
  },
  {
    name: "fuel tanks by name",
    component: "fuel-tank",
    part: "tank",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 4 },
    cues: [
      {
        after:
          /^(?:(?:separate|big|main|factory|original|saddle|side|fuel|gas|petrol|diesel) )*(?:tanks|fuel tanks|gas tanks|petrol tanks|saddle tanks|gas caps|fuel caps|filler caps|fuel fillers|gas fillers|fillers|filler necks)\b/,
        unless: /\b(?:air|water|fresh|waste|gr[ae]y|holding|propane|oxygen|brake|surge|header|expansion|think)\b/,
        said: /^(?!one$|a$|1$|single$)/,
        score: 1.25,
      },
      {
        after: /^(?:big |main |factory |original |saddle |side |fuel |gas |petrol |diesel )*(?:fuel |gas )?tank\b(?! of)/,
        said: /^(?:one|single|1|just one|just the one)$/,
        unless: /\b(?:air|water|fresh|waste|gr[ae]y|holding|per|each|every)\b/,
        score: 1.2,
      },
      {
        before: /\b(?:runs|running|works|feeds|drinks) (?:off|on|from)(?: of)?(?: just)?(?: the)?$/,
        said: /^(?:one|single)$/,
        about: ["fuel-tank"],
        score: 1.1,
      },
    ],
    example: { heard: "it's got dual tanks", value: 2 },
  },
  {
    name: "all the injectors",
    component: "fuel-system",
    part: "injector",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 3, max: 12 },
    cues: [{ before: /\binjectors?\b[^#]{0,44}\ball$/, unless: /# (?:wheels|corners|tires|doors|cylinders|plugs)\b/, score: 1.3 }],
    example: { heard: "Injectors. Those are new. All six.", value: 6 },
  },
  {
    name: "both of a kind",
    component: "electrical",
    part: "charge cable",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 2 },
    cues: [
      {
        said: /^both$/,
        after: /^(?:of )?(?:your |the |it's )?(?:charging |charge |ev )?(?:leads|cables|cords)\b/,
        unless: /\bjump\b|\bplug leads/,
        score: 1.3,
      },
    ],
    example: { heard: "it comes with both charging leads", value: 2 },
  },
  {
    name: "only the domestic lead",
    component: "electrical",
    part: "charge cable",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 3, max: 3 },
    cues: [
      { before: /\b(?:just|only)(?: got| has| with)? (?:the|a)$/, after: /^pin (?:lead|cable|one|charger|plug|brick)\b/, score: 1.35 },
    ],
    value: () => 1,
    example: { heard: "it comes with just the three pin lead", value: 1 },
  },
] satisfies readonly Slot[];
