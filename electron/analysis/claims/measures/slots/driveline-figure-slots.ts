import type { Slot } from "../slot.ts";

/** Figures of clutches, gearboxes and axles that are told by the name of a part beside them, whatever was talked of before. */
export const drivelineFigureSlots = [
  {
    name: "clutch diameter",
    component: "transmission",
    part: "clutch",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["measure", "fraction", "decimal", "integer"], units: ["in", null], min: 6, max: 16 },
    cues: [
      {
        before: /\bclutch(?:'s| is| disc is)?(?: an?| the| about)*$/,
        unless: /\bdollars|\byears|\bmiles|\bpounds|\bhundred\b/,
        score: 1.35,
      },
      { after: /^(?:inch )?(?:clutch|flywheel|pressure plate|disc clutch)\b/, score: 1.35 },
      { before: /\bclutch(?:'s| is)? # (?:inch )?(?:he|they|it|she|i)(?: only| just)? had(?: an?| the)?$/, score: 1.35 },
    ],
    example: { heard: "the clutch is eleven inch", value: 11 },
  },
  {
    name: "shift linkage moved by",
    component: "transmission",
    part: "shifter",
    attribute: "size",
    unit: "in",
    need: { units: ["in", "mm"], min: 0.5, max: 300 },
    cues: [
      {
        before:
          /\b(?:linkage|shifter|gear ?lever|shift lever|selector|stick|tunnel)\b[^.#]{0,20}\b(?:moved|brought|shifted|set)\b[^.#]{0,20}$/,
        score: 1.3,
      },
    ],
    example: { heard: "the linkage has been moved back four inches", value: 4 },
  },
  {
    name: "bolts round a gearbox pan",
    component: "transmission",
    part: "pan bolt",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 4, max: 24 },
    cues: [
      {
        before: /\b(?:gearbox|transmission|trans|tranny|box)\b[^#]{0,60}\b(?:pan|cover|sump)(?: with| has| it's got| and)(?: the)?$/,
        after: /^bolts?\b/,
        score: 1.35,
      },
      { before: /\bpan (?:with|has|got)(?: the)?$/, after: /^bolts?\b/, about: ["transmission"], score: 1.2 },
    ],
    example: { heard: "the gearbox here's an aluminum case with a pan with fourteen bolts", value: 14, zone: "underside" },
  },
  {
    name: "speeds of a drive",
    component: "transmission",
    part: "gears",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 12 },
    cues: [
      {
        said: /^(?:one|single|1)$/,
        after: /^(?:speed|gear)\b(?! (?:short|down|up|higher|lower|at|box|lever|bike|wiper|heater|fan|blower|oil|linkage))/,
        unless: /\bnumber\b|\bout of gear\b/,
        score: 1.2,
      },
      { before: /\bgears?\b[^.#]{0,60}\b(?:there's|there is|it's|it's got) (?:only|just)(?: the)?$/, said: /^(?:one|single)$/, score: 1.1 },
      {
        before: /\bsynchro(?:mesh|s)?\b[^.#]{0,14}\b(?:all|top|upper|the)$/,
        said: /^(?:two|three|four|five|six)$/,
        unless: /\bcylinder/,
        score: 1.15,
      },
      {
        before: /\b(?:shifter|gear ?lever|gear ?stick|stick|gear change|gate)\b[^.#]{0,44}$/,
        after: /^(?:of them|forward|speeds?|positions?|gears?)\b/,
        score: 1.1,
      },
      { before: /\bso$/, after: /^in (?:effect|all|total|practice)\b/, about: ["transmission"], reach: "sentence", score: 1.1 },
    ],
    example: { heard: "Gear lever here, synchromesh on the top three.", value: 3 },
  },
  {
    name: "joints of a propeller shaft",
    component: "transmission",
    part: "driveshaft joint",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: 4 },
    cues: [
      { before: /\b(?:prop ?shaft|drive ?shaft|prop)\b[^.#]{0,14}$/, after: /^(?:u |universal |new |good )*joints?\b/, score: 1.25 },
      { after: /^(?:piece|section) (?:prop|drive ?shaft|prop ?shaft)\b/, score: 1.0 },
    ],
    example: { heard: "Propshaft, one joint, I think that's a click", value: 1 },
  },
  {
    name: "axle splines, axle named before",
    component: "final-drive",
    part: "axle shaft",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 16, max: 50 },
    cues: [
      {
        after: /^splines?\b(?! output| input| box| gearbox| trans)/,
        before: /\b(?:rear(?: end)?|axle|diff|# inch|# (?:spline )?axles?|housing|third member|locker|posi|spool)\b[^.]{0,30}$/,
        unless: /\b(?:top loader|output|input|clutch|gearbox|trans)\b/,
        score: 1.3,
      },
    ],
    example: { heard: "rear end is a nine inch thirty one spline", value: 31 },
  },
  {
    name: "axle narrowed, in all",
    component: "final-drive",
    part: "narrowing",
    attribute: "width",
    unit: "in",
    need: { units: ["in"], min: 0.5, max: 14 },
    cues: [
      {
        before: /\b(?:narrowed|shortened|trimmed)(?: it| them| by| about| down| up| the housing)*$/,
        unless: /\bleaves\b|\bspring|\bstrap|\bseat|\bbench|\bdash|\bconsole|\bgrille|\bbumper|\bhood/,
        score: 1.5,
      },
      {
        after: /^(?:inches |inch )?(?:skinnier|narrower|shorter)(?: (?:all|in|overall|total)\b|$)/,
        zones: ["underside", "rear"],
        score: 1.3,
      },
    ],
    example: { heard: "the back axle is the nine-inch, narrowed three inches", value: 3 },
  },
  {
    name: "axle by its inches",
    component: "final-drive",
    part: "ring gear",
    attribute: "diameter",
    unit: "in",
    need: { units: ["in"], min: 7, max: 12 },
    cues: [
      {
        after:
          /^(?:inch )?(?:style |type )?(?:center section|centre section|third member|style (?:rear|center|centre|axle)|housing|chunk|pumpkin|locker|limited slip|posi)\b/,
        score: 1.35,
      },
      {
        after: /^with (?:the |a )?#(?:$| (?:gears?|and|in|posi|limited|locker|back))/,
        unless: /\bwheels?\b|\btires?\b|\bscreen|\bdrums?\b/,
        score: 1.0,
      },
      {
        before: /\b(?:rear|rear end|back axle|back end|diff)(?:'s| is|,)?(?: an?| the| still)*$/,
        unless: /\bdrums?\b|\bwheels?\b|\btires?\b|\blift\b/,
        zones: ["underside", "closing", "opening", "documents"],
        score: 1.2,
      },
    ],
    value: (reading) =>
      [7.25, 7.5, 8, 8.5, 8.75, 8.8, 9, 9.25, 9.5, 9.75, 10.25, 10.5, 11.5].includes(reading.value as number) ? reading.value : undefined,
    example: { heard: "it's a nine inch style center section", value: 9 },
  },
  {
    name: "ring gear, named before its size",
    component: "final-drive",
    part: "ring gear",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["measure", "fraction", "decimal", "integer"], units: ["in", null], min: 5, max: 16 },
    cues: [
      {
        before: /\b(?:ring gear|crown ?wheel|ring and pinion)(?:'s| is| measures| on it is)(?: an?| about)*$/,
        unless: /\bteeth|\btooth|\bdollars|\bpounds|\bquid/,
        score: 1.4,
      },
    ],
    example: { heard: "the ring gear's eight and a half", value: 8.5 },
  },
  {
    name: "axle ratio, put in or taken out",
    component: "final-drive",
    part: null,
    attribute: "ratio",
    unit: null,
    need: { kinds: ["ratio", "decimal", "integer", "measure"], units: [null, "cu in", "psi"], min: 2, max: 4999 },
    cues: [
      {
        about: ["final-drive"],
        reach: "recent",
        zones: ["underside", "rear"],
        before: /\b(?:had|have|has|got|put|is|runs?|it's|with|swapped in|running)(?: an?| the| some)?$/,
        after: /^(?:in it|in there|in here|in now|in this|gears?|in\b(?! the (?:engine|bay|motor)))/,
        unless: /\bvolts?|\bthermostat|\bhorse|\bdollars|\bcubic|\bmotor|\bengine|\bsmall block|\bbig block/,
        score: 1.6,
      },
      {
        before:
          /\b(?:rear end|rear axle|back axle|axle|diff|rear|gears?)(?: they say| he says| i'm told| supposedly)? (?:is|'s|are|was|were)(?: an?| the)?(?: in the back)?(?: is| are)?(?: an?| the)?$/,
        unless: /\binch\b|\bspline|\bbolt|\bmiles|\bpounds|\bdollars|\bgallon|\bpsi\b|\bhundred\b/,
        score: 1.15,
      },
      {
        before: /\b(?:gears?|rear end|axle)? ?in the back (?:is|are)(?: an?| the)?$|\bin the back is(?: an?| the)?$/,
        unless: /\bseats?\b|\bbed\b|\bspeaker/,
        score: 1.2,
      },
      {
        before: /\bwith (?:that|the|those|them)(?: \w+)?$/,
        after: /^(?:out back|in the (?:back|rear|diff)|rear|gears?)\b/,
        unless: /\bwheels?\b|\btires?\b/,
        score: 1.3,
      },
    ],
    value: (reading, said) => {
      const { value, kind } = reading;
      if (typeof value !== "number" || /hundred|thousand|[$£]/.test(said)) return undefined;
      if (reading.unit !== null && Number.isInteger(value) === false) return undefined;
      // "Three nine oh nine": an axle's ratio to its third place.
      if (Number.isInteger(value) && value >= 2200 && value <= 4999) return value / 1000;
      if (Number.isInteger(value)) return value >= 220 && value <= 513 ? value / 100 : undefined;
      return kind === "ratio" || kind === "decimal" ? (value <= 7.6 ? value : undefined) : undefined;
    },
    example: { heard: "the rear axle had a three five oh in it", value: 3.5, zone: "underside" },
  },
] satisfies readonly Slot[];
