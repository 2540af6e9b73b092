import { gap, type MoveRule } from "./move-rule.ts";
import { places } from "./places.ts";

const sideName = "(?<side>drivers?|passengers?|nearside|offside|near side|off side|left|right|curb|kerb|street)(?: hand)?(?: side)?";
const panel =
  "(?:(?:front|rear|back) )?(?:doors?|fenders?|guards?|wings?|quarters?|quarter panels?|corner|wheel|mirror|sill|rocker|panels?|flank|profile)";
const begin =
  "(?:start|starting|started|begin|beginning|kick|kicking|open|opening|commence|commencing|set|setting)(?: (?:off|out|us|you|here|up|over|down|things|this one|today|right|just|proceedings))*";
/** Where a narrator says he is. */
const stood =
  "(?:stood|standing|crouched|crouching|parked|planted|here we are|here i am|im now|were now|we are now|were here|im here|arrive|arrived|arriving|(?:this|that|which)? ?(?:brings|takes|lands|leads|puts|gets) (?:us|me|you))(?: (?:now|here|up|right|back|round|around|out|over|down|nicely|again))* (?:at|by|on|in front of|to|before|behind)";
/** Verbs of walking beside those that every rule knows. */
const stroll =
  "(?:follow me|join me|stick with me|stay with me|amble|ambling|stroll|strolling|potter|pottering|saunter|sauntering|mooch|mooching|trot|trotting|march|marching|nip|nipping|whip|trundle|trundling|shuffle|shuffling|shift|shifting|skip|cross|crossing|crab|sidle|drift|drifting|pan|panning|circle|circling|loop|looping|meander|toddle|tootle|squeeze|squeezing|walk you|take you|bring you|get you|show yall|round we go|around we go|off we go|carrying on)";

