import type { Slot } from "../slot.ts";

const notEnergy =
  /\bpercent|\bmiles?\b|\bdegrees|\bmph\b|\bminutes|\bhours?\b|\bmonths?\b|\bdays?\b|\bpounds?\b|\bdollars|\bgallons?|\bliters?|\bkeys\b|\bbolts?\b/;

/** What an electric vehicle stores and takes in, where its unit is left to the listener; and the loads of a twelve-volt system. */
export const electricDriveSlots = [
  {
    name: "usable battery energy, unit left out",
    component: "electrical",
    part: "traction battery",
    attribute: "size",
    unit: "kWh",
    need: { kinds: ["integer", "decimal", "measure"], units: [null, "kWh"], min: 6, max: 220 },
    cues: [
      {
        after:
          /^(?:(?:is|are|of (?:it|that)|of them|net) )?(?:usable|useable|net|that you (?:get|can)|you (?:get to|can|actually) (?:use|get at|have))\b/,
        unless: notEnergy,
        score: 1.25,
      },
      {
        before:
          /\b(?:usable|useable|net|(?:can|get to|actually) (?:get at|use|have|actually use)|of which)(?: it)?(?: is|'s| are|,)?(?: about)?$/,
        unless: notEnergy,
        about: ["electrical"],
        score: 1.15,
      },
      { before: /\b(?:#|kilowatts?)\b[^.]{0,50}\bwhat you (?:can|actually|get to) (?:get at|use|get|have)(?: is|'s)$/, score: 1.2 },
    ],
    circumstance: "usable",
    example: { heard: "the pack is sixty kilowatt hours gross of which 57 are usable", value: 57 },
  },
  {
    name: "battery energy, unit left out",
    component: "electrical",
    part: "traction battery",
    attribute: "size",
    unit: "kWh",
    need: { kinds: ["integer", "decimal"], units: [null], min: 6, max: 220 },
    cues: [
      { after: /^(?:(?:is|are) )?(?:gross|nominal)\b/, unless: notEnergy, about: ["electrical"], score: 1.15 },
      { before: /\b(?:gross|nominal)(?: is|'s|,)?(?: about)?$/, unless: notEnergy, score: 1.1 },
      { before: /\b(?:usable|useable) (?:out )?of(?: the| a)?$/, unless: notEnergy, score: 1.2 },
      { after: /^(?:. )?(?:that's|that is|which is) (?:the |it's )?(?:kilowatt hours?|k ?w ?h)\b/, score: 1.3 },
    ],
    example: { heard: "battery there is forty six usable out of the fifty", value: 50 },
  },
  {
    name: "traction voltage, unit left out",
    component: "electrical",
    part: "traction battery",
    attribute: "voltage",
    unit: "V",
    need: { kinds: ["integer"], units: [null], min: 200, max: 1000 },
    cues: [
      {
        before:
          /(?:#|\bvolts?\b|\bhigh voltage\b)[^.]{0,40}\b(?:big one|big battery|main one|main pack|traction battery|traction pack|pack|orange one|other one)(?:'s| is)(?: about| around| nearer| up at)?$/,
        score: 1.25,
      },
      {
        about: ["electrical/traction battery"],
        reach: "clause",
        before: /\b(?:nominal|pack|battery)(?:'s| is)(?: about| around)?$/,
        unless: /\bbolts|\bcells|\bpounds|\bkilos/,
        score: 0.8,
      },
    ],
    example: { heard: "your normal battery twelve volts and the big one's about four hundred", value: 400 },
  },
  {
    name: "traction battery bolts",
    component: "electrical",
    part: "battery tray bolt",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 4, max: 120 },
    cues: [
      {
        after: /^(?:\w+ )?(?:bolts|fixings|fasteners)\b/,
        about: ["electrical/traction battery"],
        reach: "recent",
        unless: /\bwheels?\b|\blug\b|\bhub/,
        score: 1.2,
      },
      { before: /\bbattery (?:tray|box|case|pack)\b[^#]{0,70}$/, after: /^(?:\w+ )?(?:bolts|fixings|fasteners)\b/, score: 1.3 },
    ],
    example: { heard: "The pack is under the floor in a steel tray, thirty four bolts.", value: 34, zone: "underside" },
  },
  {
    name: "length of a charging cable",
    component: "electrical",
    part: "charge cable",
    attribute: "size",
    unit: "said",
    need: { units: ["ft", "mm"], min: 3, max: 15000 },
    cues: [
      { about: ["electrical/charger", "electrical/charge cable"], reach: "recent", zones: ["cargo", "front", "rear"], score: 1.0 },
      { before: /\b(?:cable|lead|cord|type two|granny)\b[^.#]{0,24}$/, score: 1.25 },
      { after: /^(?:of )?(?:cable|lead|cord|flex)\b/, score: 1.25 },
      { before: /\b(?:cable|lead|cord)\b[^.]{0,24}\b(?:singular|one)\b[^#]{0,30}#? ?(?:amps )?$/, score: 1.1 },
    ],
    example: { heard: "that's the type two cable, twenty feet", value: 20, zone: "cargo" },
  },
  {
    name: "how many batteries",
    component: "electrical",
    part: "battery",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 6 },
    cues: [
      { after: /^(?:big |new |old |small |little |matched |leisure |starting |starter )*# (?:\w+ )?batter(?:y|ies)\b/, score: 1.35 },
      {
        said: /^(?:one|single|1)$/,
        after: /^#(?: (?:now|in|up|and|but|thing|of them|under|behind|instead)\b| ?\.|$)/,
        about: ["electrical/battery"],
        unless: /\b(?:outlets?|sockets?|ports?|usbs?|inverter)\b/,
        score: 1.25,
      },
      { said: /^(?:two|a pair|pair|2|twin|dual|both)$/, after: /^(?:big |old )?# (?:\w+ )?batteries\b/, score: 1.35 },
      {
        before: /\bbatter(?:y|ies)(?:'s| is| are|'re)?(?: just| only| back here| in the back| down here| up here)*(?: the)?$/,
        said: /^(?:one|single)$/,
        after: /^(?:of (?:them|those)|and|but|there's|there is|only|\.|$)/,
        score: 1.2,
      },
      {
        before:
          /\b(?:# (?:\w+ )?batter(?:y|ies)|batter(?:y|ies)(?: under| in| here| up)?[^#.]{0,20})\b[^#.]{0,12}\b(?:just|only)(?: the)?$/,
        said: /^(?:one|single)$/,
        score: 1.2,
      },
    ],
    example: { heard: "there's two 6 volt batteries behind the seats", value: 2 },
  },
  {
    name: "batteries named by their volts",
    component: "electrical",
    part: "battery",
    attribute: "count",
    unit: null,
    need: { units: [null, "V"], min: 1, max: 9999 },
    cues: [
      { said: /^(?:a )?pair of (?:sixes|twelves|6s|12s)$/, score: 1.4 },
      { before: /\bbatter(?:y|ies)\b[^.]{0,90}$/, said: /^(?:two|2) (?:sixes|twelves)$/, score: 1.35 },
      { before: /\bpair of$/, said: /^(?:sixes|twelves|6s|12s)$/, score: 1.3 },
      { after: /^(?:sixes|twelves)\b/, said: /^(?:two|pair|a pair|a pair of|pair of|2)$/, score: 1.3 },
    ],
    value: () => 2,
    also: {
      attribute: "voltage",
      unit: "V",
      value: (said) => (/(?:sixes|6s)$/.test(said) ? 6 : /(?:twelves|12s)$/.test(said) ? 12 : undefined),
    },
    example: { heard: "they had a pair of sixes behind the seats from new", value: 2 },
  },
  {
    name: "trailer socket",
    component: "electrical",
    part: "trailer socket pin",
    position: "rear",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 4, max: 13 },
    cues: [
      {
        after: /^(?:way|blade|flat|round)(?: (?:plug|socket|connector|trailer|wiring|adapter|harness|both|and|flat|round|works)\b| ?\.|$)/,
        zones: ["rear", "cargo", "underside", "closing", "opening", "documents"],
        unless: /\bseats?\b|\bpower\b|\badjust|\btop\b|\btires?\b|\bshifter/,
        score: 1.3,
      },
      {
        after: /^(?:way|flat|round|blade|pin)\b/,
        before: /\b(?:trailer|tow|towing|hitch|receiver|plug|pin|harness)\b[^.]{0,50}$/,
        unless: /\bseats?\b|\bpower\b/,
        score: 1.25,
      },
    ],
    value: (reading) => ([4, 5, 6, 7, 12, 13].includes(reading.value as number) ? reading.value : undefined),
    example: { heard: "there's your receiver and the seven-way plug and the four flat", value: 7, zone: "rear", position: "rear" },
  },
  {
    name: "alternator output",
    component: "electrical",
    part: "alternator",
    attribute: "size",
    unit: "A",
    need: { units: ["A"], min: 18, max: 400 },
    cues: [
      { before: /\b(?:alternator|generator|dynamo)(?:'s| is)?\b[^.]{0,40}$/, score: 1.4 },
      { after: /^(?:amp )?(?:alternator|generator|dynamo|one wire)\b/, score: 1.4 },
      { about: ["electrical/alternator", "electrical/generator"], reach: "sentence", score: 1.2 },
    ],
    example: { heard: "the alternator's a one sixty amp", value: 160 },
  },
  {
    name: "starting current of a battery",
    component: "electrical",
    part: "battery",
    attribute: "size",
    unit: "A",
    need: { units: ["A"], min: 200, max: 2000 },
    cues: [
      { said: /\b(?:cold|cranking|cca)\b/, score: 1.4 },
      { about: ["electrical/battery"], unless: /\balternator|\bwinch|\bstarter draw/, score: 1.1 },
    ],
    example: { heard: "the battery's twelve volt, eight hundred cold cranking amps", value: 800 },
  },
] satisfies readonly Slot[];
