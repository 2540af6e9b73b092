import type { Slot } from "../slot.ts";

const counts: ReadonlySet<number> = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16]);

/** Figures of engines that are told by their layout, cylinder by cylinder, or by what the needle does. */
export const engineFigureSlots = [
  {
    name: "cylinders, by the layout",
    component: "engine",
    part: "cylinder",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 16 },
    cues: [
      { said: /^v ?-?(?:4|6|8|10|12|four|six|eight|ten|twelve)$/, score: 1.3 },
      {
        before: /\b(?:v|vee|flat ?head|side ?valve|straight|in ?line|slant|flat|bent|boxer)$/,
        said: /^(?:2|3|4|5|6|8|10|12|two|twin|three|four|five|six|eight|ten|twelve)$/,
        unless: /# (?:inch|by|spots?|tires?|iron|bar)\b|\bflat (?:four|4) (?:both|trailer)|\bseven|\btrailer|\bplug\b/,
        score: 1.2,
      },
      { before: /\b(?:compression|leak ?down)\b[^#]{0,40}\ball$/, score: 1.2 },
    ],
    value: (reading) => (counts.has(reading.value as number) ? reading.value : undefined),
    example: { heard: "now that is a flat head six", value: 6 },
  },
  {
    name: "drive motors",
    component: "engine",
    part: "electric motor",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 4 },
    cues: [
      {
        said: /^(?:single|dual|twin|one|two)$/,
        after: /^(?:electric |drive )?motors?\b(?! (?:home|bike|cycle|mount|of|trade|factors|show))/,
        zones: ["front", "engine-bay", "opening", "closing", "underside", "rear"],
        unless: /\b(?:window|wiper|blower|heater|starter|mirror|roof|top)\b/,
        score: 1.15,
      },
      {
        before: /\bmotor\b[^#.]{0,40}$/,
        after: /^of them\b/,
        zones: ["engine-bay", "front", "underside"],
        unless: /\bbolts?|\bmounts?|\bwindow/,
        score: 1.1,
      },
    ],
    example: { heard: "there's your single motor in the front", value: 1, zone: "engine-bay" },
  },
  {
    name: "pulley grooves",
    component: "engine",
    part: "pulley",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 8 },
    cues: [{ after: /^(?:grooves?|rib|ribs|sheaves?)\b/, unless: /\btires?\b|\btread\b/, score: 1.2 }],
    example: { heard: "the crank pulley's three groove", value: 3 },
  },
  {
    name: "fan blades",
    component: "cooling",
    part: "fan blade",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 12 },
    cues: [{ after: /^(?:blades?|bladed)\b/, unless: /\b(?:wiper|wipers|plow|plough|fuse|pin|plug|trailer|way)\b/, score: 1.3 }],
    example: { heard: "and the fan's the four blade", value: 4 },
  },
  {
    name: "compression, cylinder by cylinder",
    component: "engine",
    part: "compression",
    attribute: "pressure",
    unit: "psi",
    need: { units: [null, "psi", "lb", "GBP"], min: 60, max: 550 },
    cues: [
      {
        after:
          /^(?:pounds |psi )?(?:on|in) (?:number|cylinder|(?:all|one|two|three|four|five|six|seven) of them|the (?:low|high|lowest|highest|worst|best|others?|rest|back|front) )/,
        zones: ["engine-bay"],
        unless: /\bmiles|\bdollars|\boil pressure|\btires?\b/,
        score: 1.15,
      },
      { after: /^(?:pounds |psi )?(?:on|in) number (?:one|two|three|four|five|six|seven|eight|\d)\b/, score: 1.15 },
      {
        before: /\bnumber (?:one|two|three|four|five|six|seven|eight)(?:'s| is| was| had)(?: down| only)?(?: at| to)?(?: an?)?$/,
        zones: ["engine-bay"],
        score: 1.0,
      },
      {
        before: /\bcompression(?:'s| was| is| ran)?(?: between| about| around| at| a| good| even| all| up at)*$/,
        unless: /\bto one\b|\bratio/,
        score: 1.15,
      },
    ],
    carries: true,
    example: { heard: "We had a hundred eighteen pounds on number two", value: 118, zone: "engine-bay" },
  },
  {
    name: "oil pressure, where the needle goes",
    component: "engine",
    part: "oil pressure",
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["integer", "measure", "money", "year"], units: [null, "psi", "lb", "GBP"], min: 6, max: 110 },
    cues: [
      {
        before:
          /\boil(?:'s| is| pressure(?:'s| is)?)?\b[^.]{0,60}\b(?:drops?|falls?|settles?|comes? (?:back|down)|goes? (?:back|down)|sits?|idles?|hangs?|holds?)(?: back| down| in| off| right)*(?: to| at| about| around| maybe)*$/,
        unless: /\bdegrees|\brpm|\bvolts?\b|\bmiles|\bgrand|\bdollars/,
        score: 1.3,
      },
      {
        about: ["engine/oil", "engine/oil pressure"],
        reach: "recent",
        before:
          /\b(?:it|it'll|she|she'll|that'll|that) ?(?:will )?(?:drops?|falls?|settles?|comes? (?:back|down)|goes? (?:back|down)|sits?|idles?)(?: back| down| in| off)*(?: to| at| about| around)+$/,
        after: /^(?:$|\.|when|once|hot|warm|pounds|psi|at|and|after)/,
        zones: ["drive", "cabin", "engine-bay", "closing", "opening"],
        unless: /\bdegrees|\brpm|\bvolts?\b|\bmiles|\bgrand|\bdollars|\bhundred/,
        score: 1.2,
      },
      { before: /\boil\b[^.]{0,50}\b(?:fifty|forty|sixty|seventy|thirty|#)\b[^.]{0,30}\bhot$/, score: 1.0 },
    ],
    example: { heard: "Oil's at fifty, it'll drop to thirty.", value: 30, zone: "drive" },
  },
  {
    name: "boost, as a turbo makes it",
    component: "engine",
    part: "turbo",
    attribute: "pressure",
    unit: "psi",
    need: { kinds: ["integer", "decimal", "measure", "money"], units: [null, "psi", "lb", "GBP"], min: 3, max: 80 },
    cues: [
      {
        before:
          /\b(?:turbo|turbos|blower|supercharger)(?:'s|'re| is| are|'ll)?(?: set to| set at)?(?: making| makes| make| pushing| pushes| blowing| building| builds| putting out| seeing| on)(?: about| around| up to)?$/,
        unless: /\bhorse|\bmiles|\bpercent/,
        score: 1.3,
      },
    ],
    circumstance: "boost",
    example: { heard: "turbo's making twenty two pounds", value: 22 },
  },
  {
    name: "bore across and stroke",
    component: "engine",
    part: "bore",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["fraction", "decimal", "measure"], units: [null, "in"], min: 2, max: 6 },
    cues: [
      {
        after: /^(?:inches )?(?:across )?(?:and|by) #? ?(?:[a-z]+ ){0,6}(?:up and down|stroke|deep|tall)\b/,
        zones: ["engine-bay"],
        score: 1.2,
      },
    ],
    example: { heard: "It's three and a quarter across and four and three eighths up and down", value: 3.25, zone: "engine-bay" },
  },
  {
    name: "stroke, up and down",
    component: "engine",
    part: "stroke",
    attribute: "size",
    unit: "in",
    need: { kinds: ["fraction", "decimal", "measure"], units: [null, "in"], min: 2, max: 6 },
    cues: [{ after: /^(?:inches )?(?:up and down)\b/, zones: ["engine-bay"], score: 1.25 }],
    example: { heard: "It's three and a quarter across and four and three eighths up and down", value: 4.375, zone: "engine-bay" },
  },
  {
    name: "oil capacity, oil named first",
    component: "engine",
    part: "oil",
    attribute: "size",
    unit: "said",
    need: { units: ["gal", "qt", "pt", "L"], min: 1, max: 45 },
    cues: [{ before: /\boil (?:takes|holds|capacity is|is)(?: about| a)*$/, score: 1.3 }],
    example: { heard: "oil takes a gallon and a half", value: 1.5 },
  },
] satisfies readonly Slot[];
