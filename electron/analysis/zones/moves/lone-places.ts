import type { ZoneName } from "../../../../shared-types/index.ts";

/**
 * Names of places that stand alone as a sentence ("Back.", "Okay, passenger side.") and so are headings, in plain words of American
 * spelling without lead-ins ("okay", "now") and adverbs ("here", "then", "real quick").
 */
export interface LonePlace {
  readonly zone: ZoneName | "side" | "other-side";
  /** The whole fragment. A group `side` names the side. */
  readonly phrase: string;
  /** 1 to 8. One word that may also be an item of a list ("Hood.", "Top.") says less. */
  readonly strength: number;
  /** True where a comma after it is enough ("Inside, the seats …"): the words are no item of a list. */
  readonly beforeComma: boolean;
  /** True where only a British narrator means the place. */
  readonly british?: boolean;
  /** As in a move's rule: zones from which alone, or never, the words mean the place. */
  readonly onlyFrom?: readonly ZoneName[];
  readonly neverFrom?: readonly ZoneName[];
  readonly example: string;
  readonly quiet: string;
}

const to = "(?:(?:on|in|at|to|up|down|out|over|across|around|round|along|into|onto|from|now) )*";
const it = "(?: (?:of|on) (?:it|her|him|this|the|this one|the car|the truck|the van|the vehicle|the thing))?";

