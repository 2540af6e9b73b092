/** What a key does at the Check desk; 1 to 9 choose a ruling. */
export const checkShortcuts = {
  ArrowUp: "before",
  ArrowDown: "after",
  A: "hear-first",
  B: "hear-second",
  H: "hear-both",
  N: "next-open",
  "Ctrl+Z": "undo",
  "Ctrl+Shift+Z": "redo",
} as const;
export type CheckAction = (typeof checkShortcuts)[keyof typeof checkShortcuts];

export function checkActionOf(key: string): CheckAction | undefined {
  return Object.hasOwn(checkShortcuts, key) ? checkShortcuts[key as keyof typeof checkShortcuts] : undefined;
}

/** Which of the offered rulings a digit chooses, from 0; null for any other key. */
export function choiceOfKey(key: string): number | null {
  return /^[1-9]$/.test(key) ? Number(key) - 1 : null;
}
