import type {
  Claim,
  ClaimValue,
  Conflict,
  ConflictKind,
  ConflictSide,
  Remark,
  StandardReference,
  UnitName,
} from "../../../shared-types/index.ts";

/** A conflict before it has its id. */
export type ConflictDraft = Omit<Conflict, "id">;
export type RemarkDraft = Omit<Remark, "id">;

export interface Side {
  readonly value: ClaimValue;
  readonly unit: UnitName | null;
  readonly claims: readonly Claim[];
}

/** Lower-case words and figures joined by hyphens, short enough to be read in a list. */
export function slug(text: string): string {
  return (
    text
      .toLowerCase()
      .normalize("NFKD")
      .replace(/[^a-z0-9.]+/g, "-")
      .replace(/^-+|-+$/g, "") || "none"
  );
}

function sideSlug(side: Side): string {
  return slug(`${side.value}${side.unit === null ? "" : ` ${side.unit}`}`);
}

/**
 * The name a ruling hangs on: kind, topic and the sides' values in alphabetical order. It stays as long as those do, whatever else is
 * said, in whatever order, and however often.
 */
export function conflictKey(kind: ConflictKind, topic: string, sides: readonly Side[]): string {
  return `${kind}:${slug(topic)}:${sides.map(sideSlug).sort().join("|")}`;
}

export interface ConflictParts {
  readonly kind: ConflictKind;
  readonly topic: string;
  readonly why: string;
  readonly rule: string;
  readonly standard?: StandardReference;
  readonly weight: number;
  readonly sides: readonly Side[];
}

export function conflictOf(parts: ConflictParts): ConflictDraft {
  const sides = parts.sides.map(
    (side): ConflictSide => ({ value: side.value, unit: side.unit, claims: [...new Set(side.claims.map((claim) => claim.id))] }),
  );
  return {
    key: conflictKey(parts.kind, parts.topic, parts.sides),
    kind: parts.kind,
    topic: parts.topic,
    why: parts.why,
    rule: parts.rule,
    standard: parts.standard ?? null,
    weight: Math.min(100, Math.max(1, Math.round(parts.weight))),
    sides,
  };
}

export interface RemarkParts {
  readonly topic: string;
  readonly why: string;
  readonly rule: string;
  readonly claims: readonly Claim[];
}

/** A remark's key rests on its rule, topic and values, as a conflict's does. */
export function remarkOf({ topic, why, rule, claims }: RemarkParts): RemarkDraft {
  const values = [...new Set(claims.map((claim) => slug(String(claim.value))))].sort().join("|");
  return { key: `${rule}:${slug(topic)}:${values}`, topic, why, claims: [...new Set(claims.map((claim) => claim.id))], rule };
}
