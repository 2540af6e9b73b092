import {
  fieldNamed,
  headerName,
  neverHeldAgainst,
  type SheetColumn,
  type SheetColumns,
  type SheetField,
  sheetFieldRows,
  sheetFields,
} from "../../../shared-types/index.ts";
import type { SheetChoices } from "../../library/sheet-choices.ts";
import { fitsKind, isBlank, nounOf } from "./cell-kinds.ts";
import type { SheetTable } from "./read-table.ts";

/** What people chose before, as the library keeps it. */
export interface KnownChoices {
  readonly of: (form: string) => SheetChoices;
  readonly latest: (name: string) => SheetField | null | undefined;
}

export const noChoices: KnownChoices = { of: () => new Map(), latest: () => undefined };

/** Most sample cells that are shown for a column, and most letters of each. */
const mostSamples = 3;
const longestSample = 80;

/** The name that all sheets with these columns share. */
export function formOf(names: readonly string[]): string {
  return [...new Set(names.map(headerName).filter((name) => name !== ""))].sort().join("|");
}

/** A column whose name or cells leave a doubt is left out until a person has chosen. */
export function judgeColumns(table: SheetTable, choices: KnownChoices): SheetColumns {
  const form = formOf(table.names);
  const chosen = choices.of(form);
  const cellsOf = (at: number) => table.rows.map(({ cells }) => cells[at] ?? "");
  const columns: Judging[] = distinctNames(table.names).map(({ name, at }) => {
    const cells = cellsOf(at);
    return { at, cells, judged: judge(name, cells, chosen, choices) };
  });
  const taken = new Map<SheetField, Judging>();
  for (const column of byRank(columns)) {
    const { judged } = column;
    if (judged.field === null) continue;
    const first = taken.get(judged.field);
    if (first) column.judged = besideRival(judged, column.cells, first);
    else taken.set(judged.field, column);
  }
  return { form, columns: columns.map(({ judged }) => judged), rows: table.rows.length };
}

interface Judging {
  readonly at: number;
  readonly cells: readonly string[];
  judged: SheetColumn;
}

/** Columns that people chose come first, then those whose name is likelier for their field, then in the order of the sheet. */
function byRank(columns: readonly Judging[]): Judging[] {
  const rank = ({ judged: { standing, field, name } }: Judging) => {
    if (standing === "chosen") return -1;
    const names: readonly string[] = field === null ? [] : sheetFieldRows[field].names;
    const place = names.indexOf(headerName(name));
    return place < 0 ? names.length : place;
  };
  return [...columns].sort((a, b) => rank(a) - rank(b) || a.at - b.at);
}

/** A second column of one field: the same cells need no question, other ones leave both in doubt. */
function besideRival(judged: SheetColumn, cells: readonly string[], rival: Judging): SheetColumn {
  const same = cells.every((cell, row) => isBlank(cell) || cell === rival.cells[row]);
  if (same) return { ...judged, field: null, why: `Says the same as “${rival.judged.name}”.` };
  const doubt = (column: SheetColumn, other: string): SheetColumn => ({
    ...column,
    field: null,
    suggestion: column.field ?? column.suggestion,
    standing: "doubtful",
    why: `“${other}” would mean the same, and says something else. Choose which of them counts.`,
  });
  const { name } = rival.judged;
  if (rival.judged.standing !== "chosen") rival.judged = doubt(rival.judged, judged.name);
  return doubt(judged, name);
}

function distinctNames(names: readonly string[]): { readonly name: string; readonly at: number }[] {
  const seen = new Set<string>();
  return names.flatMap((name, at) => {
    const normalised = headerName(name);
    if (normalised === "" || seen.has(normalised)) return [];
    seen.add(normalised);
    return [{ name, at }];
  });
}

function judge(name: string, cells: readonly string[], chosen: SheetChoices, choices: KnownChoices): SheetColumn {
  const normalised = headerName(name);
  const filled = cells.filter((cell) => !isBlank(cell));
  const samples = [...new Set(filled)]
    .slice(0, mostSamples)
    .map((cell) => (cell.length > longestSample ? `${cell.slice(0, longestSample)}…` : cell));
  const plain = { name, samples, suggestion: null, why: "" };
  const choice = chosen.get(normalised);
  if (choice === null) return { ...plain, field: null, standing: "chosen" };
  const known = choice ?? fieldNamed(name);
  if (known !== undefined) {
    const kind = sheetFieldRows[known].cell;
    const misfits = filled.filter((cell) => !fitsKind(kind, cell));
    // One bad cell is its row's trouble; where most are bad, the column is something else.
    if (misfits.length * 2 <= filled.length) return { ...plain, field: known, standing: choice === undefined ? "known" : "chosen" };
    const why = `${choice === undefined ? "The name is known" : "So it was chosen"}, but “${misfits[0] ?? ""}” is no ${nounOf(kind)}.`;
    return { ...plain, field: null, suggestion: known, standing: "doubtful", why };
  }
  if (neverHeldAgainst.has(normalised)) return { ...plain, field: null, standing: "known", why: "No walk speaks of it." };
  const before = choices.latest(normalised);
  if (before) return { ...plain, field: null, suggestion: before, standing: "doubtful", why: "So it was chosen in another sheet." };
  const near = fieldNear(normalised);
  if (near) return { ...plain, field: null, suggestion: near, standing: "doubtful", why: "The name is near a known one." };
  return { ...plain, field: null, standing: "unknown", why: "" };
}

/** Letters that a word of a name must have to suggest a field by itself: "my" and "cc" stand in too many names. */
const shortestTellingWord = 4;

/** The field of which a whole known name stands within this one; the longest name counts. */
function fieldNear(name: string): SheetField | undefined {
  const padded = ` ${name} `;
  let best: { readonly field: SheetField; readonly length: number } | undefined;
  for (const field of sheetFields) {
    for (const known of sheetFieldRows[field].names) {
      if (known.length < shortestTellingWord || !padded.includes(` ${known} `)) continue;
      if (!best || known.length > best.length) best = { field, length: known.length };
    }
  }
  return best?.field;
}
