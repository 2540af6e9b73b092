import { gap, type MoveRule } from "./move-rule.ts";

/** What a narrator gives or takes for a look at something. */
const look =
  "(?:look|looking|see|gander|peek|peep|squint|glance|butchers|shufti|nosey|nose|once over|view|show you|show yall|check out|time for|on to|over|go|go and|come)";
const doorOpens = "(?:swing|swinging|pull|pulling|throw|throwing|crack|cracking|fling|open|opening|get|pop|popping)";
const whoseDoor = "(?:the |this |that |her |his |your )?(?:drivers? |passengers? |front |cab |near ?side |off ?side |left |right )*";

/** Further ways into and onto the vehicle: seats, load bay, engine. */
export const steppingMoves = [
  {
    // A lid at the nose is the hood.
    name: "lid-up-in-front",
    zone: "engine-bay",
    strength: 6,
    phrase: "(?:have|get|lift|pop|open|put|raise|prop|up with)(?: up)? (?:this|the|that) lid(?: (?:up|open|for you))*",
    onlyFrom: ["front", "engine-bay"],
    example: "let's have this lid up",
    quiet: "the lid on the jar was up",
  },
  {
    name: "go-aboard",
    zone: "cabin",
    strength: 6.5,
    phrase:
      "(?:hop|hopping|climb|climbing|come|coming|jump|jumping|step|stepping|get|getting|all|welcome|clamber) (?:on |back |up )?aboard|(?:take you|take us|come|coming|go|going|step|were|now|get) (?:on |back )?in ?doors|(?:sit|sitting|sat|settle|settled|plonk|plonked|perch|perched|drop|dropped|slide|sliding|slip)(?: (?:myself|me|you|down|back|yourself))* (?:behind the wheel|at the wheel|in the (?:drivers|driving|hot|front|passengers?|captains?) (?:seat|chair)|in the (?:seat|cab|cockpit)(?= ))|(?:into|in) the (?:hot seat|driving seat|office(?= (?:\\||with|where you))|saddle|drivers chair)|(?:take|taking|grab|grabbing|have|having) (?:a )?(?:pew|perch|seat(?! (?:belt|out|off|cover)))|(?:down|back|up|out|off)(?: (?:the|of|off|from|here|ladder|steps?|again|now|on|it|there))* (?:and )?into (?:the |these )?(?:front )?(?:seats?|drivers seat|cab|cabin)",
    example: "hopping aboard now",
    quiet: "the dealer sat at the desk",
  },
  {
    name: "see-how-it-is-inside",
    zone: "cabin",
    strength: 6,
    phrase: `(?:see|show you|check out|find out|look at)(?: (?:how|what|it|she|he|shes|hes|its|the|like|looks?|is|like|weve got|youve got|we have|goes|going on|you get|things are|were|on))* (?:on the )?inside(?= (?:\\||now|and|here|then|so|okay)(?![a-z]))|(?:inside|interior|cabin|cockpit) (?:next|time|now then|tour)|time for the (?:inside|interior|cabin)|(?:move|moving|carry on|go|going|get|on) (?:on |over |through )?(?:to|with) the (?:inside|interior|cabin|cockpit|seats|upholstery)(?! of)|(?:now|next|then|so|right|and|okay)(?: (?:its|on|to|for|comes))* the (?:interior|inside|cabin|cockpit|upholstery)(?= (?:\\||now|then|next|here))`,
    bareHeading: "now for the (?:interior|inside|cabin)",
    example: "let's see how she looks inside",
    quiet: "you see rust on the inside of it",
  },
  {
    name: "door-opened",
    zone: "cabin",
    strength: 4.5,
    phrase: `${doorOpens}(?: up)? ${whoseDoor}doors?(?: (?:wide|right|wide open|open|back|out|up|up wide|for you|here))*(?= (?:and|so|you|heres|weve|theres|\\||here|now|to|for|this)(?![a-z]))(?! (?:and look at (?:the|this|that) (?:rubber|seal|jamb|hinges?|bottom|sill|edge|weatherstrip)|and (?:it|they) (?:shuts?|closes?|swings?|drops?|hangs?)))|doors? (?:is |are |now |wide |right )*open(?= (?:\\||and|so|the|you|heres|now|here|lets|wide|look|this|first|seats?|dash|nice|clean)(?![a-z]))|(?:lean|leaning|reach|reaching|poke|poking|stick|sticking|duck|ducking|bend|bending|peer|peering)(?: (?:my|the|your|a))?(?: (?:head|camera|phone|nose|arm))? (?:in|inside)(?: (?:here|through|past|at|to|over|across|from))+ (?:the |this )?(?:(?:drivers?|passengers?|front|rear|back|side|open|near ?side|off ?side) )*(?:doors?|window|side|seats?)`,
    example: "door open, and the first thing you see is the seat bolster",
    quiet: "the barn doors open out wide",
    neverFrom: ["rear", "cargo", "engine-bay"],
  },
  {
    name: "lid-goes-up",
    zone: "cargo",
    strength: 6,
    phrase: `(?:up|down|open|over) (?:goes|comes) (?:the |her |this |its )?(?:tail ?gate|hatch|trunk|boot|gate|lift ?gate|boot lid|trunk lid|deck lid|back door|rear door|tonneau|canopy)|(?:tail ?gate|hatch|boot|trunk|barn door|back door|doors at the back|lift ?gate|trunk lid|boot lid|deck lid|tonneau|canopy)s?(?: (?:is|are|comes|goes|swings?|lifts|drops|hinges|folds|now|all))* (?:up|open|down|wide)(?= (?:\\||and|so|the|you|heres|now|here|then|its|ply|nice|clean|theres|for|lets|we)(?![a-z]))(?! (?:and shut|and close))|with the (?:lid|tail ?gate|hatch|boot|trunk|gate|back doors|barn doors|lift ?gate)(?: lid)? (?:up|open|down)(?! (?:you can still|it))`,
    neverFrom: ["engine-bay", "cabin"],
    example: "up goes the tailgate, and you've got a flat load floor",
    quiet: "the tailgate drops down hard",
  },
  {
    name: "into-the-load-space",
    zone: "cargo",
    strength: 6.5,
    phrase: `(?:and|then|now|so|straight|right|back|me|you|us|climb|climbing|crawl|crawling|through|over|head|feet|step|stepping)(?: (?:on|round|up|through|over|back))* (?:in|into|inside|to) (?:the |her |this )?(?:trunk|boot(?! (?:fair|sale|camp))|load (?:bay|area|space|bed)|cargo (?:area|bay|space|hold)|back of the (?:van|truck|wagon|estate)|truck bed|luggage (?:space|area|compartment))(?! (?:lid|release|light|lock|floor pan was|of a))|(?:lift|lifting|pull|pulling|take|taking|peel|peeling|roll|rolling|fold|folding|pick|picking)(?: (?:up|back|out))? (?:the |this |her )?(?:carpet|mat|floor|cover|board|liner|false floor|panel|rubber)(?: (?:up|back|out))?(?: (?:of|in|from|out of))* (?:the )?(?:boot|trunk|load (?:bay|area|space)|back|hatch)|(?:inside|in) the (?:trunk|boot|load bay)(?= (?:its|is|we|you|youve|weve|theres|here|now|\\|)(?![a-z]))(?<!(?:spare|jack|mat|changer|battery|kit|tools|cover) (?:is )?(?:inside|in) the (?:trunk|boot|load bay))`,
    example: "back on my feet and into the trunk",
    quiet: "it would go to a boot fair",
  },
  {
    name: "let-myself-in",
    zone: "cabin",
    strength: 5.5,
    phrase:
      "let (?:myself|me|ourselves|us) in(?= (?:\\||and|here|now|so)(?![a-z]))|(?<!(?:you|they|and) )come (?:on |right )?in(?= \\|)|(?:were|im|we are)(?: (?:now|just))? (?:going|heading|diving|getting|coming|stepping) in(?: (?:there|here|now))*(?= (?:\\||and|so)(?![a-z]))|(?:sat|sit|sitting|seated|get|settled) (?:myself )?(?:in|inside|down in)(?: (?:there|here|it|her|him))?(?= (?:\\||now|and|so|its|the seat)(?![a-z]))|(?:hop|climb|jump|step) up and (?:show you|look at|try|see) (?:the |this )?(?:seats?|dash|inside|cab)",
    neverFrom: ["rear", "cargo", "engine-bay"],
    example: "I'm going to let myself in",
    quiet: "it lets rain in",
  },
  {
    name: "opens-by-itself",
    zone: "cargo",
    strength: 5,
    phrase:
      "(?:press|push|touch|pull|click|wave|kick|prod|tap|squeeze)(?: [^ |]+){0,6} (?:and )?(?:it|she|up it|that|the whole thing)(?: (?:all|just|now))? (?:opens?|lifts?|goes up|comes up|pops(?: up| open)?|rises|swings up|drops)(?: (?:itself|by itself|up|open|on its own|for you))*|whats the (?:load bay|boot|trunk|load space|bed) like|through to the (?:back|load bay|load area)(?= (?:\\||seats?|now|and|here)(?![a-z]))",
    onlyFrom: ["rear", "cargo", "cabin"],
    example: "one press of the button and it opens itself",
    quiet: "the button opens nothing",
  },
  {
    name: "lid-up-behind",
    zone: "cargo",
    strength: 5,
    phrase: "with the lid (?:up|open)|(?:lid|it) (?:goes|comes|is) up on (?:its|the) (?:own|struts|gas struts)|prop(?:ped)? the lid",
    onlyFrom: ["rear", "cargo"],
    example: "and with the lid up, that's the whole of the space",
    quiet: "the lid lines up with the quarter",
  },
  {
    name: "look-at-what-drives-it",
    zone: "engine-bay",
    strength: 6.5,
    phrase: `${look}${gap(4)} what(?:s)? (?:its got )?(?:(?:makes?|making) (?:it|her|him|this|this thing) (?:go|tick|run|move|work)|(?:powers|powering|drives|driving|pulls|pulling|propels|motivates|hauls) (?:it|her|him|this|this thing|the thing|her along|it along)|(?:under|underneath|beneath|lives under|lurks under|hides under|lies under) (?:the|this|that|here|her)(?: (?:hood|bonnet|lid))?(?! (?:seat|dash|floor|carpet|car|truck|van)))|${look}(?: (?:at|into|over|on|to|in|and|have|a|round|around))+ (?:the |her |his |this |our )?(?:lump|mill|power ?plant|oily (?:bits|end|side)|greasy bits|works|mechanicals|engine room|motive power|boiler room)(?! (?:sum|office|manual|number))|there (?:she|it|he) is (?:the|our|your|a)(?: [^ |]+)? (?:motor|engine|lump|mill|v8|v6)|(?:business|oily|greasy) (?:end|bits)(?= (?:\\||now|next|then))`,
    example: "having a nosey at the lump now",
    quiet: "look at what it makes on the road",
  },
  {
    name: "round-to-the-hood",
    zone: "engine-bay",
    strength: 6,
    phrase:
      "(?:round|around|over|out|on|back|up|across|through|down)(?: (?:front|round|here))? to (?:the |her |his |its )?(?:bonnet|hood|engine|motor|engine bay|lump|frunk|engine room)(?! (?:gap|line|paint|badge|pins?|release|code|number|mount|noise|light|scoop))(?= (?:\\||now|and|here|then|we|for|next|bay|so|again|well|with)(?![a-z]))|(?:ill |lets |lemme |let me |we |well |now |next |can |do )(?:do|tackle|get|see to|attend to|go for) (?:the |her |his )?(?:bonnet|hood|engine bay|engine|under ?hood)(?= (?:\\||now|its|then|next|up|here|and|for|first|while|which)(?![a-z]))|(?:hood|bonnet)s? (?:is |now |up )*on (?:its|the) (?:stay|prop|strut|struts|rod|stick)|(?:pull|pulled|release|released|hit|pop|popped|find|slide)(?: (?:that|the|this|my))? (?:hood |bonnet |safety )?(?:latch|catch|lever)(?: [^ |]+){0,7} (?:engine|motor|in there|in here|she is|it is)|(?:hood|bonnet) (?:release|catch|latch)(?: is| has been)? (?:pulled|popped|off|released)|open (?:it|her|him|this) up and (?:show you|look at|see|theres|heres)(?: [^ |]+){0,2} (?:motor|engine|lump|mill)|(?:prop|propping|hold|holding|stand|standing)(?: (?:this|it|that|her|the (?:hood|bonnet)))(?: up)? (?:open|up)(?: (?:and|there|here|on))?",
    example: "jump out and round to the bonnet",
    quiet: "the wire runs back to the engine number",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];
