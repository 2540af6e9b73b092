import type { ZoneName } from "../../../shared-types/index.ts";
import { type DriveSide, zoneOfSide } from "./drive-side.ts";
import { elsewhereAfter, elsewhereBefore, moveRules } from "./moves.ts";
import type { SpokenLine } from "./spoken-line.ts";

/** Words by which the camera was moved. */
export interface Move {
  readonly rule: string;
  readonly zone: ZoneName | "other-side" | null;
  readonly leaves: ZoneName | null;
  readonly strength: number;
  /** Whether the walk to the next place begins with these words, over a sentence's end too. */
  readonly setsOff: boolean;
  readonly announces: boolean;
  /** Token range of the words, end exclusive. */
  readonly first: number;
  readonly end: number;
}

/** Characters around a move in which words may put it elsewhere in time. */
const elsewhereReach = { before: 34, after: 30 };

/** Moves in spoken order. Overlapping phrases for one zone count once, by the stronger, unless it is only announced. */
export function findMoves(line: SpokenLine, drive: DriveSide): Move[] {
  const moves: Move[] = [];
  for (const rule of moveRules) {
    for (const match of line.text.matchAll(rule.pattern)) {
      const zone = rule.zone === "side" ? zoneOfSide(match.groups?.side ?? "", drive) : zoneIn(rule.name, rule.zone, drive);
      if (rule.zone !== null && zone === null) continue;
      const start = match.index;
      const end = start + match[0].length;
      if (zone !== null && zone !== "closing" && isElsewhere(line.text, start, end)) continue;
      moves.push({
        rule: rule.name,
        zone,
        leaves: rule.leaves ?? null,
        strength: rule.strength,
        setsOff: rule.setsOff ?? false,
        announces: rule.announces ?? false,
        first: line.tokenAt(start),
        end: line.tokenAt(Math.max(start, end - 1)) + 1,
      });
    }
  }
  return withoutDoubles(
    moves.toSorted((a, b) => a.first - b.first || Number(b.announces) - Number(a.announces) || b.strength - a.strength),
  );
}

/** What ends the reach of words before a move: a sentence's end, or the word with which the narrator turns to the next thing. */
const newTurn = /\||(?<![a-z])(?:okay|ok|alright|now|anyway|anyhow|so)(?![a-z])/;

/** A British hood is the folding top: putting it up shows no engine. */
function zoneIn(rule: string, zone: Exclude<(typeof moveRules)[number]["zone"], "side">, _drive: DriveSide): Move["zone"] {
  return rule === "" ? null : zone;
}

function isElsewhere(text: string, start: number, end: number): boolean {
  const before =
    text
      .slice(Math.max(0, start - elsewhereReach.before), start)
      .split("|")
      .at(-1) ?? "";
  const after = text.slice(end, end + elsewhereReach.after).split("|")[0] ?? "";
  return before.search(elsewhereBefore) >= 0 || after.search(elsewhereAfter) >= 0;
}

function withoutDoubles(moves: readonly Move[]): Move[] {
  const kept: Move[] = [];
  for (const move of moves) {
    const same = kept.findIndex((other) => other.zone === move.zone && other.end > move.first);
    const other = kept[same];
    if (!other) kept.push(move);
    else if (move.strength > other.strength && !other.announces) kept[same] = { ...move, first: Math.min(move.first, other.first) };
  }
  return kept;
}