/** Further ways to walk round the outside, beside those in `exterior-moves.ts`. */
export const walkingMoves = [
  {
    name: "start-at-a-part-of-the-front",
    zone: "front",
    strength: 6.5,
    phrase: `${begin} (?:at|with|on|by|from) (?:the |these |this |her |his |its )?(?:(?:two |twin |front )?(?:headlights?|headlamps?|lights(?= (?:up|at the) front))|radiator(?: shell| grille)?|bonnet|hood|bull bar|grille guard|brush guard|front (?:bumper|plate|badge|valance|apron)|windshield|windscreen|leading edge|snout|schnoz|beak|bows?|sharp end|pointy end)(?! (?:motor|switch|seal|release|cable))`,
    example: "so we'll begin here at the headlights",
    quiet: "the starter wire begins by the headlight switch",
  },
  {
    name: "start-at-a-part-of-a-side",
    zone: "side",
    strength: 6.5,
    phrase: `${begin} (?:at|with|on|by|from|along|down) (?:the |this |her |his |your |my )?${sideName} ${panel}(?! (?:motor|card|switch|seal|was|had|only))`,
    example: "we'll start on the driver's door today",
    quiet: "rust starts on a door edge",
  },
  {
    name: "start-at-a-part-of-the-rear",
    zone: "rear",
    strength: 6.5,
    phrase: `${begin} (?:at|with|on|by|from) (?:the |these |this |her |his |its )?(?:tail ?(?:lights?|lamps?)|rear (?:lights?|lamps?|bumper|plate|valance)|back (?:bumper|doors?)|tail ?gate|trunk lid|boot lid|tow ?bar|hitch|stern|hind end|blunt end|business end)`,
    example: "start with the tail lights for once",
    quiet: "the wiring starts at a relay",
  },
  {
    name: "stood-at-the-front",
    zone: "front",
    strength: 6.5,
    phrase: `${stood} ${places.front}|(?:this end|the end) (?:with|that has) the (?:engine|headlights|grille)|(?:square|dead|head) on (?:at|to|with) (?:it|her|him|the (?:grille|nose|front))`,
    example: "I'm stood at the sharp end",
    quiet: "he stood at the front door",
  },
  {
    name: "stood-at-the-rear",
    zone: "rear",
    strength: 6.5,
    phrase: `${stood} (?:the )?(?:back bumper|rear bumper|back of ${places.vehicle}|rear of ${places.vehicle}|tail(?: end| ?gate| ?lights?| lamps?)?|back end|stern|rump|hind end|hindquarters|barn doors|back doors|rear doors|rear(?= (?:\\||now|here|and|then|so))|back(?= (?:\\||now|here|and|then|so)))(?! (?:of the (?:queue|line|book|class|shop|yard|lot)))`,
    example: "here we are at the back bumper",
    quiet: "he was stood at the back of the shop",
  },
  {
    name: "stood-at-a-side",
    zone: "side",
    strength: 4.5,
    phrase: `${stood} (?:the |this |that |her |his |your |my )?(?:${sideName.replace("(?: side)?", "")} ?side|${sideName} ${panel})(?! (?:airbag|seat|window|visor|floor|carpet|mirror glass))`,
    example: "I'm parked by the driver's front wheel",
    quiet: "he was by the driver's door when it rained",
  },
  {
    name: "round-the-corner-to-a-side",
    zone: "side",
    strength: 7,
    phrase: `(?:round|around|past|off|turn|turning|rounding) the (?:corner|front|nose|back|tail|end|bumper|grille|headlight|tail light|quarter)(?: (?:now|here|again|and|with me|then|we go|i go|we come|go|come|coming|going))*(?: (?:to|onto|on to|on|up|down|along|into|for|this is|heres|is))+ ${places.sideGoneTo}|(?:round|around) the (?:corner|nose|tail)(?: (?:now|here|again|and|then))*(?: (?:to|onto|on to|on|this is|heres))+ (?:the |your )?${sideName} ${panel}`,
    example: "round the corner to the passenger's side",
    quiet: "he drove round the corner to the shop",
  },
  {
    name: "walk-a-side",
    zone: "side",
    strength: 5.9,
    phrase: `(?:(?:walk|walking|work|working|do|doing|tour|touring|cover|covering|follow|following|pan|panning|trace|track|tracking)(?: (?:down|up|along|my way|our way|the camera|you))*) ${places.sideGoneTo}|${stroll}${gap(4)} (?:to|onto|on|round|around|over|along|down|up) ${places.sideGoneTo}|(?:off|away) (?:down|up|along) ${places.sideGoneTo}|(?:come|coming|go|going|walk|walking|move|moving|head|heading|off|back|forward|wander|work|working)(?: (?!\\|)[^ ]+){0,3}? (?:along|down|up) (?:the |your |this |my )(?<side>left|right|drivers?|passengers?|near|off)(?: hand)?(?= (?:\\||now|then|here|and we|first)(?![a-z]))|turn(?:ing)? the corner and (?:its|were on|theres|heres|here is|we have) (?:the )?${sideName}(?: ${panel})?|(?:and|then|so) up ${places.side} we go`,
    example: "now I'm walking the kerb side, sill to roof",
    quiet: "the locks work, and the passenger side one is new",
  },
  {
    name: "down-a-flank",
    zone: "side",
    strength: 6.5,
    phrase: `(?:down|along|up|onto|on to|round to|around to|over to|over on|across to|to) (?:the |this |that |her |his |its )?${sideName} (?:flank|profile|elevation)`,
    example: "working my way along the driver's flank",
    quiet: "the passenger side flank was painted",
  },
  {
    name: "along-a-panel-of-a-side",
    zone: "side",
    strength: 5.5,
    phrase: `(?:move|moving|carry|carrying|continue|continuing|come|coming|head|heading|work|working|step|stepping|walk|walking|round|around|go|going|swing|swinging|back)(?: (?:on|now|back|round|around|along|up|down|over|here|the corner|forward))*(?: (?:to|onto|on to|along|past|down|up|into)) (?:the |this |that |her |his |your )?${sideName} ${panel}(?! (?:had|was|has|is where|motor|card|glass|switch))`,
    example: "moving along the right rear quarter",
    quiet: "the paint goes on to the driver's door thin",
  },
  {
    name: "here-is-a-panel-of-a-side",
    zone: "side",
    strength: 4.5,
    phrase: `(?:and |so |now |okay |right )(?:this is|heres|here is|thats|youve got|we have|weve got) (?:the |your |her |his )?(?<side>drivers?|passengers?|nearside|offside|near side|off side)(?: side)? (?:front |rear |back )?(?:fender|wing|quarter|quarter panel|rocker|sill|corner|flank)(?! (?:motor|card|was|had))`,
    example: "step round with me, and this is the driver's front fender",
    quiet: "and this is the driver's door card",
  },
  {
    name: "last-side",
    zone: "side",
    strength: 5.5,
    phrase: `(?:last|other|next|final|second|first|remaining) (?:side|flank)(?: (?:to do|now|then|to see|left|to go|here|up|is|of it|of her))*(?: the)? (?<side>drivers?|passengers?|nearside|offside|near side|off side)(?: side)?(?= |$)`,
    example: "last side to do, passenger's",
    quiet: "the first side window is the driver's",
  },
  {
    name: "this-other-flank",
    zone: "other-side",
    strength: 5.5,
    phrase: `(?:up|down|along|on|onto|round to|over to|round|do|does|around|across to) (?:this|the|that|her|his|its) (?:other|far|opposite) (?:flank|elevation|profile)|(?:up|down|along|round|over to|onto|across to) ${places.otherSide} (?:we (?:go|come)|i (?:go|come)|now|then|and)|${stroll}${gap(3)} (?:to|onto|round|around|over|along|down|up) ${places.otherSide}|(?:the|this) side (?:we|you|i) (?:havent|have not|didnt) (?:seen|see|look|looked at|do|done)(?: yet)?`,
    example: "so on this other flank, again nice straight panels",
    quiet: "the hinge on the other side was new",
  },
  {
    name: "stroll-to-the-rear",
    zone: "rear",
    strength: 6.5,
    phrase: `${stroll}${gap(3)} (?:to|towards?|round|around|past) ${places.rear}|(?:nip|nipping|whip|trot|stroll|wander|duck|dart|swing|pop|come|coming|walk|walking|head|go|going|carry on|off|round we go|follow me)(?: [^ |]+)? (?:round|around) (?:to )?the (?:back|rear|tail|bum|rump|stern)(?= (?:\\||now|here|and|then|so|quick|quickly|again|with|we|for|real|of (?:it|her|him))(?![a-z]))|(?:step|stepping|go|going|walk|walking|come|get|stand|standing|stood|now|im|were)(?: (?:round|around|back|right|now))* behind (?:it|her|him|the (?:car|truck|van|vehicle))(?= (?:\\||now|and|here|so|then)(?![a-z]))|(?:looking|look|are|were|now) at (?:the |her |its |these )?(?:tail ?(?:lights?|lamps?)|rear (?:lights?|lamps?|valance)|back bumper|rear bumper|back doors|rump|stern|derriere|backside)`,
    example: "follow me to the rear, mind the puddle",
    quiet: "the wiring goes to the back seat",
  },
  {
    name: "stroll-to-the-front",
    zone: "front",
    strength: 6,
    phrase: `${stroll}${gap(3)} (?:to|towards?|round|around) ${places.front}|(?:finish|finishing|complete|completing|close|end|ending) (?:the |our |my |this |off |up )*(?:lap|loop|circle|circuit|walk|tour)?(?: back)? ?(?:at|with|on|round) ${places.front}|(?:back|down|up) to where (?:we|i) (?:started|began|came in)(?: (?:at|up) (?:the )?(?:front|nose))?|(?:last|next|first) (?:up|stop|port of call|off) (?:is |comes )?(?:the )?(?:front(?! (?:seat|door|wheel|axle))|nose|face|grille)(?= )`,
    example: "and we finish the loop back at the front bumper",
    quiet: "finish the job at the front axle",
  },
  {
    name: "look-over-the-roof",
    zone: "roof",
    strength: 5.5,
    phrase:
      "(?:see|look|looking|glance|peek|peer|peering|view|show you|showing you|camera|phone|reach|reaching|pan|panning|get you|shot)(?: [^ |]+){0,5}? (?:the |her |his |that )?(?:roof(?: skin| panel| line| ?line| top)?(?= (?:\\||now|here|from|and|its|no|so|then|next)(?![a-z]))|roof skin|top of (?:it|her|him|the (?:car|truck|van|cab|bus))(?= (?:\\||now|here|and|too)))|(?:get|getting|climb|climbing|hop|up|stand|standing|stood|ill stand|step|perch)(?: (?:up|right|myself))*(?: (?:on|onto|up))+ (?:the |a |my |these |this |our )?(?:ladder|step ?ladder|steps?|stepladder|crate|stool|bucket|running board|nerf bar|tyre|tire|box|chair)(?= (?:so|and|to|now|for|here|i|you|we|\\|)(?![a-z]))|(?:camera|phone|selfie stick|stick|pole)(?: (?:right|way|up|high|is))* (?:above|over) (?:my|our|the) (?:head|heads|top)|on my tip ?toes|roof (?:next|now|then|while im here)",
    heading:
      "(?:up above(?! my)|overhead|on the roof|in the roof ?line|up on (?:the )?roof|roof wise|roof next|up on her roof|along the roof|across the roof)(?= )(?! (?:console|light|lining|lever|cam|rack came|bars? and))",
    bareHeading: "in the roof ?line(?= (?:theres|there|we|you)(?![a-z]))|roof (?:next|wise)",
    neverFrom: ["cabin", "drive"],
    example: "looking over the roof now, no dents from hail",
    quiet: "you can see the roof lining is new",
  },
  {
    name: "said-of-the-roof",
    zone: "roof",
    strength: 4.5,
    phrase:
      "(?:thats|this is|heres|theres|here is) (?:the |your |her |our )?(?:roof(?= (?:\\||and|its|no|skin|panel))|roof skin|roof panel|sunroof(?= \\|)|soft top|vinyl roof)",
    example: "reach up above the tailgate, there's the sunroof",
    quiet: "that's the roof lining there",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];
