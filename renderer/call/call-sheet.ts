import type { SheetGroup } from "../shared/shortcut-sheet.tsx";
import { callShortcuts } from "./call-keys.ts";

export const callSheet: readonly SheetGroup[] = [
  {
    name: "Call",
    shortcuts: [
      ...callShortcuts,
      { key: "Escape", words: "clear the field; from an empty one, ask the whole library again" },
      { key: "/", words: "back to the field" },
      { key: "?", words: "this sheet, while the field is empty" },
    ],
  },
];
