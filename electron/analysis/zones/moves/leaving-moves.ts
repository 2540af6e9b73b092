import type { MoveRule } from "./move-rule.ts";

/** Words that move the camera without saying where to. */
export const leavingMoves = [
  {
    name: "close-the-hood",
    zone: null,
    strength: 3,
    leaves: "engine-bay",
    phrase:
      "(?:close|shut|drop|lower|put|get|let)(?:ting|ing)? (?:this|the|that|her|it|him) (?:hood|bonnet|lid)(?: back)? (?:up|down|shut)|(?:drop|close|shut|closing|shutting|dropping) (?:the |this |that )?(?:hood|bonnet|lid)|(?:hood|bonnet)s? (?:is )?(?:down|shut|closed)",
    example: "okay hood's down",
    quiet: "the hood lines up",
  },
  {
    name: "close-the-trunk",
    zone: null,
    strength: 3,
    leaves: "cargo",
    phrase:
      "(?:close|shut|closing|shutting|slam|drop) (?:the |this |that |up the )?(?:trunk|boot|tailgate|hatch|liftgate|boot lid|trunk lid)|(?:tailgate|hatch|trunk|boot)s? (?:is )?(?:shut|closed)",
    example: "close the trunk and go on",
    quiet: "the trunk closes well",
  },
  {
    name: "close-up",
    zone: null,
    strength: 3,
    phrase:
      "(?:close|shut|closing|shutting|button) (?:this|it|her|that)(?: back)? (?:up|down)|(?:close|shut|closing|shutting) (?:this|it|her|that)(?= (?:\\||and|now|okay|coming|then)(?![a-z]))|(?:gonna|going to|ill|let me|lets) (?:shut|close) (?:this|it|that)|shut that(?= \\|)",
    example: "I'm gonna close this up",
    quiet: "the door shuts like a bank",
  },
  {
    // A hood or a trunk: what is named next tells which.
    name: "open-it",
    zone: null,
    strength: 3,
    setsOff: true,
    phrase:
      "open(?:ing)? (?:it|her|him|this|that) up|(?:get|let me get|ill get) (?:that|this|it|her) open|pop (?:it|this|that|her)(?: open| up)?(?= (?:\\||and|there|here|now|open)(?![a-z]))|up it goes",
    example: "go ahead and open her up",
    quiet: "they opened a shop up the road",
  },
  {
    name: "get-out",
    zone: null,
    strength: 3,
    leaves: "cabin",
    setsOff: true,
    phrase:
      "(?:hop|get|jump|climb|step|pop|crawl|getting|hopping|climbing) (?:back |on |right )?out(?! (?:of (?:here|the way|there|my)|the way|there|my|your|a|to you|from|on the highway|front of|and push))(?: (?:of (?:it|her|the car|the cab|here)|here))?",
    example: "alright hop out",
    quiet: "you could get out a rag",
  },
  {
    name: "down-off-the-lift",
    zone: null,
    strength: 3,
    leaves: "underside",
    phrase:
      "(?:let|set|bring|drop|lower|letting|setting|bringing|dropping)(?: (?:her|it|him|us|the car|this|the truck))? (?:back )?(?:down|on the ground)(?! (?:low|here|there|on|in|under|close|to the))|back on the (?:ground|floor|deck|wheels)|off the (?:lift|rack|hoist|ramp)|(?:let me|ill|lets) (?:drop|bring|set|let) (?:it|her|him)(?: (?:back )?down)? and",
    example: "okay let her down slow",
    quiet: "get down low for me",
  },
  {
    name: "come-up",
    zone: null,
    strength: 3,
    setsOff: true,
    leaves: "underside",
    phrase: "up you come|come (?:on )?up out of (?:there|it)|out you come|up we come",
    example: "up you come. Now the papers",
    quiet: "prices will come up",
  },
  {
    name: "come-along",
    zone: null,
    strength: 3,
    setsOff: true,
    phrase:
      "(?:come|swing|keep (?:going|walking|coming|moving)|carry(?:ing)? on|move|moving|walk|head|heading|go|going|work our way|continue|spin|wheel) (?:on |right |back |all the way |it )?(?:around|round|along|back here|down here|back there|with me|this way|over here|on|up here)(?! (?:the (?:dash|edge|engine|motor|block|bolt|wheel|lens|glass|rim|arch|world|interstate)|town|it|here with|and on|about|since|like|for|him|there when|a hill))|follow me|moving on|move on|lets (?:walk|go|move|head|keep going|keep moving|carry on|continue)|walk with me|come with me|come here|(?:watch|mind) the (?:cord|step|puddle)|let me get (?:around|round)|while (?:were|im) (?:here|up here|down here|at it|sat here)|next up|where were we|turning back in|round we go|back you up|up she goes|shall we|let me (?:just )?pop (?:this|it)|let me (?:run|get|go|come) around|(?:the |that )?business end|down again|out again|up again|come in out of the (?:cold|rain|wind|heat|sun|wet)|out the (?:side|back) door|mind the (?:wet )?step",
    example: "alright come on around",
    quiet: "it goes around the dash",
  },
] as const satisfies readonly MoveRule[] as readonly MoveRule[];
