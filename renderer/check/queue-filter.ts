import {
  type Conflict,
  type ConflictKind,
  conflictKinds,
  type RecordingDetail,
  type ZoneName,
  zoneLabels,
  zoneNames,
} from "../../shared-types/index.ts";
import { counted } from "../shared/count.ts";
import { isMatter, matterOf, matterStates } from "./matters-at-hand.ts";
import {
  type CheckItem,
  type ConflictFilter,
  checkItems,
  conflictFilters,
  conflictQueue,
  type Weight,
  weights,
  weightWord,
} from "./queue.ts";

/** What of the queue is shown. */
export interface QueueFilter {
  readonly state: ConflictFilter;
  readonly kind: ConflictKind | null;
  readonly zone: ZoneName | null;
  readonly weight: Weight | null;
}

export const wholeQueue: QueueFilter = { state: "all", kind: null, zone: null, weight: null };

/** One conflict of a kind, and several. */
export const kindWords = {
  measure: ["measure", "measures"],
  count: ["count", "counts"],
  type: ["type", "types"],
  material: ["material", "materials"],
  color: ["color", "colors"],
  presence: ["presence", "presences"],
  condition: ["condition", "conditions"],
  originality: ["originality", "originalities"],
  standard: ["published rule", "published rules"],
  hedge: ["hedge", "hedges"],
} as const satisfies Record<ConflictKind, readonly [string, string]>;

/** "2 published rules" */
export function countedOfKind(count: number, kind: ConflictKind): string {
  const [one, many] = kindWords[kind];
  return counted(count, one, many);
}

/** Zones in which a conflict's claims were made. */
export function zonesOf(conflict: Conflict, detail: RecordingDetail): ReadonlySet<ZoneName> {
  const claims = new Set(conflict.sides.flatMap((side) => side.claims));
  return new Set(detail.analysis.claims.flatMap(({ id, zone }) => (claims.has(id) ? [zone] : [])));
}

export function shownConflicts(detail: RecordingDetail, filter: QueueFilter): Conflict[] {
  return conflictQueue(detail.analysis.conflicts, detail.openConflictKeys, filter.state).filter(
    (conflict) =>
      (filter.kind === null || conflict.kind === filter.kind) &&
      (filter.weight === null || weightWord(conflict.weight) === filter.weight) &&
      (filter.zone === null || zonesOf(conflict, detail).has(filter.zone)),
  );
}

/** What an empty list of conflicts says: that there are none of that state, or that the filters keep them back. */
export function emptyQueueLine(
  {
    analysis,
    openConflictKeys,
  }: Pick<RecordingDetail, "openConflictKeys"> & { readonly analysis: Pick<RecordingDetail["analysis"], "conflicts"> },
  { state }: Pick<QueueFilter, "state">,
): string {
  const all = analysis.conflicts.length;
  const open = analysis.conflicts.filter(({ key }) => openConflictKeys.includes(key)).length;
  if (all === 0) return "No conflict was found.";
  if (state === "open" && open === 0) return "No conflict is open.";
  if (state === "settled" && open === all) return "No conflict is settled yet.";
  return "None under these filters.";
}

/** Whether something that is no conflict is shown: of the filters, only the zone is said of it. */
export function isShownIn(item: CheckItem, detail: RecordingDetail, zone: ZoneName | null): boolean {
  if (zone === null) return true;
  const { analysis, lap, captions } = detail;
  const inZone = (start: number) => lap.some((span) => span.zone === zone && span.start <= start && start < span.end);
  const spoken = (ids: readonly string[]) => analysis.claims.some((claim) => ids.includes(claim.id) && claim.zone === zone);
  if (item.kind === "denial") return spoken(analysis.denials.find(({ key }) => key === item.key)?.claims ?? []);
  if (item.kind === "support") return spoken(analysis.supports.find(({ key }) => key === item.key)?.claims ?? []);
  if (item.kind === "remark") return spoken(analysis.remarks.find(({ key }) => key === item.key)?.claims ?? []);
  if (item.kind === "promise") return analysis.promises.some(({ id, start }) => id === item.key && inZone(start));
  if (item.kind === "doubtful") return inZone(captions[Number(item.key)]?.start ?? -1);
  // What nobody spoke of was said nowhere.
  return item.kind === "conflict";
}

/** What a part of the list says of what the zone filter keeps back: "None in Cabin, 3 elsewhere."; null where it keeps nothing back. */
export function keptBackLine(items: readonly CheckItem[], detail: RecordingDetail, zone: ZoneName | null): string | null {
  if (zone === null || items.length === 0) return null;
  const shown = items.filter((item) => isShownIn(item, detail, zone)).length;
  if (shown === items.length) return null;
  if (items.every(({ kind }) => kind === "silence" || kind === "question"))
    return `${items.length}, spoken of in no zone: shown under “Any zone”.`;
  return shown === 0
    ? `None in ${zoneLabels[zone]}, ${items.length} elsewhere.`
    : `${shown} in ${zoneLabels[zone]}, ${items.length - shown} elsewhere.`;
}

/** Everything in the list, in its order, for the arrow keys. */
export function shownItems(detail: RecordingDetail, filter: QueueFilter): CheckItem[] {
  const conflicts = new Set(shownConflicts(detail, filter).map(({ key }) => key));
  const inState = stateFilter(detail, filter.state);
  return checkItems(detail, filter.state).filter((item) =>
    item.kind === "conflict" ? conflicts.has(item.key) : isShownIn(item, detail, filter.zone) && inState(item),
  );
}

/** Whether a denial, promise or question is in the state that is asked for; what has no state always is. */
export function stateFilter(detail: RecordingDetail, state: ConflictFilter): (item: CheckItem) => boolean {
  if (state === "all") return () => true;
  const stateOf = matterStates(detail);
  return (item) => {
    const matter = isMatter(item) ? matterOf(item, detail) : undefined;
    return matter === undefined || stateOf(matter).open === (state === "open");
  };
}

/** What each filter can be set to in this recording: only what would show something. */
export function filterChoices(detail: RecordingDetail): {
  readonly kind: readonly ConflictKind[];
  readonly zone: readonly ZoneName[];
  readonly weight: readonly Weight[];
} {
  const { conflicts } = detail.analysis;
  const zones = new Set(conflicts.flatMap((conflict) => [...zonesOf(conflict, detail)]));
  return {
    kind: conflictKinds.filter((kind) => conflicts.some((conflict) => conflict.kind === kind)),
    zone: zoneNames.filter((zone) => zones.has(zone)),
    weight: weights.filter((weight) => conflicts.some((conflict) => weightWord(conflict.weight) === weight)),
  };
}

/** The choice after this one, round through "all" (null). */
export function stepped<Value>(choices: readonly Value[], now: Value | null, by: 1 | -1): Value | null {
  const ring = [null, ...choices];
  const at = Math.max(0, ring.indexOf(now));
  return ring[(at + by + ring.length) % ring.length] ?? null;
}

export function steppedState(now: ConflictFilter, by: 1 | -1): ConflictFilter {
  const at = conflictFilters.indexOf(now);
  return conflictFilters[(at + by + conflictFilters.length) % conflictFilters.length] ?? "all";
}

/** How many are left, and of which kind: "2 measures, 1 color". Empty where none is left. */
export function leftByKind(conflicts: readonly Conflict[], openKeys: readonly string[]): string {
  const open = conflicts.filter(({ key }) => openKeys.includes(key));
  return conflictKinds
    .flatMap((kind) => {
      const count = open.filter((conflict) => conflict.kind === kind).length;
      return count > 0 ? [countedOfKind(count, kind)] : [];
    })
    .join(", ");
}
