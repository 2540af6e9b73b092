import type { FrameRule } from "./frame-rule.ts";
import { otherVehicleRules } from "./other-vehicle-rules.ts";
import { stanceRules } from "./stance-rules.ts";
import { supposedRules } from "./supposed-rules.ts";
import { timeRules } from "./time-rules.ts";

/** All rules; of two subjects for one word the first found stands. */
export const frameRules: readonly FrameRule[] = [...stanceRules, ...timeRules, ...otherVehicleRules, ...supposedRules];

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
];

/** Words that close an aside about another vehicle: what follows them is this one again. */
export const asideEnds: readonly string[] = [
  "ignore it/that/him/her/them",
  "so ignore it/that",
  "do n't look at that/it/him",
  "never mind that/it/him",
  "forget that/it one?",
  "not that one",
  "is n't mine",
  "not for sale",
  "and it 's sold",
  "that 's/is a different car/truck/van/one",
  "that one 's/is quite? different",
];
