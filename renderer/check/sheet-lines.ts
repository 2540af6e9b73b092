import { type Claim, denialMatter, type RecordingDetail, timeLabel, valueLabel } from "../../shared-types/index.ts";
import { disputedClaims } from "../shared/caption-segments.ts";
import { type MatterState, matterStates } from "./matters-at-hand.ts";
import type { CheckItem } from "./queue.ts";

/** One line of what the stock sheet says. */
export interface SheetLine {
  readonly item: CheckItem;
  readonly title: string;
  readonly more: string;
  /** Whether a claim behind it is in an open conflict. */
  readonly disputed: boolean;
  /** How a denial stands: "open", "seen by RT"; null for what nobody has to deal with. */
  readonly state: MatterState | null;
}

export interface SheetLines {
  readonly denials: readonly SheetLine[];
  readonly supports: readonly SheetLine[];
  readonly silences: readonly SheetLine[];
}

/** What was said, each value with its moments: "said: clean at 4:12". */
function saidLine(claims: readonly Pick<Claim, "start" | "value" | "unit" | "attribute">[]): string {
  const byValue = Map.groupBy(claims, ({ value, unit, attribute }) => valueLabel(value, unit, attribute));
  const said = [...byValue].map(([value, of]) => `${value} at ${[...new Set(of.map(({ start }) => timeLabel(start)))].join(", ")}`);
  return `said: ${said.join("; ")}`;
}

/** The stock sheet's lines of the queue. A cell that tells several things nobody spoke of is one line with all their names. */
export function sheetLines(detail: Pick<RecordingDetail, "analysis" | "openConflictKeys" | "lap" | "rulings" | "seenNotes">): SheetLines {
  const { analysis, openConflictKeys } = detail;
  const stateOf = matterStates(detail);
  const disputed = disputedClaims(analysis.conflicts, openConflictKeys);
  const byId = new Map(analysis.claims.map((claim) => [claim.id, claim]));
  const spoken = (sheetValue: string, ids: readonly string[]) => ({
    more: `sheet: ${sheetValue}, ${saidLine(ids.flatMap((id) => byId.get(id) ?? []))}`,
    disputed: ids.some((id) => disputed.has(id)),
  });
  const cells = Map.groupBy(analysis.silences, ({ field, sheetValue }) => JSON.stringify([field, sheetValue]));
  return {
    denials: analysis.denials.map((denial) => ({
      item: { kind: "denial", key: denial.key },
      title: denial.field,
      ...spoken(denial.sheetValue, denial.claims),
      state: stateOf(denialMatter(denial)),
    })),
    supports: analysis.supports.map(({ key, topic, sheetValue, claims }) => ({
      item: { kind: "support", key },
      title: topic,
      ...spoken(sheetValue, claims),
      state: null,
    })),
    silences: [...cells.values()].flatMap((silences) =>
      silences.slice(0, 1).map(({ key, sheetValue }) => ({
        item: { kind: "silence" as const, key },
        title: [...new Set(silences.map(({ topic }) => topic))].join(", "),
        more: `sheet: ${sheetValue}`,
        disputed: false,
        state: null,
      })),
    ),
  };
}
