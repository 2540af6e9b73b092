import type { PromiseKind } from "../../../shared-types/index.ts";

/** A published rule that makes spoken words matter. */
export interface PublishedRule {
  readonly name: string;
  readonly source: string;
}

export const publishedRules = {
  expressWarranty: {
    name: "A statement of fact or a promise that becomes part of the bargain can be an express warranty, without that word",
    source: "UCC 2-313(1), (2)",
  },
  usedCarRule: {
    name: "A dealer may not misstate a used vehicle's mechanical condition or warranty terms",
    source: "16 CFR 455.1(a), (b)",
  },
  buyersGuide: {
    name: "Warranty terms stand on the Buyers Guide; spoken promises do not replace it",
    source: "81 FR 81664 (effective 2017-01-27)",
  },
  asDescribed: {
    name: "Goods must be as described and of satisfactory quality; public statements count",
    source: "Consumer Rights Act 2015 (UK) ss. 9 to 11",
  },
  puffery: { name: "Mere opinion or praise of value is not a warranty, and the border is not sharp", source: "UCC 2-313(2)" },
} as const satisfies Record<string, PublishedRule>;

export interface PromiseRule {
  readonly name: string;
  readonly kind: PromiseKind;
  /** Over the words of one clause, lower case, single spaces. What it matches is the quote. */
  readonly pattern: RegExp;
  /** Where these stand in the same clause, nothing is promised. */
  readonly unless?: RegExp;
  readonly why: string;
  readonly rule: keyof typeof publishedRules;
  readonly examples: readonly string[];
  readonly quiet: readonly string[];
}

const denied =
  /\b(?:no|not|never|isn't|ain't|can't|cannot|couldn't|won't|wouldn't|don't|doesn't|without)\b.{0,30}\b(?:guarant|warrant|promis|safe)/;

