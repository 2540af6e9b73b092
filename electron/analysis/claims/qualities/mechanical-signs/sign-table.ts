import type { ComponentName, ZoneName } from "../../../../../shared-types/index.ts";
import { type ClauseSign, readSign } from "../clause-sign.ts";
import type { QualityAttribute, QualityRule } from "../quality-rule.ts";

/** What the signs of one kind give. */
export interface SignTableRow {
  readonly value: string;
  readonly part?: string;
  /**
   * One sign a line, in the notation of `ClauseSign`; a group may hold several phrases parted by " | ":
   * `cam + in the block | down below - security` is "cam" and one of the two, in one sentence that speaks of no security.
   */
  readonly signs: string;
  /** Phrases, parted by " | ", that silence every sign of the row. */
  readonly never?: string;
  /** Kind of damage; see the folder's `conditions` table. */
  readonly circumstance?: string;
  readonly zones?: readonly ZoneName[];
  /** The words may be denied to mean the opposite ("it doesn't knock"). */
  readonly denial?: "turns";
  readonly says: string;
  readonly quiet: readonly string[];
}

/** A line with its alternatives spelled out: "a | b + c" is "a + c" and "b + c". */
function spelledOut(line: string): string[] {
  const [wanted = "", ...unwanted] = line.split(" - ");
  const never = unwanted.flatMap((phrases) => phrases.split(" | ")).map((phrase) => ` - ${phrase.trim()}`);
  return wanted
    .split(" + ")
    .map((group) => group.split(" | ").map((phrase) => phrase.trim()))
    .reduce<string[]>((lines, group) => lines.flatMap((begun) => group.map((phrase) => (begun ? `${begun} + ${phrase}` : phrase))), [""])
    .map((signs) => signs + never.join(""));
}

function signsOf({ signs, never }: SignTableRow): ClauseSign[] {
  const silenced = never ? ` - ${never}` : "";
  return signs
    .split("\n")
    .map((line) => line.trim())
    .filter(Boolean)
    .flatMap((line) => spelledOut(line + silenced))
    .map(readSign);
}

/** Rules of a table about one attribute of one component, one rule to a row. */
export function signTable(component: ComponentName, attribute: QualityAttribute, rows: readonly SignTableRow[]): QualityRule[] {
  return rows.map((row): QualityRule => {
    const part = row.part ?? null;
    return {
      name: `${component} ${part ?? ""} ${row.value}, by its signs (${attribute}${row.circumstance ? `, ${row.circumstance}` : ""})`,
      attribute,
      value: row.value,
      phrases: [],
      signs: signsOf(row),
      about: [{ component, part }],
      denial: row.denial ?? "drops",
      ...(row.circumstance ? { circumstance: row.circumstance } : {}),
      ...(row.zones ? { zones: row.zones } : {}),
      example: { says: row.says, gives: { component, value: row.value, part }, ...(row.zones ? { zone: row.zones[0]! } : {}) },
      quiet: row.quiet,
    };
  });
}
