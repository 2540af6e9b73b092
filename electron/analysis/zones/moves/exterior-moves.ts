import { gap, type MoveRule } from "./move-rule.ts";
import { goVerb, partsOfTheFront, partsOfTheRear, places } from "./places.ts";

/** What may follow a place's name that stands as a heading. "Front bumper" alone is one, "front bumper brackets" is not. */
const headed =
  "(?= (?:\\||now|here|we|you|youve|i|ill|im|its|it|theres|theyre|these|so|and|first|then|again|this|that|thats|real|same|everything|lets|have|no|not|the|straight|good|come|coming|up|down|tires|tyres|doors?|walk|gonna|quick|about|all|over|weve|your|my|is|looks|next|wise|chrome|bumper|still|a|some|just|what|heres|nice|let|got|fenders?|wing|rocker|sill|paint|mirror|wheels?|very|has|had|has)(?![a-z]))";

/** What goes down a side without the camera. */
const notAThing =
  "(?<!(?<![a-z])(?:exhausts?|pipes?|tail ?pipes?|single|dual|twin|it|they|lines?|hoses?|cables?|wires?|water|air|rust|dents?|scratch|scratches|crease|stripes?|crack|trim|molding|awning) )";

export const exteriorMoves = [
  {
    name: "start-at-the-front",
    zone: "front",
    strength: 7,
    phrase: `(?:start|starting|begin|beginning|kick|kicking|started|commence)${gap(5)} (?:at|with|on|up|from|out|off)${gap(3)} ${places.front}`,
    example: "so starting up at the nose",
    quiet: "the starter is at the back of it",
  },
  {
    name: "go-to-the-front",
    zone: "front",
    strength: 6,
    phrase: `(?:come|comes|coming|go|going|walk|walking|show you|swing|head|heading|move|moving|step|around|round|get|lets do|look at|onto|on to|wander)${gap(3)} (?:to|at|with|on|round|around|up) ${places.front}|back (?:to|at|up to|round to|around to) ${places.front}|(?:look at|lets do|see|check out) ${places.front}`,
    example: "come on up here to the front",
    quiet: "come up to the front seat",
  },
  {
    name: "front-from-here",
    zone: "front",
    strength: 6,
    phrase: `(?:up|out|over|down|round|around) here(?: (?:on|at|in|to|by|with))+ (?:the )?(?:front(?: end)?(?! (?:seat|door|wheel|tire|tyre|axle|fender|wing)s?(?![a-z]))|nose|face)(?![a-z])|(?:start|starting|begin|beginning|started)(?: off)? (?:with|at|on|from|this|up)(?: this)? end|(?:across|along|round|over) the (?:nose|front)(?! (?:seat|bench|axle|door|wheel|tire|tyre|fender|suspension))|the face of (?:it|her|him)|(?:the first part is|this is|thats|down low in|low in) (?:the )?(?:front(?! (?:seat|door|wheel|tire|tyre|axle|fender|wing|one|pair|row|two|of the (?:bed|engine|pan|box)|quarter|spring|shock|brake|left|right|passenger|driver|plate|crossmember|diff|cover|drive|fuel|window|rotor|disc|caliper|bumper off)s?(?![a-z]))|nose)`,
    example: "we start with this end",
    quiet: "over here on the front seat",
  },
  {
    name: "front-heading",
    zone: "front",
    strength: 5,
    heading: `(?:(?:up|out) (?:at |here at |here in )?(?:the )?front|at the front(?: here)?|across the front(?: here)?|in front|on the front end|the front|nose first|nose end(?: first)?|the nose|round the front|around front)(?! (?:and|seat|of|ones?|tires?|tyres?|two|had|was|has been|got hit|took))${headed}|${places.frontOfTheCar}`,
    bareHeading: `(?:front of ${places.vehicle}|(?:the )?front of the (?:car|truck|van)|across the front here|front end(?= (?:of|here|first|now|come|chrome|looks))|nose first)`,
    example: "so up front this bumper is the one it came with",
    quiet: "both seats up front are clean",
  },
  {
    // A sentence that begins with where something is.
    name: "begins-at-the-front",
    zone: "front",
    strength: 5,
    heading: `(?:(?:out |up |over )?(?:in|at|on|across) (?:the )?front(?! (?:of|and|to|at|theyre|its|as|with|than|but)(?![a-z]))(?! ${partsOfTheFront}(?![a-z]))|(?:on|at|down|across|over) the nose|out front(?! (?:of|they|and))|up front(?! (?:seats?|and|for|with|tires?|tyres?|ones?|two|both|is|are|of|but|they|it|in)(?![a-z]))|nose(?= (?:grilles?|bumpers?|first|here|now|headlights?|headlamps?|bonnets?|hoods?|lights?)(?![a-z])))(?= )|(?:walking|coming|going|come|walk) up (?:on|to) (?:it|her|him)(?= )|first off(?= )`,
    example: "in front there are four headlights",
    quiet: "there are disc brakes in front",
  },
  {
    name: "go-to-a-side",
    zone: "side",
    strength: 7,
    phrase: `${notAThing}${goVerb}${gap(5)} (?:(?:on|with|at|by|over|do|into|us on|back) )?${places.side}`,
    example: "let's go down the passenger side",
    quiet: "he had the driver's side mirror replaced",
  },
  {
    name: "go-along-a-side",
    zone: "side",
    strength: 7,
    phrase: `${notAThing}${goVerb}${gap(3)} (?:to|onto|along|down|up|round|around|round to|around to|down to)(?: on)? ${places.sideGoneTo}|(?:round to|around to|over to|round|around|over|on to|onto|along|down) ${places.sideGoneTo}`,
    example: "moving down the right side front fender is straight",
    quiet: "a scratch on the passenger side door",
  },
  {
    name: "side-heading",
    zone: "side",
    strength: 6,
    heading: `(?:(?:on|down|up|to|along|round|around|over|onto|over on|down on|its|for) )?${places.side}(?: first| now| then| next)?${headed}`,
    bareHeading: `${places.side}(?= (?:now|here|we|ill|im|first|so|then|come|coming|same|this|no|again|straight|doors?|tires|tyres|fenders?|wing|everything|next|gonna|paint|rocker|sill|front|its|theres|coming|all)(?![a-z]))|(?:(?:then|now|next) the )?(?<side>nearside|offside|near side|off side)(?= (?:now|here|first|front|rear|theres|the|its|same|again|wing|door|sill|then|next|sliding|doors))`,
    example: "okay, driver's side, let me get out of my own light",
    quiet: "a little pitting on the driver side",
  },
  {
    name: "this-is-a-side",
    zone: "side",
    strength: 5,
    phrase: `(?:this is|this would be|thisll be|heres|were on|we are on|now on|im on|im at|were at|im (?:stood|standing) (?:at|on|by)|that puts us on|puts us on|put us on|(?:up|down|over|back|round|around) here on|here on|over on|so on|and on|here by|around here by)(?: now)?(?: to)? (?:${places.side}|${places.sideStoodAt})`,
    example: "so that puts us on the passenger side",
    quiet: "here is where the driver's side airbag was",
  },
  {
    name: "along-left-or-right",
    zone: "side",
    strength: 6,
    phrase: `(?:walking|coming|going|come|go|walk|working|moving|heading|carry on|on|back) (?:up|down|along) (?:the |this |my |your )(?<side>left|right|drivers?|passengers?)(?: hand)?(?= (?:\\||now|then|here|first|again|and|so|its|the|we|you)(?![a-z]))`,
    example: "walking up the left now",
    quiet: "going up the left lane",
  },
  {
    name: "this-side-named",
    zone: "side",
    strength: 6,
    phrase:
      "(?:down|up|on|along|round|over|is|its) (?:this|that) side(?: is)?(?: the)? (?<side>drivers?|passengers?|nearside|offside)(?: side)?(?! (?:door|seat|window|mirror))",
    example: "going down this side driver's",
    quiet: "scratches on this side and on the driver's",
  },
  {
    // Without punctuation a side named with nothing before it is most often a heading, and sometimes the place of a mark.
    name: "bare-side",
    zone: "side",
    strength: 4.5,
    bareHeading:
      "(?<side>drivers?|passengers?)(?: side)(?! (?:mirror|window|seat|headlight|headlamp|tail|light|lamp|floor|carpet|airbag|visor|switch|bolster|rail|only|was|has|had|about|of|wiper|vent|belt|knee|head|cylinder|bank)(?![a-z]))|(?<side>nearside|offside)(?! (?:mirror|headlamp|headlight|seat|only|lamp|light|one))",
    example: "alright driver side carries the same wheels",
    quiet: "the driver side fender is good",
  },
  {
    name: "bare-near-or-off-side",
    zone: "side",
    strength: 6,
    british: true,
    bareHeading: "(?<side>near|off) side(?! (?:mirror|headlamp|headlight|seat|only|lamp|light|one|of the|belt|window))",
    example: "alright, near side going back again. The bonnet and the boot are good",
    quiet: "the near side wing is good",
  },
  {
    name: "side-panel-heading",
    zone: "side",
    strength: 3.5,
    heading:
      "(?:the |your |this )?(?<side>drivers?|passengers?|nearside|offside|near side|off side|left|right)(?: side)? (?:front |rear |side )?(?:quarter|fender|wing|front wing|rear wing|rocker|sill)(?![a-z])",
    example: "so driver quarter, this one's never been off",
    quiet: "open the driver door",
  },
  {
    name: "on-his-side",
    zone: "side",
    strength: 5.5,
    heading: `(?:(?:on|to|over on|round to|back along|along|up|down|back up|back down) )?(?:his |her |the |your )?(?<side>drivers?|passengers?|curb|kerb|street|left|right|nearside|offside)(?: hand)?(?: side)?(?<!(?:^| )(?:left|right|curb|kerb|street|driver|passenger))(?= (?:then|now|first|next|the|heres|theres|its|same|similar|i|you|we|okay|so|fender|wing|door|quarter|rocker|sill|box|panel|front|rear|okay|fuel|slide|bumper|step)(?![a-z]))(?! (?:door|front|rear) (?:seat|window|mirror|airbag|armrest|floor|carpet))(?! (?:(?:front|rear|back) )?(?:door|fender|wing|quarter|rocker|sill|one)s? (?:has|hasnt|had|hadnt|was|wasnt|got|were|did|didnt|does|doesnt|matches|lines))`,
    example: "street side fuel tank's over here",
    quiet: "he had the driver side fender replaced",
  },
  {
    name: "other-side",
    zone: "other-side",
    strength: 6,
    phrase: `(?:${goVerb}|working|way)${gap(5)} (?:to|on|onto|down|up|round|around|over|at|do|along) ${places.otherSide}`,
    example: "come around to the other side",
    quiet: "it is the same as on the other side",
  },
  {
    name: "other-side-heading",
    zone: "other-side",
    strength: 4,
    heading: `(?:(?:on|to|down|up|round|around|over on|over to) )?${places.otherSide}(?! (?:of|was|had|is a|is where|mirror|door|ones?)(?![a-z]))`,
    bareHeading: "other side (?:now|next|of (?:the )?(?:car|truck|van))|(?:on|to|now) (?:his|her|my) side (?:then|now|of it)",
    example: "okay, other side now",
    quiet: "exhaust comes out the other side of the road",
  },
  {
    name: "along-this-side",
    zone: "other-side",
    strength: 3,
    heading: "(?:(?:coming|going|walking|moving|working|heading) )?(?:down|up|along|back (?:up|down)) this side(?![a-z])",
    example: "coming up this side, no dings",
    quiet: "the sill has been done on this side",
  },
  {
    name: "go-to-the-rear",
    zone: "rear",
    strength: 7,
    phrase: `(?:come|comes|coming|go|going|walk|walking|show you|swing|swinging|head|heading|move|moving|step|around|round|work(?:ing)?(?: our| my| your)? way|keep|carry on|get|lets do|do|scoot|scooch|turn|back|bring|brings us|takes us|leads us|slide|ease|wander|onto)${gap(4)} (?:to|around|round|do|toward|towards|onto|on to|here to) ${places.rear}|(?:down|on|out|over|up) (?:to|around|round|here to) ${places.rear}`,
    example: "around to the back end",
    quiet: "they go to the back seat",
  },
  {
    name: "rear-heading",
    zone: "rear",
    strength: 6,
    heading: `(?:(?:at|to|around|round|on|this is|heres|we have) )*(?:${places.rearOfTheCar}|(?:the )?back end|the rear(?= (?:here|so|we|\\||then|now))|the back(?= (?:now|\\||then|so|here|we|youve))|(?:round|around) (?:the )?back|out back|(?:the )?tail end|rear end(?= (?:now|\\||here))|(?:back|rear) doors(?= \\|)|rear bumper(?= (?:now|\\|))|back here(?= (?:tail|rear|bumper|the tail|the bumper|hatch|the hatch|exhaust|dual|brake lights)))(?! (?:seat|in the))`,
    bareHeading: `(?:back doors(?= (?:theyre|are|open))|at the back here(?= (?:we|you|its|theres|the))|back here(?= (?:tailgate|tail|bumper|rear|the tail|the bumper|we have|weve got|youve got))|back end of ${places.vehicle}|rear of ${places.vehicle}|around back|round the back|back of the (?:car|truck|van)(?= (?:now|here|we|tail)))`,
    example: "okay back end of the car now",
    quiet: "the rear end of it is a nine inch, and back end gears",
  },
  {
    name: "begins-at-the-rear",
    zone: "rear",
    strength: 5,
    heading: `(?:(?:out |up |over )?(?:in|at|on|across) (?:the )?(?:back|rear)(?! (?:of|and|to|at|its|as|with|than|but|there|is|seat|side)(?![a-z]))(?! ${partsOfTheRear}(?![a-z]))|out back|back here(?! (?:in|inside|you can sit))|on the back (?:theres|there is|you|weve|is|its)|(?:on|at) the tail)(?= )|(?:her|his|its|the) other end(?= )`,
    bareHeading: `on the back theres|out back(?= (?:the|theres|you|we|weve|youve|is|its|here)(?![a-z]))|back here(?= (?:is your|s your|heres|the lift|lift))`,
    example: "on the back there's a ladder and a hitch",
    quiet: "there is a ladder on the back of the seat",
  },
  {
    name: "rear-from-here",
    zone: "rear",
    strength: 7.5,
    phrase: `(?:(?:start|starting|begin|beginning|up|out|over|down|round|around|back|here|so|now|were|we are|im|standing|stood)(?: (?:here|off|already))*) (?:at|in|on) the (?:back|rear|tail)(?: end)?(?= (?:\\||already|here|now|so|then|for|today|of (?:it|her|him|the car|the truck|the van)|cause|because|we|you|weve|youve|the|its|theres)(?![a-z]))|(?:here|round|around|over) at the (?:back|rear)(?! (?:seat|bench|door|axle|wheel|tire|tyre|window|left|right))|(?:here|back|round|around|over|on|up) to the (?:tailgate|tail gate|lift ?gate|trunk lid|boot lid)(?! (?:handle|and (?:open|drop|pop)))|tailgate area|the south end|(?:round|around) to (?:your|the|these|them) (?:barn|back|rear) doors`,
    example: "we start in the back because the light's good",
    quiet: "he sat in the back of the class",
  },
  {
    name: "up-top",
    zone: "roof",
    strength: 5.5,
    phrase:
      "see about (?:that|the) top|show you (?:the |this )?(?:roof|top)|(?:quick|quick look|look|looking|direct you|turn|glance|go|lets go) (?:up top|upward|upwards|overhead)|(?:now|then|so|and|okay|alright)(?: for| to)? the (?:pop top|soft top|convertible top|ragtop|glass roof|elevating roof)|above it is|(?:put|putting|get|getting) the hood up takes|(?:do|doing|done) the roof|(?:picture|photo|shot|view|video) of the roof|pan (?:up |over |across |along )+the (?:top|roof)|up top (?:real|right) quick|up the ladder|(?:look|come|get|go|swing|over|up|see)(?: up| over| on| here)* (?:at|to|on|onto|over) (?:the )?(?:roof(?! rack came)|soft top|convertible top|sunroof|hood is mohair)|(?:put|drop|dropping|putting|raise|raising|lower)(?:ing)? (?:the )?(?:soft top|convertible top|roof|top) (?:up|down|for)|(?:put|get|have) the (?:soft top|roof|top) (?:up|down)",
    heading:
      "(?:up top|up on top|on top|the roof|roof|up on the roof|the soft top|soft top|the top|convertible top)(?= (?:\\||is|now|here|real|right|quick|its|we|you|theres|no|this|first|looks|next|goes|snaps|folds|comes|works|then|and)(?![a-z]))",
    bareHeading:
      "the top(?= is (?:a soft|down|up|the power|two|new))|the roof (?:next|now)|(?:see|talk) about (?:that|the) top|up top (?:now|here|real quick|right quick|its|weve)",
    example: "up top right quick",
    quiet: "the roof's been filled",
  },
  {
    name: "folding-hood",
    zone: "roof",
    strength: 5,
    british: true,
    heading: "the hood(?= )",
    bareHeading: "the hood (?:is|ill put|now|next)",
    example: "now the hood, it's mohair with a bonnet to match and a clean boot",
    quiet: "the hood is flat",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];