/** First match of a clause wins: the graver kinds stand first. */
export const promiseRules = [
  {
    name: "guarantee",
    kind: "warranty",
    pattern:
      /\b(?:(?:i|we|we'll|i'll)(?: can| will| do)? (?:personally )?(?:guarantee|promise)(?: you)?(?: that)?(?: \S+){0,8}|guaranteed(?: \S+){0,5}|(?:money|your money) back(?: \S+){0,4})/,
    unless: denied,
    why: "Words of guarantee are promised in the dealer's name, whatever the paper says.",
    rule: "expressWarranty",
    examples: ["i guarantee it won't leak", "we'll promise you it starts every morning", "that engine is guaranteed", "or your money back"],
    quiet: ["i can't guarantee that", "there's no guarantee on a car this old", "i don't promise anything"],
  },
  {
    name: "warranty-spoken-of",
    kind: "warranty",
    pattern:
      /\b(?:(?:comes|come|sold|got|has|have|with|under|include[sd]?|give you|give it)(?: \S+){0,5} )?(?:warranty|warrantied)\b(?: \S+){0,4}/,
    unless: /\b(?:used to|was under|back then|when new|expired|ran out|paid for under|new one in under)\b/,
    why: "A warranty is spoken of: hold it against the Buyers Guide or the sales papers, also where it is denied.",
    rule: "buyersGuide",
    examples: ["it comes with a twelve month warranty", "still under factory warranty till march"],
    quiet: ["the belt broke and it was under warranty back then", "the battery is new"],
  },
  {
    name: "we-will-make-it-right",
    kind: "warranty",
    pattern:
      /\b(?:we|i)(?:'ll| will) (?:fix|replace|sort|put right|make it right|take care of|stand behind|cover|pay for|refund|buy it back)\b(?: \S+){0,6}|\b(?:we|i) stand behind\b(?: \S+){0,4}/,
    why: "What the dealer will do for the buyer is a promise; make sure that the papers carry it.",
    rule: "expressWarranty",
    examples: ["we'll fix that before it goes", "we stand behind every car we sell", "i'll replace it if it ever fails"],
    quiet: ["somebody will fix that one day", "we replaced the belts"],
  },
  {
    name: "as-is",
    kind: "warranty",
    pattern: /\bsold as (?:is|seen)\b(?: \S+){0,4}|\bas is (?:where is|no warranty)\b/,
    why: "“As is” is limited or barred for some sales in some places, and does not cure a false statement of fact.",
    rule: "usedCarRule",
    examples: ["it's sold as is", "sold as seen mind you"],
    quiet: ["as is the way with these", "the same as it was"],
  },
  {
    name: "safe",
    kind: "safety",
    pattern:
      /\b(?:(?:perfectly|totally|completely|absolutely|very|real|really|dead|100 percent|is|are|be|it's|they're|you're|you'll be|feel|still) safe\b(?: \S+){0,5}|safe (?:to drive|as houses|as can be|for (?:the|your) (?:kids|family|children))|road ?worthy\b|(?:will|it'll|it's going to|would|sail|sails|fly|flies)(?: \S+){0,2} pass(?:es)?(?: \S+){0,3} (?:inspection|smog|mot|safety)|(?:don't|do not|needn't|nothing to) be (?:afraid|scared|worried) of(?: \S+){0,5}|nothing to (?:worry|be scared) (?:about|of)|won't let you down|never let you down)/,
    unless: denied,
    why: "Safety is for a qualified technician to judge on the vehicle; a buyer relies on such words.",
    rule: "usedCarRule",
    examples: [
      "it's perfectly safe to drive",
      "you'll be safe in this one",
      "so don't be afraid of the stopping on it",
      "it'll pass inspection anywhere",
      "she won't let you down",
    ],
    quiet: [
      "keep the key in a safe place",
      "it's not safe to drive on that spare",
      "i wouldn't call it safe",
      "the safety belts are black",
    ],
  },
  {
    name: "never-or-always",
    kind: "absolute",
    pattern:
      /\b(?:(?:it|she|he|they|this|that|you)(?:'ll|'d| will| would| has|'s| have| does)? (?:never|always)(?: \S+){1,6}|never (?:been (?:hit|wrecked|hurt|rusted|leaked|abused|raced)|misses a beat|let (?:me|anybody) down|a problem)(?: \S+){0,4}|every (?:single )?time(?: you| i)?(?: \S+){0,4}|without fail)\b/,
    why: "“Never” and “always” leave no room for the one time: say what is known, and from whom.",
    rule: "expressWarranty",
    examples: ["it never leaks a drop", "she always starts first time", "it has never been wrecked", "fires up every single time"],
    quiet: ["i never got the name of the fella", "we always open at nine", "never mind that"],
  },
  {
    name: "nothing-wrong",
    kind: "absolute",
    pattern:
      /\b(?:nothing (?:at all )?wrong with (?:it|this|her|that)(?: \S+){0,3}|needs (?:absolutely )?nothing|not a thing wrong(?: \S+){0,4}|(?:no|zero) (?:problems|issues|faults|leaks|rust)(?: at all| whatsoever| anywhere| none)|(?:100|a hundred|one hundred) (?:percent|per cent)(?: \S+){0,4}|not (?:one|a single) (?:problem|issue|fault|flaw)(?: \S+){0,3}|absolutely perfect|flawless|will last (?:forever|a lifetime|you years)|last you (?:forever|a lifetime))\b/,
    why: "A statement without any exception is easily proved wrong; one chip is enough.",
    rule: "expressWarranty",
    examples: [
      "there's nothing wrong with it",
      "it needs nothing",
      "no rust anywhere",
      "it's a hundred percent",
      "not a single fault on the whole car",
    ],
    quiet: ["there's nothing on the seat", "a hundred miles from here", "no rust on this corner"],
  },
  {
    name: "praise",
    kind: "opinion",
    pattern:
      /\b(?:best (?:one )?in the (?:state|country|county|world|business)|runs like a (?:dream|top|watch|swiss watch|sewing machine)|(?:gorgeous|stunning|beautiful|immaculate|museum quality|showroom (?:condition|fresh)|a steal|great (?:truck|car|value|buy)|investment)|you won't find a (?:better|nicer|cleaner)(?: \S+){0,4})\b/,
    why: "Praise is opinion and not checked; worded as fact it can become one.",
    rule: "puffery",
    examples: ["runs like a dream", "you won't find a nicer one", "it's just gorgeous", "best one in the state"],
    quiet: ["the best way to see it", "a dream i had", "find a better light dutch"],
  },
] as const satisfies readonly PromiseRule[];
