import type { FrameRule } from "./frame-rule.ts";

/**
 * Talk that is about no vehicle in particular, or about one of long ago: advice, what words mean, what parts cost, what happened once. It is full of
 * parts and kinds, and none of them is on this vehicle. Common practice of speech.
 */
export const generalTalkRules: readonly FrameRule[] = [
  {
    name: "what a word means",
    meaning: { subject: "anecdote" },
    reach: "sentence",
    phrases: [
      "when folks/people/they/dealers/somebody/someone/sellers say/says/said",
      "when i say ..4 i mean",
      "~that's/it's/so they/people/folks say !it/this/that/there/he/she/its/her/the/they ..2 is/are complicated/simple/trouble/better/worse/old/hard/easy",
    ],
    example: {
      says: "When folks say numbers matching, ask which numbers. The carpet is new.",
      framed: "numbers matching",
      free: "carpet is new",
    },
    quiet: ["They say it's the original engine.", "I say it's a two owner car."],
  },
  {
    name: "what anybody can do",
    meaning: { subject: "hypothetical" },
    reach: "clause",
    phrases: [
      "you can tick/order/spec/option",
      "if you 're/are ordering/speccing/buying new/one",
      "if you get a/an !chance/minute/second/look/moment/good",
      "will/'ll run/cost you",
      "will/'ll set you back",
      "give me a/an/#/the ..8 any day",
      "you can have/get the/them/it/these ..3 done/dyed/redone/recovered/retrimmed/rechromed/sprayed/painted/rebuilt/refurbished/converted",
      "with a/an ..1 _ diff/carb/clutch/box/differential you",
    ],
    example: {
      says: "A reproduction fender will run you two eighty. These fenders are original.",
      framed: "reproduction fender",
      free: "original",
    },
    quiet: ["You can see the chain through there.", "If you get a minute look at the seats.", "You can have the spare keys."],
  },
  {
    name: "what was had once",
    meaning: { subject: "other-vehicle" },
    reach: "aside",
    phrases: [
      "my first/second/third/last had/was/came !owner/to",
      "first/second one i ever had/owned/drove/bought",
      "i had a/an ..2 car/truck/van/wagon/coupe/sedan/saloon/estate/convertible/roadster/pickup/hatchback with/that/which/once/when/like/and/i",
      "i 'd/had a/an ..1 car/truck/van/wagon/coupe/sedan/saloon/estate/convertible/roadster/pickup in",
      "in a/an ..1 car/truck/van/wagon/coupe/sedan/saloon/estate/pickup i 'd/had sold/bought/hired/rented/borrowed",
      "in the/a <vehicle> of one of mine",
      "one of mine i drove/had/drove",
    ],
    example: {
      says: "My first had drum brakes and a vinyl roof. It leaked. This one has discs.",
      framed: "drum brakes and a vinyl roof",
      free: "discs",
    },
    quiet: ["My first owner was a doctor.", "I had a wagon load of parts with it.", "I had the car in last week."],
  },
  {
    name: "somebody told of",
    meaning: { subject: "anecdote" },
    reach: "aside",
    phrases: [
      "i had a/an girlfriend/boyfriend/boss/customer/foreman/teacher/apprentice/landlord/priest ..1 had/liked/could/wanted/used/asked/told/waited/came/drove/who/that",
      "tell you about the/a fella/fellow/guy/man/lady/woman/chap/bloke",
      "tell you a story",
      "i said i got/'ve/have ..5 he/she said",
      "common/known/usual/typical faults/problems/troubles/weaknesses on/with/of",
      "i 'll tell you about the model",
    ],
    example: {
      says: "I had a boss who could set points with a matchbook. The seats are cloth.",
      framed: "points with a matchbook",
      free: "cloth",
    },
    quiet: ["I had a customer look at it.", "I'll tell you about the engine.", "I had a shop rebuild the carburetor."],
  },
  {
    name: "one body against another",
    meaning: { subject: "other-vehicle" },
    reach: "clause",
    phrases: [
      "the estate/saloon/coupe/van/sedan/wagon/hatch/convertible had/has/got/came ..8 and/but/while the estate/saloon/coupe/van/sedan/wagon/hatch/convertible",
      "back? when these/they/those were new !this/it",
      "on the v6/v8/v10/v12/diesel/petrol/automatic/manual you/they ..1 did/had/got/do/get/have",
    ],
    example: {
      says: "When these were new they had a heater as an option. It has a heater.",
      framed: "they had a heater",
      free: "It has a heater",
    },
    quiet: ["The wagon has the bigger engine.", "On the diesel side of things it is quiet.", "On the V8 badge there is a scratch."],
  },
];
