/** What a key does at the Mark desk. */
export type MarkAction =
  | "play"
  | "shuttle-back"
  | "halt"
  | "shuttle-on"
  | "frame-back"
  | "frame-on"
  | "second-back"
  | "second-on"
  | "five-back"
  | "five-on"
  | "slower"
  | "faster"
  | "louder"
  | "quieter"
  | "mute"
  | "film-size"
  | "border-before"
  | "border-after"
  | "mark-start"
  | "mark-end"
  | "clear-marks"
  | "zone"
  | "finding"
  | "still"
  | "next-proposal"
  | "accept"
  | "accept-stretch"
  | "accept-all"
  | "split"
  | "join"
  | "retitle"
  | "remove"
  | "captions"
  | "findings"
  | "zones"
  | "correct"
  | "original"
  | "search"
  | "hit-after"
  | "hit-before"
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
      { action: "shuttle-back", key: "J", words: "run backwards; again for faster" },
      { action: "halt", key: "K", words: "stand still, and back to the usual rate" },
      { action: "shuttle-on", key: "L", words: "run forwards; again for faster" },
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
      { action: "louder", key: "Shift+ArrowUp", words: "louder" },
      { action: "quieter", key: "Shift+ArrowDown", words: "quieter" },
      { action: "mute", key: "M", words: "sound off and on" },
      { action: "film-size", key: "V", words: "the film large, over the lap and the page, or in its place" },
    ],
  },
  {
    name: "Mark",
    shortcuts: [
      { action: "mark-start", key: "I", words: "mark in at the playhead" },
      { action: "mark-end", key: "O", words: "mark out at the playhead" },
      { action: "clear-marks", key: "X", words: "clear the marks" },
      { action: "zone", key: "Z", words: "set the zone of the marked stretch, or of this span" },
      { action: "finding", key: "F", words: "new finding, or back to the form that is open; Ctrl Enter saves it" },
      { action: "still", key: "Alt+S", words: "take a still at the playhead for the finding in the form; opens one where none is open" },
      { action: "next-proposal", key: "N", words: "to the next proposed finding; Enter accepts it and goes to the one after" },
    ],
  },
  {
    name: "Zone spans",
    shortcuts: [
      { action: "accept", key: "A", words: "accept this proposed span" },
      {
        action: "accept-stretch",
        key: "Shift+A",
        words: "accept what is proposed in the marked stretch: zones, or findings while their list is shown",
      },
      { action: "accept-all", key: "Shift+Y", words: "accept all that is proposed, likewise" },
      { action: "split", key: "S", words: "split at the playhead" },
      { action: "join", key: "Shift+S", words: "join at the nearest border" },
      { action: "retitle", key: "T", words: "retitle this span" },
      { action: "remove", key: "Delete", words: "remove this span; the proposal shows again" },
    ],
  },
  {
    name: "Lists",
    shortcuts: [
      { action: "captions", key: "1", words: "to the captions" },
      { action: "findings", key: "2", words: "findings" },
      { action: "zones", key: "3", words: "zones; puts an open finding form aside, and F brings it back as it was" },
      { action: "correct", key: "E", words: "correct the words of the caption at the playhead; Enter keeps, Esc drops" },
      { action: "original", key: "W", words: "show or hide the words it came with" },
      {
        action: "search",
        key: "/",
        words: "search the captions; Enter and Shift Enter go through the hits, Esc leaves the field, a second Esc ends the search",
      },
      { action: "hit-after", key: "G", words: "to the next hit" },
      { action: "hit-before", key: "Shift+G", words: "to the hit before" },
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
    { key: "C", words: "to the next conflict, Shift C to the one before; Enter opens it at Check, Esc leaves it" },
    { key: "B", words: "take the border at the playhead; then ← → nudges it, Shift for a second" },
  ],
} as const;
