import type { ZoneName } from "../../../shared-types/index.ts";
import { goVerb, places } from "./places.ts";

export interface MoveRule {
  readonly name: string;
  /** Where the words take the camera. `side`: the side they name; `other-side`: the one not in view; null: away, without saying where. */
  readonly zone: ZoneName | "side" | "other-side" | null;
  /** Over plain words with " | " at sentence ends (see spoken-line.ts). */
  readonly pattern: RegExp;
  /** 1 to 8: how surely the words move the camera. */
  readonly strength: number;
  /** A zone these words leave, if they say so. */
  readonly leaves?: ZoneName;
  /** True where the walk to the next place begins with these words even if the place follows in the next sentence ("hop out. The trunk …"). */
  readonly setsOff?: boolean;
  /** True where the words say what will be done: they hide a surer rule that would read them as done. */
  readonly announces?: boolean;
  readonly example: string;
  /** Much the same words that move nothing. */
  readonly quiet: string;
}

const phrase = (source: string) => new RegExp(`(?<![a-z0-9])(?:${source})(?![a-z0-9])`, "g");
/** Up to some words that end no sentence. */
const gap = (words: number) => `(?: (?!\\|)[^ ]+){0,${words}}?`;
const lead =
  "(?:(?:okay|ok|alright|all right|right|now|so|and|then|well|next|first|anyway|anyhow|oh|yeah|lets see|here|lastly|finally|there) )*";
/** The start of a sentence or of a stretch after a spoken joint: where a bare name of a place is a heading. */
const opens = `(?:(?<=\\| )|(?<=^)|(?<=(?:okay|ok|alright|right|now|so|anyway|anyhow|then|and) ))${lead}`;
/** What may follow a heading. "Front bumper" is one, "front bumper brackets" is not. */
const headed =
  "(?= (?:\\||now|here|we|you|i|ill|its|it|theres|theyre|these|so|and|first|then|again|this|that|thats|real|same|everything|lets|have|no|not|the|same|straight|good|come|coming|up|tires|tyres|door|doors|walk|gonna|im|quick|whole|about|all|over|is|looks?|got|with)(?![a-z]))";

