import { bareStockNumber, type Conflict, fieldNamed, type RecordingDetail, type Ruling } from "../../shared-types/index.ts";

export const conflictFilters = ["open", "settled", "all"] as const;
export type ConflictFilter = (typeof conflictFilters)[number];

/** What the reviewer has before them. */
export type CheckItem =
  | { readonly kind: "conflict"; readonly key: string }
  | { readonly kind: "denial"; readonly key: string }
  | { readonly kind: "support"; readonly key: string }
  | { readonly kind: "silence"; readonly key: string }
  | { readonly kind: "promise"; readonly key: string }
  | { readonly kind: "question"; readonly key: string }
  | { readonly kind: "remark"; readonly key: string }
  | { readonly kind: "doubtful"; readonly key: string }
  /** The place where a recording is let out; its key is "now". */
  | { readonly kind: "publish"; readonly key: string };

const itemKinds = [
  "denial",
  "support",
  "silence",
  "promise",
  "remark",
  "question",
  "doubtful",
  "publish",
] as const satisfies readonly Exclude<CheckItem["kind"], "conflict">[];

/** The item that an address names; null where it names none. */
export function itemOfPlace(conflictKey: string | null, itemName: string | null): CheckItem | null {
  if (conflictKey !== null) return { kind: "conflict", key: conflictKey };
  const [kind = "", ...key] = itemName?.split(":") ?? [];
  const known = itemKinds.find((one) => one === kind);
  return known ? { kind: known, key: key.join(":") } : null;
}

/** How an address names an item. */
export function placeOfItem({ kind, key }: CheckItem): { conflict: string } | { item: string } {
  return kind === "conflict" ? { conflict: key } : { item: `${kind}:${key}` };
}

export function sameItem(a: CheckItem | null, b: CheckItem): boolean {
  return a !== null && a.kind === b.kind && a.key === b.key;
}

export const publishItem: CheckItem = { kind: "publish", key: "now" };

/** Conflicts by weight, the most serious first; equal weights in order of their keys, so that the queue never reshuffles. */
export function conflictQueue(conflicts: readonly Conflict[], openKeys: readonly string[], filter: ConflictFilter): Conflict[] {
  const open = new Set(openKeys);
  return conflicts
    .filter((conflict) => filter === "all" || open.has(conflict.key) === (filter === "open"))
    .sort((a, b) => b.weight - a.weight || a.key.localeCompare(b.key, "en"));
}

/** What is open to go to after this one, round to the first; null when nothing else is open. */
export function nextOpen(items: readonly CheckItem[], isOpen: (item: CheckItem) => boolean, after: CheckItem | null): CheckItem | null {
  const from = items.findIndex((item) => sameItem(after, item));
  const ahead = [...items.slice(from + 1), ...items.slice(0, from + 1)];
  return ahead.find((item) => isOpen(item) && !sameItem(after, item)) ?? null;
}

/** Everything in the list, in its order, for the arrow keys. */
export function checkItems(detail: RecordingDetail, filter: ConflictFilter): CheckItem[] {
  const { analysis } = detail;
  return [
    ...conflictQueue(analysis.conflicts, detail.openConflictKeys, filter).map(({ key }) => ({ kind: "conflict" as const, key })),
    ...analysis.denials.map(({ key }) => ({ kind: "denial" as const, key })),
    ...analysis.supports.map(({ key }) => ({ kind: "support" as const, key })),
    ...analysis.silences.map(({ key }) => ({ kind: "silence" as const, key })),
    ...analysis.promises.map(({ id }) => ({ kind: "promise" as const, key: id })),
    ...analysis.remarks.map(({ key }) => ({ kind: "remark" as const, key })),
    ...analysis.questions.map(({ key }) => ({ kind: "question" as const, key })),
    ...[...analysis.doubtful, ...detail.trustedCaptions].map(({ caption }) => ({ kind: "doubtful" as const, key: String(caption) })),
  ];
}

/** Rulings or notes, the standing ones first, then the superseded ones from the latest back. */
export function standingFirst<Row extends { readonly supersededBy: string | null; readonly at: string }>(rows: readonly Row[]): Row[] {
  return rows.toSorted((a, b) => Number(a.supersededBy !== null) - Number(b.supersededBy !== null) || b.at.localeCompare(a.at, "en"));
}

export function rulingsOn(rulings: readonly Ruling[], conflictKey: string): Ruling[] {
  return standingFirst(rulings.filter((ruling) => ruling.conflictKey === conflictKey));
}

/** Rulings whose conflict the analysis no longer finds; they stay readable. */
export function rulingsWithoutConflict(rulings: readonly Ruling[], conflicts: readonly Conflict[]): Ruling[] {
  const known = new Set(conflicts.map((conflict) => conflict.key));
  return rulings.filter((ruling) => !known.has(ruling.conflictKey));
}

/** The stock number that the sheet gives, where it is another than the recording's: then it is likely another vehicle's sheet. */
export function foreignStockNumber({ stockSheet, sheetMeanings, summary }: RecordingDetail): string | null {
  const isNumber = (field: string) => (sheetMeanings === null ? fieldNamed(field) : sheetMeanings[field]) === "stock-number";
  const [, number] = Object.entries(stockSheet ?? {}).find(([field]) => isNumber(field)) ?? [];
  if (number === undefined || summary.stockNumber === "") return null;
  return bareStockNumber(number) === bareStockNumber(summary.stockNumber) ? null : number;
}

export const weights = ["serious", "moderate", "minor"] as const;
export type Weight = (typeof weights)[number];

/** How serious a weight is, in a word. The bounds cut the range of 1 to 100 in three. */
export function weightWord(weight: number): Weight {
  return weight >= 67 ? "serious" : weight >= 34 ? "moderate" : "minor";
}

/** Words that tell nothing of what is meant: a stock number is no number of owners. */
const commonWords = new Set(["and", "the", "of", "against", "being", "size", "type", "or", "not", "number"]);

function stems(text: string): Set<string> {
  return new Set(
    text
      .toLowerCase()
      .split(/[^a-z0-9]+/)
      .map((word) => word.replace(/s$/, ""))
      .filter((word) => word.length > 2 && !commonWords.has(word)),
  );
}

/** Fields of the stock sheet that share a telling word with a topic: "rear tires" with "rear tire size". */
export function sheetFieldsAbout(topic: string, fields: Readonly<Record<string, string>>): [field: string, value: string][] {
  const wanted = stems(topic);
  const scored = Object.entries(fields).map(([field, value]) => ({
    field,
    value,
    shared: [...stems(field)].filter((word) => wanted.has(word)).length,
  }));
  const best = Math.max(0, ...scored.map(({ shared }) => shared));
  return scored.filter(({ shared }) => shared > 0 && shared === best).map(({ field, value }) => [field, value]);
}

/** Who ruled that a conflict waits until someone has looked at the vehicle; null where it waits for a ruling, or is settled. */
export function waitsForLook(rulings: readonly Ruling[], conflictKey: string): Pick<Ruling, "initials" | "at"> | null {
  return rulings.find((one) => one.conflictKey === conflictKey && one.supersededBy === null && one.decision === "look-at-vehicle") ?? null;
}
