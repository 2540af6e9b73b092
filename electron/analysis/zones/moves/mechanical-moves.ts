import { gap, type MoveRule } from "./move-rule.ts";
import { places } from "./places.ts";

const onTheLift = `(?:on|onto|over|up on|up onto|over to|across to) ${places.lift}`;

export const mechanicalMoves = [
  {
    name: "open-the-hood",
    zone: "engine-bay",
    strength: 7.5,
    phrase: `(?:pop|popped|popping|open|opened|opening|flop|lift|lifted|lifting|raise|raised|crack|tilt|throw|unlatch|get|getting|got|have|having|put|putting|prop|flip|up with)(?: up| open)? ${places.hood}(?! (?:pins?|was|has|had|ornament|scoop|repainted|release|is|replaced|painted|redone|resprayed|off|fitted|to the|hinges?|latch|springs?|mat|liner|lights?|line|from|off|with))(?: (?:up|open|for you|here))*`,
    example: "let me pop the hood",
    quiet: "somebody put hood pins in it",
  },
  {
    name: "hood-is-up",
    zone: "engine-bay",
    strength: 6,
    phrase:
      "come (?:and )?see the (?:engine|motor)|(?:hood|bonnet)s? (?:(?:is |goes |comes |tips |tilts |lifts |swings |opens |hinges )?(?:up|open|forward|forwards))(?! (?:well|will|when|later|with one))|(?:under|underneath|beneath) (?:the |this |her |his )?(?:hood|bonnet)(?! (?:latch|insulation|paint|pad|light|when|later))|(?:look|looking|move|moving|go|going|come|over|up|round|onto)(?: (?:at|to|in|into|inside|on to|onto|round to))+ (?:the )?(?:engine bay|engine compartment|motor|engine room|engine(?! (?:code|number|oil|size|light)))|pull(?:ed)? (?:that|the) (?:lever|release|hood|bonnet)|heres (?:the|our|your) (?:heart|motor|engine|powerplant|business|mill)|(?:into|open|pop|in) (?:the |this )?(?:frunk|front trunk)|(?:the )?engine is under a cover|(?:grab|get) the (?:hood|bonnet)|(?:hood|bonnet|nose) (?:tips|tilts)(?: (?:up|forward|forwards))?(?= )|(?:doghouse|engine) cover (?:comes|lifts) off|how this opens|what drives (?:it|her|him)|(?:up|down|over) here in the engine bay|no hood on (?:this|it)|now what you came for|the heart of (?:it|the matter)",
    heading:
      "(?:the |in the )?(?:engine bay|under ?hood|engine compartment|motor bay)(?= (?:\\||now|here|is|this|so|wise|its|looks|we|you|then|nice)(?![a-z]))",
    bareHeading:
      "(?:engine bay|under ?hood)(?= (?:here|now|we|is|looks|okay|ok|so|quick)(?![a-z]))|(?:hood|bonnet) (?:up|open)(?= )|(?:hood|bonnet)(?= (?:okay|alright|now|straight six|inline|v eight|small block|big block)(?![a-z]))",
    example: "the bonnet's up, let me show you",
    quiet: "we will get to that when the hood's up",
  },
  {
    // Said before it is done: the lift takes its time, and the camera is elsewhere until then.
    name: "will-go-on-the-lift",
    zone: "underside",
    strength: 3,
    announces: true,
    phrase: `(?:well|gonna|going to|let me|lets|ill|and then|then) (?:run|get|put|stick|pop|take|raise|lift|have|bring|drive|roll)${gap(3)} ${onTheLift}`,
    example: "we'll run it up on the rack",
    quiet: "we had it running on the rack",
  },
  {
    name: "on-the-lift",
    zone: "underside",
    strength: 7.5,
    phrase: `(?:up|put|get|got|run|had|have|sat|sitting|hers?|its?|shes|hes|cars?|trucks?|vans?|been|were|is|weve|now|here|are|goes|going|back|popped|stick|stuck|raise|raised|over|across|go|come)${gap(3)} ${onTheLift}|(?:(?:raise|raised|lift|lifted|jack|jacked|put|got|get|have|weve|shes|its|hes|were|is|up|car|truck)(?: (?:it|her|him|the car|the truck|this|this thing|the van|got|up|now))* )(?:up )?(?:in|into) the air(?! (?:filter|cleaner|box|bag))`,
    heading: `(?:up )?on ${places.lift}|(?:up )?in the air(?= (?:now|here|so|\\||you|we|and))`,
    example: "alright up on the rack she goes",
    quiet: "don't trip on the lift arm",
  },
  {
    name: "get-under",
    zone: "underside",
    strength: 7,
    phrase: `(?<!(?:hood|bonnet)(?: [^ |]+){0,7} )(?:(?:lift|raise|lifted|raised|jack|jacked) (?:it|her|him)(?: up)? for (?:us|you|me|yall)|(?:put|got|had|gotten) (?:it|her|him) up for (?:us|me)|looking up at the (?:bottom|belly|underside)|(?<!(?<![a-z])(?:spare|tank|jack|winch|muffler|battery|hitch|wire|plug|tire|tyre|wheel|pipe|exhaust|sensor|motor|pump|compressor|box|bottle|light|number|plate)s?(?: is| are| goes| sits| lives| hangs)?(?: not)? )(?:up|get|getting|got|go|going|crawl|crawled|climb|look|looking|slide|down|come|were|now|here|are|have a look|see|this is us|peek|straight|walk|walking|roll|duck|from|gone|begin|start|shot|shots|had)(?: (?:up|on|right|down|back|in|here|at|a look))* (?:underneath|under (?:${places.vehicle}|here and look)|the underside|the undercarriage|the underbody)(?! (?:the hood|the bonnet|the dash|the seat|when|later|the carpet|the mat|that|the paint|the spare|the wheel|with the hood|it all|cover)))`,
    example: "okay so we're up underneath",
    quiet: "get under the dash there",
  },
  {
    name: "on-the-ground",
    zone: "underside",
    strength: 6.5,
    phrase:
      "(?:on|on to|onto) the (?:creeper|crawler|ground with|concrete|floor with|ground under)|(?:lay|laying|lying|im|down|get|got|flat)(?: (?:me|down|here|out))* on my (?:back|belly)|(?:slide|scoot|crawl|roll|wriggle|shimmy|slip|slid|crawled|stick|stuck|put|shoved|poked)(?: (?:on|right|the|my|a))*(?: (?:phone|camera|light|head))? (?:up |in )?under(?:neath)?(?= (?:\\||on|here|for|with|it|her|him|there|the (?:car|truck|van|bus|coach)|now|and|so)(?![a-z]))(?! it all)|get down and look(?: up)?|look up in there|down (?:there|here) with (?:the|a|my) (?:light|flashlight|torch)|(?:him|her|it|us) over the pit|had (?:it|her|him) (?:up )?on (?:his|the|their) rack|in the workshop from below|from below(?= )|(?:use|used|borrow|borrowed|get on|on) (?:the|his|their) (?:lift|hoist|ramp)(?! (?:arm|gate))|(?:got|put|have|has|had|ive|weve) (?:the|some) (?:ramps|stands|jack stands|axle stands) under|(?:guys|boys|fellas|lads|mechanics?|tech|techs) (?:put|ran|got|had|raised) (?:it|her|him) up|(?:standing|stood|walking|im|were|here) under(?:neath)? (?:it|her|him|the (?:tail|nose|car|truck|van|back of|front of|engine|thing))(?! (?:dash|seat|hood|bonnet|tree|roof|light|canopy|carport))|over the pit|(?:come|look|now we go|we go|go) under(?= )(?! (?:the (?:hood|bonnet|dash|seat|hammer)|that price))",
    example: "okay on the ground with the flashlight",
    quiet: "the lift arms are on the floor",
  },
  {
    name: "in-the-pit",
    zone: "underside",
    strength: 7,
    phrase: "(?:into|in|over|down) the (?:inspection )?pit(?! (?:stop|lane|bull))",
    example: "Colin's gone down into the pit now",
    quiet: "we were in the pit lane",
  },
  {
    name: "underside-heading",
    zone: "underside",
    strength: 6,
    heading:
      "(?:(?:the|on the|and the|to the|heres|here is|here on the|this is(?: it| her)?|look at the|from) )?(?:underneath|underside|undercarriage|underbody|down below|chassis wise|underneath it|underneath here)(?= (?:\\||now|here|this|is|its|we|weve|you|youve|the|everything|all|real|looks|then|theres|so|on|has|of (?:it|her|him|the (?:car|truck|van|vehicle|body|cab|bus))|same|no|clean)(?![a-z]))",
    bareHeading:
      "heres underneath|(?:underside|undercarriage|underneath)(?= (?:is|here|now|of|looks|we|okay|ok|so|quick|frames?|chassis)(?![a-z]))|under it(?= (?:now|okay|frames?|chassis|dry|clean)(?![a-z]))",
    example: "so this is it underneath",
    quiet: "the paint underneath is green",
  },
  {
    name: "start-it-up",
    zone: "drive",
    strength: 6.5,
    phrase:
      "(?:fire|start|crank|light|fires|starting|firing|cranking) (?:it|her|him|this|(?:the|this) (?:car|engine|motor|truck|thing))(?: up| over| off)?(?! (?:at the|at|with the|from|here at|over again|when|in the winter|on the first|later|every|out))|fire up(?: the (?:engine|motor))?|hear (?:it|her) (?:run|start)|turn of the key|(?:ill|let me|lets) turn (?:it|her) over|cold start|press(?:ing)? start|(?:lets )?see if (?:shell|hell|itll|she will|it will|it) (?:go|start|run|fire)|(?:push|press|hit) the start button|(?:push|press|hit) the button and (?:its on|shes on|away|off|nothing|here|that|were|listen)|foot on the brake|(?:it|she) starts on the button|into drive off|(?:want to|wanna|lets|come|you|gonna|gotta) hear (?:it|her|him)(?! (?:from|said|say|described))(?: (?:run|start|go))?|(?:fired|lit) (?:it |her |him )?up(?= )|turn (?:it|her|him) over|selecting (?:d|drive)|in motion|choke (?:out|on|full)|(?:engine|motor|shes|its|hes) running(?= (?:\\||now|so|okay|and|here)(?![a-z]))|crank(?:ing|s)? (?:it|her|him|over)|turns over (?:and )?catch|seat forward and away|(?:im|were) in it now and its on",
    heading: "it starts (?:right up|straight up|first turn)",
    example: "I'm gonna fire it up",
    quiet: "I'll start at the front",
  },
  {
    name: "go-for-a-drive",
    zone: "drive",
    strength: 7.5,
    phrase: [
      "(?:go|take|took|taking|going|out|went|come|ready|gone)(?: (?:it|her|him|this|this thing|you|on|out|yall|us))* (?:for a|on a|for our|for the)(?: (?:little|quick|short|test|wee|nice|proper))* (?:ride|drive|spin|run|road test|blast|cruise|toddle|whirl)",
      "(?:ready|want|going|gonna) to (?:ride|roll|go for|drive(?! it| home| you| this))",
      "(?:were|we are|im) (?:rolling|driving|moving|off down|out on the|on the (?:road|highway|bypass|freeway|motorway|interstate|move)|underway|under way|off(?= (?:\\||then|now|we))|going down the road)",
      "(?:got|have) us on the (?:road|bypass|highway|freeway|interstate|motorway)",
      "(?:down|up|round|around|along) (?:the |to the |to )(?:lane|road|street|drive|block|crossroads|mailbox|corner|stop sign|end of the (?:road|street)|elevator|hill|houses|roundabout|pub|lights) and back",
      "(?:pop|nip|run|go|going|take(?: (?:it|her|him|you))?|taking it|head|drive|cruise|whip) (?:down|up|out|round|around|along)(?: (?:on|to))? (?:the |to the )?(?:block|road|lane|street|highway|mailbox|bypass|corner|main road|back roads?)(?! side)",
      "take (?:it|her|him|you|this)(?: on)? (?:up|down|out|round|along|around)(?: on| onto)? (?:the |this |our )?(?:[a-z]+ )?(?:road|lane|street|highway|drive|hill)(?! side)|driving (?:down|along|through|around|up)(?= )|out on the (?:[a-z]+ )?(?:road|highway|freeway|motorway|interstate|street)|test drive(?= (?:\\||now|time))|on the road now|pull(?:ing)? out (?:of the lot|onto|on to)|off we go|lets roll|hit the road|(?:and |so )?(?:were|we are|im) away(?= )|(?:and|well) away(?= \\|)|(?:i|ill|we|well) (?:just )?drive it now|(?:just )?(?:pull|pulling|turn|turning|idle|idling|roll|rolling|ease|easing|back|nose|head) (?:it |her |him )?(?:out|down)(?: (?:of|to|onto|through))? (?:here(?= (?:real|so|and|now|\\|))|the (?:gate|lot|drive|yard|end|road|lane|street|driveway))|out (?:of )?the (?:gate|driveway)|bring it round|up the grade|down the (?:road|boulevard|highway|street|avenue|lane)(?: a (?:ways|bit|little|piece))|(?:go|going|head|heading|roll|cruise|take (?:it|her)) down the (?:boulevard|avenue|strip|block)|(?:around|round|roon) the (?:lot|yard|block)(?= )|shall we (?:toddle|drive|go for)|(?:quick|little|wee) (?:squirt|spin|blast|toddle|run)|to the mailbox and back|(?:lets|ill|gonna|we|well) take (?:it|her|him|this) out(?! (?:of|and put|the|to|here))(?= )|alright were driving",
    ].join("|"),
    example: "okay let's go for a ride",
    quiet: "it is ready to drive home",
  },
  {
    name: "drive-heading",
    zone: "drive",
    strength: 5,
    heading:
      "(?:(?:the|quick|a quick|on the|for the) )?(?:test drive|road test|drive time|start up(?! (?:here|front|at|on|in|the|top|by|with))|cold start|driving it|how it drives|on the road|out on the road)(?= )",
    example: "so, road test",
    quiet: "he did a road test for the magazine",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];
