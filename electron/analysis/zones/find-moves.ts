import type { ZoneName } from "../../../shared-types/index.ts";
import { type DriveSide, zoneOfSide } from "./drive-side.ts";
import { elsewhereAfter, elsewhereBefore, elsewhereReachWords, newTurn } from "./moves/elsewhere.ts";
import { headingPlaces, type MoveRule, matchesOf } from "./moves/move-rule.ts";
import { matchersFor } from "./moves/move-rules.ts";
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
  /** Zones from which alone, or never, the words move the camera here. */
  readonly onlyFrom: readonly ZoneName[] | null;
  readonly neverFrom: readonly ZoneName[];
  /** Token range of the words, end exclusive. */
  readonly first: number;
  readonly end: number;
}

/** Moves in spoken order, among them the `lone` ones found by punctuation. Overlapping phrases for one zone count once, by the stronger, unless it is only announced. */
export function findMoves(line: SpokenLine, drive: DriveSide, punctuated: boolean, lone: readonly Move[] = []): Move[] {
  const reach = elsewhereReachWords[punctuated ? "punctuated" : "unpunctuated"];
  const moves: Move[] = [...lone];
  const places = headingPlaces(line.text);
  for (const matcher of matchersFor(punctuated)) {
    const { rule, strength, isHeading } = matcher;
    if (rule.british && !drive.british) continue;
    for (const match of matchesOf(matcher, line.text, places)) {
      const zone = zoneOf(rule, match, drive);
      if (rule.zone !== null && zone === null) continue;
      const start = match.index;
      const end = start + match[0].length;
      if (zone !== null && zone !== "closing" && !isHeading && isElsewhere(line.text, start, end, reach)) continue;
      moves.push({
        rule: rule.name,
        zone,
        leaves: rule.leaves ?? null,
        strength,
        setsOff: rule.setsOff ?? false,
        announces: rule.announces ?? false,
        onlyFrom: rule.onlyFrom ?? null,
        neverFrom: rule.neverFrom ?? (rule.zone === "side" && withinSomething.test(match[0]) ? insides : anywhere),
        first: line.tokenAt(start),
        end: line.tokenAt(Math.max(start, end - 1)) + 1,
      });
    }
  }
  return withoutDoubles(
    moves.toSorted((a, b) => a.first - b.first || Number(b.announces) - Number(a.announces) || b.strength - a.strength),
  );
}

function zoneOf(rule: MoveRule, match: RegExpExecArray, drive: DriveSide): Move["zone"] {
  // A British hood is the folding top.
  if (rule.zone === "engine-bay" && drive.british && /(?<![a-z])hood(?![a-z])/.test(match[0])) return "roof";
  if (rule.zone !== "side") return rule.zone;
  return zoneOfSide(match.groups?.side ?? "", drive);
}

/** "On the passenger side there's the battery": said in these, a side is one of the engine's, the floor's or the dash's. */
const withinSomething = /^(?:(?:and|but|so|now|then) )*(?:over )?(?:on|at) (?:the|your|this|that|my) /;
const insides: readonly ZoneName[] = ["engine-bay", "underside"];
const anywhere: readonly ZoneName[] = [];

/** Characters that hold the words of the longest reach. */
const reachCharacters = 60;

function isElsewhere(text: string, start: number, end: number, reach: number): boolean {
  const after = text.slice(end, end + reachCharacters).split("|")[0] ?? "";
  return (
    elsewhereBefore.test(lastWords(text.slice(Math.max(0, start - reachCharacters), start), reach)) ||
    elsewhereAfter.test(firstWords(after, reach))
  );
}

const firstWords = (text: string, count: number) => text.trim().split(" ").slice(0, count).join(" ");
const lastWords = (text: string, count: number) => (text.split(newTurn).at(-1) ?? "").trim().split(" ").slice(-count).join(" ");

const alikeBound = (one: Move, other: Move) => one.onlyFrom === other.onlyFrom && one.neverFrom === other.neverFrom;

function withoutDoubles(moves: readonly Move[]): Move[] {
  const kept: Move[] = [];
  for (const move of moves) {
    // Moves are sorted, so one that overlaps is among the last few.
    const same = kept.findLastIndex(
      (other, position) => position >= kept.length - 4 && other.zone === move.zone && other.end > move.first && alikeBound(other, move),
    );
    const other = kept[same];
    if (!other) kept.push(move);
    else if (move.strength > other.strength && !other.announces) kept[same] = { ...move, first: Math.min(move.first, other.first) };
  }
  return kept;
}
