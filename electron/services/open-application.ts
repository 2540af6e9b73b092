import { mkdirSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import type { ChapterGranularity, ExportFormat, Paper } from "../../shared-types/index.ts";
import { type AnalysisRunner, createAnalysisRunner } from "../jobs/run-analysis.ts";
import { defaultLibraryFile } from "../library/default-place.ts";
import { lockLibrary } from "../library/library-lock.ts";
import { openLibrary } from "../library/open-library.ts";
import { createAnalyst } from "./analyse-recording.ts";
import { createEventHub } from "./event-hub.ts";
import { downloadExport } from "./export-recording.ts";
import { createHandedFiles } from "./handed-files.ts";
import { createHandlers, type HostSide } from "./handlers.ts";
import { importDemoOnce } from "./import-demo.ts";
import { refreshSearchIndex } from "./index-for-search.ts";
import { createOfferedFiles } from "./offered-files.ts";
import type { Parts } from "./parts.ts";
import { noPdfPrinter } from "./print-pages.ts";
import { videoPath } from "./recording-detail.ts";
import { copyFile } from "./video-copies/copy-with-chapters.ts";
import { keepFingerprint, keepFingerprints } from "./videos/keep-fingerprints.ts";

export interface ApplicationOptions {
  readonly host: HostSide;
  /** Null for the user's own library. */
  readonly libraryFile: string | null;
  readonly log?: (line: string) => void;
  /** ISO 8601, UTC; for tests. */
  readonly now?: () => string;
  /** Another way to analyse than the worker thread; for tests. */
  readonly analysis?: AnalysisRunner;
}

export type Application = ReturnType<typeof openApplication>;

/**
 * The application without a window: the library, the analysis' thread, and a function for each method.
 * @throws Refusal when the library cannot be opened.
 */
export function openApplication(options: ApplicationOptions) {
  const { host, libraryFile, log = console.error, now = () => new Date().toISOString(), analysis = createAnalysisRunner() } = options;
  const { library, lock } = openAlone(libraryFile ?? defaultLibraryFile());
  const parts: Parts = {
    library,
    analysis,
    events: createEventHub(),
    pdf: host.pdf ?? noPdfPrinter,
    files: createOfferedFiles(join(library.folder, ".roundwalk-incoming")),
    now,
    log,
  };
  refreshSearchIndex(parts);
  const analyst = createAnalyst(parts);
  const handed = createHandedFiles(parts);
  let background: Promise<unknown> = Promise.resolve();
  let closing = false;
  return {
    parts,
    analyst,
    /** Tells whoever tries to open the same library where this one is. */
    announce: lock.announce,
    handlers: createHandlers(parts, analyst, host, handed),
    /** Gives files to the page that came from outside of it; the reasons why some were not taken. */
    handOver: handed.hand,
    /** The video behind a recording's media address; undefined where there is none. */
    mediaFile: (recordingId: string) => {
      const video = library.recordings.get(recordingId)?.video;
      // Somebody looks at it now: what it is known by is kept, should it be moved one day.
      if (video && !library.videoFingerprints.get(recordingId)) {
        background = Promise.allSettled([background, keepFingerprint(parts, recordingId)]);
      }
      return video ? { path: videoPath(library, video), mediaType: video.mediaType } : undefined;
    },
    /** The copy of the video with its chapters inside, for its download. */
    copyFile: (recordingId: string) => copyFile(parts, recordingId),
    download: (recordingId: string, format: ExportFormat, granularity: ChapterGranularity, paper: Paper, template?: string) =>
      downloadExport(parts, { recordingId, format, granularity, paper, template }),
    /** The demo for a library that never had one, then whatever another version analysed. Resolves when the demo is in. */
    start: async (demoFolder: string): Promise<void> => {
      await importDemoOnce(parts, analyst, demoFolder);
      background = Promise.allSettled([background, keepFingerprints(parts, () => closing), analyst.catchUp()]);
    },
    close: async (): Promise<void> => {
      closing = true;
      analyst.close();
      await parts.analysis.close();
      await background;
      await analyst.idle();
      parts.files.close();
      library.close();
      lock.release();
    },
  };
}

/** The library under a lock, which is let go where the library then cannot be opened. */
function openAlone(file: string) {
  const place = resolve(file);
  mkdirSync(dirname(place), { recursive: true, mode: 0o700 });
  const lock = lockLibrary(place);
  try {
    return { library: openLibrary(place), lock };
  } catch (failure) {
    lock.release();
    throw failure;
  }
}
