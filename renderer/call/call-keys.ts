/** What a key does while the Call desk's field has the focus; letters are typed. */
export type CallAction = "play" | "pause" | "copy" | "open" | "compare" | "next" | "before" | "next-page" | "before-page";

export const callShortcuts = [
  { key: "ArrowDown", action: "next", words: "the next moment" },
  { key: "ArrowUp", action: "before", words: "the moment before" },
  { key: "PageDown", action: "next-page", words: "eight on" },
  { key: "PageUp", action: "before-page", words: "eight back" },
  { key: "Enter", action: "play", words: "play it here" },
  { key: "Shift+Enter", action: "pause", words: "pause, and go on" },
  { key: "Ctrl+Enter", action: "copy", words: "copy the answer" },
  { key: "Alt+Enter", action: "open", words: "see its conflict, or its place at the Mark desk" },
  { key: "Ctrl+K", action: "compare", words: "compare vehicles, and back" },
] as const satisfies readonly { key: string; action: CallAction; words: string }[];

const actionOfKey = new Map<string, CallAction>(callShortcuts.map(({ key, action }) => [key, action]));

export function callActionOf(key: string): CallAction | undefined {
  return actionOfKey.get(key);
}

/** Keys told under the field. */
export const toldKeys = ["ArrowDown", "Enter", "Shift+Enter", "Ctrl+Enter", "Alt+Enter", "Ctrl+K"] as const;
