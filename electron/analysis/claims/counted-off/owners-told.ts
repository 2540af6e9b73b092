import type { ZoneName } from "../../../../shared-types/index.ts";
import { type CountedSpeech, type CountFound, type CountingRule, wordsOf } from "./count-found.ts";
import { phrasesIn } from "./phrases-in.ts";

const kin =
  "mother|father|dad|mum|mom|son|daughter|brother|sister|uncle|aunt|nephew|niece|cousin|wife|husband|widow|widower|grandson|granddaughter|grandad|granddad|grandfather|grandpa|grandmother|grandma|gran|nan|boy|girl|lad|kid|missus";
const trades =
  "doctor|dentist|teacher|schoolteacher|principal|nurse|midwife|farmer|rancher|banker|lawyer|attorney|solicitor|vicar|preacher|pastor|priest|minister|reverend|pharmacist|druggist|chemist|plumber|roofer|electrician|builder|carpenter|mechanic|machinist|engineer|surveyor|accountant|librarian|soldier|sailor|airman|officer|policeman|fireman|postman|mailman|trucker|student|professor|judge|barber|baker|butcher|grocer|hairdresser|salesman|pilot|contractor|logger|welder|collector|publican|bishop|colonel|major|captain|sergeant|architect|vet|veterinarian|undertaker|landscaper|painter|hobbyist|enthusiast|restorer";
const bodies =
  "lease company|leasing company|leasing firm|hire firm|hire company|rental outfit|rental company|rental firm|school district|water district|fire department|forest service|parcel firm|power company|phone company|gas board|county|council|church|college|university|army|navy|air force|landscaping company|fleet";
const people =
  "fella|feller|fellow|guy|man|lady|woman|gentleman|gent|chap|bloke|boy|couple|family|neighbor|neighbour|owner|keeper|person|previous owner";
const person = `(?:(?:an?|the|his|her|their|this|that|some|one|another|old|young|little|local|retired|first|original|next|other|late|nice|school|country) )+(?:(?!and\\b|then\\b|of\\b|to\\b)\\w+ )?(?:(?:${kin}|${trades}|${bodies}|${people})(?:'s)?(?: in law)?(?: (?:wife|widow|son|daughter|brother|sister|nephew))?)\\b|\\b(?:mr|mrs|miss|ms|dr|doctor|old) (?!and\\b|then\\b)[a-z]+\\b`;
const persons = new RegExp(`\\b(?:${person})`, "g");

/** Words by which one owner follows another. */
const succession =
  /\b(?:then|after (?:him|her|them|that)|before (?:him|her|them|that)|sold it|sold on|passed (?:it|to|down)|went to|traded|from (?:him|her|them) to|took it over|took over|gave it|left it|put (?:it )?(?:over )?in)\b/;
/** That owning is talked of at all. */
const owning =
  /\b(?:own(?:s|ed|er|ers)?|(?:had|has had|have had|kept|bought|buys|ordered|sold|left|drove) (?:it|her|him|this)\b|bought new|in (?:his|her|their) name|names?|keepers?|title|titles|registrations?|log ?book|v5|bill of sale|went to|belonged|from new|new to|first was|first owner)\b/;
/** The next named is the same one, or no owner. */
const sameOne = /^(?:\W|who|that|which|is|was|being|called|named|name of|a|an|the)*$/;
/** One who did something else to it. */
const noOwner =
  /\b(?:painted|rebuilt|fixed|welded|serviced|did the|does the|told|tells|says|said|wrote|built|trimmer|looks after|works for|shop|garage|friend of)\b/;

const talkOfOwners: ReadonlySet<ZoneName> = new Set<ZoneName>(["documents", "opening", "closing"]);
const sumSaid =
  /\b(?:that's|that is|makes|call it|so)(?: your| my| the| all| just)? (?:two|three|four|five|six|seven|eight|nine|ten|\d+)(?= (?:\.|and i'm not|not counting|owners?|keepers?|names?|people|in all|all told|of them|that i|that (?:had|has|owned)|who (?:had|have|owned))|$)/;
const sumWithin = 26;

/** Tokens from one owner named to the next. */
const longestBetween = 16;

function chainsOf(counted: CountedSpeech): { readonly first: number; readonly end: number }[][] {
  const chains: { first: number; end: number }[][] = [];
  for (const { first, end } of phrasesIn(counted, persons)) {
    const chain = chains.at(-1);
    const last = chain?.at(-1);
    if (!chain || !last || first - last.end > longestBetween) {
      chains.push([{ first, end }]);
      continue;
    }
    const between = wordsOf(counted.speech, last.end, first);
    // "The first lady, Mrs Kessler": one person under two names.
    if (sameOne.test(between)) last.end = end;
    else if (succession.test(between) && !noOwner.test(between)) chain.push({ first, end });
    else if (!succession.test(between) && chain.length > 1) last.end = end;
    else chains.push([{ first, end }]);
  }
  return chains;
}

