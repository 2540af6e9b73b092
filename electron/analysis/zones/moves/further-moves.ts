import type { MoveRule } from "./move-rule.ts";
import { places } from "./places.ts";

const camera =
  "(?:(?:the|my|this|a|your|our) )?(?:camera|phone|light|torch|lens|flashlight|lamp|lead lamp|trouble light|head|mirror|selfie stick)";
const underWhat =
  "(?= (?:\\||here|her|him|it|there|and|so|for|now|with|the (?:front|back|rear|nose|tail|sill|rocker|bumper|car|truck|van|axle|engine|floor|cab|door|side|driver|drivers|passenger|passengers|body|chassis|frame|thing|bed|wagon|valance|middle))(?![a-z]))";
/** A helper may be sent beneath it while the camera stays. */
const firstPerson = "(?:ill|im|lets|let me|let us|gonna|going to|can i|well|i|we|ive got to|i can)(?: (?:just|now|also|gonna|going to))*";
const firstTry =
  "(?:here goes|here we go|listen|and (?:it|she|he|away|listen|off|were)|first (?:time|turn|go|touch|flick)|away|off|there (?:it|she)|fires|catches|lights)";

/** Further ways beneath it, onto the road, to the papers and to the end. */
export const furtherMoves = [
  {
    name: "camera-underneath",
    zone: "underside",
    strength: 6.5,
    phrase: `(?:poke|poking|stick|sticking|slide|sliding|shove|shoving|hold|holding|get|getting|put|putting|run|running|push|pushing|reach|reaching|drop|dropping|shine|shining|point|pointing|aim|aiming|pass|passing|feed|swing|roll|rolling)(?: ${camera})(?: (?:right|in|up|down|back|well|just|way|here))* (?:under|underneath|beneath|below)${underWhat}|(?:ducking|crawling|wriggling|scooting|lying|sliding|${firstPerson} (?:duck|crawl|wriggle|scoot|roll|squeeze|shuffle|lie|slither|bend|drop|get|getting|stoop|slide))(?: (?:right|in|up|down|back|well|just|way|low))* (?:under|underneath|beneath)${underWhat}(?! the (?:hood|bonnet|dash|seat|engine|door))`,
    example: "poke the phone beneath the front end",
    quiet: "get the light on under the dash",
  },
  {
    name: "down-on-my-knees",
    zone: "underside",
    strength: 6,
    phrase: `(?:on|down on|onto) my (?:hands and knees|elbows)(?! (?:and change|of))|(?:crouch|crouching|kneel|kneeling|squat|squatting|hunker|hunkering|stoop|stooping|down on (?:one|my) knees?|get down|getting down|bend|bending)(?: [^ |]+){0,8} (?:underneath|beneath|underside|undercarriage|underbelly|up at the|up under)|(?:look|looking|see|peer|peering)(?: right)? up (?:at|into|past|and under|under) (?:the |your |her )?(?:axle|back axle|rear axle|diff|floors?|floor pans?|gearbox|transmission|sump|oil pan|belly|drive ?shaft|prop ?shaft|frame|chassis|underside|exhaust|engine from|guts)|(?:for|at|over|do|doing|see) the (?:underneath|underside|undercarriage|underbelly|belly|bottom of (?:it|her|him))(?= (?:\\||now|here|then|next|and|so)(?![a-z]))|(?:from in here|then|now|so|next|and) (?:we |i )?(?:go|get|dive|head) (?:underneath|under|below)(?= (?:\\||now|here|and|then|her|him|it))|(?:flat|down|lying|laid|laying|stretched)(?: out)? on (?:the|my) (?:deck|tarmac|gravel|belly|concrete)(?= (?:\\||now|and|here|camera|for|so|looking))|(?:look|looking|see|show you) (?:at |up at )?what(?:s)? (?:is |lives |goes on )?(?:below|underneath|under (?:it|here|there|her))(?= (?:\\||and|here|now))|(?:right|all the way|straight|well) (?:under|underneath|beneath) (?:here|her|it|him)(?= (?:\\||now|thats|and|you|theres|heres))`,
    example: "down on my hands and knees now for the underneath",
    quiet: "he did the job on his hands and knees",
  },
  {
    name: "let-us-drive",
    zone: "drive",
    strength: 6.5,
    phrase: `(?:lets|ill|well|were gonna|im gonna|im going to|were going to|we|now|shall we|time to|go)(?: (?:just|go|now|actually|all|go and))* (?:drive|ride|cruise)(?: (?:it|her|him|this|this thing))?(?= (?:\\||then|now|okay|ok|and|so|round|around|down|up|a|out|over|along)(?![a-z]))|(?:take|taking|took|run|running|bring|drive|nip|pop|go|going|head|heading|trundle|scoot|whip|wander|get)(?: (?:it|her|him|this|this thing|you|us|yall))? (?:up|down|over|out|round|along|across|around|just|as far as)(?: (?:up|down|over|out|to|as far as|past|by|on|round))*(?: (?!\\|)[^ ]+){1,5}? and back(?! (?:seat|doors?|wheel|end|bumper))|(?:belt|belts|seat ?belts?)(?: (?:is|are|go|goes))? on(?= (?:\\||and|so|were|mirrors|now|everybody|[a-z]+ \\|)(?![a-z]))|(?:belted|buckled|strapped|buckle|strap) (?:up|in)(?= (?:\\||and|so|were|now))`,
    neverFrom: ["opening"],
    example: "okay let's drive it and see",
    quiet: "you could drive it home",
  },
  {
    name: "key-turned",
    zone: "drive",
    strength: 6,
    phrase: `(?:turn|turning|twist|twisting|flick|flicking)(?: of)? the (?:key|ignition)(?= (?:\\| )?${firstTry})|${firstTry.replace("first (?:time|turn|go|touch|flick)|", "")}?(?:press|pressing|push|pushing|thumb|prod)(?: on)? the (?:starter|start button|starter button)|(?:ready|set|listen up) here (?:goes|we go)|(?:bring|bringing|wake|waking|stir|stirring) (?:it|her|him) (?:to life|up)(?= )`,
    example: "turning the key, here goes",
    quiet: "turn the key and read the odometer",
  },
  {
    name: "papers-brought-out",
    zone: "documents",
    strength: 6.5,
    phrase: `(?:put|putting|hold|holding|get|getting|bring|bringing|show|showing|spread|spreading|lay|laying|fan|fanning|dig|digging|grab|grabbing|pull|pulling|fetch|fetching|tip|tipping|unfold|unfolding|pass me|hand me)(?: (?:you|up|out|all|over|yall))* (?:(?:the |that |this |some |his |her |all |my |its |your |our )+(?:paper ?work|papers|documents|documentation|title|log ?book|v5c?|history|folder|binder|file|service (?:book|history|records?)|records|receipts|invoices|build sheet|window sticker|bill of sale|shoebox))(?: (?:up|out|over|down|to|across|on|here|where|for|under|in front))+(?! (?:date|of the window))|(?:dig|digging|dive|diving|delve|get|getting|go|going|look|looking|flick|flicking|leaf|leafing|thumb|thumbing|flip|flipping|work|wade|read|reading|run|sort)(?: (?:back|right|straight))* (?:into|in to|through) ${places.papers}(?! (?:scrap|dates?))|(?:show you|see|read you|let you see|before i (?:finish|go|wrap|sign))(?: [^ |]+){0,4} the (?:log ?book|v5c?|title|service book|service history|paperwork|build sheet|window sticker|history file)(?= (?:\\||now|here|and|so|its|then|for|first))|(?:sit|sitting|sat|settle|set) down (?:with|for|to) (?:these|the (?:papers|paperwork|file|folder|box))|(?:over to|back at|back in|round to|at|into|in) the (?:bench|desk|office|kitchen table|counter)(?= (?:\\||now|with|ive|weve|where|here|i have|and the (?:file|papers|folder)|for the (?:paper|file|folder))(?![a-z]))`,
    example: "let me put the paperwork up to the lens",
    quiet: "he lost the title up in the mountains",
  },
  {
    name: "look-at-the-plate",
    zone: "documents",
    strength: 4.5,
    phrase:
      "(?:heres|here is|theres|look at|looking at|read|reading|show you|on|see|find|thats)(?: (?:you|the|your|our|a|me|its|up|off|to))* (?:vin|chassis|data|body|trim|id|makers|builders|cowl|fender) (?:plate|tag|number|sticker)(?! (?:matches|agrees|says|was|on the (?:title|log ?book|v5)|is (?:right|correct|missing)|in the (?:book|title)|checks))",
    example: "here's the VIN tag in the windshield",
    quiet: "the VIN number checks out",
  },
  {
    name: "there-it-sits",
    zone: "closing",
    strength: 5,
    phrase:
      "(?:so|well|and|okay|alright|anyway|right|now)? ?there (?:she|it|he) (?:sits|stands)(?= )|(?:well|so|anyway|right|okay) (?:thats|that is) (?:her|him|this one|the (?:car|truck|van|one))(?= )|(?:thats|that is) about the size of it|that(?:ll| will| should) (?:about )?(?:do|cover|be) (?:it|us|you|that)?(?: for)?(?= (?:\\||this one|today|for|now|then|me|folks))|(?:thats|that is) (?:you|me|us|everything|all) (?:done|finished|sorted|for today)|back at (?:base|the yard|the shop|home)(?= )|(?:if|when) (?:you|it|she|he) (?:want|fancy|like|suits?|takes)(?: [^ |]+){0,5} (?:pick up the phone|get in touch|give (?:us|me)|drop (?:us|me)|come and|come by|call|ring|shout|message)|(?:pick up the phone|get in touch|give (?:us|me) a (?:bell|shout|buzz|tinkle|holler)|drop me a line|you know where (?:i|we) (?:am|are))|(?:any|with) questions(?= (?:shout|ask|call|ring|\\||just|give|at all|message|text))",
    example: "well, there she sits, a good honest truck",
    quiet: "there she was in a barn",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];
