import type { ComponentName, PositionName, ZoneName } from "../../../../shared-types/index.ts";
import type { Denial, NamedPart, QualityAttribute, QualityRule } from "./quality-rule.ts";

/** One thing told by its sign: what is seen, felt or done, and not the trade's name of it. */
export interface SignRow {
  readonly attribute: QualityAttribute;
  readonly value: string;
  /** What the words are about where they name no part. */
  readonly component: ComponentName;
  readonly part?: string | null;
  readonly position?: PositionName;
  readonly phrases: readonly string[];
  /** See `QualityRule.beside`. */
  readonly beside?: readonly string[];
  readonly unless?: readonly string[];
  /** Components one of which the sentence may name; then that is meant. */
  readonly among?: readonly ComponentName[];
  readonly order?: NamedPart["order"];
  /** True where the sentence must name one of them. */
  readonly mustName?: true;
  readonly zones?: readonly ZoneName[];
  readonly denial?: Denial;
  /** See `QualityRule.tellsOfToday`. */
  readonly tellsOfToday?: true;
  readonly says: string;
  readonly quiet: readonly string[];
}

/** Rules of a table of signs, each named by what it tells. */
export function signRules(rows: readonly SignRow[]): QualityRule[] {
  return rows.map((row): QualityRule => {
    const fixed = { component: row.component, part: row.part ?? null, ...(row.position ? { position: row.position } : {}) };
    return {
      name: `${row.part ?? row.component} ${row.value}, by a sign (${row.attribute})`,
      attribute: row.attribute,
      value: row.value,
      phrases: row.phrases,
      ...(row.beside ? { beside: row.beside } : {}),
      ...(row.unless ? { unless: row.unless } : {}),
      ...(row.zones ? { zones: row.zones } : {}),
      about: row.among ? { among: row.among, order: row.order ?? "place", ...(row.mustName ? {} : { otherwise: fixed }) } : [fixed],
      denial: row.denial ?? "drops",
      ...(row.tellsOfToday ? { tellsOfToday: true as const } : {}),
      example: { says: row.says, gives: { component: row.component, value: row.value }, ...(row.zones ? { zone: row.zones[0]! } : {}) },
      quiet: row.quiet,
    };
  });
}
