import { gap, type MoveRule } from "./move-rule.ts";
import { goVerb, places } from "./places.ts";

/** What may follow a place's name that stands as a heading. "Front bumper" alone is one, "front bumper brackets" is not. */
const headed =
  "(?= (?:\\||now|here|we|you|youve|i|ill|im|its|it|theres|theyre|these|so|and|first|then|again|this|that|thats|real|same|everything|lets|have|no|not|the|straight|good|come|coming|up|down|tires|tyres|doors?|walk|gonna|quick|about|all|over|weve|your|my|is|looks|next|wise|chrome|bumper|still|a|some|just|what|heres|nice|got|fenders?|wing|rocker|sill|paint|mirror|wheels?|very|has|had|has)(?![a-z]))";

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
    phrase: `(?:come|comes|coming|go|going|walk|walking|swing|head|heading|move|moving|step|back|around|round|get|lets do|look at|onto|on to|wander)${gap(3)} (?:to|at|with|on|round|around|up|look at) ${places.front}`,
    example: "come on up here to the front",
    quiet: "come up to the front seat",
  },
  {
    name: "front-heading",
    zone: "front",
    strength: 5,
    heading: `(?:(?:up|out) (?:at |here at |here in )?(?:the )?front|at the front(?: here)?|in front|on the front end|the front|nose first|the nose|round the front|around front)(?! (?:and|seat|of|ones?|tires?|tyres?|two))${headed}|${places.frontOfTheCar}`,
    bareHeading: `(?:front of ${places.vehicle}|front end(?= (?:of|here|first|now|come|chrome|looks))|nose first)`,
    example: "so up front this bumper is the one it came with",
    quiet: "both seats up front are clean",
  },
  {
    name: "go-to-a-side",
    zone: "side",
    strength: 7,
    phrase: `${goVerb}${gap(5)} (?:(?:to|on|onto|along|down|up|round|around|with|at|by|over|do|into|us on|back) )?${places.side}`,
    example: "let's go down the passenger side",
    quiet: "he had the driver's side mirror replaced",
  },
  {
    name: "side-heading",
    zone: "side",
    strength: 6,
    heading: `(?:(?:on|down|up|to|along|round|around|over|onto|over on|down on|its|for) )?${places.side}(?: first| now| then| next)?${headed}`,
    bareHeading: `${places.side}(?= (?:now|here|we|ill|im|first|so|then|come|coming|same|this|no|again|straight|doors?|tires|tyres|fenders?|wing|everything|next|gonna|paint|rocker|sill|front|its)(?![a-z]))`,
    example: "okay, driver's side, let me get out of my own light",
    quiet: "a little pitting on the driver side",
  },
  {
    name: "this-is-a-side",
    zone: "side",
    strength: 5,
    phrase: `(?:this is|heres|were on|we are on|now on|im on|that puts us on|puts us on|here on|over here on|over on)(?: now)?(?: to)? ${places.side}`,
    example: "so that puts us on the passenger side",
    quiet: "here is where the driver's side airbag was",
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
    heading: `(?:(?:on|to|down|up|round|around|over on|over to) )?${places.otherSide}${headed}`,
    bareHeading: "other side (?:now|next|of (?:the )?(?:car|truck|van))",
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
    phrase: `(?:come|comes|coming|go|going|walk|walking|swing|swinging|head|heading|move|moving|step|around|round|work(?:ing)?(?: our| my| your)? way|keep|carry on|get|lets do|do|scoot|scooch|turn|back|bring|slide|down|on|out|wander|onto)${gap(4)} (?:to|around|round|do|toward|towards|at|onto|on to|here to|here at) ${places.rear}`,
    example: "around to the back end",
    quiet: "they go to the back seat",
  },
  {
    name: "rear-heading",
    zone: "rear",
    strength: 6,
    heading: `(?:(?:at|to|around|round|on|this is|heres|we have) )*(?:${places.rearOfTheCar}|(?:the )?back end|the rear(?= (?:here|so|we|\\||then|now))|the back(?= (?:now|\\||then|so|here|we|youve))|(?:round|around) (?:the )?back|out back|(?:the )?tail end|rear end(?= (?:now|\\||here))|rear bumper(?= (?:now|\\|))|back here(?= (?:the |your |we|youve|on |tail|rear|bumper|its |again)))(?! (?:seat|in the))`,
    bareHeading: `(?:back end of ${places.vehicle}|rear of ${places.vehicle}|around back|round the back|back of the (?:car|truck|van)(?= (?:now|here|we|tail)))`,
    example: "okay back end of the car now",
    quiet: "the rear end of it is a nine inch, and back end gears",
  },
  {
    name: "up-top",
    zone: "roof",
    strength: 5.5,
    phrase:
      "(?:look|come|get|go|swing|over|up|see)(?: up| over| on| here)* (?:at|to|on|onto|over) (?:the )?(?:roof(?! rack came)|soft top|convertible top|sunroof|hood is mohair)|(?:put|drop|dropping|putting|raise|raising|lower)(?:ing)? (?:the )?(?:soft top|convertible top|roof|top) (?:up|down|for)|(?:put|get|have) the (?:soft top|roof|top) (?:up|down)",
    heading:
      "(?:up top|up on top|on top|the roof|roof|up on the roof|the soft top|soft top|the top|convertible top)(?= (?:\\||is|now|here|real|right|quick|its|we|you|theres|no|this|first|has|looks|next|goes|then|and)(?![a-z]))",
    example: "up top right quick",
    quiet: "the roof's been filled",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];
