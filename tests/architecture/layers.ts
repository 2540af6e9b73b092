/** Who may import whom. Paths are from the root; the longest match counts. */
export interface Layer {
  /** Folder or file that the row is about. */
  readonly from: string;
  /** Folders and files of the project. Its own folder is always allowed. */
  readonly own: readonly string[];
  /** Packages; "node:" stands for all of Node's own. */
  readonly packages: readonly string[];
}

const everyPart = [
  "shared-types",
  "electron/analysis",
  "electron/library",
  "electron/services",
  "electron/jobs",
  "electron/transport",
  "electron/transcripts",
  "electron/exports",
];

export const layers: readonly Layer[] = [
  { from: "shared-types", own: [], packages: ["zod"] },
  { from: "electron/analysis", own: ["shared-types"], packages: [] },
  {
    from: "electron/transcripts",
    own: ["shared-types"],
    packages: ["zod", "media-captions", "chardet", "iconv-lite", "entities", "jsonc-parser"],
  },
  { from: "electron/exports", own: ["shared-types"], packages: ["node:crypto", "zod", "csv-stringify", "entities"] },
  { from: "electron/library", own: ["shared-types"], packages: ["node:", "better-sqlite3", "env-paths"] },
  { from: "electron/jobs", own: ["shared-types", "electron/analysis"], packages: ["node:worker_threads"] },
  {
    from: "electron/services",
    own: ["shared-types", "electron/library", "electron/jobs", "electron/transcripts", "electron/exports"],
    packages: ["node:", "zod", "csv-parse", "yazl", "yauzl", "minisearch"],
  },
  { from: "electron/transport", own: ["shared-types"], packages: ["node:", "zod", "@hono/node-server"] },
  { from: "electron/window", own: ["shared-types", "electron/transport"], packages: ["node:", "electron", "electron-log"] },
  { from: "electron/launch", own: [], packages: ["node:", "vite", "chrome-launcher", "open", "env-paths"] },
  { from: "electron/headless", own: [...everyPart, "electron/launch"], packages: ["node:"] },
  { from: "electron/main.ts", own: ["electron/open-desktop.ts", "electron/window"], packages: ["node:", "electron"] },
  { from: "electron/open-desktop.ts", own: [...everyPart, "electron/window"], packages: ["node:", "electron"] },
  { from: "electron/preload.ts", own: ["shared-types", "electron/transport"], packages: ["electron"] },
  { from: "electron/loopback.ts", own: everyPart, packages: ["node:"] },
  { from: "electron/start.ts", own: ["electron/launch", "electron/loopback.ts"], packages: ["node:", "open"] },
  { from: "electron/build.ts", own: ["electron/launch"], packages: ["node:"] },
  {
    from: "electron/packaging",
    own: ["electron/launch"],
    packages: ["node:", "electron-builder", "@electron/fuses", "@electron/asar", "resedit", "@resvg/resvg-js", "better-sqlite3"],
  },
  { from: "electron/run.mjs", own: [], packages: ["node:"] },
  {
    from: "renderer",
    own: ["shared-types"],
    packages: [
      "react",
      "react-dom",
      "video.js",
      "zod",
      "@base-ui/react",
      "@tanstack/react-virtual",
      "@fontsource-variable/atkinson-hyperlegible-next",
    ],
  },
  // Configuration of a tool, which runs in Node and is no part of the page.
  { from: "renderer/vite.config.ts", own: [], packages: ["node:", "vite", "@vitejs/plugin-react"] },
];

/** Files that must not reach Electron, not even through another file: they run where it is not. */
export const withoutElectron: readonly string[] = [
  "electron/loopback.ts",
  "electron/start.ts",
  "electron/build.ts",
  "electron/packaging",
  "electron/headless",
  "electron/services",
  "electron/transport",
];