/** Phrases by which the camera is moved. The first that matches at a place counts. */
export const moveRules = [
  // Front
  {
    name: "start-at-the-front",
    zone: "front",
    strength: 7,
    pattern: phrase(
      `(?:start|starting|begin|beginning|kick off|kicking off|started)${gap(5)} (?:at|with|on|up|from|here at|out)${gap(2)} ${places.front}`,
    ),
    example: "so starting up at the nose",
    quiet: "the starter is at the back of it",
  },
  {
    name: "go-to-the-front",
    zone: "front",
    strength: 6,
    pattern: phrase(
      `(?:come|coming|go|going|walk|swing|head|heading|move|moving|step|back|around|round|up|get|lets do|do|look at|onto|on to)${gap(3)} (?:to|at|with|on|here to|round|around|up|do|look at) ${places.front}`,
    ),
    example: "come on up here to the front",
    quiet: "come up to the front seat",
  },
  {
    name: "up-front-heading",
    zone: "front",
    strength: 4,
    pattern: phrase(
      `${opens}(?:up (?:at |here at )?front|at the front|in front|on the front end|front end|the front(?: end)?(?! and)|front of the (?:car|truck|van|vehicle)|nose first|the nose|round the front|around front)${headed}`,
    ),
    example: "so up front this bumper is the one it came with",
    quiet: "both seats up front are clean",
  },
  // Named sides
  {
    name: "go-to-a-side",
    zone: "side",
    strength: 7,
    pattern: phrase(
      `${goVerb}${gap(6)} (?:to|on|onto|along|down|up|round|around|with|at|by|over|do|the|here|this|into|us on|back)? ?${places.side}`,
    ),
    example: "let's go down the passenger side",
    quiet: "he had the driver's side mirror replaced",
  },
  {
    name: "side-heading",
    zone: "side",
    strength: 6,
    pattern: phrase(
      `${opens}(?:(?:on|down|up|to|along|round|around|over|onto|over on|down on|its) )?(?:to )?${places.side}(?: first| now| then)?(?= (?:\\||now|here|we|you|i|ill|im|its|first|so|and|then|come|coming|same|theres|this|that|the|no|again|same|straight|door|doors|tires|tyres|down|up|front|real|lets|looks|everything|gonna|paint|fender|wing|not)(?![a-z]))`,
    ),
    example: "okay, driver's side, let me get out of my own light",
    quiet: "a little pitting on the driver side",
  },
  {
    name: "this-is-a-side",
    zone: "side",
    strength: 5,
    pattern: phrase(
      `(?:this is|heres|here is|thats|were on|we are on|now on|im on|that puts us on|puts us on|here on|over here on|over on)(?: now)?(?: to)? ${places.side}`,
    ),
    example: "so that puts us on the passenger side",
    quiet: "here is where the driver's side airbag was",
  },
  {
    name: "other-side",
    zone: "other-side",
    strength: 6,
    pattern: phrase(`${goVerb}${gap(6)} (?:to|on|onto|down|up|round|around|over|at|do|along) ${places.otherSide}`),
    example: "come around to the other side",
    quiet: "it is the same as on the other side",
  },
  {
    name: "other-side-heading",
    zone: "other-side",
    strength: 4,
    pattern: phrase(`${opens}(?:(?:on|to|down|up|round|around|over on|over to) )?${places.otherSide}${headed}`),
    example: "okay, other side now",
    quiet: "exhaust comes out the other side of the road",
  },
  {
    name: "side-quarter-heading",
    zone: "side",
    strength: 3.5,
    pattern: phrase(
      `${opens}(?:the )?(?<side>drivers?|passengers?|nearside|offside|near side|off side) (?:front |rear |side )?(?:quarter|fender|wing|front wing|rear wing|door)(?![a-z])`,
    ),
    example: "so driver quarter, this one's never been off",
    quiet: "open the driver door",
  },

  // Rear
  {
    name: "go-to-the-rear",
    zone: "rear",
    strength: 7,
    pattern: phrase(
      `(?:come|coming|go|going|walk|walking|swing|head|heading|move|moving|step|around|round|out and around|out|on|work(?:ing)?(?: our| my| your)? way|keep|carry on|get|lets do|do|scoot|scooch|turn|back|bring|bring you|slide|down)${gap(4)} (?:to|around|round|do|toward|towards|at|onto|on to|here to|here at) ${places.rear}`,
    ),
    example: "around to the back end",
    quiet: "they go to the back seat",
  },
  {
    name: "rear-heading",
    zone: "rear",
    strength: 6,
    pattern: phrase(
      `${opens}(?:(?:at|to|around|round|on|here at|this is|heres|we have|the) )*(?:back end|the rear(?= (?:of the|now|here|so|we|\\||then))|the back(?= (?:of the|now|\\||then|so))|rear of the (?:car|truck|van|vehicle|wagon|thing)|back of the (?:car|truck|van|vehicle|wagon|thing)|round the back|around back|out back|round back|tail end|rear end(?= (?:of the|now|\\||here))|rear bumper(?= (?:now|\\|))|the tail(?= ))(?! (?:up|in the|seat|to back))`,
    ),
    example: "okay back end of the car now",
    quiet: "the rear end of it is a nine inch, and back end gears",
  },

  // Cabin
  {
    name: "get-in",
    zone: "cabin",
    strength: 7.5,
    pattern: phrase(
      `(?:get|gets|getting|hop|hopping|jump|climb|climbing|slide|step|pop|sit|sitting|slip|crawl|clamber|settle)(?: on| back| right| down| up| yourself| over| round| straight| myself)? (?:in|into|inside)(?: of)?(?! (?:there|close|tight|here|on|low|gear|touch|front|behind|the (?:trunk|boot|bed|back of|paperwork|engine|folder|sun|pit|light|shop|barn|garage|hole|wheel|fender|water|road|paint|file|ground)|under|between|this light|trouble|through|deep|to the (?:trunk|boot|bed|engine|pit|back of)|that (?:bed|box|trunk)|your|and out))(?: (?:it|her|him|here|the (?:car|cab|truck|drivers? seat|front seat|cabin|thing|interior|passenger seat|seat|van)|there))?`,
    ),
    example: "so let's get in it",
    quiet: "get in close on that weld",
  },
  {
    name: "look-inside",
    zone: "cabin",
    strength: 6.5,
    pattern: phrase(
      `(?:look|see|go|peek|peep|move|head|step|on|come|moving|going|now|lets|back|over)(?: at)?(?: on)? (?:to the |to |in the |into the |at the |the )?(?:inside|interior|cabin|cockpit|cab)(?! (?:of (?:the|that|those|this) (?:trunk|boot|fender|wheel|bed|frame|door|wing|arch|tire|tyre|doors)|light|edge|fender|corner|and out|where its cool|for the paper))`,
    ),
    example: "let's move to the interior",
    quiet: "look inside of the fender there",
  },
  {
    name: "cabin-heading",
    zone: "cabin",
    strength: 6,
    pattern: phrase(
      `${opens}(?:(?:the|into the|in the|to the|onto the|on the|now the|for the|as for the|here in the) )?(?:interior|cabin|inside|cockpit|cab|inside here|inside the (?:car|cab|truck))(?= (?:\\||now|here|this|is|its|we|you|then|theres|has|all|so|real|was|on|i|looks|next|wise|seats|black|tan|red|grey|gray|blue)(?![a-z]))`,
    ),
    example: "interior, this is the black vinyl buckets",
    quiet: "there is a crack inside the lens",
  },
  {
    name: "into-the-cabin",
    zone: "cabin",
    strength: 6.5,
    pattern: phrase(
      `(?:into|inside) the (?:cabin|cab|interior|cockpit|car)|behind the wheel here|(?:open|opening)(?: up)? (?:the |this )?(?:drivers?|passenger|front) door (?:here|and|up|so|lets)|sat in the drivers seat|sitting in the drivers seat|from the drivers seat|have a sit in|take a seat|in the drivers seat`,
    ),
    example: "OK into the cabin then",
    quiet: "it turns into the drive",
  },

  // Cargo
  {
    name: "open-the-trunk",
    zone: "cargo",
    strength: 6.5,
    pattern: phrase(
      `(?:pop|open|opening|popping|drop|dropping|let down|lower|lift|lifting|raise|unlatch|flip)(?: up| open| down)?(?: on)? ${places.trunk}(?! (?:release|button|lid (?:fits|is)))(?: (?:up|down|open))?|(?:get|put|have)(?: you)? (?:the |this |that )(?:trunk|boot|tailgate|hatch|liftgate)(?: lid)? (?:open|up|down)`,
    ),
    example: "pop the trunk",
    quiet: "the trunk release is in the glove box",
  },
  {
    name: "look-in-the-trunk",
    zone: "cargo",
    strength: 7,
    pattern: phrase(
      `(?:look|looking|peek|peep|go|going|get|getting|come|see|climb|jump|hop|up|round|back|over|now|here|were|start)(?: (?:on|back|up|inside|round|around|over|out))? (?:in|into|inside|at|to) ${places.trunk}(?! (?:release|lid|light))`,
    ),
    example: "we'll go look in the trunk",
    quiet: "his tools went to the boot fair",
  },
  {
    name: "trunk-heading",
    zone: "cargo",
    strength: 5.5,
    pattern: phrase(
      `${opens}(?:(?:the|in the|inside the|into the|now the|here in the|to the|this is the|heres the) )?(?:trunk|boot|bed|load (?:area|bay|space|bed)|cargo (?:area|space|bay)|box)(?= (?:\\||now|here|is|its|has|we|you|floor|real|area|this|so|then|got|good|and|space|theres|wise|lined)(?![a-z]))`,
    ),
    example: "there. boot. It's a good deep boot",
    quiet: "shift boot is torn",
  },
  {
    name: "in-here-the-load",
    zone: "cargo",
    strength: 4,
    pattern: phrase(
      `in here(?: (?!\\|)[^ ]+){0,4} (?:cubic|litres|liters|suitcases?|groceries|load)|(?:lift|peel|pull|roll)(?:ing)?(?: this| that| it| the)?(?: (?:mat|carpet|floor|cover|board))?(?: up| back)? (?:and )?(?:theres|there is|heres|here is)(?: (?:your|the|our|a|my))?(?: [^ ]+)? spare`,
    ),
    example: "lift this up and there's your spare",
    quiet: "in here it gets hot",
  },

  // Engine bay
  {
    name: "open-the-hood",
    zone: "engine-bay",
    strength: 7.5,
    pattern: phrase(
      `(?:pop|popped|popping|open|opened|opening|flop|lift|lifted|lifting|raise|raised|crack|tilt|throw|unlatch|get|getting|got|have|having|put|putting|prop|flip)(?: up| open)? (?:the |this |that |her |his |our |its )?(?:hood|bonnet|frunk|engine lid|engine cover|clamshell)(?! (?:pin|pins|was|has been|ornament|scoop|repainted|release))(?: (?:up|open|for you|here))*`,
    ),
    example: "let me pop the hood",
    quiet: "somebody put hood pins in it",
  },
  {
    name: "hood-is-up",
    zone: "engine-bay",
    strength: 6,
    pattern: phrase(
      `(?:(?:hood|bonnet)s?(?: is)? (?:up|open)(?! (?:well|will|when|later))|under (?:the |this |her |his )(?:hood|bonnet)(?! (?:latch|insulation|paint|pad|light|when|later))|(?:look|looking|move|moving|go|going|on|come|over|up|round|into|in)(?: (?:at|to|in|into|inside|on to|onto|round to))+ (?:the )?(?:engine bay|engine compartment|motor|engine room|engine(?! (?:code|number|oil|size|light)))|heres the (?:heart|motor|engine|powerplant|business)|engine bay(?= (?:\\||now|here|is|this|so|wise)))`,
    ),
    example: "the bonnet's up, let me show you",
    quiet: "we will get to that when the hood's up",
  },

  // Underside
  {
    name: "on-the-lift",
    zone: "underside",
    strength: 7.5,
    pattern: phrase(
      `(?<!(?:well|gonna|going to|let me|lets|ill|then) )(?:up|put|get|got|run|had|have|sat|her|it|car|truck|van|been|were|is|weve|now|here|are|goes|going|back|popped|stick|stuck|raise|raised)${gap(3)} (?:on|onto|over|up on|up onto) ${places.lift}|(?:up )?in the air(?= (?:now|here|so|\\||you|we|and))|(?:raise|raised|lift|lifted|jack|jacked|put|got|get|have|weve got)(?: (?:it|her|him|the car|the truck|this|this thing|the van))? (?:up )?(?:in|into) the air`,
    ),
    example: "alright up on the rack she goes",
    quiet: "don't trip on the lift arm",
  },
  {
    // Said before it is done: the lift takes its time, and the camera is elsewhere until then.
    name: "will-go-on-the-lift",
    announces: true,
    zone: "underside",
    strength: 3,
    pattern: phrase(
      `(?:well|gonna|going to|let me|lets|ill|and then|then) (?:run|get|put|stick|pop|take|raise|lift|have|bring|drive|roll)${gap(3)} (?:on|onto|over|up on|up onto) ${places.lift}`,
    ),
    example: "we'll run it up on the rack",
    quiet: "we had it running on the rack",
  },
  {
    name: "get-under",
    zone: "underside",
    strength: 7,
    pattern: phrase(
      `(?:up |get |getting |got |go |going |crawl |climb |look |looking |slide |down |come |were |now |here |look |have a look |see |this is us |peek |straight |walk |walking |roll |duck |from )(?:up |on |right |down |back |in |here |at )*(?:underneath|under (?:the (?:car|truck|vehicle|van|thing|chassis|old girl)|her|it|here and look|this (?:car|truck|thing))|the underside|the undercarriage|the underbody|the undercarriage)(?! (?:the hood|the bonnet|the dash|the seat|when|later|the hood|the carpet|the mat|that|the paint|the spare|the wheel|with the hood))`,
    ),
    example: "okay so we're up underneath",
    quiet: "get under the dash there",
  },
  {
    name: "in-the-pit",
    zone: "underside",
    strength: 7,
    pattern: phrase(`(?:into|in|over|down) the (?:inspection )?pit(?! (?:stop|lane|bull))`),
    example: "Colin's gone down into the pit now",
    quiet: "we were in the pit lane",
  },
  {
    name: "underside-heading",
    zone: "underside",
    strength: 6,
    pattern: phrase(
      `${opens}(?:(?:the|on the|now the|and the|to the|here on the|this is|look at the|so) )?(?:underneath|underside|undercarriage|underbody|down below|chassis wise|underneath it|underneath here)(?= (?:\\||now|here|this|is|its|we|you|the|everything|all|real|looks|then|theres|so|on|has)(?![a-z]))`,
    ),
    example: "so this is it underneath",
    quiet: "the paint underneath is green",
  },
  {
    name: "this-is-underneath",
    zone: "underside",
    strength: 6,
    pattern: phrase("(?:this is|here is|heres|thats|so)(?: (?:it|her|us|the car|the truck|what its like))? underneath"),
    example: "so this is it underneath, no rust",
    quiet: "there is rust underneath the tape",
  },

  // Documents
  {
    name: "here-is-the-paperwork",
    zone: "documents",
    strength: 6.5,
    pattern: phrase(
      `(?:heres|here is|here are|show you|look at|go over|go through|got|spread|thats|this is|flip through|do|on to|onto|over to|move to|now)(?: (?:all|you|the|this|that|some|out|of|first|a|at))* ${places.papers}(?! (?:is clean|was|status|in hand|jam|says it|work done))`,
    ),
    example: "here's the paperwork",
    quiet: "we got it with a salvage title years ago, he said",
  },
  {
    name: "papers-heading",
    zone: "documents",
    strength: 6,
    pattern: phrase(
      `${opens}(?:(?:the|some|all the|now the|for the|on the|onto the|as for the|in the way of|with the) )?(?:paper ?work|documents|documentation|paperwork wise|history(?= (?:\\||wise|now|file|folder|then))|service history|the papers|paper side)(?= |$)`,
    ),
    example: "so paperwork title says 1935",
    quiet: "he did the work on paper first",
  },
  {
    name: "box-of-papers",
    zone: "documents",
    strength: 4,
    pattern: phrase(
      `(?:kept everything|whole (?:box|folder|binder|file|stack|pile)|(?:box|folder|binder|file|stack|pile|wallet) (?:full )?of (?:papers?|paperwork|receipts|records|bills|history|stuff|mots)|spread the papers|in the folder here|inside where its cool)`,
    ),
    example: "there's a whole folder of receipts",
    quiet: "a box of tools goes with it",
  },

  // Drive
  {
    name: "start-it-up",
    zone: "drive",
    strength: 6.5,
    pattern: phrase(
      `(?:fire|start|crank|light|fires|starting|firing)(?: (?:it|her|him|this|the (?:car|engine|motor|truck)|this thing))(?: up| over| off)?(?! (?:at the|at|with the|from|here at|over again|when|in the winter|on the first|later|every))|fire up(?: the (?:engine|motor))?|hear (?:it|her) (?:run|start)|turn the key|cold start`,
    ),
    example: "I'm gonna fire it up",
    quiet: "I'll start at the front",
  },
  {
    name: "go-for-a-drive",
    zone: "drive",
    strength: 7.5,
    pattern: phrase(
      `(?:go|take|took|taking|going|out|went|come|ready)(?: (?:it|her|him|this|this thing|you|on|out|her out|it out|yall|us))* (?:for a|on a|for our|for the|on the|for)(?: (?:little|quick|short|test|wee|nice|proper))* (?:ride|drive|spin|run|test drive|road test|blast|cruise|toddle)|(?:ready|want|going|gonna) to (?:ride|drive(?! it| home| you| this))|(?:were|we are|im) (?:rolling|driving|moving|off down|out on the|on the (?:road|highway|bypass|freeway|motorway|interstate|move)|underway|under way)|(?:got|have) us on the (?:road|bypass|highway|freeway|interstate)|down the (?:lane|road|street|drive) and back|out on the (?:open )?(?:road|highway|freeway|motorway|interstate|street)|test drive(?= (?:\\||now|time))|on the road now|pull(?:ing)? out (?:of the lot|onto|on to)`,
    ),
    example: "okay let's go for a ride",
    quiet: "it is ready to drive home",
  },
  {
    name: "drive-heading",
    zone: "drive",
    strength: 5,
    pattern: phrase(
      `${opens}(?:(?:the|quick|a quick|now the|on the) )?(?:test drive|road test|drive time|start up|cold start|driving it|how it drives|on the road|out on the road)(?= |$)`,
    ),
    example: "so, road test",
    quiet: "he did a road test for the magazine",
  },

  // Roof
  {
    name: "up-top",
    zone: "roof",
    strength: 5.5,
    pattern: phrase(
      `(?:${opens}(?:up top|up on top|on top|the roof|roof|top of the car|up on the roof|over the top|the soft top|soft top|the top(?= (?:\\||is|now|here|goes))|the hood is (?:mohair|double duck|vinyl))(?= (?:\\||now|here|real|right|quick|is|its|we|you|of|theres|no|this|first|has|looks)(?![a-z])))|(?:look|come|get|go|swing|over|up|see)(?: up| over| on)* (?:at|to|on|onto|over) (?:the )?(?:roof|soft top|convertible top|sunroof)|(?:put|drop|dropping|putting|raise|raising|lower)(?:ing)? (?:the )?(?:soft top|convertible top|top|roof) (?:up|down|for)?`,
    ),
    example: "up top right quick",
    quiet: "the roof's been filled",
  },

  // Closing
  {
    name: "in-closing",
    zone: "closing",
    strength: 5,
    pattern: phrase(
      `in closing|to (?:sum|wrap|finish|round)(?: (?:it|this|that|things|her))? (?:up|off)|wrap(?: (?:it|her|this|that|things|him))? up|in (?:summary|conclusion)|thats (?:about )?(?:the whole|the full|our|the) (?:walk ?around|tour|car|truck|lap|story|lot)|so (?:thats|there) (?:her|him|she is|it is|you have it|you go folks)|(?:and|so|but|well|okay|alright|right) (?:thats|that is) (?:her|him|it(?: (?:really|folks|guys|then))?|about it|us|your lot|the lot|everything)(?= (?:\\||the|a|its|from|for|folks|really|i|so|then|guys|and|if|yall))|so there (?:she|he|it) is|there you have it`,
    ),
    example: "so in closing it's a driver",
    quiet: "that's closing better now",
  },
  {
    name: "back-again",
    zone: "closing",
    strength: 5,
    pattern: phrase(
      `(?:were|we are|im|and)(?: (?:all|now|safely))? (?:back|home|parked|parked up|back home)(?= (?:\\||so|now|and|at|in|safe|lets|then|here|that)(?![a-z]))|back (?:in|at|on) the (?:yard|shop|lot|showroom|forecourt|drive|barn|garage|dealership|office|house)|go back outside|back outside|parked back up|back where we started`,
    ),
    example: "so we're back",
    quiet: "we are back on the throttle",
  },
  {
    name: "thanks-for-watching",
    zone: "closing",
    strength: 4,
    pattern: phrase(
      "(?:thanks|thank you|appreciate you)(?: so much| very much| all| guys| folks)? for (?:watching|looking|tuning in|stopping by|coming along|your time|joining)|give (?:us|me) a (?:call|ring|shout|bell)|come (?:and )?(?:see|look at) (?:it|her|us)|call (?:the shop|us|me) (?:at|on|if|and|for|any)",
    ),
    example: "thanks for watching",
    quiet: "thanks for the manual",
  },
  {
    name: "the-deal",
    zone: "closing",
    strength: 2.5,
    pattern: phrase(
      "were asking|asking price(?: is)?|im asking|asking (?:for|about)? ?(?:[a-z]+ )?(?:thousand|grand|hundred)|priced at|if (?:youre|your|yall are) interested|if you want (?:it|her|to see|the|more)|any questions|with any questions",
    ),
    example: "we're asking thirty eight nine",
    quiet: "he kept asking about it",
  },

  // Away, without saying where
  {
    name: "close-the-hood",
    zone: null,
    strength: 3,
    leaves: "engine-bay",
    pattern: phrase(
      "(?:close|shut|drop|lower|put|get|let)(?:ting|ing)? (?:this|the|that|her|it|him) (?:hood|bonnet|lid)(?: back)? (?:up|down|shut)|(?:drop|close|shut|closing|shutting|dropping) (?:the |this |that )?(?:hood|bonnet|lid)|(?:hood|bonnet)s? (?:is )?(?:down|shut|closed)",
    ),
    example: "okay hood's down",
    quiet: "the hood lines up",
  },
  {
    name: "close-up",
    zone: null,
    strength: 3,
    pattern: phrase(
      "(?:close|shut|closing|shutting|button) (?:this|it|her|that)(?: back)? up|(?:gonna|going to|ill|let me|lets) (?:shut|close) (?:this|it|that)",
    ),
    example: "I'm gonna close this up",
    quiet: "the door shuts like a bank",
  },
  {
    name: "close-the-trunk",
    zone: null,
    strength: 3,
    leaves: "cargo",
    pattern: phrase(
      "(?:close|shut|closing|shutting|slam|drop) (?:the |this |that |up the )?(?:trunk|boot|tailgate|hatch|liftgate|boot lid|trunk lid)|(?:tailgate|hatch|trunk|boot)s? (?:is )?(?:down|shut|closed)",
    ),
    example: "close the trunk and go on",
    quiet: "the trunk closes well",
  },
  {
    name: "get-out",
    zone: null,
    strength: 3,
    setsOff: true,
    leaves: "cabin",
    pattern: phrase(
      "(?:hop|get|jump|climb|step|pop|crawl|getting|hopping|climbing) (?:back |on |right )?out(?! (?:of (?:here|the way|there|my)|the way|there|my|your|a|to you|from|on the highway|front of))(?: (?:of (?:it|her|the car|the cab|here)|here))?",
    ),
    example: "alright hop out",
    quiet: "you could get out a rag",
  },
  {
    name: "down-off-the-lift",
    zone: null,
    strength: 3,
    leaves: "underside",
    pattern: phrase(
      "(?:let|set|bring|drop|lower|get|letting|setting|bringing|dropping)(?: (?:her|it|him|us|the car|this|the truck))? (?:back )?(?:down|on the ground)(?! (?:low|here|there|on|in|under|close|to the))|back on the (?:ground|floor|deck|wheels)|off the (?:lift|rack|hoist|ramp)",
    ),
    example: "okay let her down slow",
    quiet: "get down low for me",
  },
  {
    name: "come-up",
    zone: null,
    strength: 3,
    setsOff: true,
    leaves: "underside",
    pattern: phrase("up you come|come (?:on )?up out of (?:there|it)|out you come|up we come"),
    example: "up you come. Now the papers",
    quiet: "prices will come up",
  },
  {
    name: "come-along",
    zone: null,
    strength: 3,
    setsOff: true,
    pattern: phrase(
      "(?:come|swing|keep (?:going|walking|coming|moving)|carry(?:ing)? on|move|moving|walk|head|heading|go|going|work our way|continue|spin|wheel)(?:ing)? (?:on |right |back |all the way |it )?(?:around|round|along|back here|down here|back there|with me|this way|over here|on|up here)(?! (?:the (?:dash|edge|engine|motor|block|bolt|wheel|lens|glass|rim|arch|world|interstate)|town|it|here with|and on|about|since|like|for|him|there when|a hill))|follow me|moving on|move on|lets (?:walk|go|move|head|keep going|keep moving|carry on|continue)|walk with me|come with me|come here|watch the cord|mind the (?:cord|step|puddle)|let me get (?:around|round)|while (?:were|im) (?:here|up here|down here|at it)|next up|where were we|what else|turning back in|we go again",
    ),
    example: "alright come on around",
    quiet: "it goes around the dash",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];

/**
 * Words in the same sentence that put a place elsewhere in time: what will be shown, what was done, what would be. Between them and the
 * move only a few words may stand.
 */
export const elsewhereBefore = phrase(
  "when (?:we|i|you|they|the|that|hes|shes|your|its)|once (?:we|i|its|the|hes|shes)|until (?:we|i)|later|if (?:we|you|i) (?:get|go|look|put|pop|open|were|ever)|last (?:week|month|year|night|time|summer|winter|spring|fall)|yesterday|before (?:we|i|you|he|they)|he (?:had|used|would|put|got|came)|she (?:had|used|would|came)|they (?:had|would|used|put|went)|used to|you could|you can(?! see)|could|would(?:nt)?|never|dont|do not|didnt|wont|not going to|not gonna|aint gonna|shant|cant|every time|somebody|im not|we had it|we had her|been|wouldnt|without|instead of|as (?:he|she|they|you)|theyll|youd|supposed to|takes two|have to|had to|need to get|easy to|hard to|room to|able to|ill show(?: you)?(?: that| it| them)?|well (?:see|get to|look at|show you) (?:that|it|them|those)",
);
export const elsewhereAfter = phrase(
  "later|in a (?:minute|bit|second|moment|while)|when we(?:re)? |when i |when it(?:s)? |once we|last (?:week|month|year|night|summer|winter|time)|yesterday|the other day|back in (?:the |nineteen |19|20|two thousand)|every (?:time|day|sunday|weekend|morning)|after (?:this|that|we)|any time|at the end(?: of the video)?|all day",
);
