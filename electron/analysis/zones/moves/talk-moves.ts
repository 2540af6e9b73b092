import type { MoveRule } from "./move-rule.ts";
import { places } from "./places.ts";

/** Moves to what is shown or said without the vehicle in view: papers and sign-off. */
export const talkMoves = [
  {
    name: "here-is-the-paperwork",
    zone: "documents",
    strength: 6.5,
    phrase: `(?:begin with|start with|heres|here is|here are|show you|look at|go over|go through|spread|this is|flip through|on to|onto|over to|move to|open up|going through|run through|have|got out|brought out|laid out|lay out|laid|i have|ive got|got|about)(?: (?:all|you|out|of|first|a|at|up|got|rego|whole|original))* ${places.papers}(?! (?:was|status|jam|work done|says one))`,
    example: "here's the paperwork",
    quiet: "we got it with a salvage title years ago, he said",
  },
  {
    name: "papers-heading",
    zone: "documents",
    strength: 6,
    heading:
      "(?:(?:the|some|all the|for the|on the|onto the|as for the|in the way of|with the|about that|about the) )?(?:(?:about )?(?:that|the) paper|paper ?work|documents|documentation|history file|history folder|service history|the papers|paper(?= (?:\\||side|wise))|history(?= (?:\\||wise|now|then|on|stuff))|title wise|that paper|papers(?= (?:title|okay|ok|so|now|here|first|real|theres|weve|its|all|two|one|v5|v5c))|file(?= (?:its|is a good|here))|receipts(?= (?:heres|here|now))|the library(?= ))(?= |$)",
    bareHeading:
      "paper ?work(?= (?:wise|title|here|we|is|on|book|okay|ok|now|so|its|quick|time)(?![a-z]))|papers?(?= (?:okay|ok|alright|time|now|title|wise|quick)(?![a-z]))|history (?:file|folder)(?= (?:its|is|here|we|now))",
    example: "so paperwork title says 1935",
    quiet: "he did the work on paper first",
  },
  {
    name: "box-of-papers",
    zone: "documents",
    strength: 4,
    phrase:
      "kept everything|whole (?:box|folder|binder|file|stack|pile)|(?:box|folder|binder|file|stack|pile|wallet|envelope) (?:full )?of (?:papers?|paperwork|receipts|records|bills|history|mots|invoices)|in (?:the|this) (?:folder|envelope|binder) here|inside where its cool|(?:file|folder|binder|papers|paperwork|title) (?:here )?on my (?:knee|lap|desk)|(?<!(?<![a-z])(?:is|ones?|are|kept|hangs?|lives|sits|its|spare|key|keys|was) )in the office(?! (?:safe|drawer|desk drawer|fridge))|with the folder|on the (?:desk|table|bench|counter|tailgate)(?: here)?(?: are| is| ive got| i have| i laid out| weve got| i got)(?= )|(?:laid|spread) out (?:what i|all|everything)|(?:on|off) (?:the|my|his) clipboard|here in my hand|in my hand (?:the|is|here|i have|ive)(?= )|(?:have|got) (?:his|her|the|a|my) (?:box|binder|folder|three ring binder)(?! of (?:parts|tools|bits))|three ring binder|(?:hes|shes|weve|ive) got the (?:pink|pink slip|title|book|books|log ?book)|titles in (?:my|his|her|our|both)|now the (?:shoebox|folder|file|binder|envelope|book)|(?:have|got) (?:it|them) all right here|what comes with (?:it|her|him)(?= (?:\\||v5|title|is|two|the))|back at the (?:bench|desk|office|kitchen table)|(?:at|on) the (?:desk|bench) (?:here|with|now)",
    example: "there's a whole folder of receipts",
    quiet: "a box of tools goes with it",
  },
  {
    name: "in-closing",
    zone: "closing",
    strength: 5,
    phrase:
      "in closing|to (?:sum|wrap|finish|round)(?: (?:it|this|that|things|her))? (?:up|off)|wrap(?: (?:it|her|this|that|things|him))? up|in (?:summary|conclusion)|thats (?:about )?(?:the whole|the full|our|the) (?:walk ?around|tour|car|truck|lap|story|lot)(?! of)|so (?:thats|there) (?:her|him|she is|it is|you have it|you go folks)|so there (?:she|he|it) is|so there you are|there you have it|theres your (?:[a-z]+ ){0,3}(?:tour|walk ?around|look)|thats all she wrote|thats the (?:list|end of (?:it|the list|the tour)|long and short)|thats (?:the )?whole truck|(?:well )?thats what there is|that concludes|thats that then|this concludes|so yeah(?= )|call the (?:desk|shop|office|lot)|(?:yall|you all|folks|just) (?:holler|come see)|back in the lot|thats (?:about )?(?:all|as much as) (?:i (?:know|got|have)|ive got|there is to (?:it|say|show))",
    heading:
      "(?:so )?(?:thats|that is)(?: really| pretty much| just)? (?:her|him|it|about it|us|your lot|the lot|everything)(?= (?:\\||the|a|its|from|for|folks|really|i|so|then|guys|and|if|yall|thats|title|were|call|come))|there we go thats the|home again|there (?:it|she|he) is(?= \\|)",
    example: "so in closing it's a driver",
    quiet: "that's closing better now",
  },
  {
    name: "back-again",
    zone: "closing",
    strength: 5,
    phrase:
      "(?:were|we are|and)(?: (?:all|now|safely))? (?:back|home|parked|parked up|back home)(?= (?:\\||so|now|and|at|in|safe|lets|then|here|that)(?![a-z]))|back (?:in|at|on) the (?:yard|shop|lot|showroom|forecourt|drive|barn|garage|dealership|house)|go back outside|back outside|parked back up|back where we started",
    example: "so we're back",
    quiet: "we are back on the throttle",
  },
  {
    name: "thanks-for-watching",
    zone: "closing",
    strength: 4,
    phrase:
      "(?:thanks|thank you|appreciate you)(?: so much| very much| all| guys| folks)? (?:for )?(?:watching|looking|tuning in|stopping by|coming along|your time|joining)|give (?:us|me) a (?:call|ring|shout|bell)|come (?:and |on )?(?:see|look at|try|by and) (?:it|her|us|look)|call (?:the shop|us|me) (?:at|on|if|and|for|any)|call or text|drop (?:us|me) a (?:message|line|text)",
    example: "thanks for watching",
    quiet: "thanks for the manual",
  },
  {
    name: "the-deal",
    zone: "closing",
    strength: 2.5,
    phrase:
      "were asking|asking price(?: is)?|(?:im|hes|shes) asking|priced at|if (?:youre|your|yall are) interested|if you want (?:it|her|to see|the|more)|(?:with )?any questions|clean title in hand|first come first",
    example: "we're asking thirty eight nine",
    quiet: "he kept the price about it",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];
