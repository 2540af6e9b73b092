import type { ComponentName, PositionName, ZoneName } from "../../../../../shared-types/index.ts";
import { type ClauseSign, readSign } from "../clause-sign.ts";
import type { NamedPart, QualityAttribute, QualityRule } from "../quality-rule.ts";

/** What signs of one kind give; `signs` holds one sign a line, in the notation of `ClauseSign`. */
export interface WordedRow {
  readonly attribute: QualityAttribute;
  readonly value: string;
  readonly component: ComponentName;
  readonly part?: string;
  readonly position?: PositionName;
  /** Components one of which the words may name, and then mean; else `component` is meant. */
  readonly among?: readonly ComponentName[];
  readonly order?: NamedPart["order"];
  /** True where the sentence must name one of them. */
  readonly mustName?: true;
  /** Words of the thing spoken of: a line that begins with "&" wants one of them beside its own. */
  readonly topic?: string;
  /**
   * - `magnet + sticks/holds`        both in one sentence, in any order
   * - `in the hole | on the peg`     two signs
   * - `& split/torn`                 with a word of the topic
   * - `… - joke`                     and not that
   */
  readonly signs: string;
  /** Phrases that silence every sign of the row, parted by " | ". */
  readonly never?: string;
  readonly circumstance?: string;
  readonly zones?: readonly ZoneName[];
  readonly zone?: ZoneName;
  /** The words hold their own denial, or may be denied to mean the opposite. */
  readonly denial?: "turns";
  readonly tellsOfToday?: true;
  readonly says: string;
  readonly quiet?: readonly string[];
}

/** The signs of a row, each with the words that silence the whole row. */
function signsOf({ signs, topic, never }: WordedRow): ClauseSign[] {
  const silenced = never
    ? never
        .split(" | ")
        .map((phrase) => ` - ${phrase}`)
        .join("")
    : "";
  return signs
    .split(/\n| \| /)
    .map((sign) => sign.trim())
    .filter(Boolean)
    .map((sign) => {
      if (!sign.startsWith("& ")) return readSign(sign + silenced);
      if (!topic) throw new Error(`sign "${sign}" wants a topic; give its row one`);
      const [wanted, ...unwanted] = sign.slice(2).split(" - ");
      return readSign([`${wanted} + ${topic}`, ...unwanted].join(" - ") + silenced);
    });
}

/** The rules of a table of signs told by words that stand together. */
export function wordedSigns(rows: readonly WordedRow[]): QualityRule[] {
  return rows.map((row): QualityRule => {
    const fixed = { component: row.component, part: row.part ?? null, ...(row.position ? { position: row.position } : {}) };
    const zone = row.zone ?? row.zones?.[0];
    return {
      name: `${row.part ?? row.component} ${row.value}, by its signs (${row.attribute}${row.circumstance ? `, ${row.circumstance}` : ""})`,
      attribute: row.attribute,
      value: row.value,
      phrases: [],
      signs: signsOf(row),
      about: row.among ? { among: row.among, order: row.order ?? "place", ...(row.mustName ? {} : { otherwise: fixed }) } : [fixed],
      denial: row.denial ?? "drops",
      ...(row.circumstance ? { circumstance: row.circumstance } : {}),
      ...(row.zones ? { zones: row.zones } : {}),
      ...(row.tellsOfToday ? { tellsOfToday: true as const } : {}),
      example: { says: row.says, gives: { component: row.component, value: row.value }, ...(zone ? { zone } : {}) },
      quiet: row.quiet ?? [],
    };
  });
}
