import type { Slot } from "../slot.ts";

/** What names a load space folded out. */
const seatsFolded =
  /^(?:odd |or so |inches |inch |foot |feet |liters |millimeters |mil |cubic feet )*(?:if you (?:fold|put|drop)|with (?:them|it|the seats?|the (?:rear|back) seats?|the (?:rear|back) bench|everything|all the seats) (?:down|folded|flat|all down|dropped|tumbled)|(?:the )?seats? (?:down|folded|flat)|folded(?: flat)?)\b/;

/** What is measured and rated on the outside and in the load space, named by the thing beside the figure; ranges are common practice. */
export const outsideSlots = [
  {
    name: "diameter of a tow ball in millimetres",
    component: "bumper",
    part: "hitch",
    position: "rear",
    attribute: "diameter",
    unit: "mm",
    need: { kinds: ["measure"], units: ["mm"], min: 40, max: 60 },
    cues: [{ after: /^(?:tow |trailer |chrome )?ball\b/, score: 1.36 }],
    example: { heard: "there's a tow bar with a fifty millimetre ball", value: 50, zone: "rear" },
  },
  {
    name: "diameter of a tow ball",
    component: "bumper",
    part: "hitch",
    position: "rear",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["measure", "fraction", "integer"], units: ["in", "mm", null], min: 1.5, max: 60 },
    unless: /# (?:\S+ ){0,3}(?:long|wide|across)\b|\beight ball\b|\bball joint/,
    // A bare figure is in inches; an eight ball is on a gear lever.
    value: (reading) => (reading.unit === null && typeof reading.value === "number" && reading.value > 3.1 ? undefined : reading.value),
    cues: [
      {
        after: /^(?:inch |inches |mil |millimeters? )?(?:tow |trailer |chrome )?ball\b(?! joint| bearing| hitch mount)/,
        zones: ["rear", "driver-side", "passenger-side", "underside", "opening", "closing", "documents", "front", "drive"],
        score: 1.35,
      },
      {
        before: /\b(?:tow|hitch|bumper)\b[^.#]{0,24}\bball\b(?: on it| on there|'s| is| it's| that's| a| on)*$/,
        zones: ["rear"],
        score: 1.3,
      },
    ],
    example: { heard: "a step bumper with a two inch ball on it", value: 2, position: "rear", zone: "rear" },
  },
  {
    name: "diameter of a ball in the deck",
    component: "cargo-floor",
    part: "ball",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["measure", "fraction"], units: ["in", null], min: 1.8, max: 3.1 },
    cues: [
      { before: /\b(?:gooseneck|turnover|turn over|flip|hideaway)(?: ball| hitch)?(?:'s| is| it's| an?)*$/, zones: ["cargo"], score: 1.5 },
      { after: /^(?:inch |inches )?(?:gooseneck|turnover|turn over)?(?: )?ball\b/, zones: ["cargo"], score: 1.4 },
    ],
    example: { heard: "up in the deck there's a gooseneck ball, two and five sixteenths", value: 2.3125, zone: "cargo" },
  },
  {
    name: "rating of a ball in the deck",
    component: "cargo-floor",
    part: "ball rating",
    attribute: "size",
    unit: "lb",
    need: { kinds: ["integer", "measure", "money"], units: ["lb", null], min: 2000, max: 40000 },
    cues: [
      { after: /^(?:pounds? )?ball\b/, zones: ["cargo"], score: 1.5 },
      { before: /\bball\b(?:[^.#]|#|\.){0,24}\brated(?: at| for| to)?$/, zones: ["cargo"], score: 1.5 },
    ],
    example: { heard: "that's a thirty thousand pound ball, it's stamped", value: 30000, zone: "cargo" },
  },
  {
    name: "pull of a winch",
    component: "bumper",
    part: "winch",
    position: "front",
    attribute: "size",
    unit: "lb",
    need: { kinds: ["integer", "measure", "money"], units: ["lb", null], min: 1500, max: 30000 },
    cues: [
      {
        after: /^(?:pounds? )?(?:\w+ )?winch\b/,
        zones: ["front", "driver-side", "passenger-side", "opening", "documents", "closing"],
        score: 1.4,
      },
      { before: /\bwinch\b[^.#]{0,24}$/, after: /^(?:pounds?\b|\.|$)/, zones: ["front"], score: 1.2 },
    ],
    example: { heard: "it's got the eight thousand pound winch on it", value: 8000, position: "front", zone: "front" },
  },
  {
    name: "pull of a winch or a crane in the load space",
    component: "cargo-floor",
    part: "winch",
    attribute: "size",
    unit: "lb",
    need: { kinds: ["integer", "measure", "money"], units: ["lb", null], min: 1000, max: 40000 },
    cues: [
      { after: /^(?:pounds? )?(?:\w+ )?(?:winch|crane|lift ?gate|tail ?lift)\b/, zones: ["cargo", "rear"], score: 1.45 },
      { before: /\b(?:winch|crane|lift ?gate)\b(?:[^#]){0,24}$/, after: /^(?:pounds?\b)/, zones: ["cargo"], score: 1.35 },
    ],
    example: { heard: "there was a thirty two hundred pound crane on it", value: 3200, zone: "cargo" },
  },
  {
    name: "lamp diameter, unit left out",
    component: "lights",
    part: "lamp",
    attribute: "diameter",
    unit: "in",
    need: { kinds: ["fraction", "decimal"], units: [null], min: 4, max: 9 },
    cues: [{ about: ["lights/headlight", "lights/spot lamp"], unless: /\bvolt|\bwatt|\bgap\b|\btires?\b/, score: 0.85 }],
    // The two sizes a round sealed beam comes in, and the six inch lamps before them.
    value: (reading) => (reading.value === 5.75 || reading.value === 5.5 || reading.value === 6.5 ? reading.value : undefined),
    example: { heard: "four headlights, they're five and three quarter", value: 5.75, zone: "front" },
  },
  {
    name: "gauge of a panel's sheet",
    component: "body",
    part: "sheet",
    attribute: "thickness",
    unit: "ga",
    need: { units: ["ga"], min: 8, max: 26 },
    cues: [
      {
        about: ["body"],
        unless: /\bfloors?\b|\bfloor ?pan|\bwire|\bcable/,
        zones: ["opening", "front", "driver-side", "passenger-side", "rear", "underside", "closing", "documents"],
        score: 1.25,
      },
    ],
    example: { heard: "the skin's nineteen gauge on this body", value: 19, zone: "front" },
  },
  {
    name: "gauge of the load floor's sheet",
    component: "cargo-floor",
    part: "sheet",
    attribute: "thickness",
    unit: "ga",
    need: { units: ["ga"], min: 8, max: 26 },
    cues: [{ zones: ["cargo"], unless: /\bwire|\bcable/, score: 1.35 }],
    example: { heard: "floor in here's new eighteen gauge bead rolled", value: 18, zone: "cargo" },
  },
  {
    name: "pieces a part is made in",
    component: "topic",
    part: "pieces",
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 2, max: 6 },
    cues: [
      {
        after: /^(?:pieces?|pc)\b(?! of\b)/,
        about: ["glass", "body/hood", "body/tailgate", "bumper", "top", "trim"],
        reach: "sentence",
        unless: /\bdriveshaft|\bprop ?shaft|\bwheels?\b|\brims?\b|\bmain seal|\brear main/,
        score: 1.0,
      },
      {
        before:
          /\b(?:hood|bonnet|windshield|windscreen|bumper|roof|grille|tailgate)(?:'s| is)?(?: \.| glass| panorama| in| it's| only| made in)*$/,
        after: /^(?:pieces?|parts|halves|sections)\b(?! of\b)/,
        score: 1.2,
      },
    ],
    example: { heard: "windshield's two pieces, flat glass", value: 2, zone: "front" },
  },
  {
    name: "width of the load space, unit left out",
    component: "cargo-floor",
    part: "load space",
    attribute: "width",
    unit: "in",
    need: { kinds: ["integer", "fraction", "decimal"], units: [null], min: 30, max: 102 },
    cues: [
      { after: /^(?:across|wide|between the (?:wheel )?(?:arches|wells|boxes|tubs|humps)|wall to wall)\b/, zones: ["cargo"], score: 1.1 },
      {
        before: /\b(?:wall to wall|width|between the (?:arches|wells|boxes|tubs))(?: is|'s| it's| comes to)+$/,
        zones: ["cargo"],
        score: 1.1,
      },
    ],
    example: { heard: "it reads seventy eight inches, and it's sixty five across", value: 65, zone: "cargo" },
  },
  {
    name: "load space in liters, seats folded, unit left out",
    component: "cargo-floor",
    part: null,
    attribute: "size",
    unit: "L",
    need: { kinds: ["integer"], units: [null], min: 250, max: 4000 },
    cues: [{ after: seatsFolded, zones: ["cargo", "rear", "cabin"], score: 1.4 }],
    circumstance: "seats folded",
    example: { heard: "385 liters and eleven hundred odd with the seats flat", value: 1100, zone: "cargo" },
  },
  {
    name: "length of the load space, seats folded",
    component: "cargo-floor",
    part: "load space",
    attribute: "size",
    unit: "said",
    need: { units: ["in", "ft", "mm"], min: 3, max: 4000 },
    cues: [{ after: seatsFolded, zones: ["cargo", "rear", "cabin"], score: 1.3 }],
    circumstance: "seats folded",
    example: { heard: "it's sixty two inches with the seat down", value: 62, zone: "cargo" },
  },
  {
    name: "length of a crack, a tear or rot, told after it",
    component: "topic",
    part: "mark",
    attribute: "size",
    unit: "said",
    need: { units: ["in", "mm", "ft"], min: 0.05, max: 900 },
    cues: [
      {
        before:
          /\b(?:cracked|crack|tear|torn|rip|ripped|split|scratch|scratched|scrape|scraped|crease|creased|patched|patch|delaminated|rusted|rotten|milky|gouge|dent|dented|scuff|scuffed|gash|crazed)\b(?:[^.#]|\. (?=[^.#]*$)){0,60}$/,
        after:
          /^(?:inch |inches |foot |feet |mil )?(?:maybe|long|or so|of it|across|deep|they all|and a bit|if that|tops|\.|$|we\b|not\b|i'd\b|it's\b)/,
        about: ["glass", "seats", "dash", "top", "body", "bumper", "headliner", "carpet", "paint", "trim"],
        unless: /\bfrom the\b|\bwheels?\b|\btires?\b|\bpipes?\b|\bexhaust\b|\bscreen\b/,
        score: 0.95,
      },
    ],
    example: { heard: "windshield's cracked, about eleven inches long I'd say", value: 11, zone: "front" },
  },
  {
    name: "year of a part, said before or after its name",
    component: "topic",
    part: "year",
    attribute: "year",
    unit: null,
    need: { kinds: ["year"], units: [null], min: 1900, max: 2035 },
    cues: [
      {
        before: /\b(?:stock|the|original|an?|factory|reproduction|repro|genuine|real|correct|from a)$/,
        after:
          /^(?:\w+ )?(?:dash|dashboard|frame|rails|chassis|grille|grill|grille shell|hood|bonnet|bumpers?|fenders?|steering wheel|tail ?lights?|taillights|headlights?|cab|bed|box|doors?|tailgate|hubcaps|rear end|front end|axle|gauges|glass)\b/,
        zones: ["front", "driver-side", "passenger-side", "rear", "cabin", "cargo", "engine-bay", "underside"],
        unless: /\bout of\b|\boff of\b|\binch|\bmiles\b|\bdollars|\bpsi\b|\bdoor cars?\b/,
        score: 1.1,
      },
      {
        before:
          /\b(?:dash|dashboard|frame|rails|chassis|grille|grill|shell|hood|bonnet|bumper|fenders|tail ?lights?|taillights|headlights?|cab|bed|box|doors|tailgate|hubcaps)(?:'s| is| are| was)(?: the| an?| from an?| off an?)+(?: original| stock| genuine)?$/,
        after: /^(?:one|ones|something|style|item|part|unit|job|piece)\b/,
        score: 1.3,
      },
      { before: /\bfrom an?$/, after: /^(?:something|one)\b/, about: ["lights", "bumper", "trim", "body", "dash", "seats"], score: 1.3 },
    ],
    circumstance: "year of the part",
    example: { heard: "grille is a 1940 grille with seventeen bars", value: 1940, zone: "front" },
  },
] satisfies readonly Slot[];
