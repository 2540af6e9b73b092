/** What a key does at the Mark desk. */
export type MarkAction =
  | "play"
  | "frame-back"
  | "frame-on"
  | "second-back"
  | "second-on"
  | "five-back"
  | "five-on"
  | "slower"
  | "faster"
  | "border-before"
  | "border-after"
  | "mark-start"
  | "mark-end"
  | "clear-marks"
  | "zone"
  | "finding"
  | "accept"
  | "accept-stretch"
  | "split"
  | "join"
  | "retitle"
  | "remove"
  | "undo"
  | "redo"
  | "sheet";

export interface Shortcut {
  readonly action: MarkAction;
  /** As `keyName` writes it. */
  readonly key: string;
  readonly words: string;
}

export interface ShortcutGroup {
  readonly name: string;
  readonly shortcuts: readonly Shortcut[];
}

export const markShortcuts = [
  {
    name: "Play and move",
    shortcuts: [
      { action: "play", key: "Space", words: "play or pause" },
      { action: "frame-back", key: ",", words: "one frame back" },
      { action: "frame-on", key: ".", words: "one frame on" },
      { action: "second-back", key: "ArrowLeft", words: "one second back" },
      { action: "second-on", key: "ArrowRight", words: "one second on" },
      { action: "five-back", key: "Shift+ArrowLeft", words: "five seconds back" },
      { action: "five-on", key: "Shift+ArrowRight", words: "five seconds on" },
      { action: "border-before", key: "ArrowUp", words: "to the border before" },
      { action: "border-after", key: "ArrowDown", words: "to the border after" },
      { action: "slower", key: "[", words: "slower" },
      { action: "faster", key: "]", words: "faster" },
    ],
  },
  {
    name: "Mark",
    shortcuts: [
      { action: "mark-start", key: "I", words: "mark in at the playhead" },
      { action: "mark-end", key: "O", words: "mark out at the playhead" },
      { action: "clear-marks", key: "X", words: "clear the marks" },
      { action: "zone", key: "Z", words: "set the zone of the marked stretch, or of this span" },
      { action: "finding", key: "F", words: "new finding" },
    ],
  },
  {
    name: "Zone spans",
    shortcuts: [
      { action: "accept", key: "A", words: "accept this proposed span" },
      { action: "accept-stretch", key: "Shift+A", words: "accept what is proposed in the marked stretch" },
      { action: "split", key: "S", words: "split at the playhead" },
      { action: "join", key: "J", words: "join at the nearest border" },
      { action: "retitle", key: "T", words: "retitle this span" },
      { action: "remove", key: "Delete", words: "remove this span; the proposal shows again" },
    ],
  },
  {
    name: "Everything",
    shortcuts: [
      { action: "undo", key: "Ctrl+Z", words: "undo" },
      { action: "redo", key: "Ctrl+Shift+Z", words: "redo" },
      { action: "sheet", key: "?", words: "this sheet" },
    ],
  },
] as const satisfies readonly ShortcutGroup[];

const actionOfKey = new Map<string, MarkAction>(
  markShortcuts.flatMap((group) => group.shortcuts.map(({ key, action }) => [key, action] as const)),
);

export function markActionOf(key: string): MarkAction | undefined {
  return actionOfKey.get(key);
}

/** The lap strip's own keys; it acts on them itself. */
export const stripShortcuts = {
  name: "Lap strip",
  shortcuts: [
    { key: "=", words: "strip closer" },
    { key: "-", words: "strip wider" },
    { key: "0", words: "whole recording" },
    { key: "B", words: "take the border at the playhead; then ← → nudges it, Shift for a second" },
  ],
} as const;
