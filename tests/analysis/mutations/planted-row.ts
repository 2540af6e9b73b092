import type { ConflictKind, ZoneName } from "../../../shared-types/index.ts";

/** What a quiet walk says once, and sentences that deny it or say it again in other words. */
export interface PlantedRow {
  /** The kinds a reviewer may be shown it as; the first is the one it is counted under. */
  readonly kinds: readonly [ConflictKind, ...ConflictKind[]];
  readonly slot: string;
  /** Captions of the untouched walk in which the slot is spoken. */
  readonly at: readonly number[];
  /** Where the sentence can be said; the first that the walk visits is taken. */
  readonly zone: ZoneName;
  readonly denials: readonly string[];
  /** Other units, honest rounding, a synonym, a misheard form that reads the same: must stay quiet. */
  readonly equals: readonly string[];
}

type Kinds = ConflictKind | readonly [ConflictKind, ...ConflictKind[]];

export function row(
  kinds: Kinds,
  slot: string,
  [at, zone]: readonly [at: number | readonly number[], zone: ZoneName],
  denials: readonly string[],
  equals: readonly string[],
): PlantedRow {
  return { kinds: typeof kinds === "string" ? [kinds] : kinds, slot, at: typeof at === "number" ? [at] : at, zone, denials, equals };
}

/** Every way of saying with every value; "_" is where the value goes. */
export function say(ways: readonly string[], ...values: readonly string[]): string[] {
  return values.flatMap((value) =>
    ways.map((way) => {
      const said = way.replace("_", value);
      return said.charAt(0).toUpperCase() + said.slice(1);
    }),
  );
}

export interface PlantedWalk {
  /** Folder under fixtures/corpus, and the case's name. */
  readonly folder: string;
  readonly id: string;
  readonly rows: readonly PlantedRow[];
}
