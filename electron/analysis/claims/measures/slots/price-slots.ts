import type { Slot } from "../slot.ts";

/** What is asked, was asked, and was spent. */
export const priceSlots = [
  {
    name: "price when new",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { units: ["USD", "GBP", "EUR", null], min: 100, max: 2000000 },
    cues: [
      { before: /\b(?:sold new|bought new|bought it new|new for)\b[^.]{0,60}\bfor$|\bnew for$/, score: 1.4 },
      {
        before:
          /\b(?:original window sticker|window sticker|sticker (?:on it )?(?:when )?new|new it was|cost new|list price|when new)\b[^.#]{0,50}$/,
        score: 1.4,
      },
    ],
    circumstance: "when new",
    example: { heard: "the original window sticker $3,681", value: 3681 },
  },
  {
    name: "price asked before",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["money", "integer", "measure", "decimal"], units: ["USD", "GBP", "EUR", null], min: 300, max: 2000000 },
    cues: [
      {
        before:
          /\b(?:he had it at|had it (?:up )?at|(?:had|did have|have had) (?:it|her|him|this one|this) (?:up |in |on )*(?:at|for)|(?:website|ad|advert|listing|sign|sticker|board|tag) (?:said|had it at|had)|was asking|were asking|first put it out it was|started (?:it |her |him )?(?:out |off )?at|(?:listed|advertised|put) (?:it|her|him)(?: up| in| on)? (?:at|for)|it was (?:up )?(?:at|for)|used to be|down from|came down from)(?: a)?$/,
        score: 1.4,
      },
      { before: /\bwas(?: up)?(?: at| for)?$/, after: /^[^.#]{0,45}\b(?:came down|dropped|reduced)\b/, score: 1.3 },
      {
        before: /\b(?:it|she|he|we) (?:was|were)(?: up)?(?: at| for)?$/,
        after:
          /^(?:at (?:easter|christmas|new year)|last (?:week|month|year|spring|summer|fall|autumn)|in the (?:spring|summer|fall|autumn|ad)|before (?:i|we|the)|until i|when (?:i|we) (?:first )?(?:put|listed|advertised))\b/,
        zones: ["opening", "closing"],
        score: 1.35,
      },
      { before: /\b(?:i|we|he|they) had$/, after: /^on (?:it|her|him|this)\b/, unless: /\bmiles\b/, score: 1.4 },
      { before: /\b(?:website|web ?site|web|ad|advert|listing|sign) (?:said|had it at|was)$/, score: 1.35 },
      {
        before: /\b(?:it was|she was|he was|was)(?: at)?$/,
        after:
          /^(?:at|in|back in|last|till|until|before) (?:easter|christmas|the (?:spring|summer|fall|autumn|winter)|january|february|march|april|may|june|july|august|september|october|november|december|week|month|year)\b/,
        unless: /\bmiles\b|\bdone\b/,
        score: 1.35,
      },
    ],
    circumstance: "asked before",
    example: { heard: "he had it at $21,000 when he brought it to me", value: 21000 },
  },
  {
    name: "receipts",
    component: "price",
    part: "receipts",
    attribute: "price",
    unit: "said",
    need: { units: ["USD", "GBP", "EUR", null], min: 100, max: 2000000 },
    cues: [
      {
        before: /\b(?:receipts?|bills?|invoices?)\b[^.]{0,40}\b(?:totaling|totalling|total|adds? up to|added up to|comes? to|worth)$/,
        score: 1.4,
      },
      { after: /^worth\b/, before: /\b(?:receipts?|bills?|invoices?|parts|envelope|folder)\b[^.#]{0,50}$/, score: 1.4 },
      {
        after:
          /^(?:dollars |pounds |quid |bucks )?(?:in (?:parts|receipts|bills|it total|it all told|work)|worth of (?:parts|receipts|work|bills))\b/,
        score: 1.4,
      },
      {
        before: /\b(?:he's got|got over|he's in it|spent|invested)(?: over| about| around)?$/,
        after: /^(?:dollars )?(?:in it|on it|on that)\b/,
        score: 1.3,
      },
    ],
    circumstance: "receipts",
    example: { heard: "there's 31,000 in parts in that folder", value: 31000 },
  },
  {
    name: "price of a part or of work",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { units: ["USD", "GBP", "EUR"], min: 1, max: 60000 },
    cues: [
      {
        before: /\b(?:that was|it was|that came to|came to|that run|that ran|ran me|cost me)(?: about| around)?$/,
        zones: ["engine-bay", "underside", "cabin", "driver-side", "passenger-side", "rear", "front", "cargo", "roof"],
        score: 1.0,
      },
      {
        before:
          /\b(?:receipt|bill|invoice|cost|costs|charged|paid|set them back|set him back|supplying|quote|a new one|for like|for about|they're|they are|from the dealer's|another one|plus)\b[^.#]{0,40}$/,
        unless: /\basking|\bit's on|\bon the (?:web|site|glass)|\bprice\b/,
        score: 1.1,
      },
      {
        after: /^(?:dollars |bucks |quid |pounds )?(?:plus vat|a corner|each|apiece|a pop|on (?:the )?(?:tires|paint|engine|brakes))\b/,
        score: 1.2,
      },
    ],
    circumstance: "cost of a part or of work",
    example: { heard: "bumper's been rechromed the receipt was $1,100", value: 1100 },
  },
  {
    name: "money said of a part",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { kinds: ["money"], units: ["USD", "GBP", "EUR"], min: 5, max: 60000 },
    unless:
      /\btach\b|\brev counter\b|\bruns to #|\bred ?lines?\b|\b(?:on|off) the list\b|\b(?:asking|offer|offered|deposit|a month|per month|tax|bid|appraised|insured|reward|worth|phone|donut|lunch|beer|coffee)\b/,
    cues: [
      { zones: ["documents"], score: 0.95 },
      {
        before:
          /\b(?:installed|fitted|replaced|rebuilt|done|paid|spent|charged|that's|for|at|him|me|bucks|sprayed|new|machined|labor|labour|parts)\b[^.#]{0,50}$/,
        zones: ["front", "driver-side", "passenger-side", "rear", "roof", "cargo", "cabin", "engine-bay", "underside"],
        score: 0.8,
      },
    ],
    // Pounds are money only where nothing likelier can be meant.
    value: (reading, said) => (/\bpounds?$/.test(said) && reading.likelihood < 0.5 ? undefined : reading.value),
    circumstance: "cost of a part or of work",
    example: { heard: "the wheel cylinders and a set of shoes, ninety four bucks", value: 94, zone: "documents" },
  },
  {
    name: "cost, unit left out",
    component: "topic",
    part: "cost",
    attribute: "price",
    unit: "said",
    need: { kinds: ["integer", "money", "decimal"], units: [null], min: 20, max: 60000 },
    cues: [
      {
        before:
          /\b(?:at a cost of|(?:a |the )?bill (?:for|was)|(?:a |the )?receipt (?:for|was)|cost (?:him|us|me|them|her))(?: about| around)?$/,
        score: 1.2,
      },
    ],
    circumstance: "cost of a part or of work",
    example: { heard: "the seats were done at a cost of eighteen hundred", value: 1800 },
  },
  {
    name: "asking price",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { units: ["USD", "GBP", "EUR"], min: 500, max: 3000000 },
    unless:
      /\btach\b|\brpm\b|\bvolts?\b|\b(?:changes?|shifts?|turns?|turning|pulls?|peaks?|idles?|cruises?|ticks? over|red ?lines?|revs)(?: \w+){0,2} (?:at|to) (?:about |around )?#|\blast (?:four|three|five|six|eight)(?: digits)? (?:of|on|are|is)\b|\b(?:serial|chassis|frame|body|engine|vin|plate|tag|model|paint|code)(?: number| code)(?:'s| is)? #|\boffer(?:ed|s|ing)?\b[^#~]* #|\bstock(?: number| no)?(?: is)? #|\bquoted\b[^#~]* #|\b(?:brother|neighbou?r|buddy|cousin|friend|fella)(?:'s)?(?: been)? asking\b|(?:\bbook (?:on|value|says|is)\b|\bworth\b|\bappraised\b|\binsured\b)[^#~]* #|\b(?:think|thought|wonder|wondered|dreamt|dreamed|talk|talked) (?:of|about)(?: asking)? #|\bthere's an? [^#]*\b(?:thing|one|car|truck|van) (?:by|over|out|in|at) (?:the|my)\b[^#]*#|\bto buy(?: one| another| it)? #|# [^#]*# to buy\b|\bauction (?:for|at) #/,
    cues: [
      {
        before:
          /\b(?:asking|price|priced|prices|it's|website|on the glass|on it|online|take|it at|up at|money|yours for|ask)\b[^.#]{0,40}$/,
        unless: /\boff\b|\bmeant?\b|\bparking\b/,
        score: 1.25,
      },
      {
        after:
          /^(?:dollars |pounds |quid )?(?:on it|asking|firm|obo|or best offer|or near|no vat|drive away|on the road|ono|near enough|to be exact)\b/,
        score: 1.25,
      },
      {
        before: /\b(?:have|take|get|buy|drive|own) (?:it|her|him|this|this one)(?: home| away)? (?:for|at)(?: only| just)?$/,
        unless: /\boff\b/,
        score: 1.6,
      },
      { zones: ["opening", "closing"], score: 0.9 },
      { about: ["price"], unless: /\btach|\brpm/, score: 1.0 },
    ],
    carries: true,
    example: { heard: "we're asking $38,900 on it", value: 38900 },
  },
  {
    name: "asking price, unit left out",
    component: "price",
    part: null,
    attribute: "price",
    unit: "said",
    need: { kinds: ["money", "integer", "measure", "decimal"], units: [null], min: 1000, max: 2000000 },
    unless:
      /\bhook(?:s|ed)? (?:it|her|him|that|them)?(?: \w+)? ?up for #|\btach\b|\brpm\b|\b(?:changes?|shifts?|turns?|turning|pulls?|peaks?|idles?|cruises?|ticks? over|red ?lines?|revs)(?: \w+){0,2} (?:at|to) (?:about |around )?#|\boffer(?:ed|s|ing)?\b[^#~]* #|\bstock(?: number| no)?(?: is)? #|\bquoted\b[^#~]* #|\b(?:brother|neighbou?r|buddy|cousin|friend|fella)(?:'s)?(?: been)? asking\b|(?:\bbook (?:on|value|says|is)\b|\bworth\b|\bappraised\b|\binsured\b)[^#~]* #|\b(?:think|thought|wonder|wondered|dreamt|dreamed|talk|talked) (?:of|about)(?: asking)? #|\bthere's an? [^#]*\b(?:thing|one|car|truck|van) (?:by|over|out|in|at) (?:the|my)\b[^#]*#|\bto buy(?: one| another| it)? #|# [^#]*# to buy\b|\bauction (?:for|at) #/,
    cues: [
      {
        zones: ["closing"],
        unless: /\bmiles?\b|\bclock\b|\bkilomet|\bcall\b|\bphone|\btext\b|\bnumber\b|\bodometer|# down\b|\bfinanc|\bdeposit|\bmonth\b/,
        score: 0.5,
      },
      {
        before:
          /\b(?:the|my|our|your) (?:number|money|figure|ask)(?: on (?:it|this|her|him|this one))?(?: is|'s| would be| comes to| today is)$/,
        unless: /\bcall\b|\btext\b|\bphone\b|\bring\b/,
        score: 1.3,
      },
      { after: /^(?:is|'s|was) (?:the|my|our) (?:number|money|price|ask|figure)\b/, score: 1.3 },
      {
        after: /^(?:plus (?:the )?(?:vat|tax|doc|fees)|on the road|no vat|out the door|all in|no trades?|cash)\b/,
        zones: ["opening", "closing"],
        score: 1.3,
      },
      {
        before: /\b(?:it's|it is|she's|she is|he's|we're|i'm|i am|this one's)(?: up| on)? at$/,
        zones: ["opening", "closing"],
        unless: /\bmiles?\b|\brpm|\bodometer|\bmileage|\bspeedo|\bdegrees|\bpercent/,
        score: 1.3,
      },
      { before: /\b(?:i've |we've )?got (?:it|her|him|this one) (?:up |in |on )(?:at|for)$/, score: 1.3 },
      { before: /\bat$/, zones: ["closing"], unless: /\bmiles|\brpm|\bdone at|\bcall|\bmph/, score: 0.7 },
      { before: /\b(?:i|we)(?:'ve| have)? (?:got|have|put)$/, after: /^on (?:it|her|him|this)\b/, unless: /\bmiles\b/, score: 1.3 },
      {
        before: /\b(?:the|my|our) (?:number|list|ask|money)(?:'s| is| on (?:it|her) is)?(?: at)?$/,
        unless: /# miles\b|\bphone|\bcall\b|\bvin\b/,
        score: 1.3,
      },
      {
        after:
          /^(?:is the (?:number|price|ask|money|ticket)|buys her|buys him|for it|or best|on the (?:board|screen|windscreen|glass|sign|tag))\b/,
        unless: /\bmiles\b|\bpart number|\bfitted|\bpaid/,
        score: 1.2,
      },
      {
        before: /\b(?:it's|it is|she's|he's|this one's|is) (?:on |up )?(?:at|for)$/,
        zones: ["opening", "closing"],
        unless: /\bmiles|\brpm|\bdone\b|\bmph/,
        score: 1.2,
      },
      {
        before: /\b(?:it's on at|on at|up at|up for|in at|she's at|on the (?:web|site|website|glass) at|for sale at|advertised at)$/,
        score: 1.25,
      },
      {
        before:
          /\b(?:asking|price(?:'s| is)?(?: on it)?(?: is|'s)?|priced|yours for|on the glass|take|ask|website at|it's up at|we're at|we want|they want|he wants|she wants|want|wants|wanting|listed at|up for)(?: about| around| just| only| is|'s| it's| at)*$/,
        unless: /# miles\b|\brpm|\bpsi/,
        score: 1.2,
      },
      {
        after:
          /^(?:asking|firm|obo|or best offer|ono|or near(?:est)? offer|plus tax|drive away|takes it|buys it|near enough|to be exact)\b/,
        unless: /\bmiles|\b(?:speakers|clock|tires)\b/,
        score: 1.1,
      },
      { about: ["price"], reach: "recent", unless: /# (?:\w+ )?miles?\b|\b(?:19|20)\d\d$/, score: 0.9 },
      {
        before: /\b(?:so|it's|part of the)(?: \w+)?$/,
        zones: ["closing", "opening"],
        unless: /\bmiles|\bclock|\bmodel\b|\bis a\b/,
        score: 0.75,
      },
    ],
    value: (reading, said) =>
      typeof reading.value === "number" &&
      reading.value >= 1000 &&
      reading.value <= 250000 &&
      !/[a-z]s$|\ds$/.test(said) &&
      !/^(?:19|20)\d\d$/.test(said)
        ? reading.value
        : undefined,
    example: { heard: "we're asking 38,900 on it", value: 38900 },
  },
] satisfies readonly Slot[];
