import type { MoveRule } from "./move-rule.ts";
import { places } from "./places.ts";

const notIntoTheCar =
  "(?:there|close|tight|on|low|gear|touch|front|behind|under|between|this light|trouble|through|deep|your|and out|line|time|case|place|park|drive|neutral|reverse|first gear|second|third|high|the (?:trunk|boot|bed|frunk|hood|bonnet|load|box|deck|hatch|garage|back of|paperwork|engine|folder|sun|pit|light|shop|barn|garage|hole|wheel|fender|water|road|paint|file|ground|air|gravel|glass|picture|shot|frame|middle|rain|box|way|numbers|details)|to (?:the )?(?:trunk|boot|bed|engine|pit|back of|it|that|this|details)|that (?:bed|box|trunk)|contact|with (?:us|me at))";
/** Where a name of the cabin stands as a heading. */
const headed =
  "(?= (?:\\||now|here|this|is|its|we|weve|you|youve|then|theres|has|all|so|real|was|on|i|looks|next|wise|seats|black|tan|red|grey|gray|blue|the|clean|nice|what|half|full|leather|cloth|vinyl|same|good|that)(?![a-z]))";

export const insideMoves = [
  {
    name: "get-in",
    zone: "cabin",
    strength: 7.5,
    phrase: `(?<!(?<![a-z])(?:you|they|he|she|to|who|kids|people|folks|can|could|dogs?) )(?:get|gets|getting|hop|hops|hopping|jump|jumping|climb|climbing|slide|sliding|step|stepping|pop|sit|sitting|slip|crawl|clamber|settle)(?: on| back| right| down| up| yourself| over| round| straight| myself)? (?:in|into(?! it(?![a-z]))|inside)(?! ${notIntoTheCar}(?![a-z]))(?: (?:it|her|him|here|the (?:car|cab|truck|drivers? seat|front seat|cabin|thing|interior|passenger seat|seat|van)))?`,
    example: "so let's get in it",
    quiet: "get in close on that weld",
  },
  {
    name: "take-a-seat",
    zone: "cabin",
    strength: 6.5,
    phrase:
      "(?:come|climb|step)(?: on)? up in here|(?:do|please|now|so|come and) sit in(?= )|(?:let (?:me|us)|lets|ill|well|i|we|shall i|shall we)(?: just)? (?:sit|squeeze|fold|shoehorn|plop|plonk|perch|climb|scooch|scoot)(?: (?:myself|me|us))? (?:down|in|inside|aboard|up in)(?! (?:low|front of|the (?:trunk|boot|bed|back of|sun|shade|office|engine)))|(?:take|have|grab) a seat(?! (?:out|belt|off))|get my (?:[a-z]+ ){0,3}(?:self|bones|carcass|backside|butt|behind|rear|legs|knees) in|climb (?:on )?aboard|climb up in(?:to)?(?: (?:here|it|there|her))?|get(?:ting)? up (?:into|in) (?:it|her|the cab)|get behind the wheel|come in through the (?:slider|sliding door|side door|hab door|door)|cabs warm|in the cab(?= (?:now|okay|ok|so|its|three|two|the|we|heres|this|seat|bench|here|theres|\\|)(?![a-z]))",
    example: "let me sit down",
    quiet: "the seat lets you sit down low",
  },
  {
    name: "in-we-go",
    zone: "cabin",
    strength: 6.5,
    phrase: "(?:in|inside) we (?:go|get)|in (?:i|you) (?:go|get)(?= (?:\\||and the seat|here))",
    neverFrom: ["rear", "cargo"],
    example: "in we go",
    quiet: "in go the keys",
  },
  {
    name: "look-inside",
    zone: "cabin",
    strength: 6.5,
    phrase:
      "(?:look|see|go|peek|peep|move|moving|head|heading|step|on|come|going|over|tour|onto|jump|lets do|have a look|straight)(?: at| on| over)* (?:to the |in the |into the |at the |the )?(?:inside|interior|cabin|cockpit|cab)(?! (?:of (?:the|that|those|this) (?:trunk|boot|fender|wheel|bed|frame|door|wing|arch|tire|tyre|doors)|light|edge|fender|corner|corners|and out|where its cool|for the paper|mount|mounts))",
    example: "let's move to the interior",
    quiet: "look inside of the fender there",
  },
  {
    name: "into-the-cabin",
    zone: "cabin",
    strength: 6.5,
    phrase:
      "(?:into|inside) the (?:cabin|cab|interior|cockpit|car)|(?:sat|sitting|sit|im|were|get|slide) (?:here )?(?:in the drivers seat|behind the wheel)|(?:open|opening)(?: up)? (?:the |this )?(?:drivers?|passenger|front) door (?:here|and|up|so|lets)|have a sit|ill sit (?:here|in|down|behind)|come (?:on )?(?:and )?sit|on the inside(?= (?:\\||now|here|we|its|of (?:the |this )?(?:car|truck|van)))",
    example: "OK into the cabin then",
    quiet: "it turns into the drive",
  },
  {
    name: "cabin-heading",
    zone: "cabin",
    strength: 6,
    heading: `(?:(?:the|into the|in the|to the|onto the|on the|for the|as for the) )?(?:interior|cabin|inside|cockpit|cab)(?! (?:where|of (?:the|that|those|this) (?:trunk|boot|fender|wheel|bed|frame|door|wing|arch)))${headed}`,
    bareHeading:
      "(?:interior|inside|cab|cabin)(?= (?:is|here|now|okay|ok|quick|real quick|weve|youve|wise|looks|jump|hop|let me|lets|same|then)(?![a-z]))|inside (?:the |this )?(?:car|truck|cab|van)|(?:and |now )?inside (?=(?:black|tan|red|grey|gray|blue|leather|cloth|vinyl|half leather) )",
    example: "interior, this is the black vinyl buckets",
    quiet: "there is a crack inside the lens",
  },
  {
    name: "open-the-trunk",
    zone: "cargo",
    strength: 6.5,
    phrase: `(?:pop|get|open|opening|opens?|popping|drop|dropping|let down|lower|lift|lifting|raise|unlatch|flip|up with|swing)(?: up| open| down)?(?: on)? ${places.trunk}(?! (?:release|button|lid (?:fits|is)))(?: (?:up|down|open))?|(?:get|put|have)(?: you)? (?:the |this |that )(?:trunk|boot|tailgate|hatch|liftgate)(?: lid)? (?:open|up|down)`,
    heading: "(?:tailgate|hatch|boot|trunk|boot lid|trunk lid) (?:up|down|open)(?= )",
    bareHeading: "(?:tailgate|hatch|boot lid|trunk lid|boot|trunk) (?:up|down|open)(?= )",
    example: "pop the trunk",
    quiet: "the trunk release is in the glove box",
  },
  {
    name: "look-in-the-trunk",
    zone: "cargo",
    strength: 7,
    phrase: `(?:look|looking|peek|peep|go|going|get|getting|come|coming|see|climb|jump|hop|up|round|back|over|now|here|were|start|step|head|move|moving)(?: (?:on|back|up|inside|round|around|over|out))? (?:in|into|inside|at|to) ${places.trunk}(?! (?:release|lid|light))|(?:up|climb|hop|jump|get) (?:up )?(?:on|onto) (?:the |this )?(?:deck|flatbed|bed|tray)`,
    example: "we'll go look in the trunk",
    quiet: "his tools went to the boot fair",
  },
  {
    name: "trunk-heading",
    zone: "cargo",
    strength: 5.5,
    heading:
      "(?:(?:the|in the|inside the|into the|here in the|to the|this is the|heres the) )?(?:trunk|boot|beds?|tray|deck|load (?:area|bay|space|bed)|cargo (?:area|space|bay)|truck bed)(?= (?:\\||now|here|is|its|has|we|weve|you|youve|floor|real|area|this|so|then|got|good|and|space|theres|wise|lined|next|eight|six|five|seven|clean|scratched|solid)(?![a-z]))",
    bareHeading:
      "in the (?:trunk|boot|bed|tray|box|load bay|load area|cargo area)(?= (?:now|okay|ok|here|we|you|youve|theres|weve|is|its|so|alright|quick)(?![a-z]))",
    example: "there. boot. It's a good deep boot",
    quiet: "shift boot is torn",
  },
  {
    name: "trunk-named-first",
    zone: "cargo",
    strength: 4,
    heading:
      "(?:trunk|boot)(?! (?:lid|floor|mat|pan|release|light|carpet|latch|hinges?|seal|weatherstrip|fits|lock|key|shuts|closes|opens|gaps?|was|has been|badge|emblem|rack|handle|camera|spoiler|divider|popper|button|up|camp)(?![a-z]))(?= )",
    example: "okay trunk rumble really, there's no seat in it",
    quiet: "okay trunk lid fits",
  },
  {
    name: "onto-the-deck",
    zone: "cargo",
    strength: 6,
    phrase:
      "(?:up|out|down|over|back) (?:on|onto|in|here in|here on) the (?:deck|flatbed|load bed|truck bed)(?! (?:side|rail))|(?:walk|step|climb|come|get) (?:on )?in here with me|(?:under|lift|raise|open|pop) this lid|(?:crack|pop|lift) the (?:deck|lid|deck ?lid)|foot under (?:there|here|the bumper)|the floor of the (?:body|box|bed|van|truck)|(?:into|inside|in) the (?:box|garage|load bay|load area|cargo area|back of (?:the|this) (?:van|truck))(?! (?:of|has|and|there))|ride it up|(?:jump|hop|go|come|get|swing|back|step) (?:round|around|over|up|back)? ?to the (?:tray|tub|canopy)|her luggage compartment|(?:in|into) the luggage (?:compartment|space|bay)|inside the back(?= )|swing that open|this is your garage|(?:up|down) here in the (?:bed|trunk|boot|box)|(?:press|pull|push|hit) the (?:handle|button|latch|release)(?: here)? and (?:up (?:it|she) (?:goes|comes)|(?:it|she) (?:goes|comes) up)|(?:fold|folds|folding|drop|put) (?:down |up |flat )?(?:the |these )(?:last row|third row|rear seats|back seats|seats)(?: (?:down|up|flat))?",
    example: "lift this lid and there's a trunk",
    quiet: "the bulb's in the box of spares",
  },
  {
    name: "load-space-opens",
    zone: "cargo",
    strength: 4,
    phrase:
      "(?:have a look|look|peek|have a peek|take a look|see) in the (?:very )?back(?! (?:seat|of (?:his|her|my)|there when|window))|in here(?: (?!\\|)[^ ]+){0,4} (?:cubic|suitcases?|groceries|load)|(?:lift|lifting|peel|pull|roll)(?: this| that| it| the)?(?: (?:mat|carpet|floor|cover|board))?(?: up| back)? (?:and )?(?:theres|there is|heres|here is)(?: (?:your|the|our|a|my|no))?(?: [^ ]+)? spare|(?:open|opening)(?: (?:her|it|this|that))? up (?:in here|and|back)(?: (?!\\|)[^ ]+){0,8} (?:mat|spare|carpet|cargo|trunk|boot)",
    example: "lift this up and there's your spare",
    quiet: "in here it gets hot",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];
