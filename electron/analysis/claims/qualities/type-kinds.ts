import type { ComponentName, PositionName, ZoneName } from "../../../../shared-types/index.ts";
import type { FixedPart, NamedPart, QualityRule } from "./quality-rule.ts";

/** Kinds of parts, by the words that name them and by what gives them away. Common practice of the trade throughout. */
export interface Kind {
  readonly part?: string | null;
  readonly value: string;
  readonly phrases: readonly string[];
  readonly unless?: readonly string[];
  readonly parts?: readonly FixedPart[];
  /** Where the sentence may name the part: "led" is a headlight's or a tail light's. */
  readonly about?: NamedPart;
  readonly zones?: readonly ZoneName[];
  readonly says: string;
  readonly at?: PositionName;
  readonly quiet: readonly string[];
}

export function kinds(component: ComponentName, rows: readonly Kind[]): QualityRule[] {
  return rows.map((row) => {
    const fixed = row.parts ?? [{ component, part: row.part ?? null }];
    const about = row.about ?? fixed;
    return {
      name: `${component} type ${row.value}`,
      attribute: "type",
      value: row.value,
      phrases: row.phrases,
      ...(row.unless ? { unless: row.unless } : {}),
      ...(row.zones ? { zones: row.zones } : {}),
      about,
      denial: "drops",
      example: {
        says: row.says,
        gives: { component, value: fixed[0]!.value ?? row.value, part: fixed[0]!.part, ...(row.at ? { position: row.at } : {}) },
        ...(row.zones ? { zone: row.zones[0]! } : {}),
      },
      quiet: row.quiet,
    };
  });
}
