import type { FrameRule } from "./frame-rule.ts";
import { generalTalkRules } from "./general-talk-rules.ts";
import { neighborsRules } from "./neighbors-rules.ts";
import { otherVehicleRules } from "./other-vehicle-rules.ts";
import { stanceRules } from "./stance-rules.ts";
import { supposedRules } from "./supposed-rules.ts";
import { timeRules } from "./time-rules.ts";

/** All rules; of two subjects for one word the first found stands. */
export const frameRules: readonly FrameRule[] = [
  ...stanceRules,
  ...timeRules,
  ...otherVehicleRules,
  ...neighborsRules,
  ...supposedRules,
  ...generalTalkRules,
];

/** Words that bring the speaker back to the vehicle he is walking round, after another one. */
export const returnPhrases: readonly string[] = [
  "anyhow",
  "anyway",
  "anyways",
  "where was i",
  "where were we",
  "what was i",
  "back to",
  "back on",
  "this one",
  "this car",
  "this truck",
  "this here",
  "this <vehicle>",
  "on ours",
  "ours 's/is/has",
  "on this",
  "in this",
  "mine here",
  "right !behind/next/beside/there/here/now then/so/let",
  "okay",
  "alright",
  "all right",
  "moving on",
  "i 've strayed/digressed/wandered",
  "i digress",
  "as i was saying",
  "so when i say",
  "carry on",
  "carrying on",
  "let 's",
  "let me",
  "now then",
  "now the/let/back/if/on/here/down/up",
  "come on",
  "here 's",
  "so here/the/back/let/this/now/up/down/on",
  "up here",
  "over here",
  "but this",
  "and this",
  "this is",
  "this has/had/have/'s/was/gets/got/comes/came/does/ai",
  "these are/'re/were/have/here/ones",
  "now it/here/on/we/this/these",
  "today it/she/we",
  "the ones on it/this/the/here",
  "the tires/tyres/wheels on it/this/the/here",
  "what 's on it/this/the/here/there",
  "it 's on/wearing a/an/the/its/<color>/alloy/alloys/steel/steels/#",
  "down/in/on/round/under/back here",
  "i am/'m opening/going/moving/walking/coming/getting/standing/under/at/in/on/round/around",
  "coming/come/going/moving/heading/walking/working round/around/along/down/up/over/to/through/inside/on",
  "i 'll put/give/throw/send/show/do/get",
  "if you look",
  "look at this/these/here",
  "as you can see",
];

/** The same, so plain that they need no clause to head: where nothing is written, clauses are not all seen. */
export const plainReturns: readonly string[] = [
  "~like/than/unlike/to/of/behind/beside/by/next/as/would/does/is/was/that this one 's/is/has/had/got/gets/comes/shows/says/reads/runs/does/here/you",
  "on this one/car/truck/van/side/front/rear/back/corner/here",
  "~like/than/would/if/does/to this/these has/have/is/are/'s",
  "this/these still/also/just/only/actually/already has/have/is/are/'s/got",
  "somebody/someone 's/has? fitted/put/swapped/converted/changed",
  "the odometer/clock/speedo/dash/tag/title/sticker/plate says/shows/reads",
  "the ones on it/this/the/here",
  "the tires/tyres/wheels on it/this/the/here",
  "the tires/tyres/wheels are/now",
  "what 's on it/this/the/here/there",
  "here you/we 've/have/got/can/see",
  "here 's/is",
  "back to ours/this/it",
  "the _ in here",
  "the _ on this/here",
  "you 've got",
  "i run/keep/carry # pounds/psi/in",
];

/** Words that close an aside about another vehicle: what follows them is this one again. */
export const asideEnds: readonly string[] = [
  "ignore it/that/him/her/them",
  "so ignore it/that",
  "do n't look at that/it/him",
  "never mind that/it/him",
  "forget that/it one?",
  "not that one",
  "and dropped/put/fitted/installed/stuck/bolted/stuffed/shoved in",
  "and in went/came/goes",
  // "That's not this, that's the gas truck" goes on about the other one.
  "not this !one/car/truck/van/is/time/year/week/that/it",
  "is n't mine",
  "and it 's sold",
  "you 'd/would hate/loathe/regret it",
  "that 's/is a different car/truck/van/one",
  "that one 's/is quite? different",
];
