import type { SheetGroup } from "../shared/shortcut-sheet.tsx";

export type CheckAction =
  | "before"
  | "after"
  | "next-open"
  | "hear-first"
  | "hear-second"
  | "hear-both"
  | "stop"
  | "publish"
  | "let-out"
  | "filter-state"
  | "filter-kind"
  | "filter-zone"
  | "filter-weight"
  | "filter-none"
  | "undo"
  | "redo"
  | "sheet";

/** What a key does at the Check desk; besides these, 1 to 9 choose a ruling. */
export const checkShortcuts = [
  { key: "ArrowUp", action: "before", words: "the one before in the list" },
  { key: "ArrowDown", action: "after", words: "the one after in the list" },
  { key: "N", action: "next-open", words: "the next thing that is open; to publish once nothing is" },
  { key: "A", action: "hear-first", words: "hear the left, or the first, moment" },
  { key: "B", action: "hear-second", words: "hear the right, or the second, moment" },
  { key: "H", action: "hear-both", words: "hear both, or all, one after the other" },
  { key: "S", action: "stop", words: "stop what is heard" },
  { key: "P", action: "publish", words: "whether it is ready to publish" },
  { key: "Shift+P", action: "let-out", words: "record as published, from there" },
  { key: "Ctrl+Z", action: "undo", words: "undo" },
  { key: "Ctrl+Shift+Z", action: "redo", words: "redo" },
  { key: "?", action: "sheet", words: "this sheet" },
] as const satisfies readonly { key: string; action: CheckAction; words: string }[];

/** The next choice of each filter of the queue; with Shift the one before. */
export const filterShortcuts = [
  { key: "O", action: "filter-state", words: "open, settled or all" },
  { key: "K", action: "filter-kind", words: "by kind" },
  { key: "Z", action: "filter-zone", words: "by zone" },
  { key: "W", action: "filter-weight", words: "by weight" },
  { key: "X", action: "filter-none", words: "every kind, zone and weight again" },
] as const satisfies readonly { key: string; action: CheckAction; words: string }[];

const actionOfKey = new Map<string, CheckAction>([...checkShortcuts, ...filterShortcuts].map(({ key, action }) => [key, action]));

export function checkActionOf(key: string): CheckAction | undefined {
  return actionOfKey.get(key);
}

/** The filter that a key steps, and which way; null for any other key. */
export function filterStepOf(key: string): { readonly action: CheckAction; readonly by: 1 | -1 } | null {
  const back = key.startsWith("Shift+");
  const action = checkActionOf(back ? key.slice("Shift+".length) : key);
  return action?.startsWith("filter-") ? { action, by: back ? -1 : 1 } : null;
}

export const checkSheet: readonly SheetGroup[] = [
  { name: "Check", shortcuts: checkShortcuts },
  {
    name: "What the queue shows (with Shift, the one before)",
    shortcuts: filterShortcuts,
  },
  {
    name: "Ruling",
    shortcuts: [
      {
        key: "1",
        words: "side A stands; the next digits choose the other rulings in their order, those after them the side that was misheard",
      },
      { key: "Ctrl+Enter", words: "decide, from the reason's field" },
    ],
  },
  {
    name: "Denial, promise or question",
    shortcuts: [
      { key: "1", words: "seen, because…" },
      { key: "2", words: "open it again, where it was dealt with" },
      { key: "Ctrl+Enter", words: "note it, from the reason's field" },
    ],
  },
];

/** Which of the offered rulings a digit chooses, from 0; null for any other key. */
export function choiceOfKey(key: string): number | null {
  return /^[1-9]$/.test(key) ? Number(key) - 1 : null;
}
