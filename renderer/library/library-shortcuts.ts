import type { SheetGroup } from "../shared/shortcut-sheet.tsx";

/** What a key does in the library. */
export const libraryKeys = { recording: "I", folder: "F", bundles: "B", find: "/" } as const;

export const librarySheet: readonly SheetGroup[] = [
  {
    name: "Library",
    shortcuts: [
      { key: libraryKeys.recording, words: "import a recording" },
      { key: libraryKeys.folder, words: "import a folder of recordings" },
      { key: libraryKeys.bundles, words: "bring in bundles" },
      { key: libraryKeys.find, words: "find a recording, once there are many" },
    ],
  },
];