export const lonePlaces = [
  {
    zone: "front",
    phrase: `${to}(?:the )?(?:very )?(?:front(?: end)?|nose(?: end)?|face|snout|sharp end|pointy end|front bumper|nose first|front first)${it}`,
    strength: 6.5,
    beforeComma: true,
    example: "Okay, front.",
    quiet: "The front seats.",
  },
  {
    zone: "side",
    phrase: `${to}(?:the |this |your |that )?(?:(?<side>drivers?|passengers?|left|right|left hand|right hand|near|off|curb|street|nearside|offside|curbside)(?: side)?(?<!(?:the|on|this) (?:left|right|near|off))(?<!^(?:left|right|near|off|street|curb|driver|passenger)))${it}(?: first)?`,
    strength: 6.5,
    beforeComma: true,
    example: "Right. Nearside.",
    quiet: "Right.",
  },
  {
    zone: "side",
    phrase: `${to}(?:this side|this one|that side)(?: is)?(?: the)? (?<side>drivers?|passengers?|nearside|offside)(?: side)?`,
    strength: 6.5,
    beforeComma: true,
    example: "Down this side, driver's.",
    quiet: "Down this side.",
  },
  {
    zone: "other-side",
    phrase: `${to}(?:the |that )?(?:other|far|opposite) side${it}`,
    strength: 5.5,
    beforeComma: true,
    example: "And the other side.",
    quiet: "The other one.",
  },
  {
    zone: "rear",
    phrase: `${to}(?:the )?(?:very )?(?:back(?: end)?|rear|tail(?: end)?|blunt end|stern|south end|hind end|rear bumper|back bumper|backside|back door|barn doors)${it}(?: end)?`,
    strength: 6.5,
    beforeComma: false,
    neverFrom: ["drive"],
    example: "Round the back.",
    quiet: "The back seats.",
  },
  {
    zone: "closing",
    phrase:
      "(?:(?:were|im|and|so|right|safely) )*back(?: (?:again|home|at base|in one piece|safe|safely|at the yard|at the shop|on the lot|now))*",
    strength: 5,
    beforeComma: true,
    onlyFrom: ["drive", "closing"],
    example: "And back.",
    quiet: "The back seats.",
  },
  {
    zone: "roof",
    phrase: `${to}(?:the )?(?:roof|pop top|soft top|convertible top|hard top)${it}|up top|on top|topside|up on top`,
    strength: 6,
    beforeComma: true,
    example: "Okay, the roof, watch this.",
    quiet: "The roof rack.",
  },
  {
    zone: "roof",
    phrase: "(?:now )?the hood|hood (?:up|down)",
    strength: 6,
    beforeComma: true,
    british: true,
    example: "Now the hood. It's mohair, with a bonnet to match and a clean boot",
    quiet: "The hood catch.",
  },
  {
    zone: "cargo",
    phrase: `${to}(?:the |this )?(?:trunk|boot|bed|truck bed|load (?:area|bay|space|bed)|cargo (?:area|bay|space|hold)|hatch|deck|tray|box)${it}(?: (?:open|up))?|tailgate (?:up|down|open)|(?:boot|trunk|hatch) (?:open|up)`,
    strength: 6,
    beforeComma: false,
    example: "Into the boot.",
    quiet: "The boot lid.",
  },
  {
    zone: "cabin",
    phrase: `${to}(?:the )?(?:inside|interior|cabin|cockpit|cab|passenger compartment)(?: inside)?${it}|inside we go|scooch|have a seat|indoors|all aboard`,
    strength: 6.5,
    beforeComma: true,
    example: "Inside, inside.",
    quiet: "Inside out.",
  },
  {
    zone: "cabin",
    phrase: "in (?:we|i) (?:go|get|pop|hop)(?: then)?",
    strength: 6.5,
    beforeComma: true,
    neverFrom: ["rear", "cargo"],
    example: "In we go.",
    quiet: "In go the keys.",
  },
  {
    // Said behind an open tailgate.
    zone: "cargo",
    phrase: "in (?:we|i) (?:go|get|pop|hop)(?: then)?",
    strength: 5,
    beforeComma: true,
    onlyFrom: ["rear", "cargo"],
    example: "In we go.",
    quiet: "In go the keys.",
  },
  {
    zone: "engine-bay",
    phrase: `(?:(?:the|under the|in the|under|with the|and the) )?(?:hood|bonnet|engine|engine bay|engine compartment|motor|motor bay|frunk|business under the hood)(?: (?:is )?(?:up|open))?`,
    strength: 5.5,
    beforeComma: false,
    example: "Bonnet.",
    quiet: "The bonnet gap.",
  },
  {
    zone: "engine-bay",
    phrase: "(?:the )?(?:hood|bonnet)s? (?:is )?(?:up|open)|under the (?:hood|bonnet)",
    strength: 6.5,
    beforeComma: true,
    example: "Hood up.",
    quiet: "Hood down.",
  },
  {
    zone: "underside",
    phrase: `${to}(?:underneath|under (?:it|her|him|here|the car|the truck|the van|there)|(?:the )?(?:underside|undercarriage|underbody|belly|bottom side)|down below|below|from below|chassis|(?:the |a )?(?:lift|ramp|ramps|hoist|rack|jack stands|axle stands))${it}`,
    strength: 6.5,
    beforeComma: true,
    example: "Under it.",
    quiet: "Under the seat.",
  },
  {
    zone: "documents",
    phrase:
      "(?:(?:the|some|all the|now the|then the|to the) )?(?:paperwork|papers|paper|documents|documentation|docs|history|records|shoebox|folder|file|binder|history file|history folder)(?: (?:time|side|wise|work))?|what comes with it",
    strength: 6.5,
    beforeComma: true,
    example: "Paper time.",
    quiet: "Paper filter.",
  },
  {
    zone: "drive",
    phrase:
      "(?:its |shes |hes |engine )?running|(?:turn the |the )?key|start up|(?:a )?(?:little|quick|short) (?:drive|run|spin)|(?:the )?(?:road test|test drive|drive|driving)|on the road|(?:and )?(?:were |im )?away|ignition|rolling|were rolling|were moving|were off|off we go|key in|key on|key turned",
    strength: 5.5,
    beforeComma: false,
    example: "Little drive.",
    quiet: "Four wheel drive.",
  },
  {
    zone: "drive",
    phrase:
      "(?:and |so |well )*(?:lets (?:go|roll|drive|ride|do it)|here (?:we go|goes)|away we go|off i go|were away|belts? on|buckle up|strap in|hold on)",
    strength: 5,
    beforeComma: false,
    onlyFrom: ["cabin", "documents", "underside", "drive"],
    example: "Let's go.",
    quiet: "Let's go over the tires.",
  },
  {
    zone: "drive",
    phrase: "(?:ill |i |we |and )?(?:start|starting|started)(?: (?:it|her|him))?(?: up)?|seat forward|foot on the brake",
    strength: 5.5,
    beforeComma: true,
    example: "Start, and there is nothing to hear.",
    quiet: "Starter motor.",
  },
  {
    zone: "closing",
    phrase:
      "(?:so |and )*(?:thats|that is|there is|theres) (?:it|her|him|that|all|everything|the lot|your lot|us)|(?:were |im )?(?:home|back home|home again)|(?:and )?(?:all )?(?:done|finished)|goodbye|bye|bye bye|bye now|ta ra|cheers|take care|thank you|thanks",
    strength: 5,
    beforeComma: false,
    example: "So that's that.",
    quiet: "That's it there on the left.",
  },
] as const satisfies readonly LonePlace[] as readonly LonePlace[];