export const ownersNamedInTurn: CountingRule = {
  name: "owners named in turn",
  find: (counted) =>
    chainsOf(counted).flatMap((chain): CountFound[] => {
      const [head] = chain;
      const last = chain.at(-1);
      if (!head || !last || chain.length < 2 || !talkOfOwners.has(counted.zoneAt(last.first))) return [];
      if (!owning.test(wordsOf(counted.speech, head.first - 14, last.end + 8))) return [];
      // "… so that's three names": the sum is said, and read as the number it is.
      if (sumSaid.test(wordsOf(counted.speech, last.end, last.end + sumWithin))) return [];
      return [
        {
          component: "vehicle",
          part: "owner",
          value: chain.length,
          circumstance: "at least",
          first: head.first,
          end: last.end,
          at: last.end - 1,
        },
      ];
    }),
  examples: [
    {
      says: "Titled clean. It went to a school principal first, in Ohio, and then his son in law had it, and then a Mrs. Pell bought it off him.",
      zone: "documents",
      gives: { component: "vehicle", part: "owner", value: 3, circumstance: "at least" },
    },
    {
      says: "The first was a dentist's wife, then her brother, then a fella name of Upchurch, he kept it thirty one years, and then the lady I bought it off of.",
      zone: "documents",
      gives: { component: "vehicle", part: "owner", value: 4, circumstance: "at least" },
    },
    {
      says: "first registered to a hire firm then a nurse had it",
      zone: "documents",
      gives: { component: "vehicle", part: "owner", value: 2, circumstance: "at least" },
    },
  ],
  quiet: [
    { says: "The guy that painted it and then the guy that did the seats both kept the receipts.", zone: "documents" },
    { says: "A lady came to look, and then her husband came and bought a boat.", zone: "opening" },
    { says: "The first owner, a dentist, bought it new.", zone: "documents" },
    { says: "The druggist, then his boy, and then the lady that had it. So that's three names.", zone: "documents" },
    { says: "this folder has a doctor's name on it", zone: "documents" },
  ],
};

/** "County to Heller and Sons, and then Heller to us": who sold it, and who sold it on. */
const soldOn = /\bto (?:the )?(\w+)(?: and \w+| \w+){0,2} (?:and )?then (?:from )?(?:the )?\1(?: and \w+)? to (?:us|me)\b/g;

export const soldFromHandToHand: CountingRule = {
  name: "sold from hand to hand",
  find: (counted) =>
    phrasesIn(counted, soldOn).map(({ first, end }) => ({
      component: "vehicle",
      part: "owner",
      value: 2,
      circumstance: "at least",
      first,
      end,
      at: end - 1,
    })),
  examples: [
    {
      says: "county bill of sale march of 2019 to heller and sons and then heller to us so it's clean",
      zone: "documents",
      gives: { component: "vehicle", part: "owner", value: 2, circumstance: "at least" },
    },
  ],
  quiet: [{ says: "I gave it to the painter and then the trimmer gave it to us.", zone: "documents" }],
};

const nobodyElse = [
  "nobody else(?:'s name)? (?:has |had |ever |has ever |had ever |'s ever )*(?:owned|had (?:it|her|him|this)|been on (?:it|the|that))",
  "no ?one else(?:'s name)? (?:has |had |ever |has ever |had ever |'s ever )*(?:owned|had (?:it|her|him|this)|been on (?:it|the|that))",
  "never been sold (?:twice|on|again)",
  "only (?:ever )?been sold (?:the )?once",
  "one pair of hands",
  "one set of hands",
  "(?:in|by) (?:the )?one household",
  "only (?:person|soul|name|one|lady|man|woman|gentleman|driver|family) (?:ever )?(?:to (?:ever )?(?:own|have|hold|be on)|that(?:'s)? (?:ever )?(?:owned|had|held|been on)|who(?:'s)? (?:ever )?(?:owned|had|held|been on)|on (?:it|the title|the log ?book|the v5))",
  "no (?:former|previous|prior) (?:keepers?|owners?)",
  "(?:man|lady|woman|people|couple|fella|guy|gentleman|family|folks|chap|doctor|teacher|farmer|rancher|widow) (?:that|who) (?:ordered it|bought it new|had it new|owned it from new|drove it off the lot)",
  "same (?:family|owner|hands|name|man|lady|person|people)(?: (?:has had it|had it|owned it))? (?:from|since) (?:brand )?new",
  `(?:just|only|nobody but|no one but|never anybody but) (?:${person}) (?:the whole time|all along|from new|all its life|the whole way|its whole life|from day one|since new|ever since)`,
  "(?:ever|only ever) been the (?:one|doctor|lady|man|same)(?: (?:owner|man|lady))?(?= (?:\\.|and|from|since)|$)",
  "still with (?:the|its) first (?:owner|keeper)",
  "never (?:been )?out of (?:his|her|their) (?:name|hands|ownership)",
  "owned by the same (?:man|lady|family|couple|person|gentleman)",
];
const oneOwner = new RegExp(`\\b(?:${nobodyElse.join("|")})(?![a-z])`, "g");

export const oneOwnerToldOf: CountingRule = {
  name: "one owner told of",
  find: (counted) =>
    phrasesIn(counted, oneOwner).flatMap(({ first, end }): CountFound[] =>
      /\b(?:since (?:he|she|they|i) bought|had (?:it|them) (?:painted|done))\b/.test(wordsOf(counted.speech, first - 6, end + 6))
        ? []
        : [{ component: "vehicle", part: "owner", value: 1, circumstance: null, first, end, at: end - 1 }],
    ),
  examples: [
    {
      says: "As for whose it was, I believe it was just the water district the whole time.",
      zone: "documents",
      gives: { component: "vehicle", part: "owner", value: 1, circumstance: null },
    },
    {
      says: "she signed for it new in the showroom and nobody else's name has been on it since",
      zone: "documents",
      gives: { component: "vehicle", part: "owner", value: 1, circumstance: null },
    },
    {
      says: "it's been in one pair of hands from new to now",
      zone: "opening",
      gives: { component: "vehicle", part: "owner", value: 1, circumstance: null },
    },
  ],
  quiet: [
    { says: "nobody else has had the doors off", zone: "driver-side" },
    { says: "It's the only one with the big engine.", zone: "opening" },
    { says: "They kept the same tires the whole time.", zone: "opening" },
  ],
};
