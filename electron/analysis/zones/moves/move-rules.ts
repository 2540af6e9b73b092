import { exteriorMoves } from "./exterior-moves.ts";
import { framedMoves } from "./framed-places.ts";
import { furtherMoves } from "./further-moves.ts";
import { insideMoves } from "./inside-moves.ts";
import { leavingMoves } from "./leaving-moves.ts";
import { mechanicalMoves } from "./mechanical-moves.ts";
import { type MoveMatcher, type MoveRule, moveMatchers } from "./move-rule.ts";
import { steppingMoves } from "./stepping-moves.ts";
import { talkMoves } from "./talk-moves.ts";
import { walkingMoves } from "./walking-moves.ts";

export const moveRules: readonly MoveRule[] = [
  ...exteriorMoves,
  ...walkingMoves,
  ...insideMoves,
  ...steppingMoves,
  ...mechanicalMoves,
  ...furtherMoves,
  ...talkMoves,
  ...framedMoves,
  ...leavingMoves,
];

const matchers = { punctuated: moveMatchers(moveRules, true), unpunctuated: moveMatchers(moveRules, false) };

export const matchersFor = (punctuated: boolean): readonly MoveMatcher[] => matchers[punctuated ? "punctuated" : "unpunctuated"];
